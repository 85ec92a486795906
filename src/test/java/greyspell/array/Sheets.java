package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Objects;
import java.util.Random;

/** Data sheets for tests; invented but for the first, whose figures a paper printed. */
final class Sheets {
  /** Villalva et al. (2009), table I: 54 cells. */
  static final ModuleSpec PV_1 =
      sheet(54, 8.21, 32.9, 7.61, 26.3, 0.0032 / 8.21, -0.123 / 32.9, -0.0045);

  /** A 60-cell sheet, own construction. */
  static final ModuleSpec PV_3 = sheet(60, 9.83, 39.8, 9.25, 32.5, 0.0005, -0.0031, -0.0038);

  /** 36 cells, own construction. */
  static final ModuleSpec PV_4 = sheet(36, 6.10, 22.3, 5.65, 17.7, 0.0006, -0.0035, -0.0043);

  /**
   * Sheets of the usual kinds, coefficients in %/K; invented, the figures typical of their kind.
   */
  static final List<ModuleSpec> USUAL =
      List.of(
          usual("LH-100P", 100, 22.3, 6, 18.2, 5.5, -0.4, -0.31, 0.06, 46, 36, 600.0, 0.66),
          usual("LH-165P", 165, 22.6, 9.58, 18.4, 8.97, -0.4, -0.31, 0.06, 46, 36, 600.0, 1.01),
          usual("LH-200M", 200, 24.3, 10.2, 20.4, 9.8, -0.36, -0.28, 0.05, 45, 36, 600.0, 1.12),
          usual("FG-260", 260, 38.1, 8.98, 31, 8.39, -0.41, -0.31, 0.05, 46, 60, 1000.0, 1.63),
          usual("FG-285", 285, 38.7, 9.55, 31.6, 9.02, -0.4, -0.31, 0.05, 45, 60, 1000.0, 1.63),
          usual("FG-330", 330, 46.2, 9.26, 37.5, 8.8, -0.4, -0.31, 0.05, 45, 72, 1000.0, 1.94),
          usual("OB-305M", 305, 40.1, 9.83, 32.9, 9.27, -0.38, -0.29, 0.05, 45, 60, 1000.0, 1.64),
          usual("OB-370H", 370, 41, 11.42, 34.3, 10.79, -0.35, -0.28, 0.05, 44, 60, 1000.0, 1.82),
          usual("OB-410H", 410, 37.4, 13.86, 31.5, 13.02, -0.34, -0.26, 0.05, 43, 54, 1500.0, 1.95),
          usual("OB-415T", 415, 38.6, 13.6, 32.4, 12.81, -0.29, -0.25, 0.045, 43, 54, 1500.0, 1.95),
          usual("TV-455H", 455, 49.6, 11.55, 41.6, 10.94, -0.35, -0.27, 0.05, 44, 72, 1500.0, 2.17),
          usual(
              "TV-540H", 540, 49.5, 13.85, 41.65, 12.97, -0.34, -0.26, 0.05, 43, 72, 1500.0, 2.58),
          usual("TV-430B", 430, 38.9, 13.95, 32.6, 13.19, -0.3, -0.25, 0.046, 43, 54, 1500.0, 1.95),
          usual(
              "TV-575B", 575, 51.9, 14.02, 43.4, 13.25, -0.29, -0.25, 0.045, 43, 72, 1500.0, 2.58),
          usual("QF-110", 110, 88, 1.86, 68.5, 1.606, -0.32, -0.28, 0.04, 45, 115, 1000.0, 0.72),
          usual("QF-155", 155, 66, 3.35, 53, 2.925, -0.35, -0.29, 0.02, 47, 96, 1000.0, 1.23),
          usual("AR-360V", 360, 69.5, 6.48, 59.1, 6.09, -0.29, -0.24, 0.05, 44, 96, 1000.0, 1.63));

  private Sheets() {}

  private static ModuleSpec usual(
      String name,
      double ratedPowerW,
      double voc,
      double isc,
      double vmp,
      double imp,
      double gamma,
      double beta,
      double alpha,
      double nominalC,
      int cells,
      double systemV,
      double areaM2) {
    return new ModuleSpec(
        name,
        ratedPowerW,
        voc,
        isc,
        vmp,
        imp,
        gamma / 100.0,
        beta / 100.0,
        alpha / 100.0,
        nominalC,
        cells,
        systemV,
        areaM2);
  }

  static ModuleSpec sheet(
      int cells,
      double isc,
      double voc,
      double imp,
      double vmp,
      double alpha,
      double beta,
      double gamma) {
    return new ModuleSpec(
        "test module", vmp * imp, voc, isc, vmp, imp, gamma, beta, alpha, 45.0, cells, null, null);
  }

  /** The curve of a sheet that must have one. */
  static SingleDiode diode(DiodeFit fit) {
    assertEquals("", fit.failure());
    return Objects.requireNonNull(fit.diode());
  }

  /**
   * A plausible silicon sheet, rounded as on stickers: every figure drawn on its own, so that they
   * need not come from one diode curve.
   */
  static ModuleSpec random(Random random) {
    int[] counts = {32, 36, 40, 48, 54, 60, 66, 72, 78, 96, 108, 120, 132, 144};
    int cells = counts[random.nextInt(counts.length)];
    double voc = round(cells * between(random, 0.58, 0.75), 10.0);
    double isc = round(between(random, 1.0, 19.0), 100.0);
    double vmp = round(voc * between(random, 0.79, 0.86), 10.0);
    double imp = round(isc * between(random, 0.91, 0.96), 100.0);
    double beta = round(between(random, -0.0038, -0.0022), 1e5);
    double alpha = round(between(random, 0.0002, 0.0007), 1e5);
    double gamma = round(beta - between(random, 0.0003, 0.0010), 1e5);
    return sheet(cells, isc, voc, imp, vmp, alpha, beta, gamma);
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private static double round(double value, double perUnit) {
    return Math.rint(value * perUnit) / perUnit;
  }
}
