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
  private static final double MOST_SUN_SHOWN = 2.2;
  private static final double AXIS = 30.0;

  private final List<MonthLine> months;
  private final Words words;
  private final double mostWh;
  private final double left;
  private final double keyTall;

  private SunNeedPicture(
      String title,
      String note,
      String description,
      List<MonthLine> months,
      Words words,
      Span span) {
    super(
        "sun-need",
        title,
        note,
        description,
        WordedKey.height(span, key(words, hasOther(months))) + (span.isColumn() ? 164.0 : 262.0),
        span);
    this.months = months;
    this.words = words;
    keyTall = WordedKey.height(span, key(words, hasOther(months)));
    double sunWh = 0.0, needWh = 1.0;
    for (MonthLine m : months) {
      sunWh = Math.max(sunWh, broughtWh(m));
      needWh = Math.max(needWh, m.needWh());
    }
    mostWh = 1.06 * Math.max(needWh, Math.min(sunWh, needWh * MOST_SUN_SHOWN));
    boolean isFine = Look.decimals(Look.step(mostWh / 1000.0)) > 1;
    left = !span.isColumn() ? 46.0 : isFine ? 36.0 : 26.0;
  }

  @Override
  boolean isTitled() {
    return true;
  }

  private static boolean hasOther(List<MonthLine> months) {
    return months.stream().anyMatch(m -> m.otherWh() > 0.0);
  }

  /** With the second source, whose energy is part of the bars. */
  private static double broughtWh(MonthLine m) {
    return m.solarWh() + m.otherWh();
  }

  private static List<String> key(Words words, boolean hasOther) {
    return List.of(
        words.say(hasOther ? "picture.both_used" : "picture.sun_used"),
        words.say("picture.sun_left"),
        words.say("picture.need"),
        words.say("picture.unmet"));
  }

  /** The year is turned so that the winter stands in its middle. */
  static SunNeedPicture of(Explanation explanation, Words words, Span span) {
    var months = new ArrayList<MonthLine>();
    int first = explanation.home().site().isNorthern() ? 6 : 0;
    for (int k = 0; k < 12; k++) {
      months.add(explanation.months().get((first + k) % 12));
    }
    MonthLine dullest = months.get(0);
    for (MonthLine m : months) {
      dullest = broughtWh(m) / m.needWh() < broughtWh(dullest) / dullest.needWh() ? m : dullest;
    }
    String both = hasOther(months) ? ".both" : "";
    var description = new StringBuilder(words.say("picture.months.describe"));
    for (MonthLine m : months) {
      description.append(
          words.say(
              "picture.months.line" + both,
              words.month(m.month()),
              words.kwh(broughtWh(m)),
              words.kwh(m.needWh()),
              words.kwh(m.curtailedWh())));
    }
    return new SunNeedPicture(
        words.say(
            (broughtWh(dullest) > dullest.needWh() && dullest.unmetWh() > 0.0
                    ? "picture.months.title_enough"
                    : "picture.months.title")
                + both,
            words.month(dullest.month()),
            words.energy(broughtWh(dullest)),
            words.energy(dullest.needWh())),
        words.say("picture.months.note"),
        description.toString(),
        months,
        words,
        span);
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    var key = new WordedKey(canvas, span(), top + 2.0);
    key.filled(words.say(hasOther(months) ? "picture.both_used" : "picture.sun_used"), Look.SUN);
    key.hatched(words.say("picture.sun_left"), Look.PAPER, Look.SUN_EDGE, false);
    key.lined(words.say("picture.need"), Look.HOUSE);
    key.hatched(words.say("picture.unmet"), Look.UNMET_PALE, Look.UNMET, true);
    double high = top + keyTall + (span().isColumn() ? 30.0 : 46.0);
    double low = top + height - (span().isColumn() ? AXIS - 8.0 : AXIS);
    scale(canvas, high, low);
    double slot = (span().right() - left) / 12.0;
    for (int k = 0; k < 12; k++) {
      month(canvas, months.get(k), left + k * slot, slot, high, low);
    }
    need(canvas, slot, high, low);
  }

  private double y(double wh, double high, double low) {
    return low - Math.min(wh, mostWh) / mostWh * (low - high);
  }

  private void scale(Canvas canvas, double high, double low) {
    canvas.text(
        span().margin,
        high - (span().isColumn() ? 17.0 : 22.0),
        words.say("picture.kwh_day"),
        Look.TICK,
        false,
        Look.FAINT_INK,
        Anchor.START);
    double stepKwh = Look.step(mostWh / 1000.0);
    for (double kwh = 0.0; kwh * 1000.0 <= mostWh; kwh += stepKwh) {
      double y = y(kwh * 1000.0, high, low);
      canvas.line(left, y, span().right(), y, kwh == 0.0 ? Look.AXIS : Look.GRID, 1.0, false);
      String figure = words.number(kwh, Look.decimals(stepKwh));
      canvas.text(left - 6.0, y + 4.0, figure, Look.TICK, false, Look.FAINT_INK, Anchor.END);
    }
  }

  private void month(Canvas canvas, MonthLine m, double x, double slot, double high, double low) {
    double sunWh = broughtWh(m);
    double usedWh = Math.max(0.0, sunWh - m.curtailedWh());
    double bar = x + slot * 0.16, wide = slot * 0.68;
    double used = y(usedWh, high, low), all = y(sunWh, high, low);
    canvas.rect(bar, used, wide, low - used, Look.SUN);
    canvas.hatch(bar, all, wide, used - all, 5.0, Look.SUN_EDGE, false);
    if (sunWh > mostWh) {
      double kwh = sunWh / 1000.0;
      String figure = words.number(kwh, kwh >= 9.95 ? 0 : kwh >= 0.995 ? 1 : 2);
      canvas.text(
          bar + wide * 0.5, high - 4.0, figure, Look.TICK, false, Look.SUN_EDGE, Anchor.MIDDLE);
    }
    if (m.unmetWh() > 0.0) {
      double need = y(m.needWh(), high, low);
      double tall = Math.max(2.0, m.unmetWh() / mostWh * (low - high));
      canvas.rect(bar, need, wide, tall, Look.UNMET_PALE);
      canvas.hatch(bar, need, wide, tall, 4.0, Look.UNMET, true);
    }
    boolean isMarked = m.unmetWh() > 0.0;
    canvas.text(
        x + slot * 0.5,
        low + 15.0,
        label(m.month()),
        labelSize(slot),
        isMarked,
        isMarked ? Look.UNMET : Look.INK,
        Anchor.MIDDLE);
  }

  /** So that the longest name stays within its slot. */
  private double labelSize(double slot) {
    double widest = 0.0;
    for (MonthLine m : months) {
      widest = Math.max(widest, TextWidth.of(label(m.month()), Look.LABEL, true));
    }
    return Look.LABEL * Math.min(1.0, (slot - 2.0) / widest);
  }

  /** Without its point where a column is too narrow for it. */
  private String label(int month) {
    String name = words.shortMonth(month);
    return span().isColumn() && name.endsWith(".") ? name.substring(0, name.length() - 1) : name;
  }

  private void need(Canvas canvas, double slot, double high, double low) {
    var xs = new double[24];
    var ys = new double[24];
    for (int k = 0; k < 12; k++) {
      double y = y(months.get(k).needWh(), high, low);
      xs[2 * k] = left + k * slot;
      xs[2 * k + 1] = left + (k + 1) * slot;
      ys[2 * k] = y;
      ys[2 * k + 1] = y;
    }
    canvas.path(xs, ys, 24, Look.HOUSE, 2.2);
  }
}
