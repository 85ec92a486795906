package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import java.util.List;
import org.junit.jupiter.api.Test;

class HorizonTest {
  private static final Horizon THREE =
      new Horizon(
          List.of(
              new Horizon.Point(225.0, 20.0),
              new Horizon.Point(135.0, 10.0),
              new Horizon.Point(180.0, 4.0)));

  @Test
  void runsStraightBetweenPointsInAnyOrder() {
    assertEquals(10.0, THREE.heightDeg(135.0));
    assertEquals(7.0, THREE.heightDeg(157.5), 1e-12);
    assertEquals(12.0, THREE.heightDeg(202.5), 1e-12);
  }

  @Test
  void runsOnThroughNorth() {
    // from 20 deg at 225 to 10 deg at 135 + 360, 270 degrees around
    assertEquals(20.0 - 10.0 * 135.0 / 270.0, THREE.heightDeg(0.0), 1e-12);
    assertEquals(THREE.heightDeg(0.0), THREE.heightDeg(360.0), 1e-12);
    assertEquals(THREE.heightDeg(300.0), THREE.heightDeg(-60.0), 1e-12);
    assertEquals(THREE.heightDeg(90.0), THREE.heightDeg(450.0), 1e-12);
  }

  @Test
  void oneOrNoPoint() {
    assertEquals(0.0, Horizon.OPEN.heightDeg(77.0));
    assertTrue(Horizon.OPEN.isOpen());
    assertEquals(5.0, new Horizon(List.of(new Horizon.Point(90.0, 5.0))).heightDeg(271.0));
    assertFalse(THREE.isOpen());
    assertEquals(20.0, THREE.highestDeg());
  }

  @Test
  void northMayBeGivenTwice() {
    var horizon = new Horizon(List.of(new Horizon.Point(0.0, 3.0), new Horizon.Point(360.0, 3.0)));
    assertEquals(3.0, horizon.heightDeg(0.0));
    assertEquals(3.0, horizon.heightDeg(180.0));
  }

  @Test
  void refusesWhatIsNoHorizon() {
    assertThrows(IllegalArgumentException.class, () -> new Horizon.Point(361.0, 5.0));
    assertThrows(IllegalArgumentException.class, () -> new Horizon.Point(90.0, 91.0));
    assertThrows(IllegalArgumentException.class, () -> new Horizon.Point(90.0, Double.NaN));
    var twice = List.of(new Horizon.Point(90.0, 5.0), new Horizon.Point(90.0, 6.0));
    assertThrows(IllegalArgumentException.class, () -> new Horizon(twice));
  }

  /** A wall of height h all around leaves a level plane cos^2 h of an even sky. */
  @Test
  void aWallAllAroundLeavesTheKnownShareOfTheSky() {
    for (double height : new double[] {5.0, 12.3, 30.0, 60.0}) {
      var wall = new Horizon(List.of(new Horizon.Point(0.0, height)));
      double cos = Math.cos(Math.toRadians(height));
      assertEquals(cos * cos, SkyView.clearShare(wall, 0.0, 0.0), 1e-3);
    }
    assertEquals(1.0, SkyView.clearShare(Horizon.OPEN, 45.0, 180.0));
    var roof = new Horizon(List.of(new Horizon.Point(0.0, 90.0)));
    assertEquals(0.0, SkyView.clearShare(roof, 45.0, 180.0), 1e-12);
  }

  @Test
  void aWallInFrontTakesMoreThanOneBehind() {
    double south = SkyView.clearShare(only(180.0), 60.0, 180.0);
    double north = SkyView.clearShare(only(0.0), 60.0, 180.0);
    assertTrue(south < north && north <= 1.0 && south > 0.5, south + " " + north);
  }

  private static Horizon only(double towardsDeg) {
    return new Horizon(
        List.of(
            new Horizon.Point(towardsDeg, 30.0),
            new Horizon.Point((towardsDeg + 90.0) % 360.0, 0.0),
            new Horizon.Point((towardsDeg + 180.0) % 360.0, 0.0),
            new Horizon.Point((towardsDeg + 270.0) % 360.0, 0.0)));
  }

  @Test
  void theSunIsCutWhereItStandsBelowTheLand() {
    SunPath sun = SunPath.of(47.6, 0.0, 0.0, HourCalendar.typicalYear());
    double[] clear = sun.clearOf(THREE);
    int cut = 0;
    int parts = 0;
    for (int h = 0; h < clear.length; h++) {
      if (sun.sunlitShare()[h] == 0.0) {
        assertEquals(0.0, clear[h]);
        continue;
      }
      double above = 90.0 - sun.zenithDeg()[h] - THREE.heightDeg(sun.azimuthDeg(h));
      // in a half hour the sun moves 7.5 degrees, and the land rises by at most half as much
      if (above > 12.0) {
        assertEquals(1.0, clear[h]);
      } else if (above < -12.0) {
        assertEquals(0.0, clear[h]);
        cut++;
      } else if (clear[h] > 0.0 && clear[h] < 1.0) {
        parts++;
      }
    }
    assertTrue(cut > 100 && parts > 300, cut + " " + parts);
  }
}
