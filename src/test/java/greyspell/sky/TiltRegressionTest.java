package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Own constructions, worked out apart from this program; not published values. */
class TiltRegressionTest {
  /** check TRN-5: sky light by three models and beam, I0n 1367. */
  @ParameterizedTest
  @CsvSource({
    "60, 180, 700, 100, 45, 180, 157.519, 140.572,  85.355, 676.148",
    "60, 135, 700, 100, 45, 180, 138.833, 122.203,  85.355, 550.596",
    "70, 120, 400, 120, 30, 200, 125.343, 117.986, 111.962, 151.114",
    "40, 180,  50, 250, 30, 180, 246.823, 236.477, 233.253,  49.240",
    "30, 180, 900,  80, 40, 180,  91.302,  84.027,  70.642, 886.327",
    "85, 110, 200,  40, 60, 150,  97.093,  72.914,  30.000, 140.893",
  })
  void skyLightByThreeModels(
      double zenithDeg,
      double azimuthDeg,
      double direct,
      double diffuse,
      double tiltDeg,
      double planeAzimuthDeg,
      double perez,
      double hayDavies,
      double isotropic,
      double beam) {
    Direction sun = Direction.ofAngles(zenithDeg, azimuthDeg);
    for (var model : SkyChoices.Tilt.values()) {
      double sky =
          switch (model) {
            case ISOTROPIC -> isotropic;
            case HAY_DAVIES -> hayDavies;
            case PEREZ -> perez;
          };
      var plane =
          new TiltedPlane(model, IncidenceLoss.PHYSICAL, Horizon.OPEN, tiltDeg, planeAzimuthDeg);
      double mass = AirMass.relative(sun.up(), zenithDeg);
      plane.sunStands(sun.east(), sun.north(), sun.up(), zenithDeg, mass, 1.0);
      double global = direct * sun.up() + diffuse;
      plane.fall(global, direct, diffuse, 1367.0, 0.2);
      assertEquals(sky, plane.aroundWm2 + plane.evenWm2, 0.01, "" + model);
      assertEquals(beam, plane.beamWm2, 0.01);
      double floor = 0.5 * (1.0 - Math.cos(Math.toRadians(tiltDeg)));
      assertEquals(0.2 * global * floor, plane.groundWm2, 1e-9);
    }
  }

  /** check TRN-3: eps 1.28, Delta .34, F1 .255, F2 .005, 1.37 MJ/m2 (statement opened). */
  @Test
  void theTextbooksPerezHour() {
    Direction sun = Direction.ofBook(40.0, 51, 9.5);
    double global = 1.04 / 0.0036;
    double diffuse = 0.796 / 0.0036;
    double direct = (global - diffuse) / sun.up();
    double z = Math.toRadians(sun.zenithDeg());
    double mass = AirMass.relative(sun.up(), sun.zenithDeg());
    double light = Extraterrestrial.normalWm2(51);
    double clearness = PerezSky.clearness(diffuse, direct, z);
    assertEquals(1.28, clearness, 0.01);
    double brightness = diffuse * mass / light;
    assertEquals(0.34, brightness, 0.01);
    int row = PerezSky.row(clearness);
    assertEquals(0.255, PerezSky.circumsolarShare(row, brightness, z), 0.005);
    assertEquals(0.005, PerezSky.horizonShare(row, brightness, z), 0.002);
    var plane =
        new TiltedPlane(SkyChoices.Tilt.PEREZ, IncidenceLoss.PHYSICAL, Horizon.OPEN, 60.0, 180.0);
    plane.sunStands(sun.east(), sun.north(), sun.up(), sun.zenithDeg(), mass, 1.0);
    plane.fall(global, direct, diffuse, light, 0.6);
    assertEquals(1.37, plane.frontWm2() * 0.0036, 0.02);
  }

  /** Trap: a copy with +0.0139754 circulates. */
  @Test
  void theFourthRowOfPerezFallsWithTheZenith() {
    int row = PerezSky.row(1.7);
    assertEquals(3, row);
    assertEquals(
        -0.0139754,
        PerezSky.horizonShare(row, 0.2, 1.0) - PerezSky.horizonShare(row, 0.2, 0.0),
        1e-12);
  }

  @Test
  void rowsOfPerezBeginAtTheirLowerEdge() {
    double[] edges = {1.0, 1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2};
    for (int i = 0; i < edges.length; i++) {
      assertEquals(i, PerezSky.row(edges[i]));
    }
    assertEquals(7, PerezSky.row(Double.POSITIVE_INFINITY));
  }

  @Test
  void noSkyLightNoNumbersThatAreNone() {
    var plane =
        new TiltedPlane(SkyChoices.Tilt.PEREZ, IncidenceLoss.PHYSICAL, Horizon.OPEN, 60.0, 180.0);
    plane.sunStands(0.0, -0.6, 0.8, 36.9, 1.25, 1.0);
    plane.fall(0.0, 0.0, 0.0, 1367.0, 0.2);
    assertEquals(0.0, plane.frontWm2());
    plane.fall(640.0, 800.0, 0.0, 1367.0, 0.2);
    assertTrue(plane.frontWm2() > 640.0 && plane.absorbedWm2() < plane.frontWm2());
    plane.sunIsDown();
    plane.fall(5.0, 0.0, 5.0, 0.0, 0.2);
    assertEquals(5.0 * 0.75 + 0.2 * 5.0 * 0.25, plane.frontWm2(), 1e-12);
  }
}
