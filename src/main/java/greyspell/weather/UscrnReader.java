package greyspell.weather;

import greyspell.weather.Fields.Missing;
import java.io.IOException;
import java.util.List;

/**
 * Reads the hourly text of the U.S. Climate Reference Network (hourly02, format 03): no head, 38
 * fields parted by blanks, one row an hour, stamped in UTC at the hour's end. Read are the hour's
 * mean temperature and solar radiation with its flag; there is no direct, diffuse, wind or cloud in
 * it. The station's standard time is what its local stamp is ahead of UTC.
 *
 * <p>Source: the network's hourly02 readme (fields, codes, flags), and rows of a real file.
 */
final class UscrnReader implements RowFormat {
  static final int FIELDS = 38;
  private static final int STATION = 0;
  private static final int UTC_DATE = 1;
  private static final int UTC_TIME = 2;
  private static final int LOCAL_DATE = 3;
  private static final int LOCAL_TIME = 4;
  private static final int LONGITUDE = 6;
  private static final int LATITUDE = 7;
  private static final int TEMPERATURE = 9;
  private static final int SOLAR = 13;
  private static final int SOLAR_FLAG = 14;
  private static final double ERRONEOUS = 3.0;
  private static final Missing MISSING = Missing.upTo(-9000.0, "-9999");

  private final Lines lines;
  private final String file;
  private final FaultList faults;
  private final Fields fields;
  private final Tally tally;
  private final double[] row = new double[2];
  private String station = "";
  private long aheadMin;

  UscrnReader(Lines lines, String file, FaultList faults, Tally tally) {
    this.lines = lines;
    this.file = file;
    this.faults = faults;
    this.tally = tally;
    fields = new Fields(lines, faults, tally);
    lines.separateBy(' ');
  }

  /** Whether a first line is one of this network's hourly rows, in any of its formats. */
  static boolean isRow(String line) {
    String[] words = line.strip().split(" +", 7);
    return words.length == 7
        && isDigits(words[0], 5)
        && isDigits(words[1], 8)
        && isDigits(words[2], 4)
        && isDigits(words[3], 8)
        && isDigits(words[4], 4);
  }

  private static boolean isDigits(String word, int count) {
    boolean is = word.length() == count;
    for (int i = 0; is && i < count; i++) {
      is = word.charAt(i) >= '0' && word.charAt(i) <= '9';
    }
    return is;
  }

  /** The first row tells the place; it is read again as a row. */
  @Override
  public RowHead readHead() throws IOException {
    if (!lines.next() || !hasAllFields()) {
      faults.throwIfAny();
    }
    station = lines.text(STATION);
    double latitudeDeg = fields.inHead(LATITUDE, "latitude", -90, 90, "deg");
    double longitudeDeg = fields.inHead(LONGITUDE, "longitude", -180, 180, "deg");
    aheadMin = stampMin(LOCAL_DATE, LOCAL_TIME) - stampMin(UTC_DATE, UTC_TIME);
    faults.throwIfAny();
    return new RowHead(
        List.of(WeatherColumn.GLOBAL, WeatherColumn.TEMPERATURE),
        true,
        new WeatherSource(
            file,
            "USCRN hourly",
            "station " + station,
            latitudeDeg,
            longitudeDeg,
            null,
            aheadMin / (double) Dates.MINUTES_PER_HOUR),
        false);
  }

  @Override
  public void readRows(HourGrid grid) throws IOException {
    take(grid);
    while (lines.next()) {
      if (!lines.isBlank() && hasAllFields()) {
        take(grid);
      }
    }
    fields.refuseTooLong("must be a row of " + FIELDS + " fields");
  }

  private boolean hasAllFields() throws IOException {
    if (lines.split() == FIELDS) {
      return true;
    }
    fields.refuseCount("must be " + FIELDS + " fields, as in files named CRNH0203-...");
    return false;
  }

  private void take(HourGrid grid) {
    long utcMin = stampMin(UTC_DATE, UTC_TIME);
    long localMin = stampMin(LOCAL_DATE, LOCAL_TIME);
    if (utcMin == Dates.NO_TIME || localMin == Dates.NO_TIME) {
      return;
    }
    if (localMin - utcMin != aheadMin) {
      faults.add(
          lines.number(),
          lines.column(LOCAL_TIME),
          "local time is "
              + (localMin - utcMin)
              + " minutes ahead of UTC, at the beginning it was "
              + aheadMin,
          "must be standard time throughout",
          "Use the file as it was published.");
      return;
    }
    row[0] = fields.value(SOLAR, WeatherColumn.GLOBAL, 1.0, MISSING);
    if (!Double.isNaN(row[0]) && lines.isNumber(SOLAR_FLAG) && lines.value() == ERRONEOUS) {
      row[0] = Double.NaN;
      tally.add(Tally.Change.FLAGGED, WeatherColumn.GLOBAL);
    }
    row[1] = fields.value(TEMPERATURE, WeatherColumn.TEMPERATURE, 1.0, MISSING);
    grid.add(lines.number(), utcMin, row);
  }

  /** From YYYYMMDD and HHMM; {@link Dates#NO_TIME} after a fault. */
  private long stampMin(int dateField, int timeField) {
    int date =
        fields.whole(dateField, "date", Dates.FIRST_YEAR * 10_000, Dates.LAST_YEAR * 10_000 + 1231);
    int time = fields.whole(timeField, "time", 0, 2400);
    if (date < 0
        || time < 0
        || !fields.isDate(dateField, date / 10000, date / 100 % 100, date % 100)) {
      return Dates.NO_TIME;
    }
    if (time % 100 >= Dates.MINUTES_PER_HOUR) {
      faults.add(
          lines.number(),
          lines.column(timeField),
          "time: found " + lines.quoted(timeField),
          "must be hour and minute, 0000 to 2400",
          "");
      return Dates.NO_TIME;
    }
    return Dates.epochMinute(date / 10000, date / 100 % 100, date % 100, time / 100, time % 100);
  }

  @Override
  public List<String> notes() {
    return List.of();
  }
}
