package greyspell.array;

/**
 * Current, voltage and power of a module at any light and temperature, from the five-parameter
 * single-diode curve.
 *
 * <pre>
 * I   = IL - I0 [exp((V + I Rs) / a) - 1] - (V + I Rs) / Rsh
 * a   = ar Tc / Tr
 * IL  = (G / 1000) [ILr + alpha (Tc - Tr)]
 * I0  = I0r (Tc / Tr)^3 exp{(1/k) [Egr / Tr - Eg / Tc]},   Eg = Egr [1 - 0.0002677 (Tc - Tr)]
 * Rsh = Rshr 1000 / G
 * Rs  = Rsr + rho (Tc - Tr), never below 0
 *
 * G      light that reaches the cells          W/m²   0 .. 1500
 * Tc     cell temperature                      K      233 .. 363;  Tr = 298.15 K
 * IL     light current                         A      I0   saturation current   A
 * Rs     series resistance                     Ohm    Rsh  shunt resistance     Ohm
 * a      modified ideality                     V
 * alpha  change of short-circuit current       A/K
 * Egr    band gap at Tr                        eV     1.121 for silicon
 * k      Boltzmann constant                    8.617333e-5 eV/K
 * rho    change of series resistance           Ohm/K  0 in the source
 * </pre>
 *
 * The last line is ours: with rho = 0 (as in the source) the power coefficient follows from the
 * others and misses the sheet's by some per cent; {@link DataSheetFit#of} sets rho so that it is
 * met, which leaves open-circuit voltage, short-circuit current and low light as the source has
 * them.
 *
 * <p>With x = V + I Rs, the voltage over the diode, both I and V = x - I Rs are explicit, so the
 * maximum-power point is the root of one function of x, found by Newton steps. No light gives
 * zeros. Above the stated range the equations are used as they stand. Not for partly shaded
 * modules.
 *
 * <p>Source: De Soto, Klein, Beckman (2006), Improvement and validation of a model for photovoltaic
 * array performance, Solar Energy 80, 78-88 (from memory). Held by ArrayPublishedTest,
 * SingleDiodeTest and SingleDiodeLawTest.
 */
public final class SingleDiode {
  static final double SILICON_BAND_GAP_EV = 1.121;
  static final double BOLTZMANN_EV_PER_K = 8.617333e-5;
  private static final double BAND_GAP_PER_K = -0.0002677;
  private static final double ICE_POINT_K = 273.15;
  static final double REFERENCE_K = TestConditions.CELL_C + ICE_POINT_K;
  private static final double LAST_STEP = 1e-3;
  private static final int MOST_STEPS = 60;

  private final DiodeParameters reference;
  private final double shortCircuitAPerK;
  private final double bandGapEv;
  private final double seriesOhmPerK;

  SingleDiode(
      DiodeParameters reference, double shortCircuitAPerK, double bandGapEv, double seriesOhmPerK) {
    this.reference = reference;
    this.shortCircuitAPerK = shortCircuitAPerK;
    this.bandGapEv = bandGapEv;
    this.seriesOhmPerK = seriesOhmPerK;
  }

  /** At 1000 W/m² and 25 °C. */
  public DiodeParameters reference() {
    return reference;
  }

  public double bandGapEv() {
    return bandGapEv;
  }

  /** rho. */
  public double seriesOhmPerK() {
    return seriesOhmPerK;
  }

  /** Translated to this light and temperature; light above 0. */
  public DiodeParameters at(double irradianceWm2, double cellC) {
    double kelvin = cellC + ICE_POINT_K;
    double share = irradianceWm2 / TestConditions.IRRADIANCE_WM2;
    return new DiodeParameters(
        lightA(share, cellC),
        reference.saturationA() * saturationFactor(bandGapEv, kelvin),
        seriesOhm(cellC),
        reference.shuntOhm() / share,
        reference.idealityV() * kelvin / REFERENCE_K);
  }

