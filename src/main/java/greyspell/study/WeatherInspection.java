package greyspell.study;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.sky.SkyChecks;
import greyspell.sky.SunPath;
import greyspell.weather.WeatherFacts;
import greyspell.weather.WeatherFacts.DullSpell;
import greyspell.weather.WeatherFacts.TemperatureJump;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A weather file looked at before it is believed.
 *
 * @param sky what the sun says of the irradiance; null where there is no irradiance or no place
 * @param dullSpells runs of days under {@link #DULL_WHM2}, longest first; empty without irradiance
 * @param temperatureJumps steps of more than {@link #JUMP_K} between two hours
 * @param repeatedDays first hours of days whose temperatures repeat the day before
 */
public record WeatherInspection(
    WeatherSeries weather,
    @Nullable SkyChecks sky,
    List<DullSpell> dullSpells,
    List<TemperatureJump> temperatureJumps,
    List<Integer> repeatedDays) {
  /** A day below this is dull. */
  public static final double DULL_WHM2 = 1000.0;

  /** A step above this within an hour is looked at. */
  public static final double JUMP_K = 10.0;

  /**
   * Reads and inspects.
   *
   * @param latitudeDeg where the file does not say, null if not known either
   * @param utcOffsetH clock to show the file on, null for the file's own
   */
  public static WeatherInspection of(
      Path file,
      @Nullable Double latitudeDeg,
      @Nullable Double longitudeDeg,
      @Nullable Double utcOffsetH) {
    String name = file.toString();
    WeatherSeries weather =
        utcOffsetH == null
            ? WeatherReader.readOnItsOwnClock(file, name)
            : WeatherReader.read(file, name, within("--utc-offset", utcOffsetH, 14.0));
    return new WeatherInspection(
        weather,
        checkSky(
            weather,
            latitudeDeg != null
                ? Double.valueOf(within("--latitude", latitudeDeg, 90.0))
                : weather.source().latitudeDeg(),
            longitudeDeg != null
                ? Double.valueOf(within("--longitude", longitudeDeg, 180.0))
                : weather.source().longitudeDeg()),
        weather.globalHorizontalWm2() == null
            ? List.of()
            : WeatherFacts.dullSpells(weather, DULL_WHM2),
        WeatherFacts.temperatureJumps(weather, JUMP_K),
        WeatherFacts.repeatedDays(weather));
  }

  private static double within(String option, double value, double most) {
    if (value >= -most && value <= most) {
      return value;
    }
    throw BadInput.of(
        Place.of(option),
        "found " + value,
        "must be " + -most + " to " + most,
        "Write it in degrees or hours.");
  }

  private static @Nullable SkyChecks checkSky(
      WeatherSeries weather, @Nullable Double latitudeDeg, @Nullable Double longitudeDeg) {
    double[] globalWm2 = weather.globalHorizontalWm2();
    if (globalWm2 == null || latitudeDeg == null || longitudeDeg == null) {
      return null;
    }
    var sun =
        SunPath.of(latitudeDeg, longitudeDeg, weather.source().utcOffsetH(), weather.calendar());
    return SkyChecks.of(globalWm2, sun);
  }
}
