package greyspell.sky;

import greyspell.sky.CloudFit.Years;
import greyspell.weather.WeatherSeries;
import org.jspecify.annotations.Nullable;

/**
 * A cloud table from a file of one's own, with what it is worth beside what else there is.
 *
 * @param table for the clear sky of {@link SkyChoices#usual}
 * @param classic error of the classic curve on the file
 * @param builtIn error of {@link CloudTable#lowland}
 * @param onOtherYears error of tables fitted on every second year, on the years between; null for a
 *     single year
 */
public record CloudCalibration(
    CloudTable table,
    CloudErrors classic,
    CloudErrors builtIn,
    @Nullable CloudErrors onOtherYears) {

  /**
   * Null where the weather has not both irradiance and cloud cover, or too little of either season.
   */
  public static @Nullable CloudCalibration find(WeatherSeries weather, SunPath sun, Site site) {
    CloudTable table = CloudFit.find(weather, sun, site, Years.ALL);
    if (table == null) {
      return null;
    }
    SkyChoices usual = SkyChoices.usual();
    return new CloudCalibration(
        table,
        CloudErrors.of(weather, sun, site, usual),
        CloudErrors.of(weather, sun, site, usual.withTable(CloudTable.lowland())),
        onOtherYears(weather, sun, site));
  }

  private static @Nullable CloudErrors onOtherYears(WeatherSeries weather, SunPath sun, Site site) {
    double[] global = weather.globalHorizontalWm2();
    if (weather.calendar().years() < 2 || global == null) {
      return null;
    }
    CloudTable ofEven = CloudFit.find(weather, sun, site, Years.EVEN);
    CloudTable ofOdd = CloudFit.find(weather, sun, site, Years.ODD);
    if (ofEven == null || ofOdd == null) {
      return null;
    }
    SkyChoices usual = SkyChoices.usual();
    double[] byEven = Radiation.fromCloud(weather, sun, site, usual.withTable(ofEven));
    double[] byOdd = Radiation.fromCloud(weather, sun, site, usual.withTable(ofOdd));
    for (int h = 0; h < byOdd.length; h++) {
      byOdd[h] = Years.EVEN.takes(weather.calendar().year(h)) ? byOdd[h] : byEven[h];
    }
    return CloudErrors.of(global, byOdd, sun, site.isNorthern());
  }
}
