package greyspell.sky;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

/** Light on a tilted plane, held against a textbook's hours. */
class TiltPublishedTest implements PublishedChecks {
  private static final String BOOK =
      "Duffie, Beckman and Blair (2020), Solar Engineering of Thermal Processes, ";
  private static final double MJ_PER_W = 0.0036;

  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    String source = BOOK + "ex. 2.15.1 (printed answer from memory)";
    String what = "40 N, 20 Feb 9 to 10 h, slope 60 south, 1.04 MJ/m2, albedo 0.6: ";
    Direction sun = Direction.ofBook(40.0, 51, 9.5);
    double global = 1.04 / MJ_PER_W;
    double kt = global / (Extraterrestrial.normalWm2(51) * sun.up());
    double diffuse = global * ErbsSplit.diffuseShare(kt);
    var plane =
        new TiltedPlane(
            SkyChoices.Tilt.ISOTROPIC, IncidenceLoss.PHYSICAL, Horizon.OPEN, 60.0, 180.0);
    plane.sunStands(sun.east(), sun.north(), sun.up(), sun.zenithDeg(), 2.0, 1.0);
    plane.fall(global, (global - diffuse) / sun.up(), diffuse, Extraterrestrial.normalWm2(51), 0.6);
    double[] got = {
      plane.beamWm2 * MJ_PER_W,
      plane.evenWm2 * MJ_PER_W,
      plane.groundWm2 * MJ_PER_W,
      plane.frontWm2() * MJ_PER_W
    };
    String[] names = {"beam", "sky", "ground", "all"};
    double[] printed = {0.418, 0.597, 0.156, 1.17};
    for (int i = 0; i < got.length; i++) {
      double value = got[i];
      checks.add(
          new PublishedCheck(
              "sky", source, what + names[i], "MJ/m2", printed[i], 0.01, () -> value));
    }
    checks.add(new PublishedCheck("sky", source, what + "clearness", "1", 0.445, 0.01, () -> kt));
    checks.add(
        new PublishedCheck(
            "sky",
            source,
            what + "slanted over level beam",
            "1",
            1.71,
            0.01,
            () -> sun.beamRatio(60.0, 180.0)));

    String sunrise = BOOK + "ex. 2.14.1 (printed answer from memory)";
    checks.add(
        new PublishedCheck(
            "sky",
            sunrise,
            "45 N, 4 Mar, slope 60: slanted over level beam at 6:30, a sun on the horizon",
            "1",
            44.0,
            0.02 * 44.0,
            () -> Direction.ofBook(45.0, 63, 6.5).beamRatio(60.0, 180.0)));
    double rise = 12.0 - SunPublishedTest.sunsetDeg(45.0, SunPublishedTest.declinationDeg(63)) / 15;
    checks.add(
        new PublishedCheck(
            "sky",
            sunrise,
            "the same from sunrise to 7:00, by the sun in the middle of the sunlit part",
            "1",
            4.6,
            0.02 * 4.6,
            () -> Direction.ofBook(45.0, 63, 0.5 * (rise + 7.0)).beamRatio(60.0, 180.0)));
    return checks;
  }
}
