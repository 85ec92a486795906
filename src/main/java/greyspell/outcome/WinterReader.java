package greyspell.outcome;

import greyspell.balance.BusNeed;
import greyspell.balance.Design;
import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.calendar.HourCalendar;
import java.util.List;

/**
 * Reads the compact books of one winter off its ledger. The ledger holds the 8760 hours of a common
 * year, January first; in time it begins at the seam and runs round. One reader for each thread and
 * design: it keeps its workspace, so that a thousand winters cost little more than their records.
 */
public final class WinterReader {
  public static final int HOURS = WinterRecord.DAYS * 24;

  private final Design design;
  private final int seamDay;
  private final int[] firstHourOfMonth = new int[WinterMonths.MONTHS + 1];
  private final double[] needWh = new double[HOURS];
  private final double[] dayLackWh = new double[WinterRecord.DAYS];
  private final double[] dayUnmetWh = new double[WinterRecord.DAYS];
  private final RidingBankReader riding;

  /**
   * For the winters of one design whose bank draws nothing for electronics of its own.
   *
   * @param seamHour the hour of the year, counted from 0, at which winters begin
   */
  public WinterReader(Design design, int seamHour) {
    this(design, seamHour, 0.0);
  }

  /**
   * For the winters of one design.
   *
   * @param seamHour the hour of the year, counted from 0, at which winters begin; the first hour of
   *     a day
   * @param bankDrawWh what the bank's own electronics draw each hour, part of the standing draw of
   *     the forcing; a larger bank of the same kind draws more in proportion
   */
  public WinterReader(Design design, int seamHour, double bankDrawWh) {
    if (seamHour < 0 || seamHour >= HOURS || seamHour % 24 != 0) {
      throw new IllegalArgumentException("seam at hour " + seamHour);
    }
    this.design = design;
    seamDay = seamHour / 24;
    riding = new RidingBankReader(design, seamHour, bankDrawWh);
    HourCalendar calendar = HourCalendar.typicalYear();
    for (int h = 0; h < HOURS; h += 24) {
      firstHourOfMonth[calendar.month(h)] = h + 24;
    }
  }

  /** The record of one winter; nothing is kept of ledger and forcing. */
  public WinterRecord read(Ledger ledger, int number, String name) {
    if (ledger.hours() != HOURS) {
      throw new IllegalArgumentException(ledger.hours() + " hours are no common year");
    }
    var months = new WinterMonths();
    for (int month = 1; month <= WinterMonths.MONTHS; month++) {
      sumUp(ledger, month, months);
    }
    double[] chargeWh = ledger.chargeWh();
    int lowestHour = seamDay * 24;
    for (int i = 0, h = lowestHour; i < HOURS; i++, h = next(h)) {
      lowestHour = chargeWh[h] < chargeWh[lowestHour] ? h : lowestHour;
    }
    return new WinterRecord(
        number,
        name,
        seamDay,
        ledger.windowWh(),
        months,
        lowestShares(chargeWh, ledger.windowWh()),
        chargeWh[lowestHour],
        lowestHour / 24,
        starts(ledger),
        longest(ledger),
        spells(ledger),
        riding.read(ledger.forcing()));
  }

  private static int next(int hour) {
    return hour + 1 == HOURS ? 0 : hour + 1;
  }

