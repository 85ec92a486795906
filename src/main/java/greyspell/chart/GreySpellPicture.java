package greyspell.chart;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Canvas.Anchor;
import greyspell.chart.LabelPlacer.Box;
import greyspell.outcome.GreySpell;
import greyspell.study.StudyResult;
import java.util.List;

/** Every grey spell as a dot, days long across and kWh short upward, against the usable bank. */
final class GreySpellPicture extends Picture {
  private static final double LEFT = 52.0;
  private static final int MOST_LABELS = 5;
  private static final double DOT = 4.0;

  private final HourCalendar calendar;
  private final List<GreySpell> spells;
  private final double usableWh;

  private GreySpellPicture(
      String title, String note, String description, StudyResult result, double usableWh) {
    super("grey-spells", title, note, description, 330.0);
    this.usableWh = usableWh;
    calendar = result.ledger().forcing().calendar();
    spells = result.outcome().greySpells();
  }

  static GreySpellPicture of(StudyResult result) {
    var spells = result.outcome().greySpells();
    HourCalendar calendar = result.ledger().forcing().calendar();
    double usableWh = givesWh(result);
    int beat = beat(spells);
    int under = 0;
    for (GreySpell s : spells) {
      under += s.unmetWh() > 0.0 && s.shortWh() < usableWh ? 1 : 0;
    }
    String title;
    if (spells.isEmpty()) {
      title = "No grey spell: on every day the panels brought what the house needed";
    } else {
      GreySpell worst = spells.get(0);
      title =
          (spells.size() == 1
                  ? beat == 1
                      ? "The one grey spell beat the bank"
                      : "The bank carried the one grey spell"
                  : beat == 0
                      ? "The bank carried all " + spells.size() + " grey spells"
                      : beat + " of " + spells.size() + " grey spells beat the bank")
              + "; the worst, from "
              + Say.date(calendar, worst.fromDay() * 24)
              + ", was "
              + Say.kwh(worst.shortWh())
              + " short in "
              + Say.count(worst.days(), "day", "days");
    }
    String note =
        "A dot is a run of days in which the panels brought less than was needed. Dark diamonds: something"
            + " went unserved."
            + (under > 0
                ? " A diamond under the line: the bank was not full when the spell began, or a limit"
                    + " other than its size was met."
                : "");
    return new GreySpellPicture(title, note, describe(spells, calendar), result, usableWh);
  }

  /** On the bus, as the spells are counted. */
  static double givesWh(StudyResult result) {
    return result.outcome().usableBankWh() * result.scenario().bank().dischargeEfficiency();
  }

  static int beat(List<GreySpell> spells) {
    int beat = 0;
    for (GreySpell s : spells) {
      beat += s.unmetWh() > 0.0 ? 1 : 0;
    }
    return beat;
  }

  private static String describe(List<GreySpell> spells, HourCalendar calendar) {
    var text = new StringBuilder("The worst grey spells:");
    for (GreySpell s : spells.subList(0, Math.min(MOST_LABELS, spells.size()))) {
      text.append(" from ")
          .append(Say.date(calendar, s.fromDay() * 24))
          .append(", ")
          .append(Say.count(s.days(), "day", "days"))
          .append(", ")
          .append(Say.kwh(s.shortWh()))
          .append(" short, ")
          .append(Say.kwh(s.unmetWh()))
          .append(" not served;");
    }
    return text.toString();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double right = Look.WIDTH - Look.MARGIN;
    double plotTop = top + 24.0;
    double bottom = top + height - 44.0;
    int mostDays = 3;
    double mostWh = usableWh;
    for (GreySpell s : spells) {
      mostDays = Math.max(mostDays, s.days());
      mostWh = Math.max(mostWh, s.shortWh());
    }
    mostWh = Math.max(mostWh, 1.0) * 1.1;
    double perDay = (right - LEFT) / (mostDays + 1);
    double perWh = (bottom - plotTop) / mostWh;
    axes(canvas, plotTop, bottom, mostDays, mostWh, perDay, perWh);
    double lineY = bottom - usableWh * perWh;
    var placer = new LabelPlacer(new Box(LEFT + 2.0, plotTop - 12.0, right, bottom - 1.0));
    canvas.line(LEFT, lineY, right, lineY, Look.CHARGE_EDGE, 2.0, false);
    var dotX = new double[spells.size()];
    for (int k = spells.size() - 1; k >= 0; k--) {
      GreySpell s = spells.get(k);
      double y = bottom - s.shortWh() * perWh;
      double x = freeX(placer, LEFT + s.days() * perDay, y, perDay * 0.4);
      dotX[k] = x;
      if (s.unmetWh() > 0.0) {
        canvas.diamond(x, y, DOT + 0.5, Look.UNMET, Look.PAPER);
      } else {
        canvas.circle(x, y, DOT, 0xDDE5EA, Look.FAINT_INK, 1.1);
      }
    }
    placer.take(new Box(LEFT, lineY - 2.0, right, lineY + 2.0));
    lineLabel(canvas, placer, lineY, right);
    labels(canvas, placer, bottom, dotX, perWh);
  }

