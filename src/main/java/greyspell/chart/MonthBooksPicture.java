package greyspell.chart;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Canvas.Anchor;
import greyspell.outcome.Outcome.MonthBooks;
import greyspell.study.StudyResult;
import java.util.List;

/** Sun against need, month by month; what could not be served and what could not be kept. */
final class MonthBooksPicture extends Picture {
  private static final double LEAST_NUMBERED_WH = 50.0;
  private static final double MOST_SURPLUS_SHOWN = 1.55;

  private final List<MonthSums.Month> months;
  private final double mostWh;

  private MonthBooksPicture(
      String title, String note, String description, List<MonthSums.Month> months) {
    super("months", title, note, description, 344.0);
    this.months = months;
    mostWh = mostShownWh(months);
  }

  static MonthBooksPicture of(StudyResult result) {
    var months = MonthSums.of(result.ledger(), result.scenario().site().isNorthern());
    HourCalendar calendar = result.ledger().forcing().calendar();
    String average =
        calendar.years() > 1
            ? "The average month of "
                + calendar.years()
                + " years ("
                + calendar.firstYear()
                + " to "
                + (calendar.firstYear() + calendar.years() - 1)
                + "), in kWh a day."
            : "Mean of each month, in kWh a day.";
    String note =
        average
            + " Left bar: sun on the bus, hatched where the bank could not take it. Right bar: what was"
            + " needed, striped at the top where it was not served."
            + (SourcesPicture.isNeeded(result)
                ? " Not only the sun served it: the picture of all sources stands further down."
                : "")
            + worstMonth(result);
    return new MonthBooksPicture(title(months), note, describe(months), months);
  }

  private static String title(List<MonthSums.Month> months) {
    var worst = months.get(0);
    var dullest = months.get(0);
    for (var m : months) {
      worst = m.unmetWh() > worst.unmetWh() ? m : worst;
      dullest = m.sunWh() / m.needWh() < dullest.sunWh() / dullest.needWh() ? m : dullest;
    }
    var shown = worst.unmetWh() > 0.0 ? worst : dullest;
    String sun =
        "In "
            + Say.month(shown.month())
            + " the panels brought "
            + Say.kwh(shown.sunWh())
            + " a day against a need of "
            + Say.kwh(shown.needWh());
    return worst.unmetWh() > 0.0
        ? sun
            + (worst.sunWh() > worst.needWh() ? "; still " : "; ")
            + Say.kwh(worst.unmetWh())
            + " a day was not served"
        : sun
            + (shown.suppliedWh() > shown.usedWh()
                ? ", and with the other sources all of it was served"
                : ", and all of it was served");
  }

  private static String worstMonth(StudyResult result) {
    if (result.ledger().forcing().calendar().years() < 2) {
      return "";
    }
    MonthBooks worst = result.outcome().months().get(0);
    for (MonthBooks m : result.outcome().months()) {
      worst = m.figures().unmetWh() > worst.figures().unmetWh() ? m : worst;
    }
    return worst.figures().unmetWh() > 0.0
        ? " Worst single month: "
            + Say.month(worst.month())
            + " "
            + worst.year()
            + ", "
            + Say.kwh(worst.figures().unmetWh())
            + " short."
        : "";
  }

  private static String describe(List<MonthSums.Month> months) {
    var text =
        new StringBuilder("Kilowatt-hours a day, month: sun used, sun left, need, not served.");
    for (var m : months) {
      text.append(' ')
          .append(Say.month(m.month()))
          .append(": ")
          .append(Say.kwhCell(m.usedWh()))
          .append(", ")
          .append(Say.kwhCell(m.curtailedWh()))
          .append(", ")
          .append(Say.kwhCell(m.needWh()))
          .append(", ")
          .append(Say.kwhCell(m.unmetWh()))
          .append('.');
    }
    return text.toString();
  }

  private static double mostShownWh(List<MonthSums.Month> months) {
    double barWh = 0.0;
    double allWh = 0.0;
    for (var m : months) {
      barWh = Math.max(barWh, Math.max(m.usedWh(), m.needWh()));
      allWh = Math.max(allWh, m.sunWh());
    }
    return Math.max(Math.min(allWh, barWh * MOST_SURPLUS_SHOWN), Math.max(barWh, 1.0)) * 1.06;
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    var bars = new MonthBars(canvas, top + 64.0, top + height - 34.0, mostWh);
    key(bars, top + 8.0);
    bars.scale(22.0);
    double bar = bars.slot() * 0.36;
    for (int k = 0; k < 12; k++) {
      var m = months.get(k);
      double x = bars.x(k) + bars.slot() * 0.12;
      sunBar(canvas, bars, m, x, bar);
      needBar(canvas, bars, m, x + bar + 3.0, bar);
      bars.name(x + bar + 1.5, m.month(), m.unmetWh() > 0.0);
    }
  }

  private static void sunBar(
      Canvas canvas, MonthBars bars, MonthSums.Month m, double x, double bar) {
    double usedTop = bars.y(m.usedWh());
    canvas.rect(x, usedTop, bar, bars.tall(m.usedWh()), Look.SUN);
    double sunTop = bars.y(m.sunWh());
    double barsTop = bars.top();
    if (sunTop >= barsTop) {
      canvas.hatch(x, sunTop, bar, usedTop - sunTop, 5.0, Look.SUN_EDGE, false);
      return;
    }
    canvas.hatch(x, barsTop, bar, usedTop - barsTop, 5.0, Look.SUN_EDGE, false);
    double cut = barsTop + 7.0;
    double[] xs = {x - 2, x + bar * 0.5, x + bar + 2, x + bar + 2, x + bar * 0.5, x - 2};
    double[] ys = {cut + 4, cut - 2, cut + 4, cut, cut - 6, cut};
    canvas.polygon(xs, ys, 6, Look.PAPER);
    canvas.text(
        x + bar * 0.5,
        barsTop - 4.0,
        Say.number(m.sunWh() / 1000.0, 0),
        Look.TICK,
        false,
        Look.SUN_EDGE,
        Anchor.MIDDLE);
  }

  private static void needBar(
      Canvas canvas, MonthBars bars, MonthSums.Month m, double x, double bar) {
    double y = bars.y(0.0);
    double[] parts = {m.standingWh(), m.lossesWh(), m.servedWh()};
    int[] fills = {Look.ALWAYS_ON, Look.LOSSES, Look.HOUSE};
    for (int p = 0; p < 3; p++) {
      double tall = bars.tall(parts[p]);
      y -= tall;
      canvas.rect(x, y, bar, tall, fills[p]);
    }
    y = bars.unmet(x, y, bar, m.unmetWh());
    if (m.unmetWh() >= LEAST_NUMBERED_WH) {
      bars.figure(x + bar * 0.5, y, m.unmetWh(), Look.UNMET);
    }
  }

  private static void key(MonthBars bars, double y) {
    bars.key(y, "sun used", Look.SUN);
    bars.keyHatched(y, "sun left over", 5.0, Look.SUN_EDGE);
    bars.key(y, "house", Look.HOUSE);
    bars.key(y, "always-on", Look.ALWAYS_ON);
    bars.key(y, "losses", Look.LOSSES);
    bars.keyNotServed(y);
  }
}
