package greyspell.sky;

/**
 * One tilted plane under one sky at a time: beam, light around the sun, even sky and ground.
 *
 * <pre>
 * beam   = DNI a v
 * around = DHI F1 v a / cos z
 * even   = DHI s max(0, (1 - F1)(1 + cos b)/2 + F2 sin b)
 * ground = rho G (1 - cos b)/2
 * G      = GHI - DNI cos z (1 - v) - DHI (1 - s0), not below 0
 * front  = beam + around + even + ground
 * absorbed: each part times its {@link IncidenceLoss}; the light around the sun as the beam
 *
 *              F1                              F2
 * ISOTROPIC    0                               0
 * HAY_DAVIES   DNI / I0n, at most 1            0
 * PEREZ        {@link PerezSky}                {@link PerezSky}
 *
 * a    max(0, cosine of the angle between beam and normal)
 * b    tilt, 0 .. 90 deg
 * rho  share of light that the ground reflects, 0 .. 1
 * v    share of the time in which the sun stands above the land, 0 .. 1
 * s    share of the even sky that the plane sees above the land ({@link SkyView}); s0 of a level plane
 * I0n  light above the air, square to the beam, in the same mean as DNI
 * </pre>
 *
 * <p>Guards: where DHI is 0, F1 = F2 = 0. Below 5 degrees of sun F1 is lowered by cos z / cos 85
 * deg, which bounds the light around the sun as Perez' a / max(cos 85 deg, cos z) does and gives
 * the rest back to the even sky, so that a level plane receives DNI cos z + DHI exactly.
 *
 * <p>Sources: Liu and Jordan (1963), Solar Energy 7, 53 for ISOTROPIC; Hay and Davies (1980); Perez
 * et al. (1990); as quoted in Duffie, Beckman and Blair (2020), ch. 2.15 and 2.16. Held by
 * TiltPublishedTest, TiltRegressionTest and, with real weather, TransposedYearsTest.
 *
 * <p>One object serves all hours of a plane, so that no hour allocates.
 */
final class TiltedPlane {
  private static final double LOWEST_COS_ZENITH = Math.cos(Math.toRadians(85.0));

  private final SkyChoices.Tilt model;
  private final IncidenceLoss glass;
  private final double planeUp;
  private final double planeNorth;
  private final double planeEast;
  private final double sinTilt;
  private final double dome;
  private final double floor;
  private final double skyShare;
  private final double levelSkyShare;
  private final double skyGlass;
  private final double groundGlass;

  private double cosZenith;
  private double zenithDeg;
  private double airMass;
  private double facing;
  private double clear;

  double beamWm2;
  double aroundWm2;
  double evenWm2;
  double groundWm2;

  TiltedPlane(
      SkyChoices.Tilt model,
      IncidenceLoss glass,
      Horizon horizon,
      double tiltDeg,
      double azimuthDeg) {
    this.model = model;
    this.glass = glass;
    planeUp = SunGeometry.planeUp(tiltDeg);
    planeNorth = SunGeometry.planeNorth(tiltDeg, azimuthDeg);
    planeEast = SunGeometry.planeEast(tiltDeg, azimuthDeg);
    sinTilt = Math.sin(Math.toRadians(tiltDeg));
    dome = 0.5 * (1.0 + planeUp);
    floor = 0.5 * (1.0 - planeUp);
    skyShare = SkyView.clearShare(horizon, tiltDeg, azimuthDeg);
    levelSkyShare = SkyView.clearShare(horizon, 0.0, 0.0);
    skyGlass = glass.skyFactor(tiltDeg);
    groundGlass = glass.groundFactor(tiltDeg);
  }

  /** Where the sun stands; the direction as east, north and up (cosine of the zenith angle). */
  void sunStands(
      double east, double north, double cosZenith, double zenithDeg, double airMass, double clear) {
    this.cosZenith = cosZenith;
    this.zenithDeg = zenithDeg;
    this.airMass = airMass;
    this.clear = clear;
    double a = cosZenith * planeUp + east * planeEast + north * planeNorth;
    facing = a > 0.0 ? a : 0.0;
  }

  void sunIsDown() {
    cosZenith = 0.0;
    facing = 0.0;
    clear = 0.0;
  }

  /** What falls on the plane; {@link #sunStands} or {@link #sunIsDown} first. */
  void fall(double global, double direct, double diffuse, double aboveAir, double albedo) {
    double around = 0.0;
    double band = 0.0;
    if (cosZenith > 0.0 && diffuse > 0.0) {
      if (model == SkyChoices.Tilt.PEREZ) {
        double z = Math.toRadians(zenithDeg);
        int row = PerezSky.row(PerezSky.clearness(diffuse, direct, z));
        double brightness = diffuse * airMass / aboveAir;
        around = PerezSky.circumsolarShare(row, brightness, z);
        band = PerezSky.horizonShare(row, brightness, z);
      } else if (model == SkyChoices.Tilt.HAY_DAVIES) {
        around = direct < aboveAir ? direct / aboveAir : 1.0;
      }
      if (cosZenith < LOWEST_COS_ZENITH) {
        around *= cosZenith / LOWEST_COS_ZENITH;
      }
    }
    beamWm2 = direct * facing * clear;
    aroundWm2 = around > 0.0 ? diffuse * around * clear * facing / cosZenith : 0.0;
    double even = (1.0 - around) * dome + band * sinTilt;
    evenWm2 = even > 0.0 ? diffuse * skyShare * even : 0.0;
    double onGround = global - direct * cosZenith * (1.0 - clear) - diffuse * (1.0 - levelSkyShare);
    groundWm2 = onGround > 0.0 ? albedo * onGround * floor : 0.0;
  }

  double frontWm2() {
    return beamWm2 + aroundWm2 + evenWm2 + groundWm2;
  }

  double absorbedWm2() {
    return (beamWm2 + aroundWm2) * glass.factor(facing)
        + evenWm2 * skyGlass
        + groundWm2 * groundGlass;
  }
}
