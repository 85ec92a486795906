package greyspell.chart;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Winter;
import greyspell.chart.Canvas.Anchor;
import greyspell.outcome.Figures;
import greyspell.study.StudyResult;

/** The charge of every hour of a year: a column a day, a row an hour of day, midnight below. */
final class YearChargePicture extends Picture {
  static final int UNMET_SHADE = 10;
  private static final double LEFT = 52.0;
  private static final double ROWS_TALL = 9.0;

  private final HourCalendar calendar;
  private final Winter winter;
  private final byte[] shade;

  private YearChargePicture(
      String title,
      String note,
      String description,
      HourCalendar calendar,
      Winter winter,
      byte[] shade) {
    super("charge", title, note, description, 24 * ROWS_TALL + 78.0);
    this.calendar = calendar;
    this.winter = winter;
    this.shade = shade;
  }

  static YearChargePicture of(StudyResult result) {
    var shown = WinterShown.of(result);
    var winter = shown.winter();
    HourCalendar calendar = result.ledger().forcing().calendar();
    byte[] shade = shades(result, winter);
    Figures f = shown.figures();
    String which = named(winter, calendar);
    double usableWh = result.ledger().windowWh();
    String lowest =
        Say.percent(f.lowestChargeWh() / usableWh)
            + " ("
            + Say.kwh(f.lowestChargeWh())
            + ") on "
            + Say.date(calendar, f.lowestChargeHour());
    String title =
        f.unmetHours() > 0
            ? "Something went unserved in "
                + Say.hours(f.unmetHours())
                + " of "
                + which
                + span(result, winter)
            : "In " + which + " the charge was lowest at " + lowest + "; nothing went unserved";
    int whole = 0;
    for (var w : result.outcome().winters()) {
      whole += w.winter().isWhole() ? 1 : 0;
    }
    String note =
        "Each column is a day, hour of day upward. Shade: charge in % of the usable "
            + Say.kwh(usableWh)
            + ". Darkest: an hour in which something was not served."
            + (whole > 1
                ? f.unmetHours() > 0
                    ? " Shown: the winter with most energy unserved, of " + whole + "."
                    : " Shown: the winter with the lowest charge, of " + whole + "."
                : "");
    return new YearChargePicture(
        title, note, describe(result, winter, which), calendar, winter, shade);
  }

  private static String named(Winter winter, HourCalendar calendar) {
    return calendar.isTypical() ? "the typical year" : winter.name();
  }

  private static String span(StudyResult result, Winter winter) {
    int first = -1;
    int last = -1;
    for (int h = winter.fromHour(); h < winter.toHour(); h++) {
      if (result.ledger().isUnmet(h)) {
        first = first < 0 ? h : first;
        last = h;
      }
    }
    HourCalendar calendar = result.ledger().forcing().calendar();
    // a single northern year begins and ends in winter: its first and last date say nothing
    if (calendar.years() == 1 && result.scenario().site().isNorthern()) {
      return first < 0 ? "" : ", the most in " + Say.month(darkestMonth(result));
    }
    return first < 0
        ? ""
        : first / 24 == last / 24
            ? ", on " + Say.dayMonth(calendar, first)
            : ", between " + Say.dayMonth(calendar, first) + " and " + Say.dayMonth(calendar, last);
  }

  private static int darkestMonth(StudyResult result) {
    var worst = result.outcome().months().get(0);
    for (var m : result.outcome().months()) {
      worst = m.figures().unmetHours() > worst.figures().unmetHours() ? m : worst;
    }
    return worst.month();
  }

  private static byte[] shades(StudyResult result, Winter winter) {
    int days = (winter.toHour() - winter.fromHour()) / 24;
    var shade = new byte[days * 24];
    double[] charge = result.ledger().chargeWh();
    double windowWh = result.ledger().windowWh();
    for (int day = 0; day < days; day++) {
      for (int h = 0; h < 24; h++) {
        int hour = winter.fromHour() + day * 24 + h;
        int step = (int) (charge[hour] / windowWh * 10.0);
        shade[(23 - h) * days + day] =
            (byte) (result.ledger().isUnmet(hour) ? UNMET_SHADE : Math.max(0, Math.min(9, step)));
      }
    }
    return shade;
  }

