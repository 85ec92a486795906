package greyspell.chart;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Canvas.Anchor;
import greyspell.study.StudyResult;
import java.util.List;

/** Where the energy came from, month by month, in a home that has more than the sun. */
final class SourcesPicture extends Picture {
  private static final double LEFT = 52.0;
  private static final int GENERATOR = 0x5B4A8A;
  private static final double LEAST_NUMBERED_SHARE = 0.005;

  private final List<MonthSums.Month> months;
  private final boolean hasOther;
  private final boolean hasGenerator;
  private final double mostWh;

  private SourcesPicture(
      String title,
      String note,
      String description,
      List<MonthSums.Month> months,
      boolean hasOther,
      boolean hasGenerator) {
    super("sources", title, note, description, 280.0);
    this.months = months;
    this.hasOther = hasOther;
    this.hasGenerator = hasGenerator;
    double most = 1.0;
    for (var m : months) {
      most = Math.max(most, m.suppliedWh() + m.unmetWh());
    }
    mostWh = most * 1.1;
  }

  /** Whether there is anything beside the sun. */
  static boolean isNeeded(StudyResult result) {
    return result.scenario().generator() != null || result.scenario().otherSource() != null;
  }

  static SourcesPicture of(StudyResult result) {
    var months = MonthSums.of(result.ledger(), result.scenario().site().isNorthern());
    HourCalendar calendar = result.ledger().forcing().calendar();
    boolean hasOther = result.scenario().otherSource() != null;
    boolean hasGenerator = result.scenario().generator() != null;
    String note =
        (calendar.years() > 1
                ? "The average month of " + calendar.years() + " years, in kWh a day."
                : "Mean of each month, in kWh a day.")
            + " What each source gave to house, bank and system; striped on top what was not served all"
            + " the same."
            + (hasGenerator ? " The figures are the generator's." : "");
    return new SourcesPicture(
        title(months, hasGenerator), note, describe(months), months, hasOther, hasGenerator);
  }

  private static String title(List<MonthSums.Month> months, boolean hasGenerator) {
    var most = months.get(0);
    for (var m : months) {
      most = share(m, hasGenerator) > share(most, hasGenerator) ? m : most;
    }
    String who = hasGenerator ? "the generator" : "the second source";
    double share = share(most, hasGenerator);
    if (!(share > 0.0)) {
      return "In these years " + who + " gave 0 kWh";
    }
    return "In "
        + Say.month(most.month())
        + ", its busiest month, "
        + who
        + " gave "
        + Say.percent(share)
        + " of what came in: "
        + Say.kwh(hasGenerator ? most.generatorWh() : most.otherWh())
        + " a day";
  }

  private static double share(MonthSums.Month m, boolean hasGenerator) {
    double wh = hasGenerator ? m.generatorWh() : m.otherWh();
    return m.suppliedWh() > 0.0 ? wh / m.suppliedWh() : 0.0;
  }

  private static String describe(List<MonthSums.Month> months) {
    var text =
        new StringBuilder(
            "Kilowatt-hours a day, month: sun used, second source, generator, not served.");
    for (var m : months) {
      text.append(' ')
          .append(Say.month(m.month()))
          .append(": ")
          .append(Say.kwhCell(m.usedWh()))
          .append(", ")
          .append(Say.kwhCell(m.otherWh()))
          .append(", ")
          .append(Say.kwhCell(m.generatorWh()))
          .append(", ")
          .append(Say.kwhCell(m.unmetWh()))
          .append('.');
    }
    return text.toString();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double right = Look.WIDTH - Look.MARGIN;
    double bottom = top + height - 34.0;
    double barsTop = top + 54.0;
    double perWh = (bottom - barsTop) / mostWh;
    key(canvas, top + 8.0);
    KwhAxis.draw(canvas, LEFT, barsTop - 12.0, barsTop, bottom, mostWh);
    double slot = (right - LEFT) / 12.0;
    double bar = slot * 0.5;
    for (int k = 0; k < 12; k++) {
      bar(canvas, months.get(k), LEFT + k * slot + slot * 0.25, bar, bottom, perWh);
      canvas.text(
          LEFT + (k + 0.5) * slot,
          bottom + 18.0,
          Say.shortMonth(months.get(k).month()),
          Look.LABEL,
          false,
          Look.INK,
          Anchor.MIDDLE);
    }
  }

  private void bar(
      Canvas canvas, MonthSums.Month m, double x, double bar, double bottom, double perWh) {
    double y = bottom - m.usedWh() * perWh;
    canvas.rect(x, y, bar, bottom - y, Look.SUN);
    double otherTall = m.otherWh() * perWh;
    y -= otherTall;
    canvas.rect(x, y, bar, otherTall, Look.HOUSE);
    double generatorTall = m.generatorWh() * perWh;
    if (generatorTall > 0.0) {
      y -= generatorTall;
      canvas.rect(x, y, bar, generatorTall, Look.PAPER);
      canvas.hatch(x, y, bar, generatorTall, 4.0, GENERATOR, false);
    }
    double unmetTall = m.unmetWh() * perWh;
    if (unmetTall > 0.0) {
      double shown = Math.max(unmetTall, 2.0);
      y -= shown;
      canvas.rect(x, y, bar, shown, Look.UNMET_PALE);
      canvas.hatch(x, y, bar, shown, 4.0, Look.UNMET, true);
    }
    if (m.generatorWh() > LEAST_NUMBERED_SHARE * mostWh) {
      canvas.text(
          x + bar * 0.5,
          y - 5.0,
          Say.kwhCell(m.generatorWh()),
          Look.TICK,
          true,
          GENERATOR,
          Anchor.MIDDLE);
    }
  }

  private void key(Canvas canvas, double y) {
    String[] words = {"sun used", "second source", "generator", "not served"};
    int[] fills = {Look.SUN, Look.HOUSE, Look.PAPER, Look.UNMET_PALE};
    double x = LEFT;
    for (int k = 0; k < words.length; k++) {
      if ((k == 1 && !hasOther) || (k == 2 && !hasGenerator)) {
        continue;
      }
      canvas.rect(x, y, 18.0, 12.0, fills[k]);
      if (k == 2) {
        canvas.hatch(x, y, 18.0, 12.0, 4.0, GENERATOR, false);
      } else if (k == 3) {
        canvas.hatch(x, y, 18.0, 12.0, 4.0, Look.UNMET, true);
      }
      canvas.text(x + 24.0, y + 10.5, words[k], Look.LABEL, false, Look.INK, Anchor.START);
      x += 24.0 + TextWidth.of(words[k], Look.LABEL, false) + 16.0;
    }
  }
}
