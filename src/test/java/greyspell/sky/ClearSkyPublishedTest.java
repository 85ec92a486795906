package greyspell.sky;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Clear skies. The formulas' printed constants are the source; the values were worked out from them
 * a second time, apart from this program.
 */
class ClearSkyPublishedTest implements PublishedChecks {
  private static final String INEICHEN =
      "Ineichen and Perez (2002), Solar Energy 73, 151, equations worked out apart";

  private final List<PublishedCheck> checks = new ArrayList<>();

  @Override
  public List<PublishedCheck> checks() {
    String kasten = "Kasten and Young (1989), Applied Optics 28, 4735, equation worked out apart";
    double[] heights = {90, 60, 45, 30, 20, 10, 5, 2, 1, 0};
    double[] masses = {
      0.9997, 1.1540, 1.4126, 1.9943, 2.9031, 5.5860, 10.3058, 19.4332, 26.3106, 37.9196
    };
    for (int i = 0; i < heights.length; i++) {
      double z = 90.0 - heights[i];
      double cos = Math.cos(Math.toRadians(z));
      checks.add(
          new PublishedCheck(
              "sky",
              kasten,
              String.format(Locale.ROOT, "air mass at a height of %.0f deg", heights[i]),
              "1",
              masses[i],
              1e-4,
              () -> AirMass.relative(cos, z)));
    }
    String haurwitz = "Haurwitz (1945), exponent 0.059, equation worked out apart (from memory)";
    double[] zeniths = {0, 30, 60, 75, 85};
    double[] globals = {1035.09, 888.27, 487.89, 226.25, 48.63};
    for (int i = 0; i < zeniths.length; i++) {
      double cos = Math.cos(Math.toRadians(zeniths[i]));
      checks.add(
          new PublishedCheck(
              "sky",
              haurwitz,
              String.format(Locale.ROOT, "clear sky, zenith %.0f deg", zeniths[i]),
              "W/m2",
              globals[i],
              0.01,
              () -> HaurwitzClearSky.globalWm2(cos)));
    }
    ineichen(30, 0, 3, 898.74, 918.47, 103.32);
    ineichen(60, 0, 3, 470.66, 789.54, 75.89);
    ineichen(75, 0, 3, 197.26, 569.12, 49.96);
    ineichen(60, 0, 5, 403.34, 551.41, 127.63);
    ineichen(30, 1650, 3, 987.91, 996.66, 124.78);
    ineichen(60, 1650, 2, 542.11, 1017.44, 33.39);
    return checks;
  }

  private void ineichen(double z, double elevationM, double linke, double g, double b, double d) {
    var sky = new IneichenPerezClearSky(elevationM);
    double cos = Math.cos(Math.toRadians(z));
    double mass = AirMass.relative(cos, z) * AirMass.pressurePa(elevationM) / AirMass.SEA_LEVEL_PA;
    double global = sky.globalWm2(1367.0, cos, mass, linke);
    double beam = sky.directNormalWm2(1367.0, cos, mass, linke);
    String what =
        String.format(Locale.ROOT, "zenith %.0f deg, %.0f m, Linke %.0f: ", z, elevationM, linke);
    checks.add(new PublishedCheck("sky", INEICHEN, what + "GHI", "W/m2", g, 0.02, () -> global));
    checks.add(new PublishedCheck("sky", INEICHEN, what + "DNI", "W/m2", b, 0.02, () -> beam));
    checks.add(
        new PublishedCheck(
            "sky", INEICHEN, what + "DHI", "W/m2", d, 0.02, () -> global - beam * cos));
  }
}
