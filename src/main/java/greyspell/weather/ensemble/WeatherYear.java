package greyspell.weather.ensemble;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * One year of weather, filled again and again: 8760 hours, January first, no leap day, local
 * standard time, hourly means. One for each thread.
 *
 * <p>A year holds one winter whole. In the north it was made from 1 July to 30 June and lies here
 * as a ring: the hours from {@link #seamHour} to the end come first in time, those before the seam
 * after them, and December runs on into January. In the south the seam is hour 0.
 */
public final class WeatherYear {
  public static final int DAYS = YearDays.DAYS;
  public static final int HOURS = DAYS * YearDays.HOURS_PER_DAY;

  private final double[] globalHorizontalWm2 = new double[HOURS];
  private final double[] airTemperatureC = new double[HOURS];

  // workspace of the sources, by day
  final double[] latent = new double[DAYS];
  final double[] clearness = new double[DAYS];
  final double[] dayTemperatureC = new double[DAYS];
  final double[] dayRangeK = new double[DAYS];
  final double[] hour = new double[YearDays.HOURS_PER_DAY];
  final double[] nearDistance = new double[SplicedWinters.CHOICES];
  final int[] nearDay = new int[SplicedWinters.CHOICES];
  final YearRandom random = new YearRandom();

  /** By column; empty where the source has none. */
  private final double[][] more = new double[MeasuredDays.MORE][];

  private int seamHour;

  /** Empty until a source fills it. */
  public WeatherYear() {
    Arrays.fill(more, MeasuredDays.NONE);
  }

  /** Written by the next fill; do not write it. */
  public double[] globalHorizontalWm2() {
    return globalHorizontalWm2;
  }

  /** Written by the next fill; do not write it. */
  public double[] airTemperatureC() {
    return airTemperatureC;
  }

  /** Null where the source has none: made winters, files without wind. */
  public double @Nullable [] windMs() {
    return orNull(MeasuredDays.WIND);
  }

  /** On the ground; null where the source has none. */
  public double @Nullable [] snowDepthM() {
    return orNull(MeasuredDays.SNOW);
  }

  /** Null where the source has none. */
  public double @Nullable [] diffuseHorizontalWm2() {
    return orNull(MeasuredDays.DIFFUSE);
  }

  /** The first hour in time. */
  public int seamHour() {
    return seamHour;
  }

  /** A winter of sunshine and temperature alone. */
  void beginAt(int hour) {
    seamHour = hour;
    Arrays.fill(more, MeasuredDays.NONE);
  }

  /** A winter with such columns as the measured years have beside these. */
  void beginAt(int hour, double[][] measured) {
    seamHour = hour;
    for (int k = 0; k < more.length; k++) {
      if (measured[k].length == 0) {
        more[k] = MeasuredDays.NONE;
      } else if (more[k].length == 0) {
        more[k] = new double[HOURS];
      }
    }
  }

  double[] more(int column) {
    return more[column];
  }

  private double @Nullable [] orNull(int column) {
    return more[column].length == 0 ? null : more[column];
  }
}
