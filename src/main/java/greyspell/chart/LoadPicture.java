package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.load.Priority;
import greyspell.study.LoadAudit;
import java.util.List;

/** A mean day in midwinter beside one in midsummer, hour by hour, stacked by class. */
public final class LoadPicture extends Picture {
  private static final double PLOT_HEIGHT = 300.0;
  private static final double LEFT = 46.0;
  private static final double BETWEEN = 34.0;
  private static final List<String> WORDS =
      List.of("the system itself", "must run", "should run", "can wait");

  private final Day winter;
  private final Day summer;
  private final double mostWh;

  /** Of one month: Wh by part (the system first) and hour of the day. */
  private static final class Day {
    final String month;
    final double[][] partWh;
    final double[] sumWh = new double[24];

    Day(LoadAudit audit, int month) {
      this.month = Say.month(month);
      double[] systemWh = new double[24];
      java.util.Arrays.fill(systemWh, audit.system().meanW());
      partWh =
          new double[][] {
            systemWh,
            audit.profileWh(month, Priority.MUST_RUN),
            audit.profileWh(month, Priority.SHOULD_RUN),
            audit.profileWh(month, Priority.CAN_WAIT)
          };
      for (double[] part : partWh) {
        for (int i = 0; i < 24; i++) {
          sumWh[i] += part[i];
        }
      }
    }

    double dayWh() {
      double sum = 0.0;
      for (double wh : sumWh) {
        sum += wh;
      }
      return sum;
    }

    int mostHour() {
      int most = 0;
      for (int i = 1; i < 24; i++) {
        if (sumWh[i] > sumWh[most]) {
          most = i;
        }
      }
      return most;
    }
  }

  private LoadPicture(Day winter, Day summer) {
    super("load", title(winter, summer), howToRead(), describe(winter, summer), PLOT_HEIGHT);
    this.winter = winter;
    this.summer = summer;
    mostWh =
        Math.max(Math.max(winter.sumWh[winter.mostHour()], summer.sumWh[summer.mostHour()]), 1.0);
  }

  public static LoadPicture of(LoadAudit audit) {
    return new LoadPicture(
        new Day(audit, audit.winterMonth()), new Day(audit, audit.summerMonth()));
  }

  private static String title(Day winter, Day summer) {
    return "With the system itself a day in "
        + winter.month
        + " takes "
        + Say.kwh(winter.dayWh())
        + ", the most at "
        + winter.mostHour()
        + " h; one in "
        + summer.month
        + " takes "
        + Say.kwh(summer.dayWh())
        + ".";
  }

  private static String howToRead() {
    return "Mean of the month's days, each hour of local standard time; the loss of the inverter is"
        + " not in it. The system itself: standby of inverter, controller and bank.";
  }

  private static String describe(Day winter, Day summer) {
    var text = new StringBuilder("Watt-hours in each hour from 0 h on.");
    for (Day day : List.of(winter, summer)) {
      text.append(' ').append(day.month).append(':');
      for (double wh : day.sumWh) {
        text.append(' ').append(Say.number(wh, 0));
      }
      text.append('.');
    }
    return text.toString();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double bottom = top + height - 40.0;
    double plotTop = top + 52.0;
    key(canvas, top + 4.0);
    double panel = (Look.WIDTH - Look.MARGIN - LEFT - BETWEEN) / 2.0;
    panel(canvas, winter, LEFT, panel, plotTop, bottom, true);
    panel(canvas, summer, LEFT + panel + BETWEEN, panel, plotTop, bottom, false);
  }

  private void panel(
      Canvas canvas,
      Day day,
      double left,
      double width,
      double top,
      double bottom,
      boolean isNumbered) {
    double perWh = (bottom - top) / (mostWh * 1.08);
    double stepWh = Look.step(mostWh);
    for (double wh = 0.0; wh <= mostWh * 1.08; wh += stepWh) {
      double y = bottom - wh * perWh;
      canvas.line(left, y, left + width, y, wh == 0.0 ? Look.AXIS : Look.GRID, 1.0, false);
      if (isNumbered) {
        canvas.text(
            left - 7.0, y + 4.0, Say.number(wh, 0), Look.TICK, false, Look.FAINT_INK, Anchor.END);
      }
    }
    if (isNumbered) {
      canvas.text(Look.MARGIN, top - 8.0, "Wh", Look.TICK, false, Look.FAINT_INK, Anchor.START);
    }
    canvas.text(
        left + width * 0.5,
        top - 8.0,
        day.month + ", " + Say.kwh(day.dayWh()) + " a day",
        Look.LABEL,
        true,
        Look.INK,
        Anchor.MIDDLE);
    double slot = width / 24.0;
    for (int i = 0; i < 24; i++) {
      double y = bottom;
      for (int part = 0; part < WORDS.size(); part++) {
        double tall = day.partWh[part][i] * perWh;
        y -= tall;
        swatch(canvas, part, left + i * slot + 1.0, y, slot - 2.0, tall);
      }
      if (i % 6 == 0) {
        hourMark(canvas, i, left + i * slot, bottom);
      }
    }
    hourMark(canvas, 24, left + width, bottom);
  }

  private static void hourMark(Canvas canvas, int hour, double x, double bottom) {
    canvas.line(x, bottom, x, bottom + 4.0, Look.AXIS, 1.0, false);
    canvas.text(x, bottom + 17.0, hour + " h", Look.TICK, false, Look.FAINT_INK, Anchor.MIDDLE);
  }

  /** Dark, middle and pale, and a hatch, so that they part without colour. */
  private static void swatch(
      Canvas canvas, int part, double x, double y, double width, double height) {
    if (height <= 0.0) {
      return;
    }
    int[] fills = {Look.LOSSES, Look.HOUSE, Look.ALWAYS_ON, Look.PAPER};
    canvas.rect(x, y, width, height, fills[part]);
    if (part == WORDS.size() - 1) {
      canvas.hatch(x, y, width, height, 5.0, Look.SUN_EDGE, false);
    }
  }

  private static void key(Canvas canvas, double y) {
    double x = LEFT;
    for (int part = 0; part < WORDS.size(); part++) {
      swatch(canvas, part, x, y, 18.0, 12.0);
      String words = WORDS.get(part);
      canvas.text(x + 24.0, y + 10.5, words, Look.LABEL, false, Look.INK, Anchor.START);
      x += 24.0 + TextWidth.of(words, Look.LABEL, false) + 16.0;
    }
  }
}
