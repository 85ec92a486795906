package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;

/**
 * Twelve monthly means of level light, spread over average days, on a tilted plane: against two
 * published tables of monthly means, both made with an even sky.
 *
 * <p>The days: share of sky light by the monthly curve of Erbs, Klein and Duffie (1982); the hour's
 * share of the day by Collares-Pereira and Rabl (1979) and Liu and Jordan (1960), as in Duffie,
 * Beckman and Blair (2020), eq. 2.12.1, 2.13.1 and 2.13.4. Only the days stand here in the test;
 * sun and plane are the program's.
 */
class MonthlyMeansPublishedTest implements PublishedChecks {
  private static final HourCalendar YEAR = HourCalendar.typicalYear();
  private static final int[] MEAN_DAY = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};

  /** A year in which each day of a month brings the month's mean light. */
  private record AverageDays(Site site, SunPath sun, WeatherSeries weather, Radiation radiation) {
    static AverageDays of(double latitudeDeg, Monthly albedo, double[] dailyWhm2) {
      Site site = new Site("test", latitudeDeg, 0.0, 0.0, 0.0, albedo, Horizon.OPEN, null, null);
      SunPath sun = SunPath.of(site, YEAR);
      var columns = new WeatherSeries.Columns();
      columns.globalHorizontalWm2 = new double[YEAR.hours()];
      columns.diffuseHorizontalWm2 = new double[YEAR.hours()];
      columns.directNormalWm2 = new double[YEAR.hours()];
      double ws = 0.0;
      for (int day = 0; day < 365; day++) {
        int month = YEAR.month(day * 24) - 1;
        ws =
            Math.toRadians(
                SunPublishedTest.sunsetDeg(
                    latitudeDeg, SunPublishedTest.declinationDeg(MEAN_DAY[month])));
        double above = SunPublishedTest.dailyAboveAirMJm2(latitudeDeg, MEAN_DAY[month]) / 0.0036;
        double diffuse = monthlyDiffuseShare(dailyWhm2[month] / above, Math.toDegrees(ws));
        fillDay(columns, sun, day * 24, ws, dailyWhm2[month], diffuse * dailyWhm2[month]);
      }
      WeatherSeries weather = SkyFixtures.weather(YEAR, columns);
      return new AverageDays(
          site, sun, weather, Radiation.of(weather, sun, site, SkyChoices.usual()));
    }

    private static void fillDay(
        WeatherSeries.Columns columns,
        SunPath sun,
        int from,
        double ws,
        double globalWhm2,
        double diffuseWhm2) {
      double a = 0.409 + 0.5016 * Math.sin(ws - Math.toRadians(60.0));
      double b = 0.6609 - 0.4767 * Math.sin(ws - Math.toRadians(60.0));
      var peaked = new double[24];
      var plain = new double[24];
      for (int i = 0; i < 24; i++) {
        double w = Math.toRadians(15.0 * (i + 0.5 - 12.0));
        plain[i] = sun.cosZenith()[from + i] * sun.sunlitShare()[from + i];
        peaked[i] = (a + b * Math.cos(w)) * plain[i];
      }
      double global = globalWhm2 / SkyFixtures.sum(peaked);
      double diffuse = diffuseWhm2 / SkyFixtures.sum(plain);
      for (int i = 0; i < 24; i++) {
        int h = from + i;
        double beam = Math.max(0.0, global * peaked[i] - diffuse * plain[i]);
        java.util.Objects.requireNonNull(columns.globalHorizontalWm2)[h] = global * peaked[i];
        java.util.Objects.requireNonNull(columns.diffuseHorizontalWm2)[h] = diffuse * plain[i];
        java.util.Objects.requireNonNull(columns.directNormalWm2)[h] =
            beam > 0.0 ? beam / sun.cosZenith()[h] : 0.0;
      }
    }

    double[] monthsWhm2(double tiltDeg) {
      double[] front =
          PlaneIrradiance.of(
                  radiation,
                  sun,
                  weather,
                  site,
                  SkyFixtures.choices(SkyChoices.Tilt.ISOTROPIC),
                  tiltDeg,
                  180.0)
              .frontWm2();
      var sums = new double[12];
      var days = new double[12];
      for (int h = 0; h < front.length; h++) {
        sums[YEAR.month(h) - 1] += front[h];
        days[YEAR.month(h) - 1] += 1.0 / 24.0;
      }
      for (int month = 0; month < 12; month++) {
        sums[month] /= days[month];
      }
      return sums;
    }
  }

  private static double monthlyDiffuseShare(double k, double sunsetDeg) {
    return sunsetDeg <= 81.4
        ? 1.391 + k * (-3.560 + k * (4.189 - 2.137 * k))
        : 1.311 + k * (-3.022 + k * (3.427 - 1.821 * k));
  }

  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    twentyTwoYears(checks);
    textbookYear(checks);
    return checks;
  }

  /** Bars: 5 percent a month, 1 percent a year, 3 degrees of tilt. */
  private static void twentyTwoYears(List<PublishedCheck> checks) {
    String source = "NASA 22-year monthly table for 42.075 N (quoted on a public project page)";
    double[] level = {1.81, 2.77, 3.92, 4.66, 5.44, 6.28, 6.56, 5.67, 4.51, 2.96, 2.00, 1.56};
    double[] tilted = {3.20, 4.07, 4.84, 4.78, 4.99, 5.46, 5.83, 5.59, 5.21, 4.10, 3.35, 2.95};
    double[] best = {64, 55, 42, 24, 12, 4, 10, 20, 36, 51, 61, 66};
    AverageDays days = AverageDays.of(42.075, SkyFixtures.USUAL_ALBEDO, times(level, 1000.0));
    double[] got = times(days.monthsWhm2(42.0), 0.001);
    var bestTilt = new double[12];
    var most = new double[12];
    for (int tilt = 0; tilt <= 90; tilt++) {
      double[] months = days.monthsWhm2(tilt);
      for (int month = 0; month < 12; month++) {
        if (months[month] > most[month]) {
          most[month] = months[month];
          bestTilt[month] = tilt;
        }
      }
    }
    for (int month = 0; month < 12; month++) {
      int m = month;
      checks.add(
          new PublishedCheck(
              "sky",
              source,
              "month " + (m + 1) + ", tilt 42 south, from the level mean",
              "kWh/m2 a day",
              tilted[m],
              0.05 * tilted[m],
              () -> got[m]));
      checks.add(
          new PublishedCheck(
              "sky",
              source,
              "month " + (m + 1) + ", best tilt",
              "deg",
              best[m],
              3.0,
              () -> bestTilt[m]));
    }
    checks.add(
        new PublishedCheck(
            "sky",
            source,
            "year, tilt 42 south",
            "kWh/m2 a day",
            4.53,
            0.0453,
            () -> SkyFixtures.sum(got) / 12.0));
  }

  /** The book's day: its own declination, beam and sky light as they stand above the air. */
  private static void textbookYear(List<PublishedCheck> checks) {
    String source =
        "Duffie, Beckman and Blair (2020), Solar Engineering of Thermal Processes, ex. 2.20.1"
            + " (printed answers from memory)";
    double[] level = {
      6.44, 9.89, 12.86, 16.05, 21.36, 23.04, 22.58, 20.33, 14.59, 10.48, 6.37, 5.74
    };
    double[] tilted = {13.7, 17.2, 15.8, 14.7, 16.6, 16.5, 16.8, 17.5, 15.6, 15.2, 11.4, 12.7};
    double[] albedo = {0.7, 0.7, 0.4, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.4};
    for (int month = 0; month < 12; month++) {
      int m = month;
      checks.add(
          new PublishedCheck(
              "sky",
              source,
              "43 N, slope 60 south, even sky, month " + (m + 1),
              "MJ/m2 a day",
              tilted[m],
              0.1,
              () -> textbookDayMJm2(MEAN_DAY[m], level[m], albedo[m])));
    }
  }

  private static double textbookDayMJm2(int dayOfYear, double levelMJm2, double albedo) {
    double sunset = SunPublishedTest.sunsetDeg(43.0, SunPublishedTest.declinationDeg(dayOfYear));
    double above = SunPublishedTest.dailyAboveAirMJm2(43.0, dayOfYear);
    double skyShare = monthlyDiffuseShare(levelMJm2 / above, sunset);
    var plane =
        new TiltedPlane(
            SkyChoices.Tilt.ISOTROPIC, IncidenceLoss.PHYSICAL, Horizon.OPEN, 60.0, 180.0);
    int steps = 1000;
    double sum = 0.0;
    for (int i = 0; i < steps; i++) {
      double solarHour = 12.0 + sunset / 15.0 * (2.0 * (i + 0.5) / steps - 1.0);
      Direction sun = Direction.ofBook(43.0, dayOfYear, solarHour);
      double aboveAir = Extraterrestrial.normalWm2(dayOfYear);
      double clearness = levelMJm2 / above;
      double global = clearness * aboveAir * sun.up();
      double direct = clearness * aboveAir * (1.0 - skyShare);
      plane.sunStands(sun.east(), sun.north(), sun.up(), sun.zenithDeg(), 2.0, 1.0);
      plane.fall(global, direct, skyShare * global, aboveAir, albedo);
      sum += plane.frontWm2();
    }
    return 0.0036 * sum / steps * 2.0 * sunset / 15.0;
  }

  private static double[] times(double[] values, double factor) {
    var result = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      result[i] = factor * values[i];
    }
    return result;
  }
}
