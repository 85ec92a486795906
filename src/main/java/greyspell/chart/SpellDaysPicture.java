package greyspell.chart;

import greyspell.cause.DarkSpell;
import greyspell.cause.SpellDay;
import greyspell.chart.Canvas.Anchor;
import greyspell.study.Explanation;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * One spell day by day: above, what the panels brought and what the house needed; below, what was
 * left in the bank at the day's end. Days with an outage are marked by hatch and by a cross.
 */
final class SpellDaysPicture extends Picture {
  /** More days than this are joined, two or more to a column. */
  private static final int MOST_COLUMNS = 24;

  /** Heights in picture units: bars, then the gap below them, then the bank, then the dates. */
  private record Tall(double unitPx, double barsPx, double gapPx, double bankPx, double datesPx) {}

  private static final Tall ON_PAGE = new Tall(28.0, 136.0, 22.0, 94.0, 32.0);
  private static final Tall IN_COLUMN = new Tall(20.0, 92.0, 14.0, 52.0, 22.0);

  /** Of several days: sums, and the charge at the end of the last. */
  private record Column(
      String label, double sunWh, double needWh, double unmetWh, double chargeShare) {}

  private final List<Column> columns;
  private final Words words;
  private final double mostWh;
  private final double left;
  private final Tall tall;
  private final double keyTall;
  private final String sun;

  private SpellDaysPicture(
      String title,
      String note,
      String description,
      List<Column> columns,
      String sun,
      Words words,
      Span span) {
    super("worst-spell", title, note, description, tall(sun, words, span), span);
    this.sun = sun;
    this.columns = columns;
    this.words = words;
    left = span.isColumn() ? 40.0 : 46.0;
    tall = span.isColumn() ? IN_COLUMN : ON_PAGE;
    keyTall = WordedKey.height(span, key(sun, words));
    double most = 1.0;
    for (Column c : columns) {
      most = Math.max(most, Math.max(c.sunWh, c.needWh));
    }
    mostWh = most * 1.06;
  }

  private static List<String> key(String sun, Words words) {
    return List.of(
        sun,
        words.say("picture.need"),
        words.say("picture.unmet"),
        words.say("picture.charge"),
        words.say("picture.off"));
  }

  private static double tall(String sun, Words words, Span span) {
    Tall t = span.isColumn() ? IN_COLUMN : ON_PAGE;
    return WordedKey.height(span, key(sun, words))
        + t.unitPx
        + t.barsPx
        + t.gapPx
        + t.bankPx
        + t.datesPx;
  }

  static SpellDaysPicture of(Explanation.Spell spell, Words words, Span span) {
    DarkSpell dark = spell.spell();
    List<SpellDay> days = dark.days();
    int joined = (days.size() + MOST_COLUMNS - 1) / MOST_COLUMNS;
    boolean hasOther = days.stream().anyMatch(d -> d.otherWh() > 0.0);
    var columns = new ArrayList<Column>();
    var description = new StringBuilder(words.say("picture.spell.describe"));
    for (int k = 0; k < days.size(); k += joined) {
      columns.add(column(days.subList(k, Math.min(days.size(), k + joined)), words));
    }
    for (SpellDay d : days) {
      description.append(
          words.say(
              hasOther ? "picture.spell.line.both" : "picture.spell.line",
              words.day(d.date()),
              words.kwh(d.solarBusWh() + d.otherWh()),
              words.kwh(d.needWh()),
              words.percent(d.endChargeShare()),
              words.kwh(d.unmetWh())));
    }
    SpellDay first = days.get(0), last = days.get(days.size() - 1);
    return new SpellDaysPicture(
        words.say(
            "picture.spell.title",
            words.day(first.date()),
            words.day(last.date()),
            words.hours(dark.unmetHours()),
            words.energy(dark.unmetWh())),
        joined == 1
            ? words.say("picture.spell.note")
            : words.say("picture.spell.note_joined", words.days(joined)),
        description.toString(),
        columns,
        words.say(hasOther ? "picture.both" : "picture.sun"),
        words,
        span);
  }

