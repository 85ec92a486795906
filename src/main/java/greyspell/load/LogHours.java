package greyspell.load;

import greyspell.calendar.HourCalendar;
import org.jspecify.annotations.Nullable;

/** A log laid over a calendar: energy and peak of each hour, before its factor. */
final class LogHours {
  private final double[] wh;
  private final double[] peakW;
  private final @Nullable LogFit fit;

  private LogHours(double[] wh, double[] peakW, @Nullable LogFit fit) {
    this.wh = wh;
    this.peakW = peakW;
    this.fit = fit;
  }

  static LogHours of(LoadLog log, LogSpec spec, LoadWeather weather, long seed) {
    HourCalendar calendar = weather.calendar();
    LogFit fit = spec.extension() == LogExtension.FIT ? LogFit.of(log, weather) : null;
    int[] source = log.sources(calendar);
    double[] dayWh =
        fit == null || !fit.isUsable()
            ? new double[0]
            : fit.dayWh(weather, spec.isScattered(), seed);
    var wh = new double[calendar.hours()];
    var peakW = new double[calendar.hours()];
    for (int d = 0; d < source.length; d++) {
      double factor = 1.0;
      if (dayWh.length > 0 && !log.holds(calendar, d)) {
        double sourceWh = log.dayWh(source[d]);
        factor = sourceWh > 0.0 ? dayWh[d] / sourceWh : 1.0;
      }
      for (int i = 0; i < 24; i++) {
        wh[d * 24 + i] = factor * log.wh(source[d] * 24 + i);
        peakW[d * 24 + i] = factor * log.peakW(source[d] * 24 + i);
      }
    }
    return new LogHours(wh, peakW, fit);
  }

  double[] wh() {
    return wh;
  }

  double[] peakW() {
    return peakW;
  }

  @Nullable LogFit fit() {
    return fit;
  }

  /** Mean over the days of each day's lowest hour. */
  double lowestHourW() {
    double sumW = 0.0;
    int days = wh.length / 24;
    for (int d = 0; d < days; d++) {
      double least = wh[d * 24];
      for (int h = d * 24; h < d * 24 + 24; h++) {
        least = Math.min(least, wh[h]);
      }
      sumW += least;
    }
    return sumW / days;
  }
}
