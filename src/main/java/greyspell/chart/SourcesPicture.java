package greyspell.chart;

import greyspell.calendar.HourCalendar;
import greyspell.study.StudyResult;
import java.util.List;

/** Where the energy came from, month by month, in a home that has more than the sun. */
final class SourcesPicture extends Picture {
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
    var bars = new MonthBars(canvas, top + 54.0, top + height - 34.0, mostWh);
    key(bars, top + 8.0);
    bars.scale(12.0);
    double bar = bars.slot() * 0.5;
    for (int k = 0; k < 12; k++) {
      double x = bars.x(k) + bars.slot() * 0.25;
      bar(canvas, bars, months.get(k), x, bar);
      bars.name(x + bar * 0.5, months.get(k).month(), false);
    }
  }

  private void bar(Canvas canvas, MonthBars bars, MonthSums.Month m, double x, double bar) {
    double usedTall = bars.tall(m.usedWh());
    double y = bars.y(m.usedWh());
    canvas.rect(x, y, bar, usedTall, Look.SUN);
    double otherTall = bars.tall(m.otherWh());
    y -= otherTall;
    canvas.rect(x, y, bar, otherTall, Look.HOUSE);
    double generatorTall = bars.tall(m.generatorWh());
    if (generatorTall > 0.0) {
      y -= generatorTall;
      canvas.rect(x, y, bar, generatorTall, Look.PAPER);
      canvas.hatch(x, y, bar, generatorTall, 4.0, GENERATOR, false);
    }
    y = bars.unmet(x, y, bar, m.unmetWh());
    if (m.generatorWh() > LEAST_NUMBERED_SHARE * mostWh) {
      bars.figure(x + bar * 0.5, y, m.generatorWh(), GENERATOR);
    }
  }

  private void key(MonthBars bars, double y) {
    bars.key(y, "sun used", Look.SUN);
    if (hasOther) {
      bars.key(y, "second source", Look.HOUSE);
    }
    if (hasGenerator) {
      bars.keyHatched(y, "generator", 4.0, GENERATOR);
    }
    bars.keyNotServed(y);
  }
}
