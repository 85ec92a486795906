package greyspell.weather;

import greyspell.weather.Fields.Missing;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Reads daily files of the SURFRAD network: a line with the station's name, a line with its place,
 * then 48 numbers a row, every minute (every three before 2009), in UTC, stamped at the interval's
 * end. Values and quality flags stand in pairs; flag 1 (physically impossible) counts as missing.
 * One file is one UTC day, so that a year is some 366 files read together. Global light is the
 * unshaded instrument's.
 *
 * <p>Sources: order of columns as in a public reader (dazhiyang/SolarData), flags and codes as in
 * the network's readme. That the oldest files write west as positive, and that all stations lie in
 * the west: from memory.
 */
final class SurfradReader implements RowFormat {
  private static final int FIELDS = 48;
  private static final int YEAR = 0;
  private static final int MONTH = 2;
  private static final int DAY = 3;
  private static final int HOUR = 4;
  private static final int MINUTE = 5;
  private static final int[] FIELD_OF = {8, 12, 14, 38, 42};
  private static final List<WeatherColumn> COLUMNS =
      List.of(
          WeatherColumn.GLOBAL,
          WeatherColumn.DIRECT,
          WeatherColumn.DIFFUSE,
          WeatherColumn.TEMPERATURE,
          WeatherColumn.WIND);
  private static final double IMPOSSIBLE = 1.0;
  private static final Missing MISSING = Missing.upTo(-9000.0, "-9999.9");

  private final Lines lines;
  private final String file;
  private final FaultList faults;
  private final Fields fields;
  private final Tally tally;
  private final List<String> notes = new ArrayList<>();
  private final double[] row = new double[FIELD_OF.length];

  SurfradReader(Lines lines, String file, FaultList faults, Tally tally) {
    this.lines = lines;
    this.file = file;
    this.faults = faults;
    this.tally = tally;
    fields = new Fields(lines, faults, tally);
    lines.separateBy(' ');
  }

  /** Whether a second line is a station's place: {@code 46.30 -93.80 390 m version 1}. */
  static boolean isPlace(String line) {
    String[] words = line.strip().split(" +", 6);
    return words.length >= 5
        && words[3].equals("m")
        && words[4].toLowerCase(Locale.ROOT).startsWith("version");
  }

  @Override
  public RowHead readHead() throws IOException {
    lines.next();
    String station = lines.text().strip();
    lines.next();
    lines.split();
    double latitudeDeg = fields.inHead(0, "latitude", -90, 90, "deg");
    double longitudeDeg = fields.inHead(1, "longitude", -180, 180, "deg");
    double elevationM = fields.inHead(2, "elevation", -500, 9000, "m");
    faults.throwIfAny();
    if (longitudeDeg > 0.0) {
      longitudeDeg = -longitudeDeg;
      notes.add("longitude written without a sign: read as west");
    }
    return new RowHead(
        COLUMNS,
        true,
        new WeatherSource(file, "SURFRAD", station, latitudeDeg, longitudeDeg, elevationM, 0.0),
        false);
  }

  @Override
  public void readRows(HourGrid grid) throws IOException {
    while (lines.next()) {
      if (lines.isBlank()) {
        continue;
      }
      if (lines.split() != FIELDS) {
        fields.refuseCount("must be " + FIELDS + " numbers");
        continue;
      }
      int year = fields.whole(YEAR, "year", Dates.FIRST_YEAR, Dates.LAST_YEAR);
      int month = fields.whole(MONTH, "month", 1, 12);
      int day = fields.whole(DAY, "day", 1, 31);
      int hour = fields.whole(HOUR, "hour", 0, 23);
      int minute = fields.whole(MINUTE, "minute", 0, 59);
      if (hour < 0 || minute < 0 || !fields.isDate(DAY, year, month, day)) {
        continue;
      }
      for (int k = 0; k < row.length; k++) {
        row[k] = fields.value(FIELD_OF[k], COLUMNS.get(k), 1.0, MISSING);
        boolean isFlagged = lines.isNumber(FIELD_OF[k] + 1) && lines.value() == IMPOSSIBLE;
        if (isFlagged && !Double.isNaN(row[k])) {
          row[k] = Double.NaN;
          tally.add(Tally.Change.FLAGGED, COLUMNS.get(k));
        }
      }
      grid.add(lines.number(), Dates.epochMinute(year, month, day, hour, minute), row);
    }
    fields.refuseTooLong("must be a row of " + FIELDS + " numbers");
  }

  @Override
  public List<String> notes() {
    return notes;
  }
}
