package greyspell.array;

import java.util.ArrayList;
import java.util.Locale;

/**
 * Finds the single-diode curve behind a data sheet.
 *
 * <pre>
 * (1) I = Isc at V = 0        (2) I = 0 at V = Voc        (3) I = Imp at V = Vmp, all at 1000 W/m², 25 °C
 * (4) dP/dV = 0 at Vmp:  Imp = (Vmp - Imp Rs) g,   g = (I0/a) exp((Vmp + Imp Rs) / a) + 1/Rsh
 * (5) Voc (1 + 10 K beta) is the open-circuit voltage at 35 °C
 * (6) Vmp Imp (1 + 10 K gamma) is the maximum power at 35 °C        ({@link #of} only)
 *
 * beta, gamma  changes of open-circuit voltage and of power, 1/K     (alpha enters with IL)
 * </pre>
 *
 * For a given a and Rs, (1) to (3) are linear in I0 and 1/Rsh; (4) then falls through zero once as
 * Rs goes from 0 to (Voc - Vmp) / Imp; and the band gap that (5) asks for falls as a grows, so that
 * a is where it passes that of silicon. A quick search from a good guess is tried first; behind it
 * stand two nested bracketed roots, which cannot diverge. Where silicon's band gap would ask for a
 * negative resistance, a stays at the edge of what is possible and the band gap takes the value
 * that still meets (5): a caution says so when it strays far. (6) sets the temperature slope of Rs,
 * which (1) to (5) do not see.
 *
 * <p>Refused with a reason: sheets whose maximum-power point no such curve can have. Sources: (1)
 * to (5) De Soto, Klein, Beckman (2006), Solar Energy 80, 78-88 (from memory); the order of
 * solving, the free band gap and (6) are ours. Held by SingleDiodeTest and SingleDiodeLawTest.
 */
public final class DataSheetFit {
  private static final double STEP_K = 10.0;
  // Voc / a is 20 to 35 for silicon, about the logarithm of IL / I0; this is far outside both ways.
  private static final double SHARPEST_A_SHARE = 1.0 / 200.0;
  private static final double BLUNTEST_A_SHARE = 1.0 / 5.0;
  private static final int ROUNDS = 3;
  private static final double HOTTEST_RISE_K = 50.0; // cells at 75 °C
  private static final double USUAL_BAND_GAP_LOW_EV = 0.95;
  private static final double USUAL_BAND_GAP_HIGH_EV = 1.35;

  private DataSheetFit() {}

  /** All three coefficients are met; (1) to (6). */
  public static DiodeFit of(ModuleSpec module) {
    return fit(module, true);
  }

  /**
   * As published, (1) to (5): constant series resistance; the sheet's power coefficient is not
   * used.
   */
  public static DiodeFit deSoto(ModuleSpec module) {
    return fit(module, false);
  }

  private static DiodeFit fit(ModuleSpec module, boolean isPowerCoefficientMet) {
    var curve = new Curve(module);
    double a = quickSiliconA(curve);
    if (Double.isNaN(a)) {
      double sharpest = module.openCircuitV() * SHARPEST_A_SHARE;
      double bluntest =
          bluntestPossibleA(curve, sharpest, module.openCircuitV() * BLUNTEST_A_SHARE);
      if (Double.isNaN(bluntest)) {
        return DiodeFit.failed(
            "no solar cell's curve has its maximum power at "
                + number(module.maxPowerV() / module.openCircuitV())
                + " of the open-circuit voltage and "
                + number(module.maxPowerA() / module.shortCircuitA())
                + " of the short-circuit current");
      }
      a = siliconA(curve, sharpest, bluntest);
      curve.solve(a);
    }
    double bandGapEv = curve.bandGapEv();
    var cautions = new ArrayList<String>();
    if (!(bandGapEv >= USUAL_BAND_GAP_LOW_EV && bandGapEv <= USUAL_BAND_GAP_HIGH_EV)) {
      cautions.add(
          "module "
              + module.name()
              + ": the temperature coefficient of its open-circuit voltage does not suit its other"
              + " figures; is one of them mistyped?");
    }
    double slopeOhmPerK = 0.0;
    if (isPowerCoefficientMet) {
      // A changing series resistance moves the short-circuit current by a trace, which matters
      // beside its small coefficient; each round leaves a hundredth of the miss.
      for (int round = 0; round < ROUNDS; round++) {
        slopeOhmPerK = seriesOhmPerK(module, curve, bandGapEv);
        curve.holdShortCircuitCoefficient(slopeOhmPerK, bandGapEv);
        bandGapEv = curve.bandGapEv();
      }
      if (slopeOhmPerK * HOTTEST_RISE_K < -curve.seriesOhm) {
        cautions.add(
            "module "
                + module.name()
                + ": its power coefficient of "
                + number(100.0 * module.powerPerK())
                + " %/K does not suit its other figures; is one of them mistyped?");
      }
    }
    return new DiodeFit(
        new SingleDiode(curve.parameters(), curve.lightAPerK, bandGapEv, slopeOhmPerK),
        cautions,
        "");
  }

