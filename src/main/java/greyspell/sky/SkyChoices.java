package greyspell.sky;

import greyspell.calendar.Monthly;

/**
 * Which published models turn weather into light on a tilted plane.
 *
 * @param cloudDepth Kasten-Czeplak: share of clear light lost under a full cover (0.75 as
 *     published)
 * @param cloudExponent Kasten-Czeplak: exponent (3.4 as published)
 * @param linkeTurbidity for Ineichen-Perez, by month
 * @param snowAlbedo ground albedo where snow lies
 */
public record SkyChoices(
    ClearSky clearSky,
    double cloudDepth,
    double cloudExponent,
    Tilt tilt,
    Monthly linkeTurbidity,
    double snowAlbedo) {
  public enum ClearSky {
    HAURWITZ,
    INEICHEN_PEREZ
  }

  public enum Tilt {
    ISOTROPIC,
    HAY_DAVIES,
    PEREZ
  }

  public static SkyChoices usual() {
    return new SkyChoices(
        ClearSky.INEICHEN_PEREZ, 0.75, 3.4, Tilt.PEREZ, Monthly.constant(3.0), 0.6);
  }
}
