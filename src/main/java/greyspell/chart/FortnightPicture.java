package greyspell.chart;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Canvas.Anchor;
import greyspell.study.StudyResult;

/** Fourteen days hour by hour: above, sun and need in kW; below, the bank as a tank. */
final class FortnightPicture extends Picture {
  private static final double LEFT = 52.0;
  private static final double FLOWS_TALL = 150.0;
  private static final double TANK_TALL = 110.0;
  private static final double BETWEEN = 40.0;
  private static final double STRIP_TALL = 6.0;
  private static final String GENERATOR = "generator ran";

  private final HourCalendar calendar;
  private final Fortnight fortnight;
  private final double[] sunWh;
  private final double[] needWh;
  private final double[] chargeShare;
  private final boolean[] isUnmet;
  private final boolean[] isGenerator;
  private final double windowWh;
  private final boolean hasGenerator;

  private FortnightPicture(
      String title, String note, String description, StudyResult result, Fortnight fortnight) {
    super("fortnight", title, note, description, FLOWS_TALL + BETWEEN + TANK_TALL + 66.0);
    this.fortnight = fortnight;
    var ledger = result.ledger();
    calendar = ledger.forcing().calendar();
    windowWh = ledger.windowWh();
    hasGenerator = result.scenario().generator() != null;
    int hours = fortnight.days() * 24;
    sunWh = new double[hours];
    needWh = new double[hours];
    chargeShare = new double[hours];
    isUnmet = new boolean[hours];
    isGenerator = new boolean[hours];
    for (int k = 0; k < hours; k++) {
      int h = fortnight.fromHour() + k;
      sunWh[k] = ledger.forcing().solarBusWh()[h];
      needWh[k] = ledger.askedWh(h) + ledger.forcing().standingWh()[h];
      chargeShare[k] = ledger.chargeWh()[h] / windowWh;
      isUnmet[k] = ledger.isUnmet(h);
      isGenerator[k] = ledger.isGeneratorOn(h);
    }
  }

  static FortnightPicture of(StudyResult result) {
    var fortnight = Fortnight.of(result);
    var ledger = result.ledger();
    HourCalendar calendar = ledger.forcing().calendar();
    double sun = 0.0;
    double need = 0.0;
    double lowest = Double.MAX_VALUE;
    for (int h = fortnight.fromHour(); h < fortnight.toHour(); h++) {
      sun += ledger.forcing().solarBusWh()[h];
      need += ledger.askedWh(h) + ledger.forcing().standingWh()[h];
      lowest = Math.min(lowest, ledger.chargeWh()[h]);
    }
    String from = Say.dayMonth(calendar, fortnight.fromHour());
    String to = Say.date(calendar, fortnight.toHour() - 1);
    String books =
        "From "
            + from
            + " to "
            + to
            + " the panels could give "
            + Say.kwh(sun)
            + " and the house needed "
            + Say.kwh(need);
    String title =
        fortnight.unmetHours() > 0
            ? books
                + "; "
                + Say.kwh(fortnight.unmetWh())
                + " went unserved in "
                + Say.hours(fortnight.unmetHours())
            : books + "; the bank carried it down to " + Say.percent(lowest / ledger.windowWh());
    boolean hasShortage = ledger.forcing().hours() > 0 && fortnight.unmetHours() > 0;
    String note =
        (hasShortage
                ? "The twelve days with most energy unserved, and the two before them."
                : "The fortnight around the worst grey spell; nothing went unserved in it.")
            + " Need: what the house asked for and the system's always-on draw."
            + (hasShortage ? " Striped: hours in which something was not served." : "");
    return new FortnightPicture(title, note, describe(result, fortnight), result, fortnight);
  }

