package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.scenario.Scenario;
import greyspell.sky.PlaneIrradiance;
import greyspell.sky.Radiation;
import greyspell.sky.SunPath;
import greyspell.sky.UsualSky;
import greyspell.weather.WeatherSeries;

/** A home's weather with its sun and sky, read once for all of its planes. */
final class HomeLight {
  private static final int PANELS_ARE_LARGER = 4;

  private final Scenario home;
  private final WeatherSeries weather;
  private final SunPath sun;
  private final Radiation radiation;
  private final Kept kept;
  private final Kept keptPanels;
  private final Kept keptUnderAnySky;

  private HomeLight(
      Scenario home, WeatherSeries weather, SunPath sun, int toKeep, Kept keptUnderAnySky) {
    this.home = home;
    this.weather = weather;
    this.sun = sun;
    kept = new Kept(toKeep);
    keptPanels = new Kept(toKeep / PANELS_ARE_LARGER);
    this.keptUnderAnySky = keptUnderAnySky;
    radiation = Radiation.of(weather, sun, home.site(), home.sky());
  }

  static HomeLight of(Scenario home, WeatherSeries weather) {
    return new HomeLight(home, weather, sun(home, weather), 0, new Kept(0));
  }

  /** One that keeps what its planes and loads were worked out to, for many variants of a home. */
  static HomeLight keeping(Scenario home, WeatherSeries weather, SunPath sun, int toKeep) {
    return new HomeLight(home, weather, sun, toKeep, new Kept(toKeep));
  }

  static SunPath sun(Scenario home, WeatherSeries weather) {
    return SunPath.of(
        home.site().latitudeDeg(),
        home.site().longitudeDeg(),
        weather.source().utcOffsetH(),
        weather.calendar());
  }

  /** The same weather under a sky with part of it left out; air, wind and snow stay. */
  HomeLight under(UsualSky usual, UsualSky.LeftOut out, int toKeep) {
    SunPath otherSun = usual.sun(sun, out);
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = usual.globalWm2(radiation, sun, otherSun, out);
    columns.airTemperatureC = weather.airTemperatureC();
    columns.windMs = weather.windMs();
    columns.snowDepthM = weather.snowDepthM();
    return new HomeLight(
        home,
        new WeatherSeries(weather.calendar(), weather.source(), weather.gaps(), columns),
        otherSun,
        toKeep,
        keptUnderAnySky);
  }

  /** Where the weather's hours were written over: its light anew. */
  void again() {
    radiation.again(weather, home.site(), home.sky());
  }

  Scenario home() {
    return home;
  }

  WeatherSeries weather() {
    return weather;
  }

  SunPath sun() {
    return sun;
  }

  Radiation radiation() {
    return radiation;
  }

  /** What goes by this light. */
  Kept kept() {
    return kept;
  }

  /** What whole fields of panels come to in this light; each is as large as several others. */
  Kept keptPanels() {
    return keptPanels;
  }

  /** What goes by air and calendar alone, whatever the light. */
  Kept keptUnderAnySky() {
    return keptUnderAnySky;
  }

  /** What falls on a plane, whatever stands there. */
  PlaneIrradiance on(ArraySpec plane) {
    return kept.get(
        new Face(plane.tiltDeg(), plane.azimuthDeg()),
        () ->
            PlaneIrradiance.of(
                radiation,
                sun,
                weather,
                home.site(),
                home.sky(),
                plane.tiltDeg(),
                plane.azimuthDeg()));
  }

  private record Face(double tiltDeg, double azimuthDeg) {}
}
