package greyspell.weather;

import java.util.List;

/**
 * Fields as readings of a column in the series' unit, for tables whose columns people choose
 * themselves. What cannot be is refused; in a column that the series can do without it counts as
 * missing ({@link Strays}).
 */
final class Readings {
  /** Sky invisible: fog or snow. */
  static final double SKY_INVISIBLE_OKTA = 9.0;

  /**
   * A column as the file has it: value in the series' unit = number / perUnitFactor + zeroC.
   *
   * @param name as the file calls it
   * @param perUnitFactor how many of the file's unit make one of the series'
   * @param zeroC what zero of the file's unit is in C; 0 for what is no temperature
   * @param oktaFactor how many eighths one of the file's counts is; 0 where it counts something
   *     else
   * @param mustBe what is believed, in words
   */
  record Column(
      WeatherColumn column,
      String name,
      double perUnitFactor,
      double zeroC,
      double oktaFactor,
      String mustBe) {}

  private final Lines lines;
  private final FaultList faults;
  private final Tally tally;
  private final boolean isCloudNeeded;
  private final double[] codes;
  private final String mendOfRange;
  private final String mendOfCode;
  private final Strays strays = new Strays();

  /**
   * @param codes numbers that stand for a missing value
   * @param mendOfRange what to do about a value that cannot be
   * @param mendOfCode the same if it looks like a code for a missing one
   */
  Readings(
      Lines lines,
      FaultList faults,
      Tally tally,
      boolean isCloudNeeded,
      double[] codes,
      String mendOfRange,
      String mendOfCode) {
    this.lines = lines;
    this.faults = faults;
    this.tally = tally;
    this.isCloudNeeded = isCloudNeeded;
    this.codes = codes;
    this.mendOfRange = mendOfRange;
    this.mendOfCode = mendOfCode;
  }

  /** In the series' unit; NaN where it is missing and after a fault. */
  double value(int field, Column told) {
    WeatherColumn column = told.column();
    if (!lines.isNumber(field)) {
      faults.add(
          lines.number(),
          lines.column(field),
          told.name() + ": found " + lines.quoted(field),
          "must be a number; blank means missing",
          "Leave the field empty where there is no value.");
      return Double.NaN;
    }
    double read = lines.value();
    for (double code : codes) {
      if (read == code) {
        return Double.NaN;
      }
    }
    if (read * told.oktaFactor() == SKY_INVISIBLE_OKTA) {
      tally.add(Tally.Change.SKY_INVISIBLE, column);
      return 1.0;
    }
    double value = read / told.perUnitFactor() + told.zeroC();
    if (value < column.lowest || value > column.highest) {
      doubt(field, told);
      return Double.NaN;
    }
    if (column.isIrradiance() && value < 0.0) {
      tally.add(Tally.Change.BELOW_ZERO, column);
      return 0.0;
    }
    return value;
  }

  private void doubt(int field, Column told) {
    boolean isNeeded =
        switch (told.column()) {
          case TEMPERATURE, GLOBAL -> true;
          case CLOUD -> isCloudNeeded;
          default -> false;
        };
    if (isNeeded) {
      faults.add(
          lines.number(),
          lines.column(field),
          told.name() + ": found " + lines.quoted(field),
          told.mustBe(),
          looksLikeCode(field) ? mendOfCode : mendOfRange);
    } else {
      strays.add(lines, field, told.column());
    }
  }

  private boolean looksLikeCode(int field) {
    String text = lines.text(field);
    return text.startsWith("99") || text.startsWith("-99");
  }

  void judge(List<Column> columns, int rows, List<String> notes) {
    for (Column told : columns) {
      strays.judge(told.column(), told.name(), told.mustBe(), rows, notes, faults);
    }
  }
}
