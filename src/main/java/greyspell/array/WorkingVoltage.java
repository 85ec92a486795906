package greyspell.array;

/**
 * The part of its maximum power that a string gives at the voltage at which the controller lets it
 * work, hour after hour; remembers whether the controller has started today.
 *
 * <pre>
 * share = V I(V) / (Vmp Imp)        see {@link ControllerInput} for V
 *
 * V     voltage of one module: that of the string over the modules in it     V
 * share 0 where V is at or above the module's open-circuit voltage           1   0 .. 1
 * </pre>
 *
 * A tracking controller that has started goes on while the string can hold the low end of its
 * window, also in the heat of the afternoon, when its open-circuit voltage may lie below the start
 * voltage; darkness ends the day. Shade by near objects counts as weaker light on all modules, so
 * the summits at lower voltages that bypass diodes make are not seen here (see {@link PanelCurve}).
 * Held by ControllerInputTest.
 */
final class WorkingVoltage {
  private final ModulePower power;
  private final SingleDiode diode;
  // 0 where the power does not come from the curve
  private final double curveFactor;
  private final ControllerInput input;
  private final boolean isTracking;
  private final double inSeries;
  private final double lowV;
  private final double highV;
  private final double startV;
  private boolean isStarted;

  // of the hour in hand
  private final double[] five = new double[5];
  private double maxV;
  private double maxW;
  private double workingV;

  WorkingVoltage(ModulePower power, SingleDiode diode, int inSeries, ControllerInput input) {
    this.power = power;
    this.diode = diode;
    this.input = input;
    this.inSeries = inSeries;
    curveFactor = power instanceof SingleDiodePower curve ? curve.scaleFactor() : 0.0;
    isTracking = input.kind() == ControllerKind.MPPT;
    lowV = input.lowV() / inSeries;
    highV = input.highV() / inSeries;
    startV = input.startV() / inSeries;
  }

  /** An hour without light: the controller has to start anew. */
  void dark() {
    isStarted = false;
  }

  /** Most power of one module in an hour with light; opens that hour for {@link #powerShare}. */
  double openHour(double lightWm2, double cellC) {
    if (!(lightWm2 > 0.0)) {
      maxV = 0.0;
      maxW = 0.0;
      return 0.0;
    }
    diode.fill(lightWm2, cellC, five);
    double x = SingleDiode.maxPowerDiodeV(five[0], five[1], five[2], five[3], five[4]);
    // exp, for the saturation current is nothing beside the light's, and expm1 takes thrice as long
    double currentA = five[0] - five[1] * (Math.exp(x / five[4]) - 1.0) - x * five[3];
    maxV = x - currentA * five[2];
    maxW = maxV * currentA;
    return curveFactor > 0.0
        ? (maxW > 0.0 ? curveFactor * maxW : 0.0)
        : power.powerW(lightWm2, cellC);
  }

  /** Part of it that comes, in the hour opened last. */
  double powerShare(int hour, double lightWm2, double cellC) {
    workingV = maxV;
    if (!isTracking) {
      return shareAt(input.bankV(hour) / inSeries);
    }
    if (!isStarted) {
      // the open-circuit voltage lies above, so it need be known in a few hours only
      isStarted = maxV >= startV || diode.openCircuitV(lightWm2, cellC) >= startV;
      if (!isStarted) {
        return 0.0;
      }
    }
    if (maxV < lowV) {
      return shareAt(lowV);
    }
    return maxV > highV ? shareAt(highV) : 1.0;
  }

  /** Voltage of the string in the hour whose share was asked for last. */
  double stringV() {
    return workingV * inSeries;
  }

  private double shareAt(double voltageV) {
    workingV = voltageV;
    if (!(maxW > 0.0)) {
      return 0.0;
    }
    double gotW =
        voltageV * SingleDiode.currentA(five[0], five[1], five[2], five[3], five[4], voltageV);
    return gotW > 0.0 ? Math.min(1.0, gotW / maxW) : 0.0;
  }
}
