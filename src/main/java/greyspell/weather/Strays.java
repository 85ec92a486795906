package greyspell.weather;

import java.util.List;

/**
 * Impossible values in a column that the series can do without. A few count as missing and are
 * told; if there are many the column is in another unit than its name says, and the file is
 * refused.
 */
final class Strays {
  /** One row in so many may be wrong. */
  private static final int ROWS_PER_STRAY = 1000;

  private final int[] counts = new int[WeatherColumn.COUNT];
  private final int[] lines = new int[WeatherColumn.COUNT];
  private final int[] places = new int[WeatherColumn.COUNT];
  private final String[] texts = new String[WeatherColumn.COUNT];

  void add(Lines line, int field, WeatherColumn column) {
    if (counts[column.slot]++ == 0) {
      lines[column.slot] = line.number();
      places[column.slot] = line.column(field);
      texts[column.slot] = line.quoted(field);
    }
  }

  /**
   * Tells or refuses.
   *
   * @param name the column as the file calls it
   */
  void judge(
      WeatherColumn column,
      String name,
      String mustBe,
      int rows,
      List<String> notes,
      FaultList faults) {
    int slot = column.slot;
    int count = counts[slot];
    if (count == 0) {
      return;
    }
    if ((long) count * ROWS_PER_STRAY > rows) {
      faults.add(
          lines[slot],
          places[slot],
          name + ": found " + texts[slot] + ", the first of " + count + " such values",
          mustBe,
          "Check the unit of the column, or take it out.");
      return;
    }
    notes.add(
        column.words
            + ": "
            + count
            + (count == 1 ? " impossible value" : " impossible values")
            + " taken as missing, the first in line "
            + lines[slot]
            + ": "
            + texts[slot]);
  }
}
