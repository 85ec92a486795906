package greyspell.weather;

import java.util.ArrayList;
import java.util.List;

/** The value columns of our plain CSV, in its units. */
enum CsvColumn {
  GHI("ghi_wm2", WeatherColumn.GLOBAL, 1.0),
  DNI("dni_wm2", WeatherColumn.DIRECT, 1.0),
  DHI("dhi_wm2", WeatherColumn.DIFFUSE, 1.0),
  TAIR("tair_c", WeatherColumn.TEMPERATURE, 1.0),
  WIND("wind_ms", WeatherColumn.WIND, 1.0),
  OKTA("cloud_okta", WeatherColumn.CLOUD, 8.0),
  TENTHS("cloud_tenths", WeatherColumn.CLOUD, 10.0),
  PERCENT("cloud_pct", WeatherColumn.CLOUD, 100.0),
  SNOW("snow_cm", WeatherColumn.SNOW, 100.0);

  static final List<String> TIMES = List.of("utc_start", "utc_end", "local_start", "local_end");

  final String csvName;
  final WeatherColumn column;

  /** How many of this column's unit make one of the series'. */
  final double perUnit;

  CsvColumn(String csvName, WeatherColumn column, double perUnit) {
    this.csvName = csvName;
    this.column = column;
    this.perUnit = perUnit;
  }

  String unit() {
    return csvName.substring(csvName.indexOf('_') + 1);
  }

  Readings.Column told() {
    double lowest = column.lowest * perUnit;
    double highest = this == OKTA ? Readings.SKY_INVISIBLE_OKTA : column.highest * perUnit;
    return new Readings.Column(
        column,
        csvName,
        perUnit,
        0.0,
        this == OKTA ? 1.0 : 0.0,
        "must be " + (long) lowest + " to " + (long) highest + " " + unit());
  }

  static List<String> names() {
    var names = new ArrayList<>(TIMES);
    for (CsvColumn column : values()) {
      names.add(column.csvName);
    }
    return names;
  }
}
