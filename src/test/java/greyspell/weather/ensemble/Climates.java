package greyspell.weather.ensemble;

import greyspell.calendar.Monthly;

/** Invented climates for tests. */
final class Climates {
  private Climates() {}

  /** Dull winters, 53 N. */
  static SiteClimate maritime() {
    return new SiteClimate(
        new ClimateSite("Mewsand (invented)", 53.2, 6.1, 8.0, 1.0),
        Monthly.of(620, 1290, 2510, 4110, 5020, 5180, 5050, 4250, 2980, 1620, 790, 480),
        Monthly.of(3.4, 3.7, 6.1, 9.3, 13.0, 15.8, 17.9, 17.7, 14.8, 11.0, 6.9, 4.1));
  }

  /** Strong sun, 38 N, 2200 m. */
  static SiteClimate plateau() {
    return new SiteClimate(
        new ClimateSite("Salt Mesa (invented)", 38.1, -107.2, 2200.0, -7.0),
        Monthly.of(2800, 3700, 5000, 6300, 7200, 7800, 7000, 6400, 5700, 4300, 3100, 2500),
        Monthly.of(-5.6, -2.6, 2.4, 6.4, 11.4, 17.0, 19.8, 18.6, 14.0, 7.6, 0.4, -5.2));
  }

  /** The south's seasons, 34.8 S; clearness as in the public example of MadeWintersTest. */
  static SiteClimate south() {
    var site = new ClimateSite("Port Tamarind (invented)", -34.8, 151.0, 20.0, 10.0);
    var daily = new double[12];
    double[] clearness = {.49, .48, .50, .51, .51, .54, .54, .57, .56, .54, .51, .51};
    for (int m = 0; m < 12; m++) {
      daily[m] = clearness[m] * SiteClimate.aboveWhm2(site, m + 1);
    }
    return new SiteClimate(
        site,
        Monthly.of(daily),
        Monthly.of(22.5, 22.5, 21.2, 18.4, 15.2, 12.7, 11.9, 13.1, 15.4, 17.8, 19.6, 21.6));
  }
}
