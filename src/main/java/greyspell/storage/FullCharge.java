package greyspell.storage;

import greyspell.quantity.Show;
import java.util.List;

/**
 * The longest time that a bank goes without being full. Lead-acid that is never filled grows
 * sulphate that no later charge removes, and its acid settles in layers.
 *
 * <p>Full is within five points of what it is charged up to (own choice, no source): the second
 * tank of a lead-acid bank fills for days after the charger has gone over to holding its voltage.
 *
 * @param longestH hours between two full ones; all hours if it was never full
 * @param fromHour index of the first of them
 * @param timesFull how many times it became full
 */
public record FullCharge(int longestH, int fromHour, int timesFull) {
  private static final double NEAR_SHARE = 0.05;
  private static final double HOURS_IN_DAY = 24.0;

  /**
   * Reads a series of charge.
   *
   * @param chargeShare at the end of each hour, over all that the cells hold
   * @param fullShare what it is charged up to
   * @param isRing the last hour is followed by the first
   */
  public static FullCharge read(double[] chargeShare, double fullShare, boolean isRing) {
    int hours = chargeShare.length;
    double atLeast = fullShare - NEAR_SHARE;
    int run = 0, longest = 0, longestFrom = 0, times = 0, firstFull = -1;
    boolean wasFull = isRing && hours > 0 && chargeShare[hours - 1] >= atLeast;
    for (int h = 0; h < hours; h++) {
      if (chargeShare[h] >= atLeast) {
        times += wasFull ? 0 : 1;
        firstFull = firstFull < 0 ? h : firstFull;
        wasFull = true;
        run = 0;
      } else {
        wasFull = false;
        run++;
        if (run > longest) {
          longest = run;
          longestFrom = h - run + 1;
        }
      }
    }
    if (isRing && firstFull > 0 && run + firstFull > longest) {
      longest = run + firstFull;
      longestFrom = run > 0 ? hours - run : 0;
    }
    return new FullCharge(longest, longestFrom, times);
  }

  public double longestDays() {
    return longestH / HOURS_IN_DAY;
  }

  /** What to say about it; empty if nothing. */
  public List<String> cautions(BankSpec bank) {
    Double everyH = bank.life().fullChargeEveryH();
    if (everyH == null || longestH <= everyH) {
      return List.of();
    }
    return List.of(
        "The bank goes "
            + Show.days(longestDays())
            + " without a full charge; lead-acid should have one every "
            + Show.days(everyH / HOURS_IN_DAY)
            + " (full_charge_every), else it loses capacity for good. A generator or more panels"
            + " would fill it.");
  }
}
