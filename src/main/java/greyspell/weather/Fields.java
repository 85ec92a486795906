package greyspell.weather;

import java.io.IOException;

/**
 * Fields of the line at hand as numbers, or the fault that they are none: what the readers of fixed
 * columns share.
 */
final class Fields {
  /** Codes for "no value": all up to a number, all from a number on, or both. */
  static final class Missing {
    private final double upTo;
    private final double from;

    /** As people know it, for messages. */
    final String code;

    Missing(double upTo, double from, String code) {
      this.upTo = upTo;
      this.from = from;
      this.code = code;
    }

    static Missing upTo(double value, String code) {
      return new Missing(value, Double.POSITIVE_INFINITY, code);
    }

    static Missing from(double value, String code) {
      return new Missing(Double.NEGATIVE_INFINITY, value, code);
    }

    boolean is(double value) {
      return !(value > upTo && value < from);
    }
  }

  private final Lines lines;
  private final FaultList faults;
  private final Tally tally;

  Fields(Lines lines, FaultList faults, Tally tally) {
    this.lines = lines;
    this.faults = faults;
    this.tally = tally;
  }

  /** A number of the file's head; 0 after a fault. */
  double inHead(int field, String what, int low, int high, String unit) {
    if (lines.isNumber(field) && lines.value() >= low && lines.value() <= high) {
      return lines.value();
    }
    refuse(field, what, "must be a number from " + low + " to " + high + " " + unit);
    return 0.0;
  }

  /** A whole number of zero or more; -1 after a fault. */
  int whole(int field, String what, int low, int high) {
    if (lines.isNumber(field)
        && lines.value() >= low
        && lines.value() <= high
        && lines.value() == Math.rint(lines.value())) {
      return (int) lines.value();
    }
    refuse(field, what, "must be a whole number from " + low + " to " + high);
    return -1;
  }

  /**
   * A reading in the series' unit, NaN where it is missing, and after a fault.
   *
   * @param perUnit how many of the file's unit make one of the series'
   */
  double value(int field, WeatherColumn column, double perUnit, Missing missing) {
    if (!lines.isNumber(field)) {
      refuse(field, column.words, "must be a number");
      return Double.NaN;
    }
    double read = lines.value();
    if (missing.is(read)) {
      return Double.NaN;
    }
    double value = read / perUnit;
    if (value >= column.lowest && value <= column.highest) {
      if (column.isIrradiance() && value < 0.0) {
        tally.add(Tally.Change.BELOW_ZERO, column);
        return 0.0;
      }
      return value;
    }
    refuse(
        field,
        column.words,
        "must be "
            + (long) (column.lowest * perUnit)
            + " to "
            + (long) (column.highest * perUnit)
            + ", or "
            + missing.code
            + " where missing");
    return Double.NaN;
  }

  /** True if the date is one; else a fault. */
  boolean isDate(int dayField, int year, int month, int day) {
    if (year < 0 || month < 0 || day < 0) {
      return false;
    }
    if (Dates.isDate(year, month, day)) {
      return true;
    }
    faults.add(
        lines.number(),
        lines.column(dayField),
        "no such day: month " + month + ", day " + day + " of " + year,
        "must be a day of the calendar",
        "");
    return false;
  }

  void refuseCount(String mustBe) throws IOException {
    int fields = lines.fields();
    faults.add(
        lines.number(),
        1,
        fields + (fields == 1 ? " field" : " fields"),
        mustBe,
        lines.isLast()
            ? "The last line looks cut off: download or copy the file again."
            : "Download the file again.");
  }

  void refuseTooLong(String mustBe) {
    if (lines.isTooLong()) {
      faults.add(lines.number(), 1, "a line without end", mustBe, "");
    }
  }

  private void refuse(int field, String what, String mustBe) {
    faults.add(
        lines.number(), lines.column(field), what + ": found " + lines.quoted(field), mustBe, "");
  }
}
