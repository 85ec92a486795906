package greyspell.study;

import greyspell.cause.log.SeenHours;
import greyspell.study.LogWeeks.Span;
import greyspell.weather.MonitorLog;
import java.time.LocalDate;

/**
 * How much of its time a log tells.
 *
 * @param hours from the first to the last
 * @param gaps runs of hours in which nothing was written
 * @param longestGapHours longest of them
 * @param chargeMissingHours hours without a charge
 */
public record LogCoverage(
    LocalDate first,
    LocalDate last,
    int hours,
    int gaps,
    int longestGapHours,
    int gapHours,
    int chargeMissingHours,
    int solarMissingHours,
    int loadMissingHours) {
  private static final int DAY = 24;

  static LogCoverage of(MonitorLog log, SeenHours seen, Span span) {
    int gaps = 0, longest = 0, gapHours = 0, run = 0, charge = 0, solar = 0, load = 0;
    for (int h = span.from(); h < span.to(); h++) {
      boolean isChargeOut = Double.isNaN(seen.chargeShare()[h]);
      boolean isSolarOut = Double.isNaN(seen.solarWh()[h]);
      boolean isLoadOut = Double.isNaN(seen.loadWh()[h]);
      charge += isChargeOut ? 1 : 0;
      solar += isSolarOut ? 1 : 0;
      load += isLoadOut ? 1 : 0;
      boolean isGap = isChargeOut && isSolarOut && isLoadOut;
      run = isGap ? run + 1 : 0;
      gaps += run == 1 ? 1 : 0;
      gapHours += isGap ? 1 : 0;
      longest = Math.max(longest, run);
    }
    return new LogCoverage(
        date(seen.firstHour() + span.from()),
        date(seen.firstHour() + span.to() - 1),
        span.hours(),
        gaps,
        longest,
        gapHours,
        charge,
        solar,
        load);
  }

  private static LocalDate date(long hour) {
    return LocalDate.ofEpochDay(Math.floorDiv(hour, (long) DAY));
  }
}
