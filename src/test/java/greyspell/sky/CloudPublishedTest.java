package greyspell.sky;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

/** Cloud derating, worked out apart from the printed constants. */
class CloudPublishedTest implements PublishedChecks {
  private static final String SOURCE =
      "Kasten and Czeplak (1980), Solar Energy 24, 177, equation worked out apart";

  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    double[] left = {1, 0.9994, 0.9933, 0.9733, 0.9290, 0.8483, 0.7180, 0.5237, 0.2500};
    KastenCzeplak cloud = KastenCzeplak.asPublished();
    for (int okta = 0; okta <= 8; okta++) {
      double share = okta / 8.0;
      checks.add(
          new PublishedCheck(
              "sky",
              SOURCE,
              "light left under " + okta + " eighths of cloud",
              "1",
              left[okta],
              1e-4,
              () -> cloud.clearShare(share)));
    }
    double[][] clear = {{10, 128.0}, {30, 425.0}, {60, 758.1}, {90, 880.0}, {1.8, 0.0}};
    for (double[] row : clear) {
      double cos = Math.sin(Math.toRadians(row[0]));
      checks.add(
          new PublishedCheck(
              "sky",
              SOURCE,
              "clear sky of the same paper at a height of " + row[0] + " deg",
              "W/m2",
              row[1],
              0.1,
              () -> KastenCzeplak.clearSkyWm2(cos)));
    }
    double[] diffuse = {0.3000, 0.3438, 0.4750, 0.6938, 1.0000};
    for (int i = 0; i < diffuse.length; i++) {
      double share = i / 4.0;
      checks.add(
          new PublishedCheck(
              "sky",
              SOURCE + " (from memory)",
              "diffuse share under " + 2 * i + " eighths of cloud",
              "1",
              diffuse[i],
              1e-4,
              () -> KastenCzeplak.diffuseShare(share)));
    }
    return checks;
  }
}
