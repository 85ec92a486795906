package greyspell.outcome;

import greyspell.balance.Ledger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the runs of days in which the panels, and a second source, bring less than the house asks.
 * All are taken on the bus, before any storage; a generator is not counted. One year alone is taken
 * round and round, so a spell that runs over its end goes on at its beginning.
 */
final class GreySpells {
  private GreySpells() {}

  /** Most energy short first. */
  static List<GreySpell> ranked(Ledger ledger, double[] needWh) {
    int days = ledger.hours() / 24;
    var lackWh = new double[days];
    var unmetWh = new double[days];
    for (int day = 0; day < days; day++) {
      lackWh[day] = lackWh(ledger, needWh, day);
      unmetWh[day] = unmetWh(ledger, day);
    }
    List<GreySpell> spells = inOrder(lackWh, unmetWh, 0);
    if (ledger.forcing().calendar().years() == 1) {
      joinEnds(spells, days);
    }
    return sorted(spells);
  }

  /** Of days alone: what went unserved is not told. */
  static List<GreySpell> ranked(double[] dayLackWh, boolean isRing) {
    List<GreySpell> spells = inOrder(dayLackWh, new double[dayLackWh.length], 0);
    if (isRing) {
      joinEnds(spells, dayLackWh.length);
    }
    return sorted(spells);
  }

  /**
   * Of one winter, whose days stand in the order of time, its ends not joined.
   *
   * @param firstDay of the year, from 0: days are told as days of the year
   */
  static List<GreySpell> ranked(double[] dayLackWh, double[] dayUnmetWh, int firstDay) {
    return sorted(inOrder(dayLackWh, dayUnmetWh, firstDay));
  }

  /** What the panels bring too little on a day; below 0 if more than enough. */
  static double lackWh(Ledger ledger, double[] needWh, int day) {
    double[] solarWh = ledger.forcing().solarBusWh();
    double lackWh = 0.0;
    for (int h = day * 24; h < day * 24 + 24; h++) {
      lackWh += needWh[h] - solarWh[h] - ledger.forcing().otherWh(h);
    }
    return lackWh;
  }

  static double unmetWh(Ledger ledger, int day) {
    double unmetWh = 0.0;
    for (int h = day * 24; h < day * 24 + 24; h++) {
      unmetWh += ledger.unmetWh(h);
    }
    return unmetWh;
  }

  private static List<GreySpell> inOrder(double[] dayLackWh, double[] dayUnmetWh, int firstDay) {
    var spells = new ArrayList<GreySpell>();
    int days = dayLackWh.length, from = -1;
    double shortWh = 0.0, unmetWh = 0.0;
    for (int day = 0; day <= days; day++) {
      if (day < days && dayLackWh[day] > 0.0) {
        from = from < 0 ? day : from;
        shortWh += dayLackWh[day];
        unmetWh += dayUnmetWh[day];
      } else if (from >= 0) {
        spells.add(new GreySpell((firstDay + from) % days, day - from, shortWh, unmetWh));
        from = -1;
        shortWh = 0.0;
        unmetWh = 0.0;
      }
    }
    return spells;
  }

  private static List<GreySpell> sorted(List<GreySpell> spells) {
    spells.sort(Comparator.comparingDouble(GreySpell::shortWh).reversed());
    return List.copyOf(spells);
  }

  private static void joinEnds(List<GreySpell> spells, int days) {
    if (spells.size() < 2) {
      return;
    }
    GreySpell first = spells.get(0), last = spells.get(spells.size() - 1);
    if (first.fromDay() == 0 && last.fromDay() + last.days() == days) {
      spells.set(
          spells.size() - 1,
          new GreySpell(
              last.fromDay(),
              last.days() + first.days(),
              last.shortWh() + first.shortWh(),
              last.unmetWh() + first.unmetWh()));
      spells.remove(0);
    }
  }
}
