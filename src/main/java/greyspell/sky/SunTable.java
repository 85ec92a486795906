package greyspell.sky;

/**
 * Declination and equation of time for a span of days, drawn as a smooth curve through positions of
 * {@link SunPosition} every four days: as good as asking for each hour and hundreds of times
 * cheaper.
 *
 * <pre>
 * x(t) = cubic through the four nodes around t (Lagrange), nodes every 4 days at 12 h UT
 *
 * t    days of universal time since 1 January 1970, 0 h   d
 * x    declination (geocentric) or equation of time       rad
 * </pre>
 *
 * <p>Error of the cubic: 3/128 h^4 x'''' , below 0.0001 degree for the yearly course and for the
 * monthly swing that the moon gives the earth. Outside its span the curve is not valid; {@link
 * SunPath} never asks there. Held by SunTableTest against the algorithm itself.
 */
final class SunTable {
  private static final int STEP_D = 4;

  private final long firstNodeDay;
  private final double[] declinationRad;
  private final double[] equationOfTimeRad;

  private SunTable(long firstNodeDay, int nodes) {
    this.firstNodeDay = firstNodeDay;
    declinationRad = new double[nodes];
    equationOfTimeRad = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      SunPosition sun = SunPosition.fromPoleAtNoon(firstNodeDay + (long) STEP_D * i);
      declinationRad[i] = sun.declinationRad();
      equationOfTimeRad[i] = sun.equationOfTimeRad();
    }
  }

  /** Good for all moments of these days and a day on either side. */
  static SunTable of(long firstEpochDay, int days) {
    return new SunTable(firstEpochDay - 2L * STEP_D, days / STEP_D + 6);
  }

  double declinationRad(double utcDays) {
    return at(declinationRad, utcDays);
  }

  double equationOfTimeRad(double utcDays) {
    return at(equationOfTimeRad, utcDays);
  }

  private double at(double[] nodes, double utcDays) {
    double position = (utcDays - 0.5 - firstNodeDay) / STEP_D;
    int i = (int) position;
    double x = position - i;
    return nodes[i - 1] * (x * (x - 1.0) * (x - 2.0) / -6.0)
        + nodes[i] * ((x + 1.0) * (x - 1.0) * (x - 2.0) / 2.0)
        + nodes[i + 1] * ((x + 1.0) * x * (x - 2.0) / -2.0)
        + nodes[i + 2] * ((x + 1.0) * x * (x - 1.0) / 6.0);
  }
}
