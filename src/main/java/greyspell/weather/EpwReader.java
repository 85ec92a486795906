package greyspell.weather;

import greyspell.weather.Fields.Missing;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Reads EPW: header lines that begin with keywords, then one row an hour. Fields and codes as real
 * files have them (docs/weather-files.md). Of the two cloud columns the opaque one is taken where
 * it is known: thin cloud lets the sun through. Snow depth is taken only when it varies and is no
 * code; ground reflection in these files is not to be trusted and is not read. The minute of a row
 * is ignored, since files write 0 and 60 for the same hour.
 */
final class EpwReader {
  private static final int YEAR = 0;
  private static final int MONTH = 1;
  private static final int DAY = 2;
  private static final int HOUR = 3;
  private static final int TEMPERATURE = 6;
  private static final int GLOBAL = 13;
  private static final int DIRECT = 14;
  private static final int DIFFUSE = 15;
  private static final int WIND = 21;
  private static final int TOTAL_COVER = 22;
  private static final int OPAQUE_COVER = 23;
  private static final int SNOW_CM = 30;

  /** Older files leave out the last columns; all that is read stands before. */
  private static final int LEAST_FIELDS = 32;

  private static final int MOST_HEADER_LINES = 30;
  private static final Missing MISSING_TEMPERATURE = Missing.from(99.9, "99.9");

  /** Files write missing irradiance as 9999 or, against the rule, as a negative number. */
  private static final Missing MISSING_IRRADIANCE = new Missing(-Double.MIN_VALUE, 9999.0, "9999");

  private static final Missing MISSING_WIND = Missing.from(999.0, "999");
  private static final Missing MISSING_COVER = Missing.from(99.0, "99");
  private static final Missing MISSING_SNOW = Missing.from(899.0, "899");
  private static final double TENTHS = 10.0;
  private static final double CM_PER_M = 100.0;

  private final Lines lines;
  private final String file;
  private final @Nullable Double siteUtcOffsetH;
  private final FaultList faults;
  private final Fields fields;
  private final List<String> notes = new ArrayList<>();
  private final Tally tally = new Tally();
  private int rowsPerHour = 1;

  EpwReader(Lines lines, String file, @Nullable Double siteUtcOffsetH, FaultList faults) {
    this.lines = lines;
    this.file = file;
    this.siteUtcOffsetH = siteUtcOffsetH;
    this.faults = faults;
    fields = new Fields(lines, faults, tally);
  }

  WeatherSeries read() throws IOException {
    WeatherSource told = readHeader();
    var rows = new YearRows(rowsPerHour, faults);
    readRows(rows);
    if (!rows.isEmpty() && isSnowACode(rows.column(WeatherColumn.SNOW))) {
      rows.forget(WeatherColumn.SNOW);
      notes.add("snow depth: the same all year, taken for a code and left out");
    }
    if (rowsPerHour > 1) {
      notes.add(rowsPerHour + " records an hour averaged; irradiance read as mean W/m2");
    }
    tally.tell(notes);
    return rows.series(false, told, siteUtcOffsetH, notes);
  }

  private WeatherSource readHeader() throws IOException {
    WeatherSource told = null;
    for (int i = 0; i < MOST_HEADER_LINES && lines.next(); i++) {
      int count = lines.split();
      String keyword = lines.text(0).toUpperCase(Locale.ROOT);
      if (keyword.equals("LOCATION")) {
        told = location(count);
      } else if (keyword.equals("DATA PERIODS")) {
        takeRowsPerHour(count);
        if (told == null) {
          break;
        }
        faults.throwIfAny();
        return told;
      }
    }
    throw faults.alone(
        lines.number(),
        1,
        "no DATA PERIODS line",
        "must stand above the hourly rows of an EPW file",
        "The file may be cut off or changed: download it again.");
  }

