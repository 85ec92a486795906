package greyspell.bench;

import greyspell.balance.Forcing;
import greyspell.calendar.HourCalendar;
import java.util.Arrays;

/**
 * Invented years of sun and load from integers and rational functions only, so that a program in
 * any language can make the same ones and be measured beside this.
 */
final class SiteYears {
  private static final int HOURS = 8760;
  private static final double STANDING_W = 36.0;

  private long state;

  private SiteYears(int year) {
    state = 88172645463325252L + 1000003L * year;
    for (int i = 0; i < 8; i++) {
      random();
    }
  }

  /** Solar energy for 1 kW of panels, a load of about 3 MWh a year; no charging below 0 C. */
  static Forcing of(int year) {
    return new SiteYears(year).make();
  }

  private Forcing make() {
    var columns = new Forcing.Columns();
    columns.solarBusWh = new double[HOURS];
    columns.acAskedWh = new double[HOURS];
    columns.chargeShare = new double[HOURS];
    double sky = 0.4, spell = 0.0;
    for (int day = 0; day < 365; day++) {
      double season = sine((day + 10) / 365.0 - 0.25);
      double halfDayH = 6.0 + 2.2 * season, peak = 0.78 + 0.14 * season;
      double mean = 0.42 + 0.20 * season;
      sky = 0.72 * sky + 0.28 * (mean + 1.5 * (random() - 0.5));
      double clearness = Math.min(1.0, Math.max(0.06, sky));
      spell = 0.8 * spell + 5.0 * (random() - 0.5);
      for (int hour = 0; hour < 24; hour++) {
        double x = (hour - 11.5) / halfDayH, light = peak * Math.max(0.0, 1.0 - x * x) * clearness;
        light = Math.min(1.05, light * (0.8 + 0.4 * random()));
        double airC = 10.0 + 9.0 * season + 4.0 * sine((hour - 9) / 24.0) + spell;
        int h = day * 24 + hour;
        columns.solarBusWh[h] =
            1000.0 * rounded(light * 0.93 * (1.0 - 0.004 * (airC + 30.0 * light - 25.0)));
        columns.acAskedWh[h] = 1000.0 * rounded(loadKwh(hour));
        columns.chargeShare[h] = airC < 0.0 ? 0.0 : 1.0;
      }
    }
    columns.solarAvailableWh = columns.solarBusWh;
    columns.solarNominalWh = columns.solarBusWh;
    columns.clippedWh = new double[HOURS];
    columns.controllerLossWh = new double[HOURS];
    columns.dcAskedWh = new double[HOURS];
    columns.standingWh = new double[HOURS];
    columns.bankTemperatureC = new double[HOURS];
    columns.lockedShare = new double[HOURS];
    Arrays.fill(columns.standingWh, STANDING_W);
    return new Forcing(HourCalendar.typicalYear(), columns);
  }

  private double loadKwh(int hour) {
    double kwh = 0.13 + 0.08 * random();
    if (hour >= 6 && hour < 9) {
      kwh += 0.25 * random() + 0.1;
    }
    if (hour >= 17 && hour < 23) {
      kwh += 0.45 * random() + 0.2;
    }
    double chance = random();
    return kwh + (chance < 0.035 ? 1.2 : 0.0) + (chance < 0.008 ? 0.85 : 0.0);
  }

  private double random() {
    state = state * 6364136223846793005L + 1442695040888963407L;
    return (state >>> 11) * (1.0 / 9007199254740992.0);
  }

  private static double rounded(double value) {
    return Math.floor(value * 1e6 + 0.5) / 1e6;
  }

  /** Sine of so many turns, by Bhaskara's rational formula. */
  private static double sine(double turns) {
    double turn = turns - Math.floor(turns), sign = turn < 0.5 ? 1.0 : -1.0;
    double deg = 360.0 * (turn < 0.5 ? turn : turn - 0.5), p = deg * (180.0 - deg);
    return sign * 4.0 * p / (40500.0 - p);
  }
}
