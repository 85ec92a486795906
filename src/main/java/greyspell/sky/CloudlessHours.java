package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;

/** The level light of each hour if no cloud came, by the model that was chosen. */
final class CloudlessHours {
  private CloudlessHours() {}

  /** Mean of the whole hour, also where the sun rises or sets in it. */
  static double[] globalWm2(SunPath sun, double elevationM, SkyChoices choices) {
    HourCalendar calendar = sun.calendar();
    double[] sunlit = sun.sunlitShare();
    double[] cosZenith = sun.cosZenith();
    double[] zenithDeg = sun.zenithDeg();
    double[] aboveAir = sun.extraterrestrialNormalWm2();
    var ineichen = new IneichenPerezClearSky(elevationM);
    double pressure = AirMass.pressurePa(elevationM) / AirMass.SEA_LEVEL_PA;
    boolean isHaurwitz = choices.clearSky() == SkyChoices.ClearSky.HAURWITZ;
    Monthly linke = choices.linkeTurbidity();
    var globalWm2 = new double[sun.hours()];
    for (int h = 0; h < globalWm2.length; h++) {
      if (sunlit[h] > 0.0) {
        double clear =
            isHaurwitz
                ? HaurwitzClearSky.globalWm2(cosZenith[h])
                : ineichen.globalWm2(
                    aboveAir[h],
                    cosZenith[h],
                    AirMass.relative(cosZenith[h], zenithDeg[h]) * pressure,
                    linke.in(calendar.month(h)));
        globalWm2[h] = clear * sunlit[h];
      }
    }
    return globalWm2;
  }
}
