package greyspell.sky;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The glass at a slant, worked out apart from the printed constants. */
class IncidenceLossPublishedTest implements PublishedChecks {
  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    double[] angles = {40, 60, 70, 80, 85};
    add(
        checks,
        IncidenceLoss.ASHRAE,
        "ASHRAE 93, b0 0.05",
        angles,
        new double[] {0.98473, 0.95000, 0.90381, 0.76206, 0.47631});
    add(
        checks,
        IncidenceLoss.MARTIN_RUIZ,
        "Martin and Ruiz (2001), Solar Energy Materials and Solar Cells 70, 25, ar 0.16",
        angles,
        new double[] {0.99359, 0.95791, 0.88377, 0.66348, 0.42081});
    add(
        checks,
        IncidenceLoss.PHYSICAL,
        "De Soto, Klein and Beckman (2006), Solar Energy 80, 78, n 1.526, K 4 per m, 2 mm",
        angles,
        new double[] {0.99301, 0.94600, 0.85972, 0.63412, 0.40088});
    String angle =
        "Brandemuehl and Beckman (1980), Solar Energy 24, 511, equation worked out apart"
            + " (from memory)";
    checks.add(
        new PublishedCheck(
            "sky",
            angle,
            "sky light at a tilt of 40 deg enters as at",
            "deg",
            56.54,
            0.01,
            () -> IncidenceLoss.skyAngleDeg(40.0)));
    checks.add(
        new PublishedCheck(
            "sky",
            angle,
            "ground light at a tilt of 40 deg enters as at",
            "deg",
            71.16,
            0.01,
            () -> IncidenceLoss.groundAngleDeg(40.0)));
    return checks;
  }

  private static void add(
      List<PublishedCheck> checks,
      IncidenceLoss glass,
      String source,
      double[] angles,
      double[] factors) {
    for (int i = 0; i < angles.length; i++) {
      double cos = Math.cos(Math.toRadians(angles[i]));
      checks.add(
          new PublishedCheck(
              "sky",
              source + ", equation worked out apart (from memory)",
              String.format(Locale.ROOT, "share of light let through at %.0f deg", angles[i]),
              "1",
              factors[i],
              1e-5,
              () -> glass.factor(cos)));
    }
  }
}