  private WeatherSource location(int count) {
    if (count < 10) {
      throw faults.alone(
          lines.number(),
          1,
          "LOCATION with " + count + " fields",
          "must be LOCATION,city,state,country,source,number,latitude,longitude,UTC offset,"
              + "elevation",
          "");
    }
    double latitudeDeg = fields.inHead(6, "latitude", -90, 90, "deg");
    double longitudeDeg = fields.inHead(7, "longitude", -180, 180, "deg");
    double offsetH = fields.inHead(8, "UTC offset", -14, 14, "h");
    double elevationM = fields.inHead(9, "elevation", -500, 9000, "m");
    return new WeatherSource(
        file, "EPW", lines.text(1), latitudeDeg, longitudeDeg, elevationM, offsetH);
  }

  private void takeRowsPerHour(int count) {
    boolean isCount = count > 2 && lines.isNumber(2) && lines.value() >= 1.0;
    if (!isCount || 60.0 % lines.value() != 0.0) {
      faults.add(
          lines.number(),
          count > 2 ? lines.column(2) : 1,
          "records an hour: found " + (count > 2 ? lines.quoted(2) : "nothing"),
          "must be a whole part of 60, mostly 1",
          "");
      return;
    }
    rowsPerHour = (int) lines.value();
  }

  private void readRows(YearRows rows) throws IOException {
    var row = new double[WeatherColumn.COUNT];
    while (lines.next()) {
      if (lines.isBlank()) {
        continue;
      }
      if (lines.split() < LEAST_FIELDS) {
        fields.refuseCount("must be 35 fields in each row");
        continue;
      }
      int year = fields.whole(YEAR, "year", Dates.FIRST_YEAR, Dates.LAST_YEAR);
      int month = fields.whole(MONTH, "month", 1, 12);
      int day = fields.whole(DAY, "day", 1, 31);
      int hour = fields.whole(HOUR, "hour", 1, 24);
      if (hour > 0 && fields.isDate(DAY, year, month, day)) {
        readValues(row);
        rows.add(lines.number(), year, month, day, hour, row);
      }
    }
    fields.refuseTooLong("must be a row of 35 fields");
  }

  private void readValues(double[] row) {
    row[WeatherColumn.GLOBAL.slot] = irradiance(GLOBAL, WeatherColumn.GLOBAL);
    row[WeatherColumn.DIRECT.slot] = irradiance(DIRECT, WeatherColumn.DIRECT);
    row[WeatherColumn.DIFFUSE.slot] = irradiance(DIFFUSE, WeatherColumn.DIFFUSE);
    row[WeatherColumn.TEMPERATURE.slot] =
        value(TEMPERATURE, WeatherColumn.TEMPERATURE, MISSING_TEMPERATURE, 1.0);
    row[WeatherColumn.WIND.slot] = value(WIND, WeatherColumn.WIND, MISSING_WIND, 1.0);
    double opaque = value(OPAQUE_COVER, WeatherColumn.CLOUD, MISSING_COVER, TENTHS);
    double total = value(TOTAL_COVER, WeatherColumn.CLOUD, MISSING_COVER, TENTHS);
    row[WeatherColumn.CLOUD.slot] = Double.isNaN(opaque) ? total : opaque;
    row[WeatherColumn.SNOW.slot] = value(SNOW_CM, WeatherColumn.SNOW, MISSING_SNOW, CM_PER_M);
  }

  private double irradiance(int field, WeatherColumn column) {
    return value(field, column, MISSING_IRRADIANCE, 1.0);
  }

  private double value(int field, WeatherColumn column, Missing missing, double perUnit) {
    return fields.value(field, column, perUnit, missing);
  }

  /** Snow that never changes is a code, unless it is none at all. */
  private static boolean isSnowACode(double[] snowM) {
    double first = Double.NaN;
    for (double depthM : snowM) {
      if (!Double.isNaN(depthM)) {
        if (!Double.isNaN(first) && depthM != first) {
          return false;
        }
        first = depthM;
      }
    }
    return !Double.isNaN(first) && first != 0.0;
  }
}
