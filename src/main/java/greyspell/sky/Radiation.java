package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.weather.WeatherSeries;
import org.jspecify.annotations.Nullable;

/**
 * The light of each hour, parted into the sun's disc and the sky: taken from the weather where it
 * was measured, worked out where it was not.
 *
 * <pre>
 * weather has                  used
 * GHI, DNI and DHI             as they are; but an hour in which DNI cos z + DHI misses GHI by more than
 *                              50 W/m2 and more than a fifth of GHI is split anew from GHI (counted)
 * GHI and DHI                  DNI = (GHI - DHI) / cos z
 * GHI and DNI                  DHI = GHI - DNI cos z
 * GHI alone                    DHI by {@link ErbsSplit}, DNI = (GHI - DHI) / cos z
 * cloud cover alone            GHI = clear sky x {@link KastenCzeplak} or {@link CloudTable}, then as GHI alone
 *
 * kt = GHI / (I0n cos z sunlit share), held within 0 .. 1
 * </pre>
 *
 * <p>All three are means of the whole hour: DNI x cos z of the sun in the middle of the sunlit part
 * is what the beam brings on the level. Guards: a beam that was worked out is held below what the
 * clearest air (Linke turbidity 2, {@link IneichenPerezClearSky#beamLimitWm2}; our own choice, no
 * source) lets through, and what is above that goes to the sky light, so that a low sun makes no
 * giant beam and the sum on the level stays; a measured beam is held below the light above the air.
 * Light while the sun is down is sky light. Values below 0 (sensors at night) are 0. Where GHI, DNI
 * and DHI were measured and disagree by a few percent they are not mended: the plane is lit by DNI
 * and DHI, the ground by GHI.
 */
public final class Radiation {
  private static final double CLEAREST_LINKE = 2.0;
  private static final double CLOSURE_WM2 = 50.0;
  private static final double CLOSURE_FRACTION = 0.2;

  private final SunPath sun;
  private final double @Nullable [] measured;
  private final double[] globalHorizontalWm2;
  private final double[] directNormalWm2;
  private final double[] diffuseHorizontalWm2;
  private final double[] airMass;
  private int resplitHours;
  private double nightLightShare;

  public static Radiation of(WeatherSeries weather, SunPath sun, Site site, SkyChoices choices) {
    if (weather.hours() != sun.hours()) {
      throw new IllegalArgumentException(
          "weather of " + weather.hours() + " hours, sun of " + sun.hours());
    }
    var radiation = new Radiation(sun, weather.globalHorizontalWm2());
    radiation.again(weather, site, choices);
    return radiation;
  }

  /**
   * Works out all hours anew, over what it held, where the weather's own hours were written over.
   *
   * @param weather the same as before
   */
  public void again(WeatherSeries weather, Site site, SkyChoices choices) {
    double[] global = weather.globalHorizontalWm2();
    if (global != null) {
      for (int h = 0; h < global.length; h++) {
        globalHorizontalWm2[h] = global[h] > 0.0 ? global[h] : 0.0;
      }
      part(sun, site, weather.directNormalWm2(), weather.diffuseHorizontalWm2());
    } else {
      double[] fromCloud = fromCloud(weather, sun, site, choices);
      System.arraycopy(fromCloud, 0, globalHorizontalWm2, 0, fromCloud.length);
      part(sun, site, null, null);
    }
  }

  private Radiation(SunPath sun, double @Nullable [] measured) {
    this.sun = sun;
    this.measured = measured;
    int hours = sun.hours();
    globalHorizontalWm2 = new double[hours];
    directNormalWm2 = new double[hours];
    diffuseHorizontalWm2 = new double[hours];
    airMass = new double[hours];
    double[] sunlit = sun.sunlitShare();
    double[] cosZenith = sun.cosZenith();
    double[] zenithDeg = sun.zenithDeg();
    for (int h = 0; h < hours; h++) {
      if (sunlit[h] > 0.0) {
        airMass[h] = AirMass.relative(cosZenith[h], zenithDeg[h]);
      }
    }
  }

