package greyspell.chart;

import greyspell.calendar.HourCalendar;
import greyspell.weather.WeatherSeries;

/** A weather series as days: sun (or cloud, where the source has no sun) and temperature. */
public final class WeatherDays {
  private static final double WH_PER_KWH = 1000.0;

  private final HourCalendar calendar;
  private final boolean hasSun;
  private final double[] sky;
  private final double[] meanC;
  private final double[] coldestC;
  private final double[] warmestC;

  private WeatherDays(WeatherSeries weather) {
    calendar = weather.calendar();
    double[] global = weather.globalHorizontalWm2();
    double[] cloud = weather.cloudShare();
    hasSun = global != null;
    int days = calendar.days();
    sky = new double[days];
    meanC = new double[days];
    coldestC = new double[days];
    warmestC = new double[days];
    double[] air = weather.airTemperatureC();
    for (int day = 0; day < days; day++) {
      coldestC[day] = Double.MAX_VALUE;
      warmestC[day] = -Double.MAX_VALUE;
      for (int h = day * 24; h < day * 24 + 24; h++) {
        if (global != null) {
          sky[day] += global[h] / WH_PER_KWH;
        } else if (cloud != null) {
          sky[day] += cloud[h] * 100.0 / 24.0;
        }
        meanC[day] += air[h] / 24.0;
        coldestC[day] = Math.min(coldestC[day], air[h]);
        warmestC[day] = Math.max(warmestC[day], air[h]);
      }
    }
  }

  public static WeatherDays of(WeatherSeries weather) {
    return new WeatherDays(weather);
  }

  public HourCalendar calendar() {
    return calendar;
  }

  public int days() {
    return sky.length;
  }

  /** Whether {@link #sky} is sun, not cloud. */
  public boolean hasSun() {
    return hasSun;
  }

  /** Global horizontal irradiation in kWh/m² (peak-sun hours), or mean cloud cover in %. */
  public double sky(int day) {
    return sky[day];
  }

  public double meanC(int day) {
    return meanC[day];
  }

  public double coldestC(int day) {
    return coldestC[day];
  }

  public double warmestC(int day) {
    return warmestC[day];
  }
}
