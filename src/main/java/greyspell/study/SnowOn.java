package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.SnowCover;
import greyspell.array.SnowRule;
import greyspell.weather.WeatherSeries;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Snow on a plane, where it is asked for and the weather file tells how much there was. */
final class SnowOn {
  private SnowOn() {}

  /** Covered share of each hour, null for none. */
  static double @Nullable [] share(ArraySpec array, WeatherSeries weather, double[] frontWm2) {
    double[] depthM = weather.snowDepthM();
    return array.snow() == SnowRule.NONE || depthM == null
        ? null
        : SnowCover.coveredShare(depthM, weather.airTemperatureC(), frontWm2, array.tiltDeg());
  }

  /** Says of a plane whose snow is asked for that there is no telling. */
  static void say(ArraySpec array, WeatherSeries weather, List<String> cautions) {
    if (array.snow() != SnowRule.NONE && weather.snowDepthM() == null) {
      cautions.add(
          array.name()
              + ": snow on the panels is asked for, but the weather file has no snow depth; none was counted.");
    }
  }
}
