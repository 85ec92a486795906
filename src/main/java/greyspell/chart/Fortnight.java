package greyspell.chart;

import greyspell.balance.Ledger;
import greyspell.outcome.GreySpell;
import greyspell.outcome.Shortfall;
import greyspell.study.StudyResult;

/**
 * The fourteen days that show best how the bank was drawn down: those around the worst shortfall
 * with most energy unserved in them; without a shortfall, around the worst grey spell.
 *
 * @param fromDay first day, counted from 0
 * @param days 14, or fewer if the weather is shorter
 * @param unmetWh not served in these days
 * @param unmetHours hours in which something was not served
 */
public record Fortnight(int fromDay, int days, double unmetWh, int unmetHours) {
  private static final int DAYS = 14;
  private static final int DAYS_BEFORE = 7;

  /** The share of the unmet energy that is given up to see a full bank being drawn down. */
  private static final double DRAINING_WORTH = 0.45;

  public static Fortnight of(StudyResult result) {
    Ledger ledger = result.ledger();
    int allDays = ledger.hours() / 24;
    int days = Math.min(DAYS, allDays);
    var shortfalls = result.outcome().shortfalls();
    if (shortfalls.isEmpty()) {
      return at(ledger, Math.max(0, Math.min(allDays - days, quietStart(result))), days);
    }
    Shortfall worst = shortfalls.get(0);
    for (Shortfall s : shortfalls) {
      worst = s.unmetWh() > worst.unmetWh() ? s : worst;
    }
    int day = worst.fromHour() / 24;
    var tried = new Fortnight[DAYS - 2];
    double mostUnmetWh = 0.0;
    for (int k = 0; k < tried.length; k++) {
      int start = day - 1 - k;
      tried[k] = at(ledger, Math.max(0, Math.min(allDays - days, start)), days);
      mostUnmetWh = Math.max(mostUnmetWh, tried[k].unmetWh);
    }
    Fortnight best = tried[0];
    for (Fortnight f : tried) {
      best = f.score(ledger, mostUnmetWh) > best.score(ledger, mostUnmetWh) ? f : best;
    }
    return best;
  }

  private double score(Ledger ledger, double mostUnmetWh) {
    return unmetWh + DRAINING_WORTH * mostUnmetWh * startShare(ledger);
  }

  private double startShare(Ledger ledger) {
    double before = fromDay == 0 ? ledger.startChargeWh() : ledger.chargeWh()[fromDay * 24 - 1];
    return ledger.windowWh() > 0.0 ? before / ledger.windowWh() : 0.0;
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
      unmetHours += ledger.unmetWh(h) > 0.0 ? 1 : 0;
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
