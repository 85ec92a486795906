package greyspell.chart;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Canvas.Anchor;
import greyspell.outcome.Band;
import greyspell.outcome.WinterBands;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterRecord;

/** The lowest charge of every day through the winter and the year around it, as 10-50-90 % band. */
final class ChargeRibbonPicture extends Picture {
  private static final double LEFT = 52.0;
  private static final int DAYS = WinterRecord.DAYS;
  private static final int[] GRID_PERCENT = {0, 25, 50, 75, 100};
  private static final HourCalendar CALENDAR = HourCalendar.typicalYear();

  private final WinterBands bands;
  private final WinterRecord shown;

  private ChargeRibbonPicture(
      String title, String note, String description, WinterBands bands, WinterRecord shown) {
    super("winter-charge", title, note, description, 292.0);
    this.bands = bands;
    this.shown = shown;
  }

  static ChargeRibbonPicture of(WinterBook book) {
    var bands = WinterBands.of(book);
    int tightest = tightest(bands);
    Band there = bands.lowestShare(tightest);
    String title =
        "Around "
            + Say.dayMonth(CALENDAR, tightest * 24)
            + " the charge is tightest: it falls to "
            + fall(there);
    String note =
        "The lowest charge of each day, in % of the usable "
            + Say.kwh(book.usableBankWh())
            + ". Band: eight of ten of the "
            + Say.count(book.count(), "winter", "winters")
            + ", each day by itself. Thin line: "
            + book.shown().name()
            + ", which is shown in full.";
    return new ChargeRibbonPicture(
        title, note, describe(bands, book.isNorthern()), bands, book.shown());
  }

  /** Two figures that would be printed alike are one. */
  static String fall(Band there) {
    String usual = Say.percent(there.middle()), tenth = Say.percent(there.low());
    if (!usual.equals(tenth)) {
      String least = there.low() > 0.0 ? tenth + " or less" : tenth;
      return usual + " in a usual winter and to " + least + " in one of ten";
    }
    return there.low() > 0.0
        ? usual + " in a usual winter and hardly lower in one of ten"
        : usual + " even in a usual winter";
  }

  /** Middle of the week whose usual charge is lowest; of weeks alike, where the tenth is lowest. */
  private static int tightest(WinterBands bands) {
    int best = 0;
    double bestSum = Double.POSITIVE_INFINITY;
    for (int day = 0; day < DAYS; day++) {
      double sum = 0.0;
      for (int k = -3; k <= 3; k++) {
        Band band = bands.lowestShare((day + k + DAYS) % DAYS);
        sum += band.middle() + 0.01 * band.low();
      }
      if (sum < bestSum - 1e-9) {
        bestSum = sum;
        best = day;
      }
    }
    return best;
  }

