package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.study.Explanation;
import greyspell.study.Explanation.MonthLine;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * Sun against need, month by month: the sun that is used, the sun that no battery can keep, and the
 * need as a step line across it.
 */
final class SunNeedPicture extends Picture {
  private static final double LEFT = 46.0;
  private static final double MOST_SUN_SHOWN = 2.2;

  private final List<MonthLine> months;
  private final Words words;
  private final double mostWh;

  private SunNeedPicture(
      String title, String note, String description, List<MonthLine> months, Words words) {
    super("sun-need", title, note, description, 280.0);
    this.months = months;
    this.words = words;
    double sunWh = 0.0, needWh = 1.0;
    for (MonthLine m : months) {
      sunWh = Math.max(sunWh, m.solarWh() + m.otherWh());
      needWh = Math.max(needWh, m.needWh());
    }
    mostWh = 1.06 * Math.max(needWh, Math.min(sunWh, needWh * MOST_SUN_SHOWN));
  }

  /** The year is turned so that the winter stands in its middle. */
  static SunNeedPicture of(Explanation explanation, Words words) {
    var months = new ArrayList<MonthLine>();
    int first = explanation.home().site().isNorthern() ? 6 : 0;
    for (int k = 0; k < 12; k++) {
      months.add(explanation.months().get((first + k) % 12));
    }
    MonthLine dullest = months.get(0);
    for (MonthLine m : months) {
      dullest = m.solarWh() / m.needWh() < dullest.solarWh() / dullest.needWh() ? m : dullest;
    }
    var description = new StringBuilder(words.say("picture.months.describe"));
    for (MonthLine m : months) {
      description.append(
          words.say(
              "picture.months.line",
              words.month(m.month()),
              words.number(m.solarWh() / 1000.0, 1),
              words.number(m.needWh() / 1000.0, 1),
              words.number(m.curtailedWh() / 1000.0, 1)));
    }
    return new SunNeedPicture(
        words.say(
            dullest.solarWh() > dullest.needWh() && dullest.unmetWh() > 0.0
                ? "picture.months.title_enough"
                : "picture.months.title",
            words.month(dullest.month()),
            words.energy(dullest.solarWh()),
            words.energy(dullest.needWh())),
        words.say("picture.months.note"),
        description.toString(),
        months,
        words);
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    var key = new WordedKey(canvas, top + 2.0);
    key.filled(words.say("picture.sun_used"), Look.SUN);
    key.hatched(words.say("picture.sun_left"), Look.PAPER, Look.SUN_EDGE, false);
    key.lined(words.say("picture.need"), Look.HOUSE);
    key.hatched(words.say("picture.unmet"), Look.UNMET_PALE, Look.UNMET, true);
    double high = top + 62.0, low = top + height - 30.0;
    scale(canvas, high, low);
    double slot = (Look.WIDTH - Look.MARGIN - LEFT) / 12.0;
    for (int k = 0; k < 12; k++) {
      month(canvas, months.get(k), LEFT + k * slot, slot, high, low);
    }
    need(canvas, slot, high, low);
  }

  private double y(double wh, double high, double low) {
    return low - Math.min(wh, mostWh) / mostWh * (low - high);
  }

  private void scale(Canvas canvas, double high, double low) {
    canvas.text(
        Look.MARGIN,
        high - 14.0,
        words.say("picture.kwh_day"),
        Look.TICK,
        false,
        Look.FAINT_INK,
        Anchor.START);
    double stepKwh = Look.step(mostWh / 1000.0);
    for (double kwh = 0.0; kwh * 1000.0 <= mostWh; kwh += stepKwh) {
      double y = y(kwh * 1000.0, high, low);
      canvas.line(
          LEFT, y, Look.WIDTH - Look.MARGIN, y, kwh == 0.0 ? Look.AXIS : Look.GRID, 1.0, false);
      String figure = words.number(kwh, stepKwh < 1.0 ? 1 : 0);
      canvas.text(LEFT - 6.0, y + 4.0, figure, Look.TICK, false, Look.FAINT_INK, Anchor.END);
    }
  }

  private void month(Canvas canvas, MonthLine m, double x, double slot, double high, double low) {
    double sunWh = m.solarWh() + m.otherWh();
    double usedWh = Math.max(0.0, sunWh - m.curtailedWh());
    double left = x + slot * 0.16, wide = slot * 0.68;
    double used = y(usedWh, high, low), all = y(sunWh, high, low);
    canvas.rect(left, used, wide, low - used, Look.SUN);
    canvas.hatch(left, all, wide, used - all, 5.0, Look.SUN_EDGE, false);
    if (sunWh > mostWh) {
      String figure = words.number(sunWh / 1000.0, 0);
      canvas.text(
          left + wide * 0.5, high - 4.0, figure, Look.TICK, false, Look.SUN_EDGE, Anchor.MIDDLE);
    }
    if (m.unmetWh() > 0.0) {
      double need = y(m.needWh(), high, low);
      double tall = Math.max(2.0, m.unmetWh() / mostWh * (low - high));
      canvas.rect(left, need, wide, tall, Look.UNMET_PALE);
      canvas.hatch(left, need, wide, tall, 4.0, Look.UNMET, true);
    }
    boolean isMarked = m.unmetWh() > 0.0;
    canvas.text(
        x + slot * 0.5,
        low + 17.0,
        words.shortMonth(m.month()),
        Look.LABEL,
        isMarked,
        isMarked ? Look.UNMET : Look.INK,
        Anchor.MIDDLE);
  }

  private void need(Canvas canvas, double slot, double high, double low) {
    var xs = new double[24];
    var ys = new double[24];
    for (int k = 0; k < 12; k++) {
      double y = y(months.get(k).needWh(), high, low);
      xs[2 * k] = LEFT + k * slot;
      xs[2 * k + 1] = LEFT + (k + 1) * slot;
      ys[2 * k] = y;
      ys[2 * k + 1] = y;
    }
    canvas.path(xs, ys, 24, Look.HOUSE, 2.2);
  }
}