  /** Dots of equal length and depth stand side by side as far as there is room. */
  private static double freeX(LabelPlacer placer, double x, double y, double mostShift) {
    for (double shift = 0.0; shift <= mostShift; shift += 2 * DOT + 1.0) {
      for (int side = 1; side >= -1; side -= 2) {
        double at = x + side * shift;
        var box = new Box(at - DOT, y - DOT, at + DOT, y + DOT);
        if (placer.isFree(box)) {
          placer.take(box);
          return at;
        }
      }
    }
    placer.take(new Box(x - DOT, y - DOT, x + DOT, y + DOT));
    return x;
  }

  private static void axes(
      Canvas canvas,
      double plotTop,
      double bottom,
      int mostDays,
      double mostWh,
      double perDay,
      double perWh) {
    double right = Look.WIDTH - Look.MARGIN;
    double step = Look.step(mostWh / 1000.0);
    for (double kwh = 0.0; kwh * 1000.0 <= mostWh; kwh += step) {
      double y = bottom - kwh * 1000.0 * perWh;
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
    int every = Math.max(1, (int) Math.round(Look.step(mostDays * 0.6)));
    for (int d = every; d <= mostDays; d += every) {
      double x = LEFT + d * perDay;
      canvas.line(x, bottom, x, bottom + 4.0, Look.AXIS, 1.0, false);
      canvas.text(
          x, bottom + 17.0, Integer.toString(d), Look.TICK, false, Look.FAINT_INK, Anchor.MIDDLE);
    }
    canvas.text(right, bottom + 33.0, "days long", Look.LABEL, false, Look.FAINT_INK, Anchor.END);
    canvas.text(
        Look.MARGIN, plotTop - 10.0, "kWh short", Look.TICK, false, Look.FAINT_INK, Anchor.START);
  }

  private void lineLabel(Canvas canvas, LabelPlacer placer, double lineY, double right) {
    String words = "a full bank gives " + Say.kwh(usableWh);
    double wide = TextWidth.of(words, Look.LABEL, true);
    for (double x = right - wide - 4.0; x > LEFT; x -= 20.0) {
      for (double y : new double[] {lineY - 18.0, lineY + 4.0}) {
        if (placer.takeIfFree(new Box(x, y, x + wide, y + 14.0))) {
          canvas.text(x, y + 11.0, words, Look.LABEL, true, Look.CHARGE_EDGE, Anchor.START);
          return;
        }
      }
    }
  }

  private void labels(
      Canvas canvas, LabelPlacer placer, double bottom, double[] dotX, double perWh) {
    for (int k = 0; k < Math.min(MOST_LABELS, spells.size()); k++) {
      GreySpell s = spells.get(k);
      String words =
          Say.shortDateYear(calendar, s.fromDay() * 24)
              + (s.unmetWh() > 0.0 ? ", " + Say.kwh(s.unmetWh()) + " unserved" : "");
      double wide = TextWidth.of(words, Look.LABEL, false);
      var box = placer.place(dotX[k], bottom - s.shortWh() * perWh, 8.0, wide, 14.0);
      if (box != null) {
        canvas.text(box.left, box.top + 11.0, words, Look.LABEL, false, Look.INK, Anchor.START);
      }
    }
  }
}
