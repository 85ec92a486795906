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
  private static final double SMALL_WH = 10_000.0;

  private static final String HEAD =
      """
      # How much each effect matters

      Each home is run with everything, then once more without each effect that it has, all else the same. Read a line so: leave it
      out, and what goes unserved in an average year changes from the first figure to the second; one figure alone means no change that
      shows. What changes most stands first. Effects do not add up.

      - A loss of the panels is left out by giving back what was booked for it; the losses that come after it are not worked out anew.
        Only what snow keeps off stays off, clean glass or not.
      - "Days shorter than midsummer's", "the season's usual cloud" and "cloud that differs from the usual" are nobody's fault. The usual
        cloud is the mean of the days within 15 of the day of the year, of all years of the weather; without what differs from it every
        day is such a mean day, without the usual cloud only what is duller than usual stays, without both the sky is clear. Without short
        days the sun of midsummer shines through each day's own cloud. Measured beam and sky light are not used then: light is split anew.
      - "A bank that is not at 25 °C" holds the charge locked by cold, the resistance of cold cells and the heater. "No charging in the
        cold" stands apart from it: what the bank takes is judged by its real temperature there.
      - Without "a load that differs from its month's mean" each hour asks for the mean of its month and hour of the day.
      - "Warm cells and weak light" can be a gain in cold weather: a winter may be worse without it.
      - Without "voltage that sags and rises" the bank works with the constant efficiencies of its sheet instead, which may be the worse ones.
      - Without "days and hours that differ by chance" every day is the mean day; the dark days of these very years may have been above
        it or below.
      - Where a generator runs, its hours move too. What goes unserved may then rise a little when a loss is left out: a fuller bank
        may not start the engine in the evening, and the night is too long for it. Look at the generator's kWh beside it.

      Made by `greyspell effects\
      """;

  private EffectsText() {}

  /** For the terminal. */
  public static String of(Effects effects) {
    var out = new StringBuilder(effects.home()).append("\n\n");
    Columns.wrap(out, "", whole(effects.whole()));
    out.append('\n');
    var table = new Columns();
    table.row(head(effects));
    for (LeftOut l : effects.left()) {
      if (!effects.isIdle(l)) {
        table.row(cells(effects, l));
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
      String[] head = head(effects);
      out.append("\n## ").append(effects.home()).append("\n\n");
      out.append(whole(effects.whole())).append("\n\n");
      line(out, head);
      out.append("|--:".repeat(head.length - 1)).append("|---|\n");
      for (LeftOut l : effects.left()) {
        if (!effects.isIdle(l)) {
          line(out, cells(effects, l));
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

  private static boolean letsGo(Effects effects) {
    return effects.whole().letGoWh() > 0.0
        || effects.left().stream().anyMatch(l -> l.unmet().letGoWh() > 0.0);
  }

  private static boolean hasGenerator(Effects effects) {
    return effects.whole().generatorWh() > 0.0
        || effects.left().stream().anyMatch(l -> l.unmet().generatorWh() > 0.0);
  }

  private static String[] head(Effects effects) {
    var head = new ArrayList<>(List.of("kWh unserved", "hours"));
    if (letsGo(effects)) {
      head.add("kWh let go");
    }
    if (hasGenerator(effects)) {
      head.add("kWh generator");
    }
    head.add("left out");
    return head.toArray(String[]::new);
  }

  private static String[] cells(Effects effects, LeftOut l) {
    Unmet was = effects.whole(), is = l.unmet();
    // a hut that is short of little shows its changes in the second decimal
    int digits = was.wh() < SMALL_WH ? 2 : 1;
    var cells = new ArrayList<String>();
    cells.add(change(was.wh() / 1000.0, is.wh() / 1000.0, digits));
    cells.add(change(was.unmetHours(), is.unmetHours(), 0));
    if (letsGo(effects)) {
      cells.add(change(was.letGoWh() / 1000.0, is.letGoWh() / 1000.0, 1));
    }
    if (hasGenerator(effects)) {
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
