package greyspell.operate;

import java.util.Arrays;

/**
 * How long a charge lasts in each of some stretches of weather.
 *
 * @param hours looked ahead
 * @param lastsH in each stretch, rising; {@code hours} where it lasts to the end of the look ahead
 * @param reached stretches in which the bank has no more to give before that
 * @param unmetWh not served for whatever reason, the mean of the stretches
 * @param overloadH hours in which something is not served though the bank has charge, since
 *     inverter or current limit is too small for it; the mean of the stretches
 * @param engine the generator's runs
 */
public record Outlook(
    int hours, Hours lastsH, int reached, double unmetWh, double overloadH, Runs engine) {
  /**
   * What a generator does.
   *
   * @param engineH the mean of the stretches
   * @param fuelL burnt, the mean of the stretches
   * @param startsPerDay the mean of the stretches
   * @param fromH when it first starts, in each stretch, rising; the hours looked ahead where it
   *     never does
   * @param firstRunH how long that first run takes, in the stretches that have one, rising
   */
  public record Runs(
      double engineH, double fuelL, double startsPerDay, Hours fromH, Hours firstRunH) {}

  /** So many rising hours; an array that cannot be written. */
  public static final class Hours {
    private final int[] rising;

    Hours(int[] hours) {
      rising = hours.clone();
      Arrays.sort(rising);
    }

    public int count() {
      return rising.length;
    }

    /**
     * Exceeded in all but this share of the stretches; 0 of none.
     *
     * @param share 0.1 for what one in ten does not reach
     */
    public int at(double share) {
      return rising.length == 0 ? 0 : rising[(int) Math.round(share * (rising.length - 1))];
    }
  }

  public int stretches() {
    return lastsH.count();
  }

  /** Of the stretches, in which the reserve is reached. */
  public double reachedShare() {
    return (double) reached / stretches();
  }
}
