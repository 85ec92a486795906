package greyspell.chart;

import greyspell.cause.log.Finding;
import greyspell.chart.Canvas.Anchor;
import greyspell.study.ChargeLines;
import greyspell.study.LogDay;
import greyspell.study.LogStudy;
import java.time.LocalDate;
import java.util.List;

/** A log's days: sun seen beside expected, and the charge seen beside the simulated. */
public final class LogPicture extends Picture {
  private static final double PLOT_HEIGHT = 440.0;
  private static final double LEFT = 48.0;
  private static final double BARS_HEIGHT = 150.0;
  private static final double WH_PER_KWH = 1000.0;

  private final List<LogDay> days;
  private final ChargeLines charge;
  private final boolean isFitShown;

  private LogPicture(LogStudy study, ChargeLines charge) {
    super("compare", title(study), note(study), describe(study), PLOT_HEIGHT);
    days = study.days();
    this.charge = charge;
    isFitShown = study.together() != null;
  }

  /** Of a log whose weather is known. */
  public static LogPicture of(LogStudy study) {
    ChargeLines charge = study.charge();
    if (charge == null) {
      throw new IllegalArgumentException("without the weather there is nothing to draw");
    }
    return new LogPicture(study, charge);
  }

  private static double[] free(LogStudy study) {
    double seen = 0.0, expected = 0.0;
    for (LogDay day : study.days()) {
      seen += day.freeSeenWh();
      expected += day.freeExpectedWh();
    }
    return new double[] {seen, expected};
  }

  private static String title(LogStudy study) {
    double[] free = free(study);
    String sun =
        free[1] > 0.0
            ? "Where nothing held the sun back, the panels gave "
                + Say.percent(free[0] / free[1])
                + " of what was expected"
            : "In no hour of this log was the sun free to be judged";
    LogStudy.Explained all = study.together();
    return all == null || Double.isNaN(all.chargeErrorShare())
        ? sun
        : sun
            + "; with what was found the simulated charge is "
            + Say.number(100.0 * all.chargeErrorShare(), 1)
            + " points off, before "
            + Say.number(100.0 * study.chargeErrorShare(), 1);
  }

  private static String note(LogStudy study) {
    return "Bars: sun of each day in the hours that can be judged (bank not full, no limit, no hole)."
        + " Lines: charge of the bank, hour by hour"
        + (study.together() == null ? "." : "; \"as found\" is simulated with all that differs.");
  }

