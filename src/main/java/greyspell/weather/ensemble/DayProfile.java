package greyspell.weather.ensemble;

/**
 * How a day's sunshine is shared among its hours on the average: more towards noon than above the
 * air, because low sun passes more of it.
 *
 * <pre>
 * rt = (pi/24) (a + b cos w) (cos w - cos ws) / (sin ws - ws cos ws)        share of the day's global irradiation in an hour
 * rd = (pi/24)               (cos w - cos ws) / (sin ws - ws cos ws)        of the diffuse, and of that above the air
 * a  = 0.409  + 0.5016 sin(ws - 60 deg)
 * b  = 0.6609 - 0.4767 sin(ws - 60 deg)
 * fc = a + 0.5 b (ws - sin ws cos ws) / (sin ws - ws cos ws)                rt / fc sums to 1
 *
 * w   hour angle in the middle of the hour   rad   -ws .. ws        ws   of sunset   rad   0 .. pi
 * </pre>
 *
 * Outside -ws .. ws both are zero.
 *
 * <p>Source: rt Collares-Pereira and Rabl (1979), rd Liu and Jordan (1960), fc Gueymard (1986);
 * formulas seen second-hand. Held by SynthesisPublishedTest.
 */
final class DayProfile {
  private static final double SIXTY_DEG = Math.PI / 3.0;

  private DayProfile() {}

  /** a + b cos w. */
  static double lift(double sunset, double hourAngle) {
    double sine = StrictMath.sin(sunset - SIXTY_DEG);
    return 0.409 + 0.5016 * sine + (0.6609 - 0.4767 * sine) * StrictMath.cos(hourAngle);
  }

  static double globalShare(double sunset, double hourAngle) {
    return lift(sunset, hourAngle) * diffuseShare(sunset, hourAngle);
  }

  static double diffuseShare(double sunset, double hourAngle) {
    double above = StrictMath.cos(hourAngle) - StrictMath.cos(sunset);
    double whole = StrictMath.sin(sunset) - sunset * StrictMath.cos(sunset);
    return above > 0.0 ? Math.PI / 24.0 * above / whole : 0.0;
  }

  /** fc: what rt sums to over the day. */
  static double sum(double sunset) {
    double sine = StrictMath.sin(sunset - SIXTY_DEG);
    double a = 0.409 + 0.5016 * sine;
    double b = 0.6609 - 0.4767 * sine;
    double s = StrictMath.sin(sunset);
    double c = StrictMath.cos(sunset);
    return a + 0.5 * b * (sunset - s * c) / (s - sunset * c);
  }
}
