package greyspell.sky;

/**
 * Share of the evenly bright sky that a plane still sees above the land around it.
 *
 * <pre>
 * share = sum over compass and height above the land of max(0, n . d) cos(height)
 *         / the same sum above the level
 *
 * n   direction to which the plane looks;  d  direction in the sky
 * </pre>
 *
 * <p>Sums over a grid of 2.5 degrees around and 1.5 degrees up, in which a step that the skyline
 * cuts counts by the part that is clear; worked out once a plane. The land is taken as dark: a
 * sunny slope or snow opposite gives light that is not counted. 1 for an open horizon.
 */
final class SkyView {
  private static final int AROUND = 144;
  private static final int UP = 60;

  private SkyView() {}

  static double clearShare(Horizon horizon, double tiltDeg, double azimuthDeg) {
    if (horizon.isOpen()) {
      return 1.0;
    }
    double planeUp = SunGeometry.planeUp(tiltDeg);
    double planeNorth = SunGeometry.planeNorth(tiltDeg, azimuthDeg);
    double planeEast = SunGeometry.planeEast(tiltDeg, azimuthDeg);
    double stepUp = 90.0 / UP;
    var cosHeight = new double[UP];
    var sinHeight = new double[UP];
    for (int j = 0; j < UP; j++) {
      double height = Math.toRadians((j + 0.5) * stepUp);
      cosHeight[j] = Math.cos(height);
      sinHeight[j] = Math.sin(height);
    }
    double all = 0.0;
    double clear = 0.0;
    for (int i = 0; i < AROUND; i++) {
      double towards = (i + 0.5) * 360.0 / AROUND;
      double sideways =
          planeNorth * Math.cos(Math.toRadians(towards))
              + planeEast * Math.sin(Math.toRadians(towards));
      double land = horizon.heightDeg(towards);
      for (int j = 0; j < UP; j++) {
        double facing = sideways * cosHeight[j] + planeUp * sinHeight[j];
        if (facing > 0.0) {
          double light = facing * cosHeight[j];
          all += light;
          double above = (j + 1) - land / stepUp;
          if (above >= 1.0) {
            clear += light;
          } else if (above > 0.0) {
            clear += above * light;
          }
        }
      }
    }
    return all > 0.0 ? clear / all : 1.0;
  }
}
