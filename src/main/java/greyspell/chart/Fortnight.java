package greyspell.chart;

import greyspell.balance.Ledger;
import greyspell.calendar.Winter;
import greyspell.outcome.GreySpell;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.study.StudyResult;

/**
 * The worst grey fortnight: in the winter that the verdict names, the twelve days together in which
 * most energy was not served, and the two days before them, so that one sees the bank being drawn
 * down. Without any shortfall, the days around the worst grey spell.
 *
 * @param fromDay first day, counted from 0
 * @param days 14, or fewer if the weather is shorter
 * @param unmetWh not served in these days
 * @param unmetHours hours in which something was not served
 */
public record Fortnight(int fromDay, int days, double unmetWh, int unmetHours) {
  private static final int DAYS = 14;
  private static final int DAYS_BEFORE = 7;
  private static final int LEAD_DAYS = 2;

  public static Fortnight of(StudyResult result) {
    Ledger ledger = result.ledger();
    int allDays = ledger.hours() / 24;
    int days = Math.min(DAYS, allDays);
    int start =
        result.outcome().shortfalls().isEmpty()
            ? quietStart(result)
            : darkestStart(ledger, Math.min(DAYS - LEAD_DAYS, allDays), worstWinter(result))
                - LEAD_DAYS;
    return at(ledger, Math.max(0, Math.min(allDays - days, start)), days);
  }

  /**
   * The winter that the verdict names: of the whole ones that with most unserved, else all hours.
   */
  private static Winter worstWinter(StudyResult result) {
    Winter worst = new Winter("", 0, result.ledger().hours(), true);
    double mostWh = 0.0;
    for (WinterBooks books : result.outcome().winters()) {
      if (books.winter().isWhole() && books.figures().unmetWh() > mostWh) {
        mostWh = books.figures().unmetWh();
        worst = books.winter();
      }
    }
    return worst;
  }

  /** First day of the run of days with most energy not served, within a winter. */
  private static int darkestStart(Ledger ledger, int days, Winter winter) {
    var dayUnmetWh = new double[ledger.hours() / 24];
    for (int h = winter.fromHour(); h < winter.toHour(); h++) {
      dayUnmetWh[h / 24] += ledger.unmetWh(h);
    }
    double unmetWh = 0.0, mostWh = -1.0;
    int best = 0;
    for (int day = 0; day < dayUnmetWh.length; day++) {
      unmetWh += dayUnmetWh[day] - (day >= days ? dayUnmetWh[day - days] : 0.0);
      if (day >= days - 1 && unmetWh > mostWh) {
        mostWh = unmetWh;
        best = day - days + 1;
      }
    }
    return best;
  }

  private static int quietStart(StudyResult result) {
    var spells = result.outcome().greySpells();
    if (!spells.isEmpty()) {
      GreySpell worst = spells.get(0);
      return worst.fromDay() - Math.max(1, (DAYS - worst.days()) / 2);
    }
    return result.outcome().total().lowestChargeHour() / 24 - DAYS_BEFORE;
  }

  private static Fortnight at(Ledger ledger, int fromDay, int days) {
    double unmetWh = 0.0;
    int unmetHours = 0;
    for (int h = fromDay * 24; h < (fromDay + days) * 24; h++) {
      unmetWh += ledger.unmetWh(h);
      unmetHours += ledger.isUnmet(h) ? 1 : 0;
    }
    return new Fortnight(fromDay, days, unmetWh, unmetHours);
  }

  public int fromHour() {
    return fromDay * 24;
  }

  public int toHour() {
    return (fromDay + days) * 24;
  }
}
