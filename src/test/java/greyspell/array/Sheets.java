package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Objects;
import java.util.Random;

/** Data sheets for tests; invented but for the first, whose figures a paper printed. */
final class Sheets {
  /** Villalva et al. (2009), table I: 54 cells. */
  static final ModuleSpec PV_1 =
      sheet(54, 8.21, 32.9, 7.61, 26.3, 0.0032 / 8.21, -0.123 / 32.9, -0.0045);

  /** CHECKBOOK-style 60-cell sheet, own construction. */
  static final ModuleSpec PV_3 = sheet(60, 9.83, 39.8, 9.25, 32.5, 0.0005, -0.0031, -0.0038);

  /** 36 cells, own construction. */
  static final ModuleSpec PV_4 = sheet(36, 6.10, 22.3, 5.65, 17.7, 0.0006, -0.0035, -0.0043);

  private Sheets() {}

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