  /** Power at the maximum-power point. */
  public double maxPowerW(double irradianceWm2, double cellC) {
    if (!(irradianceWm2 > 0.0)) {
      return 0.0;
    }
    double kelvin = cellC + ICE_POINT_K;
    double share = irradianceWm2 / TestConditions.IRRADIANCE_WM2;
    double il = lightA(share, cellC);
    double i0 = reference.saturationA() * saturationFactor(bandGapEv, kelvin);
    double rs = seriesOhm(cellC);
    double gsh = share / reference.shuntOhm();
    double a = reference.idealityV() * kelvin / REFERENCE_K;
    double x = maxPowerDiodeV(il, i0, rs, gsh, a);
    double current = il - i0 * (Math.exp(x / a) - 1.0) - x * gsh; // as WorkingVoltage has it
    double power = current * (x - current * rs);
    return power > 0.0 ? power : 0.0;
  }

  /** Voltage at the maximum-power point; 0 without light. */
  public double maxPowerV(double irradianceWm2, double cellC) {
    return maxPower(irradianceWm2, cellC).voltageV();
  }

  /** IL, I0, Rs, 1 / Rsh and a under light, for those who need several points of one curve. */
  void fill(double irradianceWm2, double cellC, double[] five) {
    double kelvin = cellC + ICE_POINT_K;
    double share = irradianceWm2 / TestConditions.IRRADIANCE_WM2;
    five[0] = lightA(share, cellC);
    five[1] = reference.saturationA() * saturationFactor(bandGapEv, kelvin);
    five[2] = seriesOhm(cellC);
    five[3] = share / reference.shuntOhm();
    five[4] = reference.idealityV() * kelvin / REFERENCE_K;
  }

  /** The maximum-power point. */
  public CurvePoint maxPower(double irradianceWm2, double cellC) {
    if (!(irradianceWm2 > 0.0)) {
      return new CurvePoint(0.0, 0.0);
    }
    DiodeParameters p = at(irradianceWm2, cellC);
    double gsh = 1.0 / p.shuntOhm();
    double x = maxPowerDiodeV(p.lightA(), p.saturationA(), p.seriesOhm(), gsh, p.idealityV());
    double current = diodeCurrentA(p, x);
    return new CurvePoint(x - current * p.seriesOhm(), current);
  }

  public double openCircuitV(double irradianceWm2, double cellC) {
    if (!(irradianceWm2 > 0.0)) {
      return 0.0;
    }
    DiodeParameters p = at(irradianceWm2, cellC);
    // Without shunt this is the answer; with one the answer lies below, and Newton steps from above
    // a falling, hollow-down function never overshoot.
    double x = p.idealityV() * Math.log1p(p.lightA() / p.saturationA());
    for (int step = 0; step < MOST_STEPS; step++) {
      double next = x - diodeCurrentA(p, x) / diodeSlopeS(p, x);
      if (!(Math.abs(next - x) > 1e-13 * Math.abs(x))) {
        return next;
      }
      x = next;
    }
    return x;
  }

  public double shortCircuitA(double irradianceWm2, double cellC) {
    return currentA(irradianceWm2, cellC, 0.0);
  }

  /**
   * Current at a voltage between the module's ends. Negative above open circuit (the module would
   * draw) and above the short-circuit current below 0 V; no breakdown in reverse.
   */
  public double currentA(double irradianceWm2, double cellC, double voltageV) {
    if (!(irradianceWm2 > 0.0)) {
      return 0.0;
    }
    double kelvin = cellC + ICE_POINT_K;
    double share = irradianceWm2 / TestConditions.IRRADIANCE_WM2;
    return currentA(
        lightA(share, cellC),
        reference.saturationA() * saturationFactor(bandGapEv, kelvin),
        seriesOhm(cellC),
        share / reference.shuntOhm(),
        reference.idealityV() * kelvin / REFERENCE_K,
        voltageV);
  }

  /** Current at a voltage, from the five numbers; the shunt as conductance. */
  static double currentA(double il, double i0, double rs, double gsh, double a, double voltageV) {
    // x - I(x) Rs rises with x and is hollow-up: Newton comes down to the root from above, and a
    // start below it only jumps above it first. Starting no higher than need be keeps the steps
    // few.
    double x = voltageV + il * rs;
    double ceilingV = a * Math.log1p(il / i0);
    if (x > ceilingV) {
      x = Math.max(ceilingV, voltageV);
    }
    for (int step = 0; step < MOST_STEPS; step++) {
      double grown = i0 * Math.expm1(x / a);
      double residual = x - (il - grown - x * gsh) * rs - voltageV;
      double next = x - residual / (1.0 + ((grown + i0) / a + gsh) * rs);
      if (!(Math.abs(next - x) > 1e-14 * (Math.abs(x) + a))) {
        x = next;
        break;
      }
      x = next;
    }
    return il - i0 * Math.expm1(x / a) - x * gsh;
  }

