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
    double[] solarWh = ledger.forcing().solarBusWh();
    var spells = new ArrayList<GreySpell>();
    int days = ledger.hours() / 24, from = -1;
    double shortWh = 0.0, unmetWh = 0.0;
    for (int day = 0; day <= days; day++) {
      double lackWh = 0.0, dayUnmetWh = 0.0;
      for (int h = day * 24; h < day * 24 + 24 && day < days; h++) {
        lackWh += needWh[h] - solarWh[h] - ledger.forcing().otherWh(h);
        dayUnmetWh += ledger.unmetWh(h);
      }
      if (lackWh > 0.0) {
        from = from < 0 ? day : from;
        shortWh += lackWh;
        unmetWh += dayUnmetWh;
      } else if (from >= 0) {
        spells.add(new GreySpell(from, day - from, shortWh, unmetWh));
        from = -1;
        shortWh = 0.0;
        unmetWh = 0.0;
      }
    }
    if (ledger.forcing().calendar().years() == 1) {
      joinEnds(spells, days);
    }
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
