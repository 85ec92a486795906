package greyspell.operate;

import java.util.Arrays;

/**
 * How long a charge lasts in each of some stretches of weather.
 *
 * @param hours looked ahead
 * @param lastsH in each stretch, rising; {@code hours} where it lasts to the end of the look ahead
 * @param reached stretches in which the reserve is reached before that
 * @param unmetWh not served, the mean of the stretches
 * @param engineH of the generator, the mean of the stretches
 * @param fuelL burnt, the mean of the stretches
 */
public record Outlook(
    int hours, Hours lastsH, int reached, double unmetWh, double engineH, double fuelL) {
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
     * Exceeded in all but this share of the stretches.
     *
     * @param share 0.1 for what one in ten does not reach
     */
    public int at(double share) {
      return rising[(int) Math.round(share * (rising.length - 1))];
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
