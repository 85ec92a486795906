package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Check;
import java.util.List;

/**
 * What the sky of a season is usually like, and the light of each hour with part of the cloud, or
 * the shortness of the days, left out.
 *
 * <pre>
 * c = G / Gc                                      share of the cloudless light that came
 * u = sum of G / sum of Gc                        usual share: over the days within 15 of the day of the
 *                                                 year, of all years
 * left out               level light
 * cloud beyond the usual Gc u                     every day is the season's mean day
 * usual cloud            Gc min(1, c / u)         but never below G
 * both                   Gc                       a clear sky, but never below G
 * short days             the same with the midsummer sun's Gc, and c of the whole day
 *
 * G    global light on the level        W/m2
 * Gc   the same without a cloud         W/m2      {@link CloudlessHours}
 * </pre>
 *
 * <p>Own bookkeeping: the parts of c multiply, u times c / u, so that the usual cloud and what came
 * beyond it stand apart. A day without any sun has the usual share of its season. Of one year alone
 * the usual sky is the mean of its own month around the day. What was measured of beam and sky
 * light is not used: the light is split anew. Held by UsualSkyTest.
 */
public final class UsualSky {
  private static final int DAYS = 366;
  private static final int REACH_DAYS = 15;

  private final Site site;
  private final SkyChoices choices;
  private final double[] usualShare;

  private UsualSky(Site site, SkyChoices choices, double[] usualShare) {
    this.site = site;
    this.choices = choices;
    this.usualShare = usualShare;
  }

  /** Which part of the sky is left out. */
  public record LeftOut(boolean isUsualCloud, boolean isMoreCloud, boolean isShortDays) {
    public boolean isNothing() {
      return !isUsualCloud && !isMoreCloud && !isShortDays;
    }
  }

  /** Of all years of all series; the two lists belong together, one or more. */
  public static UsualSky of(
      List<Radiation> came, List<SunPath> suns, Site site, SkyChoices choices) {
    Check.within("suns", suns.size(), came.size(), came.size());
    var cameWm2 = new double[DAYS];
    var cloudlessWm2 = new double[DAYS];
    for (int i = 0; i < came.size(); i++) {
      double[] global = came.get(i).globalHorizontalWm2();
      double[] cloudless = CloudlessHours.globalWm2(suns.get(i), site.elevationM(), choices);
      HourCalendar calendar = suns.get(i).calendar();
      for (int h = 0; h < global.length; h++) {
        cameWm2[calendar.dayOfYear(h) - 1] += cloudless[h] > 0.0 ? global[h] : 0.0;
        cloudlessWm2[calendar.dayOfYear(h) - 1] += cloudless[h];
      }
    }
    return new UsualSky(site, choices, smooth(cameWm2, cloudlessWm2));
  }

  private static double[] smooth(double[] cameWm2, double[] cloudlessWm2) {
    var share = new double[DAYS];
    for (int d = 0; d < DAYS; d++) {
      int reach = REACH_DAYS;
      do {
        double came = 0.0, cloudless = 0.0;
        for (int k = -reach; k <= reach; k++) {
          int at = Math.floorMod(d + k, DAYS);
          came += cameWm2[at];
          cloudless += cloudlessWm2[at];
        }
        share[d] = cloudless > 0.0 ? Math.min(1.0, came / cloudless) : 0.0;
        // in the polar night the season is a longer one
        reach += REACH_DAYS;
      } while (!(share[d] > 0.0) && reach < DAYS);
    }
    return share;
  }

  /** Usual share of the cloudless light on a day of the year, 1 to 366. */
  public double usualShare(int dayOfYear) {
    return usualShare[dayOfYear - 1];
  }

  /** The sun of midsummer on every day, or the one that was. */
  public SunPath sun(SunPath was, LeftOut out) {
    if (!out.isShortDays) {
      return was;
    }
    HourCalendar calendar = was.calendar();
    int midsummer = calendar.hourOf(calendar.firstYear(), site.isNorthern() ? 6 : 12, 21, 0) / 24;
    return was.everyDayLike(midsummer);
  }

  /** Level light of each hour, a new array. */
  public double[] globalWm2(Radiation came, SunPath was, SunPath sun, LeftOut out) {
    double[] cameWm2 = came.globalHorizontalWm2();
    double[] wasCloudless = CloudlessHours.globalWm2(was, site.elevationM(), choices);
    double[] cloudless =
        sun == was ? wasCloudless : CloudlessHours.globalWm2(sun, site.elevationM(), choices);
    double[] dayShare = dayShares(cameWm2, wasCloudless, was.calendar());
    var globalWm2 = new double[cameWm2.length];
    for (int h = 0; h < globalWm2.length; h++) {
      double usual = usualShare[was.calendar().dayOfYear(h) - 1];
      double share =
          sun != was
              ? dayShare[h / 24]
              : wasCloudless[h] > 0.0 ? cameWm2[h] / wasCloudless[h] : dayShare[h / 24];
      double leastWm2 = out.isUsualCloud ? share * cloudless[h] : 0.0;
      double light = cloudless[h] * leftShare(share, usual, out);
      // light while the sun is down is kept
      globalWm2[h] = cloudless[h] > 0.0 ? Math.max(leastWm2, light) : sun == was ? cameWm2[h] : 0.0;
    }
    return globalWm2;
  }

  private static double leftShare(double share, double usual, LeftOut out) {
    if (out.isMoreCloud) {
      return out.isUsualCloud ? 1.0 : usual;
    }
    return out.isUsualCloud ? Math.min(1.0, usual > 0.0 ? share / usual : 1.0) : share;
  }

  /** Of whole days; those without sun have what is usual. */
  private double[] dayShares(double[] cameWm2, double[] cloudlessWm2, HourCalendar calendar) {
    var shares = new double[cameWm2.length / 24];
    for (int d = 0; d < shares.length; d++) {
      double came = 0.0, cloudless = 0.0;
      for (int h = d * 24; h < d * 24 + 24; h++) {
        came += cloudlessWm2[h] > 0.0 ? cameWm2[h] : 0.0;
        cloudless += cloudlessWm2[h];
      }
      shares[d] = cloudless > 0.0 ? came / cloudless : usualShare[calendar.dayOfYear(d * 24) - 1];
    }
    return shares;
  }
}
