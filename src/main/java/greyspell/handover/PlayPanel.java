package greyspell.handover;

import greyspell.handover.Block.Row;
import greyspell.handover.Block.Table;
import greyspell.study.PlayGrid;
import greyspell.study.PlayGrid.Answer;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The sliders and their answers, and what paper shows in their place. */
final class PlayPanel {
  private static final List<String> AXES = List.of("panels", "banks", "uses");

  private final PlayGrid grid;
  private final Words words;
  private final boolean hasGenerator;

  private PlayPanel(PlayGrid grid, Words words) {
    this.grid = grid;
    this.words = words;
    hasGenerator = grid.answers().stream().anyMatch(a -> a.generatorHours() > 0.0);
  }

  /** Hidden until the script shows it. */
  static String html(PlayGrid grid, Words words) {
    return new PlayPanel(grid, words).make();
  }

  /** One thing changed at a time, the other two as they stand. */
  static Table table(PlayGrid grid, Words words) {
    return new PlayPanel(grid, words).oneAtATime();
  }

  private String make() {
    var out = new Markup();
    out.open("div", "id", "play", "class", "play", "hidden", "hidden");
    List<List<String>> said = List.of(panels(), banks(), uses());
    int[] present = {grid.presentPanels(), grid.presentBank(), grid.presentUse()};
    for (int k = 0; k < 3; k++) {
      slider(out, AXES.get(k), said.get(k), present[k]);
    }
    out.open("div", "class", "answers", "role", "status");
    List<String> now = figures(grid.present());
    List<String> names = names();
    for (int k = 0; k < names.size(); k++) {
      out.open("div", "class", "answer").element("span", names.get(k));
      out.element("output", now.get(k), "class", "figure", "id", "play-answer-" + k);
      out.element("span", words.say("play.now", now.get(k)), "class", "now").close("div");
    }
    out.close("div");
    out.element("button", words.say("play.reset"), "type", "button", "id", "play-reset");
    out.open("script", "type", "application/json", "id", "play-data");
    out.raw(json(said, present)).close("script");
    return out.close("div").toString();
  }

  private void slider(Markup out, String axis, List<String> said, int present) {
    String id = "play-" + axis;
    out.open("label", "for", id).text(words.say("play." + axis) + " ");
    out.element("output", said.get(present), "class", "said", "id", id + "-said", "for", id);
    out.close("label");
    out.empty(
        "input",
        "type",
        "range",
        "id",
        id,
        "min",
        "0",
        "max",
        Integer.toString(said.size() - 1),
        "step",
        "1",
        "value",
        Integer.toString(present),
        "autocomplete",
        "off");
  }

  // ---- words

  private List<String> panels() {
    return grid.panels().stream()
        .map(
            p ->
                words.say(
                    "play.panels.step", words.number(p.modules(), 0), words.power(p.ratedW())))
        .toList();
  }

  private List<String> banks() {
    return grid.banks().stream()
        .map(
            b ->
                words.say(
                    "play.banks.step", words.number(b.packs(), 0), words.energy(b.usableWh())))
        .toList();
  }

  private List<String> uses() {
    return grid.uses().stream()
        .map(
            u ->
                words.say("play.uses.step", words.energy(u.dayWh()), words.percent(u.ofNowShare())))
        .toList();
  }

  private List<String> names() {
    var names = new ArrayList<String>();
    names.add(words.say("play.hours"));
    names.add(words.say("play.energy"));
    names.add(words.say("play.days"));
    names.add(words.say("play.spells", words.number(grid.years(), 0)));
    if (hasGenerator) {
      names.add(words.say("play.generator"));
    }
    return names;
  }

  private List<String> figures(Answer a) {
    var figures = new ArrayList<String>();
    figures.add(words.number(a.unmetHours(), 0));
    figures.add(words.energy(a.unmetWh()));
    figures.add(words.number(a.darkDays(), 1));
    figures.add(words.number(a.beatingSpells(), 0));
    if (hasGenerator) {
      figures.add(words.number(a.generatorHours(), 0));
    }
    return figures;
  }

  // ---- the static table

  private Table oneAtATime() {
    var head = new ArrayList<String>();
    head.add(words.say("play.change"));
    head.addAll(names());
    var rows = new ArrayList<Row>();
    int panel = grid.presentPanels(), bank = grid.presentBank(), use = grid.presentUse();
    rows.add(row(words.say("play.as_it_stands"), grid.present(), true));
    for (int k = 0; k < grid.panels().size(); k++) {
      if (k != panel) {
        rows.add(row(panels().get(k), grid.at(k, bank, use), false));
      }
    }
    for (int k = 0; k < grid.banks().size(); k++) {
      if (k != bank) {
        rows.add(row(banks().get(k), grid.at(panel, k, use), false));
      }
    }
    for (int k = 0; k < grid.uses().size(); k++) {
      if (k != use) {
        rows.add(row(uses().get(k), grid.at(panel, bank, k), false));
      }
    }
    return new Table(words.say("play.caption"), head, rows, false);
  }

  private Row row(String name, Answer answer, boolean isMarked) {
    var cells = new ArrayList<String>();
    cells.add(name);
    cells.addAll(figures(answer));
    return new Row(cells, isMarked);
  }

  // ---- the grid for the script

  private String json(List<List<String>> said, int[] present) {
    var out = new StringBuilder("{\"present\":[");
    out.append(present[0]).append(',').append(present[1]).append(',').append(present[2]);
    out.append(']');
    for (int k = 0; k < 3; k++) {
      out.append(",\"").append(AXES.get(k)).append("\":");
      strings(out, said.get(k));
    }
    out.append(",\"answers\":[");
    for (int k = 0; k < grid.answers().size(); k++) {
      out.append(k == 0 ? "" : ",");
      strings(out, figures(grid.answers().get(k)));
    }
    return out.append("]}").toString();
  }

  private static void strings(StringBuilder out, List<String> strings) {
    for (int k = 0; k < strings.size(); k++) {
      out.append(k == 0 ? "[\"" : ",\"");
      for (char c : strings.get(k).toCharArray()) {
        // also what would end the element that the grid stands in
        boolean isSafe = c >= 32 && c != '"' && c != '\\' && c != '<' && c != '&' && c != '>';
        if (isSafe) {
          out.append(c);
        } else {
          out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
        }
      }
      out.append('"');
    }
    out.append(']');
  }
}