  /**
   * Global light from cloud cover alone, whatever else the weather has; the weather must have cloud
   * cover.
   */
  static double[] fromCloud(WeatherSeries weather, SunPath sun, Site site, SkyChoices choices) {
    double[] cloudShare = weather.cloudShare();
    if (cloudShare == null) {
      throw new IllegalArgumentException("weather without cloud cover");
    }
    double[] globalWm2 = CloudlessHours.globalWm2(sun, site.elevationM(), choices);
    HourCalendar calendar = sun.calendar();
    CloudTable table = choices.cloudTable();
    var curve = new KastenCzeplak(choices.cloudDepth(), choices.cloudExponent());
    double[] zenithDeg = sun.zenithDeg();
    for (int h = 0; h < globalWm2.length; h++) {
      if (globalWm2[h] > 0.0) {
        globalWm2[h] *=
            table == null
                ? curve.clearShare(cloudShare[h])
                : table.clearShare(
                    cloudShare[h],
                    90.0 - zenithDeg[h],
                    CloudTable.isWinter(calendar.month(h), site.isNorthern()));
      }
    }
    return globalWm2;
  }

  private void part(
      SunPath sun, Site site, double @Nullable [] direct, double @Nullable [] diffuse) {
    double[] sunlit = sun.sunlitShare();
    double[] cosZenith = sun.cosZenith();
    double[] aboveAir = sun.extraterrestrialNormalWm2();
    var clearest = new IneichenPerezClearSky(site.elevationM());
    double pressure = AirMass.pressurePa(site.elevationM()) / AirMass.SEA_LEVEL_PA;
    resplitHours = 0;
    double light = 0.0;
    double nightLight = 0.0;
    for (int h = 0; h < sunlit.length; h++) {
      double global = globalHorizontalWm2[h];
      light += global;
      if (sunlit[h] == 0.0) {
        diffuseHorizontalWm2[h] = global;
        nightLight += global;
        continue;
      }
      double cosZ = cosZenith[h];
      double ceiling = aboveAir[h] * sunlit[h];
      double beam = 0.0;
      double sky = 0.0;
      boolean isKnown = false;
      if (direct != null) {
        beam = direct[h] > 0.0 ? direct[h] : 0.0;
        beam = beam < ceiling ? beam : ceiling;
        if (diffuse != null) {
          sky = diffuse[h] > 0.0 ? diffuse[h] : 0.0;
          double miss = Math.abs(beam * cosZ + sky - global);
          isKnown = miss <= CLOSURE_WM2 || miss <= CLOSURE_FRACTION * global;
          if (!isKnown) {
            resplitHours++;
          }
        } else {
          beam = beam * cosZ < global ? beam : global / cosZ;
          sky = global - beam * cosZ;
          sky = sky > 0.0 ? sky : 0.0;
          isKnown = true;
        }
      }
      if (!isKnown) {
        if (diffuse != null && direct == null) {
          sky = diffuse[h] > 0.0 ? diffuse[h] : 0.0;
          sky = sky < global ? sky : global;
        } else {
          double kt = global / (ceiling * cosZ);
          sky = global * ErbsSplit.diffuseShare(kt);
        }
        beam = (global - sky) / cosZ;
        double most =
            sunlit[h] * clearest.beamLimitWm2(aboveAir[h], airMass[h] * pressure, CLEAREST_LINKE);
        if (beam > most) {
          beam = most;
          sky = global - beam * cosZ;
        }
      }
      directNormalWm2[h] = beam;
      diffuseHorizontalWm2[h] = sky;
    }
    nightLightShare = light > 0.0 ? nightLight / light : 0.0;
  }

  public double[] globalHorizontalWm2() {
    return globalHorizontalWm2;
  }

  /** Beam, square to it; mean of the whole hour. */
  public double[] directNormalWm2() {
    return directNormalWm2;
  }

  public double[] diffuseHorizontalWm2() {
    return diffuseHorizontalWm2;
  }

  /** Hours whose measured beam and sky light did not fit the global light and were not used. */
  public int resplitHours() {
    return resplitHours;
  }

  /**
   * Share of all global light that comes while the sun is down. Twilight alone stays below a
   * thousandth; more says that the weather's clock or place is not the site's.
   */
  public double nightLightShare() {
    return nightLightShare;
  }

  /**
   * What the clearest days say of the weather's clock; null where the light was worked out or too
   * few days are clear. Worked out when asked.
   */
  public @Nullable SunClock findSunClock() {
    double[] light = measured;
    return light == null ? null : SunClock.find(light, sun);
  }

  /** Relative optical air mass, 0 while the sun is down. */
  double[] airMass() {
    return airMass;
  }
}
