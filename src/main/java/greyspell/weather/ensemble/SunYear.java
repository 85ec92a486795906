package greyspell.weather.ensemble;

import greyspell.weather.ExtraterrestrialHour;

/** The sun of one place through a year of 365 days, hour by hour, worked out once. */
final class SunYear {
  private static final double NOON_H = 12.0;

  /** Highest clearness of an hour falls off towards the ends of the day. */
  private static final double CLEAR_NOON = 0.88;

  private static final double CLEAR_ARC_H = 30.0;

  final double[] aboveWm2 = new double[WeatherYear.HOURS];

  /** Share of the day's sunshine that a smooth day brings in the hour; 1 over a day. */
  final double[] dayShare = new double[WeatherYear.HOURS];

  final double[] sinHeight = new double[WeatherYear.HOURS];
  final double[] capWm2 = new double[WeatherYear.HOURS];
  final double[] temperatureShape = new double[WeatherYear.HOURS];
  final double[] dayWhm2 = new double[WeatherYear.DAYS];
  final double[] cosSunset = new double[WeatherYear.DAYS];
  final int[] firstLit = new int[WeatherYear.DAYS];
  final int[] afterLit = new int[WeatherYear.DAYS];

  SunYear(ClimateSite site) {
    for (int day = 0; day < WeatherYear.DAYS; day++) {
      fill(
          new ExtraterrestrialHour(
              site.latitudeDeg(), site.longitudeDeg(), site.utcOffsetH(), day + 1),
          day);
    }
  }

  private void fill(ExtraterrestrialHour sun, int day) {
    int first = day * YearDays.HOURS_PER_DAY;
    cosSunset[day] = StrictMath.cos(sun.sunsetAngle());
    double zenithWm2 = sun.zenithWm2();
    int lit = YearDays.HOURS_PER_DAY;
    int after = 0;
    double sum = 0.0;
    for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
      int hour = first + h;
      double above = sun.irradiationWhm2(h);
      aboveWm2[hour] = above;
      dayWhm2[day] += above;
      sinHeight[hour] = Math.min(1.0, above / zenithWm2);
      double solarH = h + 0.5 + sun.solarMinusClockH();
      capWm2[hour] = above * CLEAR_NOON * StrictMath.cos(Math.PI * (solarH - NOON_H) / CLEAR_ARC_H);
      double share = above * DayProfile.lift(sun.sunsetAngle(), sun.midHourAngle(h));
      dayShare[hour] = Math.max(0.0, share);
      sum += dayShare[hour];
      temperatureShape[hour] = AirTemperature.shape(solarH);
      if (above > 0.0) {
        lit = Math.min(lit, h);
        after = h + 1;
      }
    }
    firstLit[day] = Math.min(lit, after);
    afterLit[day] = after;
    for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
      dayShare[first + h] /= sum;
    }
  }
}
