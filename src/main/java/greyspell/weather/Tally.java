package greyspell.weather;

import java.util.List;

/**
 * How many values were read otherwise than they stand in the file: so that none is changed in
 * silence. One for all files that are read as one.
 */
final class Tally {
  enum Change {
    BELOW_ZERO("below zero set to zero"),
    SKY_INVISIBLE("of 9 okta (sky invisible) read as overcast"),
    FLAGGED("flagged as erroneous taken as missing");

    private final String words;

    Change(String words) {
      this.words = words;
    }
  }

  private final int[][] counts = new int[Change.values().length][WeatherColumn.COUNT];

  void add(Change change, WeatherColumn column) {
    counts[change.ordinal()][column.slot]++;
  }

  void tell(List<String> notes) {
    for (Change change : Change.values()) {
      for (WeatherColumn column : WeatherColumn.values()) {
        int count = counts[change.ordinal()][column.slot];
        if (count > 0) {
          notes.add(
              column.words + ": " + count + (count == 1 ? " value " : " values ") + change.words);
        }
      }
    }
  }
}
