package greyspell.weather;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

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

  private final Map<Change, int[]> counts = new EnumMap<>(Change.class);

  void add(Change change, WeatherColumn column) {
    counts.computeIfAbsent(change, c -> new int[WeatherColumn.COUNT])[column.slot]++;
  }

  void tell(List<String> notes) {
    for (var entry : counts.entrySet()) {
      for (WeatherColumn column : WeatherColumn.values()) {
        int count = entry.getValue()[column.slot];
        if (count > 0) {
          notes.add(
              column.words
                  + ": "
                  + count
                  + (count == 1 ? " value " : " values ")
                  + entry.getKey().words);
        }
      }
    }
  }
}
