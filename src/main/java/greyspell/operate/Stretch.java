package greyspell.operate;

import greyspell.balance.Forcing;
import greyspell.calendar.HourCalendar;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Some days of weather that could lie ahead: from the time of day that it is, at a date near
 * today's, of some year.
 *
 * @param part of the trials
 * @param fromHour its first hour
 * @param sunWh from the panels on the bus, a day
 */
record Stretch(int part, int fromHour, double sunWh) {
  /** Dates so far on either side of today's are taken to be as good as today's. */
  static final int DAYS_ASIDE = 12;

  private static final int HOURS_PER_DAY = 24;

  /** Which sky lies ahead. */
  enum Sky {
    GREY("grey, the dullest third"),
    MIXED("mixed, the middle third"),
    CLEAR("clear, the brightest third"),
    ANY("any that may come");

    private final String words;

    Sky(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /**
   * Of all years of the weather.
   *
   * @param lived what comes to the home, part by part
   * @param now its date and hour of the day
   * @param hours how long each is
   */
  static List<Stretch> of(List<Forcing> lived, LocalDateTime now, int hours, Sky sky) {
    var found = new ArrayList<Stretch>();
    int month = now.getMonthValue();
    int day = Math.min(now.getDayOfMonth(), month == 2 ? 28 : 31);
    for (int part = 0; part < lived.size(); part++) {
      Forcing forcing = lived.get(part);
      HourCalendar calendar = forcing.calendar();
      for (int y = 0; y < calendar.years(); y++) {
        int middle = calendar.hourOf(calendar.firstYear() + y, month, day, now.getHour());
        for (int aside = -DAYS_ASIDE; aside <= DAYS_ASIDE; aside++) {
          int from = middle + aside * HOURS_PER_DAY;
          boolean isRing = calendar.years() == 1;
          if (isRing || (from >= 0 && from + hours <= calendar.hours())) {
            int at = Math.floorMod(from, calendar.hours());
            found.add(new Stretch(part, at, sunWh(forcing, at, hours)));
          }
        }
      }
    }
    return under(sky, found);
  }

  private static List<Stretch> under(Sky sky, List<Stretch> all) {
    if (sky == Sky.ANY) {
      return List.copyOf(all);
    }
    var sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparingDouble(Stretch::sunWh));
    int n = sorted.size(), third = n / 3;
    return List.copyOf(
        switch (sky) {
          case GREY -> sorted.subList(0, Math.max(1, third));
          case MIXED -> sorted.subList(third, Math.max(third + 1, n - third));
          default -> sorted.subList(Math.min(n - 1, n - third), n);
        });
  }

  private static double sunWh(Forcing forcing, int from, int hours) {
    double sumWh = 0.0;
    for (int k = 0; k < hours; k++) {
      sumWh += forcing.solarBusWh()[(from + k) % forcing.hours()];
    }
    return sumWh * HOURS_PER_DAY / hours;
  }
}