  /**
   * Voltage over the diode at a current, from the five numbers; minus infinity where no voltage
   * drives such a current.
   */
  static double diodeVoltageV(double il, double i0, double gsh, double a, double currentA) {
    double above = il - currentA;
    if (!(above + i0 > 0.0) && gsh == 0.0) {
      return Double.NEGATIVE_INFINITY;
    }
    // I(x) falls and is hollow-down: Newton from the right never overshoots. Without shunt the
    // logarithm is the answer; a shunt moves it left of there.
    double x = above > 0.0 ? a * Math.log1p(above / i0) : 0.0;
    for (int step = 0; step < MOST_STEPS; step++) {
      double grown = i0 * Math.expm1(x / a);
      double next = x + (above - grown - x * gsh) / ((grown + i0) / a + gsh);
      if (!(Math.abs(next - x) > 1e-14 * (Math.abs(x) + a))) {
        return next;
      }
      x = next;
    }
    return x;
  }

  /** Growth of the saturation current from 25 °C. */
  static double saturationFactor(double bandGapEv, double kelvin) {
    double warmer = kelvin / REFERENCE_K;
    return warmer * warmer * warmer * Math.exp(bandGapEv * perBandGapEv(kelvin));
  }

  /** What the band gap is multiplied with in the exponent. */
  static double perBandGapEv(double kelvin) {
    double shrunk = 1.0 + BAND_GAP_PER_K * (kelvin - REFERENCE_K);
    return (1.0 / REFERENCE_K - shrunk / kelvin) / BOLTZMANN_EV_PER_K;
  }

  /**
   * Voltage over the diode at maximum power: root of dP/dx = I + x I' - 2 Rs I I'. The start solves
   * it without resistances to first order; Halley's steps, of which two are mostly enough where
   * Newton takes four.
   */
  static double maxPowerDiodeV(double il, double i0, double rs, double gsh, double a) {
    // both far above 1: the plain logarithm says the same as log1p, in a third of the time
    double openV = a * Math.log(1.0 + il / i0);
    double x = openV - a * Math.log(1.0 + openV / a);
    double low = 0.0;
    double high = openV;
    for (int step = 0; step < MOST_STEPS; step++) {
      double grown = i0 * Math.exp(x / a);
      double current = il + i0 - grown - x * gsh;
      double slope = -grown / a - gsh;
      double bend = -grown / (a * a);
      double value = current + x * slope - 2.0 * rs * current * slope;
      if (value > 0.0) {
        low = x;
      } else {
        high = x;
      }
      double valueSlope = 2.0 * slope + x * bend - 2.0 * rs * (slope * slope + current * bend);
      double valueBend =
          3.0 * bend + x * bend / a - 2.0 * rs * (3.0 * slope * bend + current * bend / a);
      double newton = value / valueSlope;
      double next = x - newton / (1.0 - 0.5 * newton * valueBend / valueSlope);
      if (!(next >= low && next <= high)) {
        next = 0.5 * (low + high); // the power has one summit between 0 and open circuit
      }
      // A step of 1e-3 a leaves about its cube, and the power is flat at its summit.
      if (Math.abs(next - x) <= LAST_STEP * a) {
        return next;
      }
      x = next;
    }
    return x;
  }

  private double lightA(double share, double cellC) {
    return share * (reference.lightA() + shortCircuitAPerK * (cellC - TestConditions.CELL_C));
  }

  private double seriesOhm(double cellC) {
    double ohm = reference.seriesOhm() + seriesOhmPerK * (cellC - TestConditions.CELL_C);
    return ohm > 0.0 ? ohm : 0.0;
  }

  private static double diodeCurrentA(DiodeParameters p, double x) {
    return p.lightA() - p.saturationA() * Math.expm1(x / p.idealityV()) - x / p.shuntOhm();
  }

  private static double diodeSlopeS(DiodeParameters p, double x) {
    return -p.saturationA() / p.idealityV() * Math.exp(x / p.idealityV()) - 1.0 / p.shuntOhm();
  }
}