  private void sumUp(Ledger ledger, int month, WinterMonths months) {
    int from = firstHourOfMonth[month - 1], to = firstHourOfMonth[month];
    int unmetHours = 0, unmetDays = 0, generatorHours = 0, lastDay = -1;
    double unmetWh = 0.0;
    for (int h = from; h < to; h++) {
      unmetWh += ledger.unmetWh(h);
      if (ledger.isUnmet(h)) {
        unmetHours++;
        unmetDays += h / 24 > lastDay ? 1 : 0;
        lastDay = h / 24;
      }
      generatorHours += ledger.isGeneratorOn(h) ? 1 : 0;
    }
    months.unmetHours[month - 1] = (short) unmetHours;
    months.unmetDays[month - 1] = (byte) unmetDays;
    months.generatorHours[month - 1] = (short) generatorHours;
    months.put(WinterSum.UNMET, month, unmetWh);
    double acWh = sum(LedgerColumn.AC_ASKED, ledger, from, to);
    months.put(WinterSum.LOAD, month, acWh + sum(LedgerColumn.DC_ASKED, ledger, from, to));
    months.put(WinterSum.SERVED, month, sum(LedgerColumn.SERVED, ledger, from, to));
    months.put(WinterSum.UNMET_EMPTY, month, sum(LedgerColumn.UNMET_EMPTY, ledger, from, to));
    months.put(
        WinterSum.SOLAR_AVAILABLE, month, sum(LedgerColumn.SOLAR_AVAILABLE, ledger, from, to));
    months.put(WinterSum.SOLAR_USED, month, sum(LedgerColumn.SOLAR_USED, ledger, from, to));
    months.put(WinterSum.STANDING, month, sum(LedgerColumn.STANDING, ledger, from, to));
    if (ledger.isFull()) {
      months.put(
          WinterSum.OTHER_USED,
          month,
          sum(LedgerColumn.OTHER_AVAILABLE, ledger, from, to)
              - sum(LedgerColumn.OTHER_CURTAILED, ledger, from, to));
      months.put(WinterSum.GENERATOR, month, sum(LedgerColumn.GENERATOR, ledger, from, to));
      months.put(WinterSum.LET_GO, month, sum(LedgerColumn.SHED, ledger, from, to));
    }
  }

  /** Four sums side by side, because one addition waits for the one before. */
  private static double sum(LedgerColumn column, Ledger ledger, int from, int to) {
    double[] wh = column.of(ledger);
    double a = 0.0, b = 0.0, c = 0.0, d = 0.0;
    for (int h = from; h < to; h += 4) {
      a += wh[h];
      b += wh[h + 1];
      c += wh[h + 2];
      d += wh[h + 3];
    }
    return (a + b) + (c + d);
  }

  private static float[] lowestShares(double[] chargeWh, double windowWh) {
    var shares = new float[WinterRecord.DAYS];
    for (int day = 0; day < shares.length && windowWh > 0.0; day++) {
      double lowestWh = chargeWh[day * 24];
      for (int h = day * 24 + 1; h < day * 24 + 24; h++) {
        lowestWh = Math.min(lowestWh, chargeWh[h]);
      }
      shares[day] = (float) (lowestWh / windowWh);
    }
    return shares;
  }

  private int starts(Ledger ledger) {
    int starts = 0;
    boolean wasOn = false;
    for (int i = 0, h = seamDay * 24; i < HOURS && ledger.isFull(); i++, h = next(h)) {
      starts += ledger.isGeneratorOn(h) && !wasOn ? 1 : 0;
      wasOn = ledger.isGeneratorOn(h);
    }
    return starts;
  }

  private Shortfall longest(Ledger ledger) {
    var longest = new Shortfall(0, 0, 0.0);
    int from = 0, hours = 0;
    double unmetWh = 0.0;
    for (int i = 0, h = seamDay * 24; i <= HOURS; i++, h = next(h)) {
      if (i < HOURS && ledger.isUnmet(h)) {
        from = hours == 0 ? h : from;
        hours++;
        unmetWh += ledger.unmetWh(h);
      } else if (hours > 0) {
        longest = hours > longest.hours() ? new Shortfall(from, hours, unmetWh) : longest;
        hours = 0;
        unmetWh = 0.0;
      }
    }
    return longest;
  }

  private List<GreySpell> spells(Ledger ledger) {
    BusNeed.fill(ledger.forcing(), design.inverter(), needWh);
    for (int i = 0; i < WinterRecord.DAYS; i++) {
      int day = (seamDay + i) % WinterRecord.DAYS;
      dayLackWh[i] = GreySpells.lackWh(ledger, needWh, day);
      dayUnmetWh[i] = GreySpells.unmetWh(ledger, day);
    }
    return GreySpells.ranked(dayLackWh, dayUnmetWh, seamDay);
  }
}
