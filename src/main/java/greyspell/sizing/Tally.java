package greyspell.sizing;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Winter;
import java.util.ArrayList;
import java.util.List;

/**
 * What one design leaves unserved, as far as its weather has been gone through.
 *
 * @param years of all the weather, whether gone through or not
 * @param wholeWinters in all the weather
 * @param unmetHours hours in which something was not served, so far
 * @param generatorHours so far
 * @param winters whole ones, so far, in order
 */
public record Tally(
    int years, int wholeWinters, int unmetHours, int generatorHours, List<OneWinter> winters) {
  private static final int HOURS_OF_DAY = 24;

  public Tally {
    winters = List.copyOf(winters);
  }

  /**
   * One whole winter.
   *
   * @param lossDays days with at least one unmet hour
   */
  public record OneWinter(String name, int unmetHours, int lossDays) {}

  /** Before any weather. */
  public static Tally none(int years, int wholeWinters) {
    return new Tally(years, wholeWinters, 0, 0, List.of());
  }

  /**
   * With one more part of the weather.
   *
   * @param unmetHoursOfDay of each day of the part
   */
  public Tally and(
      HourCalendar calendar, boolean isNorthern, byte[] unmetHoursOfDay, int moreGeneratorHours) {
    var all = new ArrayList<>(winters);
    int sum = unmetHours;
    for (byte hours : unmetHoursOfDay) {
      sum += hours;
    }
    for (Winter winter : calendar.winters(isNorthern)) {
      if (winter.isWhole()) {
        int hours = 0, days = 0;
        for (int d = winter.fromHour() / HOURS_OF_DAY; d < winter.toHour() / HOURS_OF_DAY; d++) {
          hours += unmetHoursOfDay[d];
          days += unmetHoursOfDay[d] > 0 ? 1 : 0;
        }
        all.add(new OneWinter(winter.name(), hours, days));
      }
    }
    return new Tally(years, wholeWinters, sum, generatorHours + moreGeneratorHours, all);
  }

  /** In an average year. */
  public double unmetHoursPerYear() {
    return (double) unmetHours / years;
  }

  /** In an average year. */
  public double generatorHoursPerYear() {
    return (double) generatorHours / years;
  }

  /** Whole winters in which something was not served. */
  public int darkWinters() {
    return (int) winters.stream().filter(w -> w.unmetHours() > 0).count();
  }

  /** Of the whole winter that has most. */
  public int mostLossDays() {
    return winters.stream().mapToInt(OneWinter::lossDays).max().orElse(0);
  }
}
