package greyspell.cause;

import greyspell.balance.Ledger;
import greyspell.calendar.HourCalendar;
import java.util.ArrayList;
import java.util.List;

/**
 * Gathers the shortfalls of a ledger into dark spells. One opens with the first hour that is not
 * served and reaches back to the hour after the bank was last full, or fullest since the spell
 * before; where that is more than two weeks back, as in a home whose generator never fills it, to
 * the hour after the bank was last three quarters full, or fullest in those weeks. It closes when
 * the bank is back at half and a day has passed in which all was served. One year that starts as it
 * ends is taken round and round.
 */
public final class DarkSpells {
  private static final double FULL_SHARE = 0.99;
  private static final double RECOVERED_SHARE = 0.5;
  private static final int QUIET_HOURS = 24;
  private static final int LONGEST_BACK_HOURS = 14 * 24;
  private static final double NEARLY_FULL_SHARE = 0.75;
  private static final double SAME_CHARGE_WH = 0.01;

  private final Ledger ledger;
  private final double[] needWh;
  private final int hours;
  private final int start;
  private final List<DarkSpell> found = new ArrayList<>();

  private DarkSpells(Ledger ledger, double[] needWh) {
    this.ledger = ledger;
    this.needWh = needWh;
    hours = ledger.hours();
    start = isRing() ? (fullest() + 1) % hours : 0;
  }

  /**
   * In order of time, from the hour after the bank is fullest where the year is a ring.
   *
   * @param needWh of each hour on the bus
   */
  public static List<DarkSpell> of(Ledger ledger, double[] needWh) {
    var spells = new DarkSpells(ledger, needWh);
    spells.find();
    return List.copyOf(spells.found);
  }

  private boolean isRing() {
    return ledger.forcing().calendar().years() == 1
        && Math.abs(ledger.startChargeWh() - ledger.chargeWh()[hours - 1]) <= SAME_CHARGE_WH;
  }

  private int fullest() {
    int at = 0;
    for (int h = 1; h < hours; h++) {
      at = ledger.chargeWh()[h] > ledger.chargeWh()[at] ? h : at;
    }
    return at;
  }

  /** Hours are counted on from the start here, and turned into the ledger's at the end. */
  private void find() {
    int peak = -1, first = -1, last = -1, recovered = -1;
    for (int k = 0; k <= hours; k++) {
      boolean isUnmet = k < hours && ledger.isUnmet(at(k));
      if (isUnmet) {
        first = first < 0 ? k : first;
        last = k;
        recovered = -1;
      } else if (first >= 0 && k < hours) {
        recovered = recovered < 0 && share(k) >= RECOVERED_SHARE ? k : recovered;
      }
      boolean isOver = first >= 0 && recovered >= 0 && k - last >= QUIET_HOURS;
      if (first >= 0 && (isOver || k == hours)) {
        int to = recovered >= 0 ? recovered + 1 : hours;
        add(peak, first, last, to, recovered >= 0);
        peak = fullestOf(to - 1, k);
        first = -1;
        recovered = -1;
      } else if (first < 0 && k < hours && (peak < 0 || isPeak(k, peak))) {
        peak = k;
      }
    }
  }

  /** Of hours in which the bank is full the last one counts. */
  private boolean isPeak(int k, int peak) {
    return share(k) >= FULL_SHARE || (charge(k) > charge(peak) && share(peak) < FULL_SHARE);
  }

  private int fullestOf(int from, int to) {
    int peak = from;
    for (int k = from + 1; k <= to && k < hours; k++) {
      peak = isPeak(k, peak) ? k : peak;
    }
    return peak;
  }

  private int nearlyFull(int first) {
    for (int k = first - 1; k >= first - LONGEST_BACK_HOURS; k--) {
      if (share(k) >= NEARLY_FULL_SHARE) {
        return k;
      }
    }
    return fullestOf(first - LONGEST_BACK_HOURS, first - 1);
  }

  private void add(int peak, int first, int last, int to, boolean isRecovered) {
    int from =
        Math.min(first - peak > LONGEST_BACK_HOURS ? nearlyFull(first) + 1 : peak + 1, first);
    int unmetHours = 0;
    double unmetWh = 0.0;
    for (int k = first; k <= last; k++) {
      unmetHours += ledger.isUnmet(at(k)) ? 1 : 0;
      unmetWh += ledger.unmetWh(at(k));
    }
    double startShare = from == 0 && start == 0 ? startOfBooks() : share(from - 1);
    int base = at(from) - from; // the same shift for all, so that hours run on past the end
    found.add(
        new DarkSpell(
            from + base,
            first + base,
            last + base,
            to + base,
            startShare >= FULL_SHARE,
            isRecovered,
            startShare,
            unmetHours,
            unmetWh,
            days(from + base, to + base)));
  }

  private double startOfBooks() {
    return ledger.windowWh() > 0.0 ? ledger.startChargeWh() / ledger.windowWh() : 1.0;
  }

  private List<SpellDay> days(int from, int to) {
    var days = new ArrayList<SpellDay>();
    for (int day = from / 24; day * 24 < to; day++) {
      days.add(day(day * 24, from, to));
    }
    return days;
  }

  /** What went unserved counts within the spell, all else of the whole day. */
  private SpellDay day(int day, int spellFrom, int spellTo) {
    int from = day % hours;
    HourCalendar calendar = ledger.forcing().calendar();
    double solarWh = 0.0, otherWh = 0.0, generatorWh = 0.0, need = 0.0;
    double askedWh = 0.0, unmetWh = 0.0, letGoWh = 0.0;
    double lowestWh = Double.POSITIVE_INFINITY;
    int unmetHours = 0;
    for (int h = from; h < from + 24; h++) {
      solarWh += ledger.forcing().solarBusWh()[h];
      otherWh += ledger.forcing().otherWh(h);
      generatorWh += ledger.generatorWh(h);
      need += needWh[h];
      askedWh += ledger.askedWh(h);
      letGoWh += ledger.letGoWh(h);
      int counted = day + h - from;
      if (counted >= spellFrom && counted < spellTo) {
        unmetWh += ledger.unmetWh(h);
        unmetHours += ledger.isUnmet(h) ? 1 : 0;
      }
      lowestWh = Math.min(lowestWh, ledger.chargeWh()[h]);
    }
    double windowWh = ledger.windowWh();
    return new SpellDay(
        from,
        calendar.date(from),
        solarWh,
        otherWh,
        generatorWh,
        need,
        askedWh,
        unmetWh,
        letGoWh,
        unmetHours,
        windowWh > 0.0 ? ledger.chargeWh()[from + 23] / windowWh : 0.0,
        windowWh > 0.0 ? lowestWh / windowWh : 0.0);
  }

  private int at(int k) {
    return (start + k) % hours;
  }

  private double charge(int k) {
    return ledger.chargeWh()[at(k)];
  }

  private double share(int k) {
    return ledger.windowWh() > 0.0 ? charge(k) / ledger.windowWh() : 1.0;
  }
}
