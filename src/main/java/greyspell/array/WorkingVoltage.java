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
  private final SingleDiode diode;
  private final ControllerInput input;
  private final boolean isTracking;
  private final double inSeries;
  private final double lowV;
  private final double highV;
  private final double startV;
  private boolean isStarted;

  WorkingVoltage(SingleDiode diode, int inSeries, ControllerInput input) {
    this.diode = diode;
    this.input = input;
    this.inSeries = inSeries;
    isTracking = input.kind() == ControllerKind.MPPT;
    lowV = input.lowV() / inSeries;
    highV = input.highV() / inSeries;
    startV = input.startV() / inSeries;
  }

  /** An hour without light: the controller has to start anew. */
  void dark() {
    isStarted = false;
  }

  /** For an hour with light. */
  double powerShare(int hour, double lightWm2, double cellC) {
    double maxV = diode.maxPowerV(lightWm2, cellC);
    if (!isTracking) {
      return shareAt(input.bankV(hour) / inSeries, maxV, lightWm2, cellC);
    }
    if (!isStarted) {
      // the open-circuit voltage lies above, so it need be known in a few hours only
      isStarted = maxV >= startV || diode.openCircuitV(lightWm2, cellC) >= startV;
      if (!isStarted) {
        return 0.0;
      }
    }
    if (maxV < lowV) {
      return shareAt(lowV, maxV, lightWm2, cellC);
    }
    return maxV > highV ? shareAt(highV, maxV, lightWm2, cellC) : 1.0;
  }

  private double shareAt(double voltageV, double maxV, double lightWm2, double cellC) {
    double mostW = maxV * diode.currentA(lightWm2, cellC, maxV);
    double gotW = voltageV * diode.currentA(lightWm2, cellC, voltageV);
    return gotW > 0.0 && mostW > 0.0 ? Math.min(1.0, gotW / mostW) : 0.0;
  }
}