  private static String describe(WinterBands bands, boolean isNorthern) {
    var text =
        new StringBuilder(
            "Lowest charge of a day, what one winter in ten is below, the usual winter, what nine in ten are below, mean of each month:");
    for (int k = 0; k < 12; k++) {
      int month = (isNorthern ? k + 6 : k) % 12 + 1;
      double low = 0.0, middle = 0.0, high = 0.0;
      int days = 0;
      for (int day = 0; day < DAYS; day++) {
        if (CALENDAR.month(day * 24) == month) {
          low += bands.lowestShare(day).low();
          middle += bands.lowestShare(day).middle();
          high += bands.lowestShare(day).high();
          days++;
        }
      }
      text.append(' ')
          .append(Say.month(month))
          .append(' ')
          .append(Say.percent(low / days))
          .append(", ")
          .append(Say.percent(middle / days))
          .append(", ")
          .append(Say.percent(high / days))
          .append(k < 11 ? ";" : ".");
    }
    return text.toString();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double right = Look.WIDTH - Look.MARGIN, plotTop = top + 26.0, bottom = top + height - 30.0;
    double perDay = (right - LEFT) / DAYS, tall = bottom - plotTop;
    for (int percent : GRID_PERCENT) {
      double y = bottom - tall * percent / 100.0;
      canvas.line(LEFT, y, right, y, percent == 0 ? Look.AXIS : Look.GRID, 1.0, false);
      canvas.text(
          LEFT - 7.0, y + 4.0, percent + " %", Look.TICK, false, Look.FAINT_INK, Anchor.END);
    }
    var x = new double[DAYS];
    var low = new double[DAYS];
    var middle = new double[DAYS];
    var high = new double[DAYS];
    var one = new double[DAYS];
    for (int i = 0; i < DAYS; i++) {
      int day = shown.dayInTime(i);
      Band band = bands.lowestShare(day);
      x[i] = LEFT + (i + 0.5) * perDay;
      low[i] = bottom - tall * band.low();
      middle[i] = bottom - tall * band.middle();
      high[i] = bottom - tall * band.high();
      one[i] = bottom - tall * shown.lowestShare(day);
    }
    ribbon(canvas, x, low, high);
    canvas.path(x, low, DAYS, Look.CHARGE_EDGE, 0.8);
    canvas.path(x, high, DAYS, Look.CHARGE_EDGE, 0.8);
    canvas.path(x, one, DAYS, Look.UNMET, 1.0);
    canvas.path(x, middle, DAYS, Look.CHARGE_EDGE, 2.6);
    canvas.line(LEFT, bottom, right, bottom, Look.AXIS, 1.0, false);
    months(canvas, bottom, perDay);
    key(canvas, plotTop);
  }

  private static void ribbon(Canvas canvas, double[] x, double[] low, double[] high) {
    var xs = new double[2 * DAYS];
    var ys = new double[2 * DAYS];
    for (int i = 0; i < DAYS; i++) {
      xs[i] = x[i];
      ys[i] = high[i];
      xs[2 * DAYS - 1 - i] = x[i];
      ys[2 * DAYS - 1 - i] = low[i];
    }
    canvas.polygon(xs, ys, 2 * DAYS, 0xD3E9E1);
  }

  private void months(Canvas canvas, double bottom, double perDay) {
    int from = 0;
    for (int i = 1; i <= DAYS; i++) {
      boolean isNew = i == DAYS || CALENDAR.dayOfMonth(shown.dayInTime(i) * 24) == 1;
      if (!isNew) {
        continue;
      }
      double x1 = LEFT + from * perDay, x2 = LEFT + i * perDay;
      canvas.line(x1, bottom, x1, bottom + 6.0, Look.AXIS, 1.0, false);
      canvas.text(
          (x1 + x2) * 0.5,
          bottom + 18.0,
          Say.shortMonth(CALENDAR.month(shown.dayInTime(from) * 24)),
          Look.LABEL,
          false,
          Look.INK,
          Anchor.MIDDLE);
      from = i;
    }
  }

  /** A key in a row above the plot: the lines run too close to each other to be labelled inside. */
  private static void key(Canvas canvas, double plotTop) {
    double y = plotTop - 12.0, at = LEFT;
    canvas.rect(at, y - 9.0, 22.0, 11.0, 0xD3E9E1);
    canvas.line(at, y - 9.0, at + 22.0, y - 9.0, Look.CHARGE_EDGE, 0.8, false);
    canvas.line(at, y + 2.0, at + 22.0, y + 2.0, Look.CHARGE_EDGE, 0.8, false);
    at = word(canvas, at + 28.0, y, "1 in 10 below to 1 in 10 above");
    canvas.line(at, y - 3.5, at + 22.0, y - 3.5, Look.CHARGE_EDGE, 2.6, false);
    at = word(canvas, at + 28.0, y, "usual winter");
    canvas.line(at, y - 3.5, at + 22.0, y - 3.5, Look.UNMET, 1.0, false);
    word(canvas, at + 28.0, y, "the winter shown in full");
  }

  private static double word(Canvas canvas, double x, double y, String words) {
    canvas.text(x, y, words, Look.LABEL, false, Look.INK, Anchor.START);
    return x + TextWidth.of(words, Look.LABEL, false) + 26.0;
  }
}