  private static String describe(StudyResult result, Winter winter, String which) {
    HourCalendar calendar = result.ledger().forcing().calendar();
    double[] charge = result.ledger().chargeWh();
    var sum = new double[13];
    var hours = new int[13];
    var unmet = new int[13];
    for (int h = winter.fromHour(); h < winter.toHour(); h++) {
      int m = calendar.month(h);
      sum[m] += charge[h];
      hours[m]++;
      unmet[m] += result.ledger().isUnmet(h) ? 1 : 0;
    }
    var text = new StringBuilder("Mean charge by month in " + which + ":");
    int first = calendar.month(winter.fromHour());
    for (int k = 0; k < 12; k++) {
      int m = (first - 1 + k) % 12 + 1;
      if (hours[m] > 0) {
        text.append(' ')
            .append(Say.month(m))
            .append(' ')
            .append(Say.percent(sum[m] / hours[m] / result.ledger().windowWh()))
            .append(unmet[m] > 0 ? " with " + Say.hours(unmet[m]) + " not served" : "")
            .append(k < 11 ? "," : ".");
      }
    }
    return text.toString();
  }

  /** Row by row from 23 h down to 0 h; 0 to 9 tenths of charge, or {@link #UNMET_SHADE}. */
  byte[] shade() {
    return shade.clone();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    int days = shade.length / 24;
    double gridTop = top + 38.0;
    double right = Look.WIDTH - Look.MARGIN;
    double tall = 24 * ROWS_TALL;
    double cellWidth = (right - LEFT) / days;
    var palette = new int[11];
    System.arraycopy(Look.chargeRamp(), 0, palette, 0, 10);
    palette[UNMET_SHADE] = 0x5E0F08;
    canvas.cells(LEFT, gridTop, cellWidth, ROWS_TALL, days, 24, shade, palette);
    key(canvas, top + 6.0, palette);
    for (int h = 0; h <= 24; h += 6) {
      double y = gridTop + tall - h * ROWS_TALL;
      canvas.line(LEFT - 4.0, y, LEFT, y, Look.AXIS, 1.0, false);
      canvas.text(LEFT - 7.0, y + 4.0, h + " h", Look.TICK, false, Look.FAINT_INK, Anchor.END);
    }
    months(canvas, gridTop + tall, cellWidth, days);
  }

  private void months(Canvas canvas, double y, double cellWidth, int days) {
    int from = 0;
    for (int day = 1; day <= days; day++) {
      int hour = winter.fromHour() + day * 24;
      boolean isNew = day == days || calendar.dayOfMonth(hour) == 1;
      if (!isNew) {
        continue;
      }
      int month = calendar.month(winter.fromHour() + from * 24);
      double x1 = LEFT + from * cellWidth;
      double x2 = LEFT + day * cellWidth;
      canvas.line(x1, y, x1, y + 7.0, Look.AXIS, 1.0, false);
      canvas.text(
          (x1 + x2) * 0.5,
          y + 19.0,
          Say.shortMonth(month),
          Look.LABEL,
          false,
          Look.INK,
          Anchor.MIDDLE);
      from = day;
    }
    canvas.line(
        LEFT + days * cellWidth, y, LEFT + days * cellWidth, y + 7.0, Look.AXIS, 1.0, false);
  }

  private static void key(Canvas canvas, double y, int[] palette) {
    double x = LEFT;
    canvas.rect(x, y, 18.0, 14.0, palette[UNMET_SHADE]);
    canvas.text(x + 24.0, y + 11.5, "not served", Look.LABEL, false, Look.INK, Anchor.START);
    x += 24.0 + TextWidth.of("not served", Look.LABEL, false) + 24.0;
    canvas.text(x, y + 11.5, "empty", Look.LABEL, false, Look.INK, Anchor.START);
    x += TextWidth.of("empty", Look.LABEL, false) + 6.0;
    for (int s = 0; s < 10; s++) {
      canvas.rect(x + s * 18.0, y, 18.3, 14.0, palette[s]);
    }
    double[] xs = {x, x + 180.0, x + 180.0, x, x};
    double[] ys = {y, y, y + 14.0, y + 14.0, y};
    canvas.path(xs, ys, 5, Look.AXIS, 0.6);
    canvas.text(x + 187.0, y + 11.5, "full", Look.LABEL, false, Look.INK, Anchor.START);
  }
}
