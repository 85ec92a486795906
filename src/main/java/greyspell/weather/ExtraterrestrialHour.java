package greyspell.weather;

import greyspell.quantity.Check;

/**
 * The sunshine that would fall on level ground in one clock hour if there were no air: the ceiling
 * of made weather.
 *
 * <pre>
 * I0    = (12 h / pi) Gsc dr [(w2 - w1) sin(phi) sin(delta) + cos(phi) cos(delta) (sin w2 - sin w1)]   eq. 28
 * dr    = 1 + 0.033 cos(2 pi J / 365)                                                                  eq. 23
 * delta = 0.409 sin(2 pi J / 365 - 1.39)                                                               eq. 24
 * ws    = acos(-tan(phi) tan(delta)), held within 0 .. pi                                              eq. 25
 * w     = (pi / 12) (t + (L - Lz) / 15 + Sc - 12)                                                      eq. 31
 * Sc    = 0.1645 sin(2 b) - 0.1255 cos(b) - 0.025 sin(b),  b = 2 pi (J - 81) / 364                     eq. 32, 33
 *
 * phi   latitude, south negative    rad   -pi/2 .. pi/2    J    day of the year          1   1 .. 366
 * delta declination                 rad                    w1, w2 hour angles of the hour's ends, held within -ws .. ws
 * L, Lz longitude, of the clock     deg   east positive    t    clock time               h   standard time
 * Sc    equation of time            h                      Gsc  solar constant           W/m2
 * I0    result                      Wh/m2 in the hour
 * </pre>
 *
 * Good to some tenths of a degree of sun height, which is enough to make weather; not for working
 * out what falls on a panel. Sines are taken from StrictMath so that made files are the same on
 * every machine.
 *
 * <p>Source: Allen et al. (1998), FAO Irrigation and Drainage Paper 56, ch. 3. Equations 28 to 33
 * from memory, written here for longitudes east positive and whole hours; 21 and 23 to 25 seen
 * second-hand. Held by ExtraterrestrialHourPublishedTest.
 */
public final class ExtraterrestrialHour {
  /** Printed as 0.0820 MJ/m2 a minute. */
  private static final double SOLAR_CONSTANT_WM2 = 82_000.0 / 60.0;

  private static final double DEG_PER_HOUR = 15.0;
  private static final double NOON_H = 12.0;

  private final double sinSin;
  private final double cosCos;
  private final double sunset;
  private final double scale;
  private final double solarMinusClockH;

  /** The sun of one day at one place. */
  public ExtraterrestrialHour(
      double latitudeDeg, double longitudeDeg, double utcOffsetH, int dayOfYear) {
    double phi = StrictMath.toRadians(Check.within("latitudeDeg", latitudeDeg, -90.0, 90.0));
    int day = Check.within("dayOfYear", dayOfYear, 1, 366);
    double yearAngle = 2.0 * Math.PI * day / 365.0;
    double delta = 0.409 * StrictMath.sin(yearAngle - 1.39);
    sinSin = StrictMath.sin(phi) * StrictMath.sin(delta);
    cosCos = StrictMath.cos(phi) * StrictMath.cos(delta);
    double cosSunset = -StrictMath.tan(phi) * StrictMath.tan(delta);
    sunset = StrictMath.acos(Math.max(-1.0, Math.min(1.0, cosSunset)));
    double dr = 1.0 + 0.033 * StrictMath.cos(yearAngle);
    scale = NOON_H / Math.PI * SOLAR_CONSTANT_WM2 * dr;
    double b = 2.0 * Math.PI * (day - 81) / 364.0;
    double equationOfTimeH =
        0.1645 * StrictMath.sin(2.0 * b) - 0.1255 * StrictMath.cos(b) - 0.025 * StrictMath.sin(b);
    solarMinusClockH = longitudeDeg / DEG_PER_HOUR - utcOffsetH + equationOfTimeH;
  }

  /** The hour that starts at this clock hour. */
  public double irradiationWhm2(int hourOfDay) {
    return betweenWhm2(hourAngle(hourOfDay), hourAngle(hourOfDay + 1));
  }

  /** Hour angle in the middle of a clock hour, 0 at solar noon. */
  public double midHourAngle(int hourOfDay) {
    return hourAngle(hourOfDay + 0.5);
  }

  public double dayWhm2() {
    return betweenWhm2(-Math.PI, Math.PI);
  }

  /** In an hour with the sun overhead. */
  public double zenithWm2() {
    return scale * Math.PI / NOON_H;
  }

  public double sunsetAngle() {
    return sunset;
  }

  public double solarMinusClockH() {
    return solarMinusClockH;
  }

  double betweenWhm2(double fromAngle, double toAngle) {
    double w1 = Math.max(-sunset, Math.min(sunset, fromAngle));
    double w2 = Math.max(-sunset, Math.min(sunset, toAngle));
    double whm2 = scale * ((w2 - w1) * sinSin + cosCos * (StrictMath.sin(w2) - StrictMath.sin(w1)));
    return w2 > w1 ? Math.max(0.0, whm2) : 0.0;
  }

  private double hourAngle(double clockH) {
    return Math.PI / NOON_H * (clockH + solarMinusClockH - NOON_H);
  }
}