  private static String describe(StudyResult result, Fortnight fortnight) {
    var ledger = result.ledger();
    var text = new StringBuilder("Day by day: sun, need, charge at midnight.");
    for (int d = fortnight.fromDay(); d < fortnight.fromDay() + fortnight.days(); d++) {
      double sun = 0.0;
      double need = 0.0;
      for (int h = d * 24; h < d * 24 + 24; h++) {
        sun += ledger.forcing().solarBusWh()[h];
        need += ledger.askedWh(h) + ledger.forcing().standingWh()[h];
      }
      text.append(' ')
          .append(Say.dayMonth(ledger.forcing().calendar(), d * 24))
          .append(": ")
          .append(Say.kwh(sun))
          .append(", ")
          .append(Say.kwh(need))
          .append(", ")
          .append(Say.percent(ledger.chargeWh()[d * 24 + 23] / ledger.windowWh()))
          .append('.');
    }
    return text.toString();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double right = Look.WIDTH - Look.MARGIN;
    double flowsTop = top + 26.0;
    double flowsBottom = flowsTop + FLOWS_TALL;
    double tankTop = flowsBottom + BETWEEN;
    double tankBottom = tankTop + TANK_TALL;
    double perHour = (right - LEFT) / sunWh.length;
    shadeUnmet(canvas, flowsTop, flowsBottom, perHour);
    shadeUnmet(canvas, tankTop, tankBottom, perHour);
    flows(canvas, flowsTop, flowsBottom, perHour);
    tank(canvas, tankTop, tankBottom, perHour);
    if (hasGenerator) {
      generator(canvas, flowsTop, perHour);
    }
    days(canvas, flowsTop, flowsBottom, tankTop, tankBottom, perHour);
  }

  private void shadeUnmet(Canvas canvas, double top, double bottom, double perHour) {
    for (int k = 0; k < isUnmet.length; k++) {
      int from = k;
      while (k < isUnmet.length && isUnmet[k]) {
        k++;
      }
      if (k > from) {
        double x = LEFT + from * perHour;
        double wide = (k - from) * perHour;
        canvas.rect(x, top, wide, bottom - top, Look.UNMET_PALE);
        canvas.hatch(x, top, wide, bottom - top, 6.0, 0xDDA79C, true);
      }
    }
  }

  private void flows(Canvas canvas, double top, double bottom, double perHour) {
    double most = 1.0;
    for (int k = 0; k < sunWh.length; k++) {
      most = Math.max(most, Math.max(sunWh[k], needWh[k]));
    }
    most *= 1.08;
    double perWh = (bottom - top) / most;
    double step = Look.step(most / 1000.0);
    for (double kw = 0.0; kw * 1000.0 <= most; kw += step) {
      double y = bottom - kw * 1000.0 * perWh;
      canvas.line(LEFT, y, Look.WIDTH - Look.MARGIN, y, Look.GRID, 1.0, false);
      canvas.text(
          LEFT - 7.0,
          y + 4.0,
          Say.number(kw, step < 1.0 ? 1 : 0),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.END);
    }
    int n = sunWh.length;
    var x = new double[2 * n + 2];
    var y = new double[2 * n + 2];
    x[0] = LEFT;
    y[0] = bottom;
    for (int k = 0; k < n; k++) {
      x[1 + 2 * k] = LEFT + k * perHour;
      x[2 + 2 * k] = LEFT + (k + 1) * perHour;
      y[1 + 2 * k] = bottom - sunWh[k] * perWh;
      y[2 + 2 * k] = y[1 + 2 * k];
    }
    x[2 * n + 1] = LEFT + n * perHour;
    y[2 * n + 1] = bottom;
    canvas.polygon(x, y, 2 * n + 2, Look.SUN);
    canvas.path(x, y, 2 * n + 2, Look.SUN_EDGE, 0.8);
    var stepX = new double[2 * n];
    var stepY = new double[2 * n];
    for (int k = 0; k < n; k++) {
      stepX[2 * k] = LEFT + k * perHour;
      stepX[2 * k + 1] = LEFT + (k + 1) * perHour;
      stepY[2 * k] = bottom - needWh[k] * perWh;
      stepY[2 * k + 1] = stepY[2 * k];
    }
    canvas.path(stepX, stepY, 2 * n, Look.HOUSE, 1.5);
    double keyY = top - 8.0;
    canvas.text(Look.MARGIN, keyY, "kW", Look.TICK, false, Look.FAINT_INK, Anchor.START);
    canvas.rect(LEFT, keyY - 9.0, 18.0, 10.0, Look.SUN);
    String sun = "sun the controller could give";
    canvas.text(LEFT + 24.0, keyY, sun, Look.LABEL, false, Look.INK, Anchor.START);
    double next = LEFT + 24.0 + TextWidth.of(sun, Look.LABEL, false) + 20.0;
    canvas.line(next, keyY - 4.0, next + 18.0, keyY - 4.0, Look.HOUSE, 2.0, false);
    canvas.text(next + 24.0, keyY, "need", Look.LABEL, false, Look.INK, Anchor.START);
  }

