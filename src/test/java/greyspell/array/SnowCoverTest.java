package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SnowCoverTest {
  private static final int HOURS = 30;

  private static double[] all(double value) {
    var array = new double[HOURS];
    Arrays.fill(array, value);
    return array;
  }

  /** Ten centimetres fall in the third hour and stay on the ground. */
  private static double[] depthM() {
    double[] depth = all(0.10);
    depth[0] = depth[1] = 0.0;
    return depth;
  }

  @Test
  void slidesBySineOfTiltWhereItIsMildEnough() {
    double[] got = SnowCover.coveredShare(depthM(), all(1.0), all(0.0), 30.0);
    double each = 0.197 * 0.5;
    assertEquals(0.0, got[1]);
    assertEquals(1.0, got[2]);
    assertEquals(1.0 - each, got[3], 1e-12);
    assertEquals(1.0 - 4 * each, got[6], 1e-12);
    assertEquals(0.0, got[13]);
  }

  /** At -5 °C it needs 400 W/m² of light. */
  @Test
  void staysInTheColdUnlessTheSunLoosensIt() {
    assertEquals(1.0, SnowCover.coveredShare(depthM(), all(-5.0), all(399.0), 45.0)[HOURS - 1]);
    double[] got = SnowCover.coveredShare(depthM(), all(-5.0), all(401.0), 45.0);
    assertEquals(1.0 - 0.197 * Math.sqrt(0.5), got[3], 1e-12);
  }

  @Test
  void aFlatPlaneKeepsItUntilTheGroundIsBare() {
    double[] depth = depthM();
    Arrays.fill(depth, 20, HOURS, 0.0);
    double[] got = SnowCover.coveredShare(depth, all(3.0), all(100.0), 0.0);
    assertEquals(1.0, got[19]);
    assertEquals(0.0, got[20]);
  }

  @Test
  void lightSnowIsNotSeen() {
    var depth = new double[HOURS];
    for (int h = 1; h < HOURS; h++) {
      depth[h] = depth[h - 1] + 0.009;
    }
    assertArrayEquals(new double[HOURS], SnowCover.coveredShare(depth, all(-10.0), all(0.0), 45.0));
  }
}
