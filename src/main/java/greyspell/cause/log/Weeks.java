package greyspell.cause.log;

/**
 * The hours of a log, seen beside expected: what all fits read. The arrays are not written.
 *
 * <p>{@code expectedSolarWh} and {@code expectedLoadWh} are at the points at which the log measured
 * them.
 */
public final class Weeks {
  /** Most hours that a clock is looked for before and after. */
  public static final int WIDER_H = 14;

  private static final double NEAR_EMPTY_SHARE = 0.03;

  /** Hourly arrays, and the bank. */
  public static final class Columns {
    /** At the start of each hour, and at the end of the last. */
    public double[] chargeShare = {};

    public double[] solarWh = {};
    public double[] loadWh = {};
    public double[] batteryWh = {};
    public double[] generatorWh = {};

    /** Without the weather of the same weeks: empty. */
    public double[] expectedSolarWh = {};

    /** The same with {@link #WIDER_H} more hours before and after. */
    public double[] widerSolarWh = {};

    /** Part of the light on the panels that comes straight from the sun. */
    public double[] directShare = {};

    /** Hours in which the controller is at its limit. */
    public boolean[] atLimit = {};

    /** Most that bank and house together take in this hour. */
    public double[] mostTakenWh = {};

    public double[] expectedLoadWh = {};

    /** Off the bus, from the load that was seen; where none was, from the expected. */
    public double[] drawWh = {};

    /** What the bank holds when full, as the scenario has it. */
    public double contentWh;

    public double chargeEfficiency = 1.0;
    public double dischargeEfficiency = 1.0;

    /** Below this charge the bank takes what it gets. */
    public double freeBelowShare = 0.95;

    /** Charge at which nothing more can be drawn in this hour: the reserve, and what cold locks. */
    public double[] emptyShare = {};
  }

  final long firstHour;
  final int hours;
  final Columns of;
  private final int firstDay;
  private final double[] emptyShare;
  private final LightsOut lightsOut;

  /** The first hour counts from 1970 on the site's clock. */
  public Weeks(long firstHour, Columns columns) {
    this.firstHour = firstHour;
    of = columns;
    hours = columns.solarWh.length;
    emptyShare = columns.emptyShare.clone();
    lightsOut = LightsOut.raise(columns, emptyShare);
    firstDay = (int) Math.floorDiv(firstHour, 24L);
  }

  /** Not to be written. */
  public Columns columns() {
    return of;
  }

  boolean hasWeather() {
    return of.expectedSolarWh.length > 0;
  }

  static boolean isAnyKnown(double[] values) {
    for (double v : values) {
      if (!Double.isNaN(v)) {
        return true;
      }
    }
    return false;
  }

  /** Day of the log, from 0. */
  int day(int hour) {
    return (int) (Math.floorDiv(firstHour + hour, 24L) - firstDay);
  }

  int days() {
    return hours == 0 ? 0 : day(hours - 1) + 1;
  }

  int hourOfDay(int hour) {
    return (int) Math.floorMod(firstHour + hour, 24L);
  }

  /** Where the log does not say, none is taken to have run: many write a cell only when it does. */
  boolean isGeneratorOff(int hour) {
    double wh = of.generatorWh[hour];
    return Double.isNaN(wh) || wh < 1.0;
  }

  /** Hours in which the house got nothing. */
  public LightsOut lightsOut() {
    return lightsOut;
  }

  /** Whether loads may have been cut off in this hour. */
  boolean isNearEmpty(int hour) {
    double lower = Math.min(of.chargeShare[hour], of.chargeShare[hour + 1]);
    return lower < emptyShare[hour] + NEAR_EMPTY_SHARE;
  }

  boolean isChargeKnown(int hour) {
    return !Double.isNaN(of.chargeShare[hour]) && !Double.isNaN(of.chargeShare[hour + 1]);
  }
}