  /** A dark strip along the top in the hours in which the engine ran. */
  private void generator(Canvas canvas, double top, double perHour) {
    for (int k = 0; k < isGenerator.length; k++) {
      int from = k;
      while (k < isGenerator.length && isGenerator[k]) {
        k++;
      }
      if (k > from) {
        canvas.rect(LEFT + from * perHour, top, (k - from) * perHour, STRIP_TALL, Look.INK);
      }
    }
    double x = Look.WIDTH - Look.MARGIN - TextWidth.of(GENERATOR, Look.LABEL, false);
    canvas.text(x, top - 8.0, GENERATOR, Look.LABEL, false, Look.INK, Anchor.START);
    canvas.rect(x - 24.0, top - 15.0, 18.0, STRIP_TALL, Look.INK);
  }

  private void tank(Canvas canvas, double top, double bottom, double perHour) {
    int n = chargeShare.length;
    double tall = bottom - top;
    var x = new double[n + 2];
    var y = new double[n + 2];
    for (int k = 0; k < n; k++) {
      x[k] = LEFT + (k + 1) * perHour;
      y[k] = bottom - chargeShare[k] * tall;
    }
    x[0] = LEFT;
    x[n] = LEFT + n * perHour;
    y[n] = bottom;
    x[n + 1] = LEFT;
    y[n + 1] = bottom;
    canvas.polygon(x, y, n + 2, Look.CHARGE);
    canvas.path(x, y, n, Look.CHARGE_EDGE, 1.6);
    for (int p = 0; p <= 100; p += 50) {
      double at = bottom - tall * p / 100.0;
      canvas.line(
          LEFT, at, Look.WIDTH - Look.MARGIN, at, p == 0 ? Look.AXIS : Look.GRID, 1.0, p == 100);
      canvas.text(LEFT - 7.0, at + 4.0, p + " %", Look.TICK, false, Look.FAINT_INK, Anchor.END);
    }
    canvas.text(
        LEFT,
        top - 7.0,
        "charge of the bank, 100 % = " + Say.kwh(windowWh) + " usable",
        Look.LABEL,
        false,
        Look.INK,
        Anchor.START);
  }

  private void days(
      Canvas canvas,
      double flowsTop,
      double flowsBottom,
      double tankTop,
      double tankBottom,
      double perHour) {
    var ends = new double[8 * (fortnight.days() + 1)];
    int n = 0;
    for (int d = 0; d <= fortnight.days(); d++) {
      double x = LEFT + d * 24 * perHour;
      double[] two = {x, flowsTop, x, flowsBottom, x, tankTop, x, tankBottom + 5.0};
      System.arraycopy(two, 0, ends, n, 8);
      n += 8;
      if (d < fortnight.days()) {
        int hour = fortnight.fromHour() + d * 24;
        boolean isNamed = d == 0 || calendar.dayOfMonth(hour) == 1;
        canvas.text(
            x + 12 * perHour,
            tankBottom + 17.0,
            Integer.toString(calendar.dayOfMonth(hour)),
            Look.LABEL,
            false,
            Look.INK,
            Anchor.MIDDLE);
        if (isNamed) {
          canvas.text(
              x + 12 * perHour,
              tankBottom + 31.0,
              Say.shortMonth(calendar.month(hour)),
              Look.TICK,
              true,
              Look.FAINT_INK,
              Anchor.MIDDLE);
        }
      }
    }
    canvas.segments(ends, n / 4, 0xC3CCD2, 0.7);
    canvas.line(LEFT, flowsBottom, Look.WIDTH - Look.MARGIN, flowsBottom, Look.AXIS, 1.0, false);
  }
}
