package greyspell.weather;

import org.jspecify.annotations.Nullable;

/**
 * What a weather file can tell, in the units of our plain CSV. The limits say what is believed; a
 * value outside them is a fault of the file, not weather.
 */
enum WeatherColumn {
  GLOBAL(0, "global horizontal irradiance", -50.0, 2000.0, "W/m2"),
  DIRECT(1, "direct normal irradiance", -50.0, 1500.0, "W/m2"),
  DIFFUSE(2, "diffuse horizontal irradiance", -50.0, 1500.0, "W/m2"),
  TEMPERATURE(3, "air temperature", -90.0, 60.0, "C"),
  WIND(4, "wind speed", 0.0, 100.0, "m/s"),
  CLOUD(5, "cloud cover", 0.0, 1.0, ""),
  SNOW(6, "snow depth", 0.0, 20.0, "m");

  static final int COUNT = values().length;

  /** Place of the column in arrays of columns. */
  final int slot;

  final String words;
  final double lowest;
  final double highest;
  final String unit;

  WeatherColumn(int slot, String words, double lowest, double highest, String unit) {
    this.slot = slot;
    this.words = words;
    this.lowest = lowest;
    this.highest = highest;
    this.unit = unit;
  }

  /** Thermopiles read a little below zero at night: such values count as dark, not as faults. */
  boolean isIrradiance() {
    return this == GLOBAL || this == DIRECT || this == DIFFUSE;
  }

  static WeatherSeries.Columns columns(double[][] bySlot) {
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = orNull(bySlot[GLOBAL.slot]);
    columns.directNormalWm2 = orNull(bySlot[DIRECT.slot]);
    columns.diffuseHorizontalWm2 = orNull(bySlot[DIFFUSE.slot]);
    columns.airTemperatureC = orNull(bySlot[TEMPERATURE.slot]);
    columns.windMs = orNull(bySlot[WIND.slot]);
    columns.cloudShare = orNull(bySlot[CLOUD.slot]);
    columns.snowDepthM = orNull(bySlot[SNOW.slot]);
    return columns;
  }

  private static double @Nullable [] orNull(double[] column) {
    return column.length == 0 ? null : column;
  }
}
