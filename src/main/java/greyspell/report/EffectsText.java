package greyspell.report;

import greyspell.chart.Say;
import greyspell.study.Effects;
import greyspell.study.Effects.LeftOut;
import greyspell.study.Unmet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What each effect is worth, in words, as a table for the terminal or a page of Markdown. */
public final class EffectsText {
  private static final String HEAD =
      """
      # What each effect matters

      Each home is run with everything, then once without each effect that it has, all else the same. What is left out is
      named; the figures are what goes unserved then, a year. A loss of the panels is left out by giving back what was booked
      for it, so losses that follow from one another are not told apart finely. Effects do not add up: a house that is hours short
      at the edge of its bank gains from every one of them. Where a generator runs its hours move too, and so what goes unserved
      may rise a little when a loss is left out: the engine is then not at work when the sun fails.

      Made by `greyspell effects\
      """;

  private EffectsText() {}

  /** For the terminal. */
  public static String of(Effects effects) {
    var out = new StringBuilder(effects.home()).append("\n\n");
    Columns.wrap(out, "", whole(effects.whole()));
    out.append('\n');
    var table = new Columns();
    boolean hasMore = hasMore(effects);
    table.row(head(hasMore));
    for (LeftOut l : effects.left()) {
      if (!effects.isIdle(l)) {
        table.row(cells(effects, l, hasMore));
      }
    }
    table.write(out, true);
    String idle = idle(effects);
    if (!idle.isEmpty()) {
      out.append('\n');
      Columns.wrap(out, "Without these nothing changes: ", idle + ".");
    }
    return out.toString();
  }

  /** For docs/effects.md. */
  public static String page(List<Effects> homes, List<Path> files) {
    var out = new StringBuilder(HEAD);
    files.forEach(f -> out.append(' ').append(f.toString().replace('\\', '/')));
    out.append(" --page docs/effects.md`; a test holds it.\n");
    for (Effects effects : homes) {
      boolean hasMore = hasMore(effects);
      out.append("\n## ").append(effects.home()).append("\n\n");
      out.append(whole(effects.whole())).append("\n\n");
      line(out, head(hasMore));
      out.append("|--:|--:").append(hasMore ? "|--:|--:" : "").append("|---|\n");
      for (LeftOut l : effects.left()) {
        if (!effects.isIdle(l)) {
          line(out, cells(effects, l, hasMore));
        }
      }
      String idle = idle(effects);
      if (!idle.isEmpty()) {
        out.append("\nWithout these nothing changes: ").append(idle).append(".\n");
      }
    }
    return out.toString();
  }

  private static void line(StringBuilder out, String[] cells) {
    out.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }

  private static String whole(Unmet whole) {
    return "With everything "
        + Say.kwh(whole.wh())
        + " a year goes unserved, in "
        + Say.hours((int) Math.round(whole.unmetHours()))
        + (whole.letGoWh() > 0.0 ? "; " + Say.kwh(whole.letGoWh()) + " is let go by rule" : "")
        + (whole.generatorWh() > 0.0 ? "; the generator gives " + Say.kwh(whole.generatorWh()) : "")
        + ".";
  }

  private static boolean hasMore(Effects effects) {
    return effects.left().stream()
        .anyMatch(l -> l.unmet().generatorWh() > 0.0 || l.unmet().letGoWh() > 0.0);
  }

  private static String[] head(boolean hasMore) {
    return hasMore
        ? new String[] {"kWh unserved", "hours", "kWh let go", "kWh generator", "left out"}
        : new String[] {"kWh unserved", "hours", "left out"};
  }

  private static String[] cells(Effects effects, LeftOut l, boolean hasMore) {
    Unmet was = effects.whole(), is = l.unmet();
    var cells = new ArrayList<String>();
    cells.add(change(was.wh() / 1000.0, is.wh() / 1000.0, 1));
    cells.add(change(was.unmetHours(), is.unmetHours(), 0));
    if (hasMore) {
      cells.add(change(was.letGoWh() / 1000.0, is.letGoWh() / 1000.0, 1));
      cells.add(change(was.generatorWh() / 1000.0, is.generatorWh() / 1000.0, 0));
    }
    cells.add(l.effect().words());
    return cells.toArray(String[]::new);
  }

  private static String change(double was, double is, int digits) {
    String before = Say.number(was, digits), after = Say.number(is, digits);
    return before.equals(after) ? before : before + " → " + after;
  }

  private static String idle(Effects effects) {
    var idle = new ArrayList<String>();
    for (LeftOut l : effects.left()) {
      if (effects.isIdle(l)) {
        idle.add(l.effect().words());
      }
    }
    return String.join(", ", idle);
  }
}