  /**
   * Secant steps from a first guess; nearly all sheets end here. NaN, with nothing lost, where a
   * step needs a negative resistance or the steps do not settle. Leaves the curve solved.
   */
  private static double quickSiliconA(Curve curve) {
    double a = curve.firstGuessA();
    double olderA = Double.NaN;
    double olderMiss = Double.NaN;
    for (int step = 0; step < 12; step++) {
      if (!(a > 0.0) || !curve.solve(a)) {
        return Double.NaN;
      }
      double miss = curve.bandGapEv() - SingleDiode.SILICON_BAND_GAP_EV;
      if (Math.abs(miss) < 1e-12) {
        return a;
      }
      double next = step == 0 ? a * 0.999 : a - miss * (a - olderA) / (miss - olderMiss);
      olderA = a;
      olderMiss = miss;
      a = next;
    }
    return Double.NaN;
  }

  /** Largest a that needs no negative resistance; NaN if even the sharpest does. */
  private static double bluntestPossibleA(Curve curve, double sharpest, double bluntest) {
    if (curve.solve(bluntest)) {
      return bluntest;
    }
    if (!curve.solve(sharpest)) {
      return Double.NaN;
    }
    double possible = sharpest;
    double impossible = bluntest;
    while (impossible - possible > 1e-13 * impossible) {
      double middle = 0.5 * (possible + impossible);
      if (!(middle > possible && middle < impossible)) {
        break;
      }
      if (curve.solve(middle)) {
        possible = middle;
      } else {
        impossible = middle;
      }
    }
    return possible;
  }

  /** The a at which (5) asks for silicon's band gap, or the nearer end. */
  private static double siliconA(Curve curve, double sharpest, double bluntest) {
    double low = sharpest;
    double high = bluntest;
    double lowMiss = miss(curve, low);
    double highMiss = miss(curve, high);
    if (!(highMiss < 0.0)) {
      return high;
    }
    if (!(lowMiss > 0.0)) {
      return low;
    }
    // False position on 1/a, in which the band gap is nearly straight; the stale end is weakened
    // (Illinois rule) so that both ends close in.
    for (int step = 0; step < 200 && high - low > 1e-14 * high; step++) {
      double inverse = (lowMiss / high - highMiss / low) / (lowMiss - highMiss);
      double middle = 1.0 / inverse;
      if (!(middle > low && middle < high)) {
        middle = 0.5 * (low + high);
      }
      double middleMiss = miss(curve, middle);
      if (Math.abs(middleMiss) < 1e-12) {
        return middle;
      }
      if (middleMiss > 0.0) {
        low = middle;
        lowMiss = middleMiss;
        highMiss *= 0.5;
      } else {
        high = middle;
        highMiss = middleMiss;
        lowMiss *= 0.5;
      }
    }
    return 0.5 * (low + high);
  }

  private static double miss(Curve curve, double a) {
    curve.solve(a);
    return curve.bandGapEv() - SingleDiode.SILICON_BAND_GAP_EV;
  }

  /**
   * Slope that meets (6): at the maximum-power point dP/dRs = -I². Held where it would turn the
   * resistance negative 10 K above test conditions.
   */
  private static double seriesOhmPerK(ModuleSpec module, Curve curve, double bandGapEv) {
    double warmC = TestConditions.CELL_C + STEP_K;
    double wantedW = module.maxPowerV() * module.maxPowerA() * (1.0 + STEP_K * module.powerPerK());
    double least = -curve.seriesOhm / STEP_K;
    double slopeOhmPerK = 0.0;
    for (int step = 0; step < 30; step++) {
      var diode = new SingleDiode(curve.parameters(), curve.lightAPerK, bandGapEv, slopeOhmPerK);
      CurvePoint got = diode.maxPower(TestConditions.IRRADIANCE_WM2, warmC);
      double excessW = got.powerW() - wantedW;
      double next =
          Math.max(least, slopeOhmPerK + excessW / (got.currentA() * got.currentA()) / STEP_K);
      if (Math.abs(excessW) < 1e-9 * wantedW || next == slopeOhmPerK) {
        return next;
      }
      slopeOhmPerK = next;
    }
    return slopeOhmPerK;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }

  /** Solves (1) to (4) for one a; work space of one fit. */
  private static final class Curve {
    double lightAPerK; // alpha of IL, at first that of Isc
    private final double isc;
    private final double warmIsc;
    private final double voc;
    private final double imp;
    private final double vmp;
    private final double warmVoc;
    private double a;
    double seriesOhm;
    private double scaledSaturationA; // I0 exp(Voc / a): of the size of Isc, where I0 is 1e-10
    private double shuntS;