  private static String describe(LogStudy study) {
    var text = new StringBuilder("What differs:");
    for (Finding finding : study.named()) {
      text.append(' ')
          .append(finding.about().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
          .append(' ')
          .append(Say.number(finding.estimate().value(), 2))
          .append(';');
    }
    text.append(" by day, kWh seen and expected:");
    for (LogDay day : study.days()) {
      text.append(' ')
          .append(day.date())
          .append(' ')
          .append(Say.kwhNumber(day.freeSeenWh()))
          .append('/')
          .append(Say.kwhNumber(day.freeExpectedWh()));
    }
    return text.append('.').toString();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double right = Look.WIDTH - Look.MARGIN;
    barKey(canvas, top + 4.0);
    bars(canvas, top + 40.0, top + 40.0 + BARS_HEIGHT, right);
    double lineTop = top + 40.0 + BARS_HEIGHT + 62.0;
    lineKey(canvas, lineTop - 34.0);
    lines(canvas, lineTop, top + height - 34.0, right);
  }

  private void barKey(Canvas canvas, double y) {
    canvas.rect(LEFT, y, 18.0, 12.0, Look.SUN);
    canvas.hatch(LEFT, y, 18.0, 12.0, 5.0, Look.SUN_EDGE, false);
    canvas.text(LEFT + 24.0, y + 10.5, "expected", Look.LABEL, false, Look.INK, Anchor.START);
    canvas.rect(LEFT + 100.0, y, 18.0, 12.0, Look.HOUSE);
    canvas.text(LEFT + 124.0, y + 10.5, "seen", Look.LABEL, false, Look.INK, Anchor.START);
    canvas.text(Look.MARGIN, y + 30.0, "kWh", Look.TICK, false, Look.FAINT_INK, Anchor.START);
  }

  private void bars(Canvas canvas, double top, double bottom, double right) {
    double most = 0.1;
    for (LogDay day : days) {
      most = Math.max(most, Math.max(day.freeSeenWh(), day.freeExpectedWh()) / WH_PER_KWH);
    }
    double perKwh = (bottom - top) / (most * 1.05);
    double step = Look.step(most);
    for (double kwh = 0.0; kwh <= most * 1.05; kwh += step) {
      double y = bottom - kwh * perKwh;
      canvas.line(LEFT, y, right, y, kwh == 0.0 ? Look.AXIS : Look.GRID, 1.0, false);
      canvas.text(
          LEFT - 7.0,
          y + 4.0,
          Say.number(kwh, step < 1.0 ? 1 : 0),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.END);
    }
    double slot = (right - LEFT) / days.size();
    double width = Math.max(0.5, slot * 0.42);
    for (int d = 0; d < days.size(); d++) {
      double x = LEFT + d * slot + slot * 0.06;
      double expected = days.get(d).freeExpectedWh() / WH_PER_KWH * perKwh;
      double seen = days.get(d).freeSeenWh() / WH_PER_KWH * perKwh;
      canvas.rect(x, bottom - expected, width, expected, Look.SUN);
      if (width > 3.0) {
        canvas.hatch(x, bottom - expected, width, expected, 5.0, Look.SUN_EDGE, false);
      }
      canvas.rect(x + width, bottom - seen, width, seen, Look.HOUSE);
    }
    dates(canvas, bottom, right);
  }

  /** The first day and every so many weeks after it, by day and month. */
  private void dates(Canvas canvas, double y, double right) {
    double slot = (right - LEFT) / days.size();
    int every = Math.max(1, (int) Math.ceil(58.0 / slot / 7.0)) * 7;
    for (int d = 0; d < days.size(); d += every) {
      LocalDate date = days.get(d).date();
      double x = LEFT + d * slot;
      canvas.line(x, y, x, y + 4.0, Look.AXIS, 1.0, false);
      String words = date.getDayOfMonth() + " " + Say.shortMonth(date.getMonthValue());
      boolean isLast = x + 20.0 > right;
      canvas.text(
          x,
          y + 17.0,
          words,
          Look.TICK,
          false,
          Look.FAINT_INK,
          isLast ? Anchor.END : d == 0 ? Anchor.START : Anchor.MIDDLE);
    }
  }

  private void lineKey(Canvas canvas, double y) {
    double x = LEFT;
    x = keyLine(canvas, x, y, "charge seen", Look.INK, 2.2, false);
    x = keyLine(canvas, x, y, "as the scenario has it", Look.UNMET, 1.4, true);
    if (isFitShown) {
      keyLine(canvas, x, y, "as found", Look.CHARGE_EDGE, 1.6, false);
    }
    canvas.text(Look.MARGIN, y + 26.0, "%", Look.TICK, false, Look.FAINT_INK, Anchor.START);
  }

  private static double keyLine(
      Canvas canvas, double x, double y, String words, int colour, double width, boolean isDashed) {
    canvas.line(x, y + 6.0, x + 24.0, y + 6.0, colour, width, isDashed);
    canvas.text(x + 30.0, y + 10.5, words, Look.LABEL, false, Look.INK, Anchor.START);
    return x + 30.0 + TextWidth.of(words, Look.LABEL, false) + 20.0;
  }

  private void lines(Canvas canvas, double top, double bottom, double right) {
    double perShare = (bottom - top);
    for (int tenth = 0; tenth <= 10; tenth += 2) {
      double y = bottom - tenth * 0.1 * perShare;
      canvas.line(LEFT, y, right, y, tenth == 0 ? Look.AXIS : Look.GRID, 1.0, false);
      canvas.text(
          LEFT - 7.0,
          y + 4.0,
          Integer.toString(10 * tenth),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.END);
    }
    line(canvas, charge.expectedShare(), top, bottom, right, Look.UNMET, 1.2, true);
    if (isFitShown) {
      line(canvas, charge.fittedShare(), top, bottom, right, Look.CHARGE_EDGE, 1.6, false);
    }
    line(canvas, charge.seenShare(), top, bottom, right, Look.INK, 2.0, false);
    dates(canvas, bottom, right);
  }

  /** Broken where nothing is known. */
  private void line(
      Canvas canvas,
      double[] share,
      double top,
      double bottom,
      double right,
      int colour,
      double width,
      boolean isDashed) {
    double perHour = (right - LEFT) / (24.0 * days.size());
    int lead = charge.start().getHour() + 1;
    double[] x = new double[share.length];
    double[] y = new double[share.length];
    int n = 0;
    for (int h = 0; h <= share.length; h++) {
      if (h < share.length && !Double.isNaN(share[h])) {
        x[n] = LEFT + (h + lead) * perHour;
        y[n++] = bottom - Math.max(0.0, Math.min(1.0, share[h])) * (bottom - top);
        continue;
      }
      if (n > 1) {
        if (isDashed) {
          dash(canvas, x, y, n, colour, width);
        } else {
          canvas.path(x, y, n, colour, width);
        }
      }
      n = 0;
    }
  }

  /** Every second few points: an open path has no dashes of its own. */
  private static void dash(Canvas canvas, double[] x, double[] y, int n, int colour, double width) {
    var ends = new double[4 * n];
    int count = 0;
    double along = 0.0;
    for (int i = 1; i < n; i++) {
      along += Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
      if ((int) (along / 4.0) % 2 == 0) {
        ends[4 * count] = x[i - 1];
        ends[4 * count + 1] = y[i - 1];
        ends[4 * count + 2] = x[i];
        ends[4 * count + 3] = y[i];
        count++;
      }
    }
    canvas.segments(ends, count, colour, width);
  }
}
