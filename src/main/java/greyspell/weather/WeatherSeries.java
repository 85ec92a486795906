package greyspell.weather;

import greyspell.calendar.HourCalendar;
import org.jspecify.annotations.Nullable;

/**
 * Hourly weather of whole years at one place. Every column holds one value an hour: the mean of the
 * hour that starts at that index, in local standard time. No value is missing: gaps have been
 * filled by the rules of {@link GapReport} or the file refused. A column that the source does not
 * have is null. Who receives an array neither keeps nor writes it.
 */
public final class WeatherSeries {
  private final HourCalendar calendar;
  private final WeatherSource source;
  private final GapReport gaps;
  private final Columns columns;

  /** The columns; null is "not in the source". Cloud cover is a share of the sky, 0 to 1. */
  public static final class Columns {
    public double @Nullable [] globalHorizontalWm2;
    public double @Nullable [] directNormalWm2;
    public double @Nullable [] diffuseHorizontalWm2;
    public double @Nullable [] airTemperatureC;
    public double @Nullable [] windMs;
    public double @Nullable [] cloudShare;
    public double @Nullable [] snowDepthM;
  }

  public WeatherSeries(
      HourCalendar calendar, WeatherSource source, GapReport gaps, Columns columns) {
    this.calendar = calendar;
    this.source = source;
    this.gaps = gaps;
    this.columns = columns;
    if (columns.airTemperatureC == null) {
      throw new IllegalArgumentException("a weather series needs air temperature");
    }
    if (columns.globalHorizontalWm2 == null && columns.cloudShare == null) {
      throw new IllegalArgumentException("a weather series needs global irradiance or cloud cover");
    }
  }

  public HourCalendar calendar() {
    return calendar;
  }

  public WeatherSource source() {
    return source;
  }

  public GapReport gaps() {
    return gaps;
  }

  public int hours() {
    return calendar.hours();
  }

  /** Null where the source has only cloud cover. */
  public double @Nullable [] globalHorizontalWm2() {
    return columns.globalHorizontalWm2;
  }

  public double @Nullable [] directNormalWm2() {
    return columns.directNormalWm2;
  }

  public double @Nullable [] diffuseHorizontalWm2() {
    return columns.diffuseHorizontalWm2;
  }

  public double[] airTemperatureC() {
    var column = columns.airTemperatureC;
    if (column == null) {
      throw new IllegalStateException("checked when built");
    }
    return column;
  }

  public double @Nullable [] windMs() {
    return columns.windMs;
  }

  public double @Nullable [] cloudShare() {
    return columns.cloudShare;
  }

  public double @Nullable [] snowDepthM() {
    return columns.snowDepthM;
  }
}
