package greyspell.sky;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

/** Beam and sky light. */
class SplitPublishedTest implements PublishedChecks {
  private static final String ERBS =
      "Erbs, Klein and Duffie (1982), Solar Energy 28, 293, equation worked out apart";
  private static final String BOOK =
      "Duffie, Beckman and Blair (2020), Solar Engineering of Thermal Processes, ";

  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    double[] kt = {0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8};
    double[] hourly = {0.9820, 0.9486, 0.8400, 0.6591, 0.4395, 0.2440, 0.1653};
    for (int i = 0; i < kt.length; i++) {
      double k = kt[i];
      checks.add(
          new PublishedCheck(
              "sky",
              ERBS,
              "diffuse share of an hour, clearness " + k,
              "1",
              hourly[i],
              1e-4,
              () -> ErbsSplit.diffuseShare(k)));
    }
    double[] clearness = {0.3, 0.5, 0.7};
    double[] winter = {0.8920, 0.5688, 0.1641};
    double[] other = {0.8778, 0.6083, 0.2357};
    for (int i = 0; i < clearness.length; i++) {
      double k = clearness[i];
      checks.add(
          new PublishedCheck(
              "sky",
              ERBS,
              "diffuse share of a winter day, clearness " + k,
              "1",
              winter[i],
              1e-4,
              () -> ErbsSplit.dailyDiffuseShare(k, 81.4)));
      checks.add(
          new PublishedCheck(
              "sky",
              ERBS,
              "diffuse share of another day, clearness " + k,
              "1",
              other[i],
              1e-4,
              () -> ErbsSplit.dailyDiffuseShare(k, 81.5)));
    }
    String september = BOOK + "ex. 2.11.1 (printed answer from memory)";
    double sep = 23.0 / SunPublishedTest.dailyAboveAirMJm2(38.6, 246);
    double sepSunset = SunPublishedTest.sunsetDeg(38.6, SunPublishedTest.declinationDeg(246));
    checks.add(
        new PublishedCheck(
            "sky", september, "38.6 N, 3 Sep, 23 MJ/m2: clearness", "1", 0.69, 0.01, () -> sep));
    checks.add(
        new PublishedCheck(
            "sky",
            september,
            "the same: sky light of the day",
            "MJ/m2",
            5.8,
            0.1,
            () -> 23.0 * ErbsSplit.dailyDiffuseShare(sep, sepSunset)));
    String june = BOOK + "ex. 2.12.1 (printed answer from memory)";
    double jun = 23.0 / SunPublishedTest.dailyAboveAirMJm2(43.0, 162);
    checks.add(
        new PublishedCheck(
            "sky", june, "43 N, June, 23 MJ/m2: clearness", "1", 0.55, 0.01, () -> jun));
    checks.add(
        new PublishedCheck(
            "sky",
            june,
            "43 N, mean day of June: sunset hour angle",
            "deg",
            113.4,
            0.1,
            () -> SunPublishedTest.sunsetDeg(43.0, SunPublishedTest.declinationDeg(162))));
    return checks;
  }
}