  private static Column column(List<SpellDay> days, Words words) {
    double sun = 0.0, need = 0.0, unmet = 0.0;
    for (SpellDay d : days) {
      sun += d.solarBusWh() + d.otherWh();
      need += d.needWh();
      unmet += d.unmetWh();
    }
    int n = days.size();
    return new Column(
        words.shortDay(days.get(0).date()),
        sun / n,
        need / n,
        unmet / n,
        days.get(n - 1).endChargeShare());
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    var key = new WordedKey(canvas, span(), top + 2.0);
    key.filled(sun, Look.SUN);
    key.filled(words.say("picture.need"), Look.HOUSE);
    key.hatched(words.say("picture.unmet"), Look.UNMET_PALE, Look.UNMET, true);
    key.filled(words.say("picture.charge"), Look.CHARGE);
    key.crossed(words.say("picture.off"), Look.UNMET);
    double high = top + keyTall + tall.unitPx, foot = high + tall.barsPx, tank = foot + tall.gapPx;
    double low = tank + tall.bankPx;
    scale(canvas, high, foot);
    tankScale(canvas, tank, low);
    double slot = (span().right() - left) / columns.size();
    double widest = 0.0;
    for (Column c : columns) {
      widest = Math.max(widest, TextWidth.of(c.label, Look.TICK, false));
    }
    int every = (int) Math.ceil((widest + 8.0) / slot);
    for (int k = 0; k < columns.size(); k++) {
      Column c = columns.get(k);
      double x = left + k * slot;
      bars(canvas, c, x, slot, high, foot);
      bank(canvas, c, x, slot, tank, low);
      if (k % every == 0) {
        double middle = Math.min(x + slot * 0.5, span().right() - widest * 0.5);
        canvas.text(middle, low + 16.0, c.label, Look.TICK, false, Look.INK, Anchor.MIDDLE);
      }
    }
  }

  private void scale(Canvas canvas, double high, double low) {
    canvas.text(
        span().margin,
        high - 8.0,
        words.say("picture.kwh_day"),
        Look.TICK,
        false,
        Look.FAINT_INK,
        Anchor.START);
    double stepKwh = Look.step(mostWh / 1000.0);
    for (double kwh = 0.0; kwh * 1000.0 <= mostWh; kwh += stepKwh) {
      double y = low - kwh * 1000.0 / mostWh * (low - high);
      canvas.line(left, y, span().right(), y, kwh == 0.0 ? Look.AXIS : Look.GRID, 1.0, false);
      String figure = words.number(kwh, Look.decimals(stepKwh));
      canvas.text(left - 6.0, y + 4.0, figure, Look.TICK, false, Look.FAINT_INK, Anchor.END);
    }
  }

  private void tankScale(Canvas canvas, double high, double low) {
    for (int percent = 0; percent <= 100; percent += 50) {
      double y = low - percent / 100.0 * (low - high);
      canvas.line(left, y, span().right(), y, percent == 0 ? Look.AXIS : Look.GRID, 1.0, false);
      canvas.text(
          left - 6.0, y + 4.0, percent + " %", Look.TICK, false, Look.FAINT_INK, Anchor.END);
    }
  }

  private void bars(Canvas canvas, Column c, double x, double slot, double high, double low) {
    double wide = slot * 0.36, bar = x + slot * 0.12;
    double sun = c.sunWh / mostWh * (low - high), need = c.needWh / mostWh * (low - high);
    canvas.rect(bar, low - sun, wide, sun, Look.SUN);
    double right = bar + wide + slot * 0.04;
    canvas.rect(right, low - need, wide, need, Look.HOUSE);
    if (c.unmetWh > 0.0) {
      double missing = Math.min(need, Math.max(2.0, c.unmetWh / mostWh * (low - high)));
      canvas.rect(right, low - need, wide, missing, Look.UNMET_PALE);
      canvas.hatch(right, low - need, wide, missing, 4.0, Look.UNMET, true);
    }
  }

  private void bank(Canvas canvas, Column c, double x, double slot, double high, double low) {
    double stored = Math.max(0.0, Math.min(1.0, c.chargeShare)) * (low - high);
    double bar = x + slot * 0.12, wide = slot * 0.76;
    canvas.rect(bar, low - stored, wide, stored, Look.CHARGE);
    canvas.line(bar, low - stored, bar + wide, low - stored, Look.CHARGE_EDGE, 2.0, false);
    if (c.unmetWh > 0.0) {
      double cx = x + slot * 0.5, cy = high + 9.0, r = Math.min(5.0, slot * 0.25);
      canvas.line(cx - r, cy - r, cx + r, cy + r, Look.UNMET, 2.0, false);
      canvas.line(cx - r, cy + r, cx + r, cy - r, Look.UNMET, 2.0, false);
    }
  }
}
