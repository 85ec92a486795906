package greyspell.load;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransitionRule;
import java.time.zone.ZoneOffsetTransitionRule.TimeDefinition;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Turns the times of a clock with daylight saving into the site's standard time. The hour that
 * comes twice in autumn is the summer's first and the winter's second, told apart by the order of
 * the rows; the hour that spring leaves out has no rows.
 *
 * <p>The rule "eu" runs from the last Sunday of March to that of October, 01:00 UTC; "us" from the
 * second Sunday of March to the first of November, 02:00 on the clock (both from memory; for other
 * years and places name the time zone).
 */
final class LogZone {
  static final long SKIPPED = Long.MIN_VALUE + 1;
  private static final int MINUTES_IN_HOUR = 60;
  private static final int MINUTES_IN_DAY = 1440;
  private static final int RULES_FROM_YEAR = 1971;

  private final ZoneRules rules;
  private final long standardMinutes;

  private LogZone(ZoneRules rules, long standardMinutes) {
    this.rules = rules;
    this.standardMinutes = standardMinutes;
  }

  /** Null if there is no such zone. */
  static @Nullable LogZone find(String zone, double utcOffsetH) {
    long standardMinutes = Math.round(utcOffsetH * MINUTES_IN_HOUR);
    ZoneOffset standard = ZoneOffset.ofTotalSeconds(Math.toIntExact(standardMinutes * 60));
    switch (zone.toLowerCase(Locale.ROOT)) {
      case "eu" -> {
        return new LogZone(
            rules(
                standard,
                rule(Month.MARCH, -1, LocalTime.of(1, 0), TimeDefinition.UTC, standard, true),
                rule(Month.OCTOBER, -1, LocalTime.of(1, 0), TimeDefinition.UTC, standard, false)),
            standardMinutes);
      }
      case "us" -> {
        return new LogZone(
            rules(
                standard,
                rule(Month.MARCH, 8, LocalTime.of(2, 0), TimeDefinition.WALL, standard, true),
                rule(Month.NOVEMBER, 1, LocalTime.of(2, 0), TimeDefinition.WALL, standard, false)),
            standardMinutes);
      }
      default -> {
        try {
          return new LogZone(ZoneId.of(zone).getRules(), standardMinutes);
        } catch (DateTimeException e) {
          return null;
        }
      }
    }
  }

  private static ZoneOffsetTransitionRule rule(
      Month month,
      int dayOfMonth,
      LocalTime time,
      TimeDefinition definition,
      ZoneOffset standard,
      boolean isToSummer) {
    ZoneOffset summer = ZoneOffset.ofTotalSeconds(standard.getTotalSeconds() + 3600);
    return ZoneOffsetTransitionRule.of(
        month,
        dayOfMonth,
        DayOfWeek.SUNDAY,
        time,
        false,
        definition,
        standard,
        isToSummer ? standard : summer,
        isToSummer ? summer : standard);
  }

  /** Java applies a rule only after a first change of the clock, so one year's stand in full. */
  private static ZoneRules rules(
      ZoneOffset standard, ZoneOffsetTransitionRule spring, ZoneOffsetTransitionRule autumn) {
    return ZoneRules.of(
        standard,
        standard,
        List.of(),
        List.of(spring.createTransition(RULES_FROM_YEAR), autumn.createTransition(RULES_FROM_YEAR)),
        List.of(spring, autumn));
  }

  /**
   * Minutes since 1970-01-01 00:00 in standard time; {@link #SKIPPED} in the hour that spring
   * leaves out.
   *
   * @param clockMinute the same on the clock
   * @param afterStandard what it must come after, if it can: the row before
   */
  long standardMinute(long clockMinute, long afterStandard) {
    LocalDateTime clock =
        LocalDate.ofEpochDay(Math.floorDiv(clockMinute, (long) MINUTES_IN_DAY))
            .atStartOfDay()
            .plusMinutes(Math.floorMod(clockMinute, (long) MINUTES_IN_DAY));
    List<ZoneOffset> offsets = rules.getValidOffsets(clock);
    if (offsets.isEmpty()) {
      return SKIPPED;
    }
    long first = standard(clockMinute, offsets.get(0));
    return offsets.size() > 1 && first <= afterStandard
        ? standard(clockMinute, offsets.get(1))
        : first;
  }

  private long standard(long clockMinute, ZoneOffset offset) {
    return clockMinute - offset.getTotalSeconds() / 60 + standardMinutes;
  }
}
