package greyspell.sky;

import greyspell.calendar.Monthly;
import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * Which published models turn weather into light on a tilted plane.
 *
 * @param clearSky light under a cloudless sky; used only where the weather has cloud cover and no
 *     irradiance
 * @param cloudDepth Kasten-Czeplak: share of clear light lost under a full cover, 0 to 1 (0.75 as
 *     published)
 * @param cloudExponent Kasten-Czeplak: exponent, 0.1 to 10 (3.4 as published)
 * @param cloudTable what cloud leaves of clear light, as measured; null for the Kasten-Czeplak
 *     curve
 * @param tilt how the light of the sky is spread over it
 * @param linkeTurbidity haze for Ineichen-Perez, by month, 1 (none) to 10; clean winter air about
 *     2, a usual place 3, hot or dirty air 5 (common practice, no source)
 * @param snowAlbedo ground albedo where snow lies deeper than a centimetre, 0 to 1; 0.6 is common
 *     practice for snow of some days, no source
 */
public record SkyChoices(
    ClearSky clearSky,
    double cloudDepth,
    double cloudExponent,
    @Nullable CloudTable cloudTable,
    Tilt tilt,
    Monthly linkeTurbidity,
    double snowAlbedo) {
  public SkyChoices {
    Check.share("cloudDepth", cloudDepth);
    Check.within("cloudExponent", cloudExponent, 0.1, 10.0);
    for (int month = 1; month <= 12; month++) {
      Check.within("linkeTurbidity", linkeTurbidity.in(month), 1.0, 10.0);
    }
    Check.share("snowAlbedo", snowAlbedo);
  }

  /** With the classic curve. */
  public SkyChoices(
      ClearSky clearSky,
      double cloudDepth,
      double cloudExponent,
      Tilt tilt,
      Monthly linkeTurbidity,
      double snowAlbedo) {
    this(clearSky, cloudDepth, cloudExponent, null, tilt, linkeTurbidity, snowAlbedo);
  }

  /** The same with a table in the place of the curve. */
  public SkyChoices withTable(@Nullable CloudTable table) {
    return new SkyChoices(
        clearSky, cloudDepth, cloudExponent, table, tilt, linkeTurbidity, snowAlbedo);
  }

  /** How cloud dims the light. */
  public enum Cloud {
    CLASSIC,
    TABLE
  }

  public enum ClearSky {
    HAURWITZ,
    INEICHEN_PEREZ
  }

  public enum Tilt {
    ISOTROPIC,
    HAY_DAVIES,
    PEREZ
  }

  /** What is used where the user says nothing. */
  public static SkyChoices usual() {
    return new SkyChoices(
        ClearSky.INEICHEN_PEREZ, 0.75, 3.4, Tilt.PEREZ, Monthly.constant(3.0), 0.6);
  }
}
