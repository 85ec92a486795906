package greyspell.outcome;

import java.util.List;

/**
 * The compact books of one winter: a year of 365 days, January first, that holds one winter whole.
 * Days are counted from 0, 1 January, to 364, 31 December; in time the winter begins at {@link
 * #seamDay} and ends the day before it. A few kB, so that a thousand fit anywhere.
 */
public final class WinterRecord {
  public static final int DAYS = 365;

  private final int number;
  private final String name;
  private final int seamDay;
  private final double windowWh;
  private final WinterMonths months;
  private final float[] lowestShareOfDay;
  private final double lowestChargeWh;
  private final int lowestDay;
  private final int generatorStarts;
  private final Shortfall longest;
  private final List<GreySpell> spells;
  private final RidingBank ridingBank;

  WinterRecord(
      int number,
      String name,
      int seamDay,
      double windowWh,
      WinterMonths months,
      float[] lowestShareOfDay,
      double lowestChargeWh,
      int lowestDay,
      int generatorStarts,
      Shortfall longest,
      List<GreySpell> spells,
      RidingBank ridingBank) {
    this.number = number;
    this.name = name;
    this.seamDay = seamDay;
    this.windowWh = windowWh;
    this.months = months;
    this.lowestShareOfDay = lowestShareOfDay;
    this.lowestChargeWh = lowestChargeWh;
    this.lowestDay = lowestDay;
    this.generatorStarts = generatorStarts;
    this.longest = longest;
    this.spells = spells;
    this.ridingBank = ridingBank;
  }

  /** Its number in its source, from 0. */
  public int number() {
    return number;
  }

  /** "2017/18" of a measured winter, "winter 18" of a made one. */
  public String name() {
    return name;
  }

  /** The first day in time: 181, 1 July, in the north; 0 in the south. */
  public int seamDay() {
    return seamDay;
  }

  /** Day of the year, from 0, of a day counted from the winter's first. */
  public int dayInTime(int day) {
    return (seamDay + day) % DAYS;
  }

  /** Usable energy of the full bank that was run. */
  public double windowWh() {
    return windowWh;
  }

  public WinterMonths months() {
    return months;
  }

  /** Of the whole winter. */
  public double wh(WinterSum sum) {
    return months.wh(sum);
  }

  public int unmetHours() {
    return months.unmetHours();
  }

  /** True if nothing that was asked for went unserved. */
  public boolean isDarkFree() {
    return months.unmetHours() == 0;
  }

  /** Lowest charge of a day at the end of any of its hours over the usable bank, 0 to 1. */
  public double lowestShare(int dayOfYear) {
    return lowestShareOfDay[dayOfYear];
  }

  /** Above the reserve, at the end of any hour. */
  public double lowestChargeWh() {
    return lowestChargeWh;
  }

  /** The same over the usable bank, 0 to 1. */
  public double lowestShareOfAll() {
    return windowWh > 0.0 ? lowestChargeWh / windowWh : 0.0;
  }

  /** Day of the year, from 0, on which it was reached first. */
  public int lowestDay() {
    return lowestDay;
  }

  public int generatorStarts() {
    return generatorStarts;
  }

  /**
   * The longest unbroken shortfall; hours are those of the year, from 0; of none, 0 hours. One that
   * is under way when the winter begins starts there.
   */
  public Shortfall longestShortfall() {
    return longest;
  }

  /** All grey spells, most Wh short first; their days are those of the year. */
  public List<GreySpell> spells() {
    return spells;
  }

  public RidingBank ridingBank() {
    return ridingBank;
  }
}