    Curve(ModuleSpec module) {
      isc = module.shortCircuitA();
      voc = module.openCircuitV();
      imp = module.maxPowerA();
      vmp = module.maxPowerV();
      lightAPerK = module.shortCircuitPerK() * isc;
      warmIsc = isc + lightAPerK * STEP_K;
      warmVoc = voc * (1.0 + STEP_K * module.openCircuitPerK());
    }

    /** From (5) with I0 = Isc exp(-Voc / a) and no shunt, to first order. */
    double firstGuessA() {
      double kelvin = SingleDiode.REFERENCE_K;
      double growthPerK =
          SingleDiode.SILICON_BAND_GAP_EV * SingleDiode.perBandGapEv(kelvin + STEP_K) / STEP_K
              + 3.0 / kelvin
              - lightAPerK / isc;
      return (voc / kelvin - (warmVoc - voc) / STEP_K) / growthPerK;
    }

    /** True if both resistances come out 0 or more. */
    boolean solve(double wantedA) {
      a = wantedA;
      double low = 0.0;
      double lowMiss = slopeMiss(low);
      if (!(lowMiss >= 0.0)) {
        return false;
      }
      double high = (voc - vmp) / imp * (1.0 - 1e-9);
      double highMiss = slopeMiss(high);
      if (!(highMiss < 0.0)) {
        return false;
      }
      for (int step = 0; step < 200 && high - low > 1e-15 * high; step++) {
        double middle = (low * highMiss - high * lowMiss) / (highMiss - lowMiss);
        if (!(middle > low && middle < high)) {
          middle = 0.5 * (low + high);
          if (!(middle > low && middle < high)) {
            break;
          }
        }
        double middleMiss = slopeMiss(middle);
        if (Math.abs(middleMiss) < 1e-14 * imp) {
          break;
        }
        if (middleMiss > 0.0) {
          low = middle;
          lowMiss = middleMiss;
          highMiss *= 0.5;
        } else {
          high = middle;
          highMiss = middleMiss;
          lowMiss *= 0.5;
        }
      }
      return shuntS >= 0.0 && scaledSaturationA > 0.0;
    }

    /** (1) to (3) for this Rs, and by how much (4) is missed. */
    private double slopeMiss(double rs) {
      seriesOhm = rs;
      double atShort = Math.exp((isc * rs - voc) / a);
      double atMax = Math.exp((vmp + imp * rs - voc) / a);
      double a11 = 1.0 - atShort;
      double a12 = voc - isc * rs;
      double a21 = atMax - atShort;
      double a22 = vmp + imp * rs - isc * rs;
      double determinant = a11 * a22 - a12 * a21;
      scaledSaturationA = (isc * a22 - a12 * (isc - imp)) / determinant;
      shuntS = (a11 * (isc - imp) - a21 * isc) / determinant;
      double slopeS = scaledSaturationA / a * atMax + shuntS;
      return imp - (vmp - imp * rs) * slopeS;
    }

    double saturationA() {
      return scaledSaturationA * Math.exp(-voc / a);
    }

    double lightA() {
      return saturationA() * Math.expm1(voc / a) + voc * shuntS;
    }

    /** The band gap that meets (5). */
    double bandGapEv() {
      double warmK = SingleDiode.REFERENCE_K + STEP_K;
      double warmer = warmK / SingleDiode.REFERENCE_K;
      double warmLightA = lightA() + lightAPerK * STEP_K;
      double warmSaturationA = (warmLightA - warmVoc * shuntS) / Math.expm1(warmVoc / (a * warmer));
      double growth = Math.log(warmSaturationA / (saturationA() * warmer * warmer * warmer));
      return growth / SingleDiode.perBandGapEv(warmK);
    }

    /** Sets the slope of IL so that Isc has the sheet's coefficient at 35 °C. */
    void holdShortCircuitCoefficient(double slopeOhmPerK, double bandGapEv) {
      double warmK = SingleDiode.REFERENCE_K + STEP_K;
      double warmOhm = seriesOhm + slopeOhmPerK * STEP_K;
      double warmA = a * warmK / SingleDiode.REFERENCE_K;
      double warmSaturationA = saturationA() * SingleDiode.saturationFactor(bandGapEv, warmK);
      double warmLightA =
          warmIsc
              + warmSaturationA * Math.expm1(warmIsc * warmOhm / warmA)
              + warmIsc * warmOhm * shuntS;
      lightAPerK = (warmLightA - lightA()) / STEP_K;
    }

    DiodeParameters parameters() {
      return new DiodeParameters(lightA(), saturationA(), seriesOhm, 1.0 / shuntS, a);
    }
  }
}
