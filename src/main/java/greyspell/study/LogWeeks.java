package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.balance.Forcing;
import greyspell.calendar.HourCalendar;
import greyspell.cause.log.SeenHours;
import greyspell.cause.log.Weeks;
import greyspell.power.step.InverterLimits;
import greyspell.scenario.Scenario;
import greyspell.sky.Radiation;
import greyspell.storage.BankSpec;
import greyspell.storage.step.BankDetail;
import greyspell.weather.MonitorLog;
import greyspell.weather.MonitorLog.SolarAt;
import java.time.LocalDate;
import java.util.Arrays;

/**
 * Lays what a log has seen beside what the scenario expects, at the points at which the log
 * measured. Where the weather does not hold the log's weeks, load and the system's own draw are
 * those of the same days of the weather's first year.
 */
final class LogWeeks {
  /** Near full, where sun may be left over. */
  private static final double FREE_BELOW_SHARE = 0.95;

  private static final double BELOW_TAPER_SHARE = 0.02;

  /** So many hours of the log must lie in the weather. */
  static final int FEWEST_SHARED_H = 168;

  private static final int DAY = 24;

  private final Scenario home;
  private final HomeRun run;
  private final HomeLight light;
  private final MonitorLog log;
  private final Forcing forcing;
  private final HourCalendar calendar;
  private final long calendarFirstHour;
  private double[] directShare = {};

  LogWeeks(Scenario home, HomeRun run, HomeLight light, MonitorLog log) {
    this.home = home;
    this.run = run;
    this.light = light;
    this.log = log;
    forcing = run.forcing();
    calendar = forcing.calendar();
    calendarFirstHour = LocalDate.of(calendar.firstYear(), 1, 1).toEpochDay() * DAY;
  }

  SeenHours seen(long shiftMinutes) {
    return SeenHours.of(
        log, light.weather().source().utcOffsetH(), shiftMinutes, home.bank().monitorWh());
  }

  /** Part of a log's hours. */
  record Span(int from, int to) {
    int hours() {
      return to - from;
    }
  }

  /** The hours of the log that the weather holds too. */
  Span shared(SeenHours seen) {
    if (calendar.isTypical()) {
      return new Span(0, 0);
    }
    long before = calendarFirstHour - seen.firstHour();
    int from = (int) Math.max(0, Math.min(seen.hours(), before));
    int to = (int) Math.max(from, Math.min(seen.hours(), before + calendar.hours()));
    return new Span(from, to);
  }

  /** Of the weather, for an hour of the log that it holds. */
  int calendarHour(SeenHours seen, int hour) {
    return (int) (seen.firstHour() + hour - calendarFirstHour);
  }

  /** All hours of the span, with the weather that came. */
  Weeks sameWeather(SeenHours seen, Span span) {
    var at = new int[span.hours()];
    for (int k = 0; k < at.length; k++) {
      at[k] = calendarHour(seen, span.from() + k);
    }
    Weeks.Columns of = columns(seen, span, at);
    double[] solarWh = solarWh();
    int pad = Weeks.WIDER_H;
    of.expectedSolarWh = pick(solarWh, at);
    of.directShare = pick(directShare(), at);
    of.widerSolarWh = new double[at.length + 2 * pad];
    for (int k = 0; k < of.widerSolarWh.length && at.length > 0; k++) {
      int h = at[0] + k - pad;
      of.widerSolarWh[k] = h >= 0 && h < solarWh.length ? solarWh[h] : 0.0;
    }
    return new Weeks(seen.firstHour() + span.from(), of);
  }

  /** All hours of the log, with the house's habits at this season but no weather. */
  Weeks withoutWeather(SeenHours seen) {
    var at = new int[seen.hours()];
    for (int k = 0; k < at.length; k++) {
      at[k] = hourOfSeason(seen.firstHour() + k);
    }
    return new Weeks(seen.firstHour(), columns(seen, new Span(0, seen.hours()), at));
  }

  /** The same month, day and hour in the weather's first year. */
  int hourOfSeason(long epochHour) {
    LocalDate date = LocalDate.ofEpochDay(Math.floorDiv(epochHour, (long) DAY));
    int year = calendar.firstYear();
    int day =
        Math.min(date.getDayOfMonth(), LocalDate.of(year, date.getMonthValue(), 1).lengthOfMonth());
    return calendar.hourOf(
        year, date.getMonthValue(), day, (int) Math.floorMod(epochHour, (long) DAY));
  }

  private Weeks.Columns columns(SeenHours seen, Span span, int[] at) {
    var of = new Weeks.Columns();
    of.chargeShare = Arrays.copyOfRange(seen.chargeShare(), span.from(), span.to() + 1);
    of.solarWh = Arrays.copyOfRange(seen.solarWh(), span.from(), span.to());
    of.loadWh = Arrays.copyOfRange(seen.loadWh(), span.from(), span.to());
    of.batteryWh = Arrays.copyOfRange(seen.batteryWh(), span.from(), span.to());
    of.generatorWh = Arrays.copyOfRange(seen.generatorWh(), span.from(), span.to());
    of.expectedLoadWh = pick(loadWh(), at);
    of.atLimit = new boolean[at.length];
    of.mostTakenWh = new double[at.length];
    of.drawWh = new double[at.length];
    boolean isLoadSeen = Arrays.stream(of.loadWh).anyMatch(wh -> !Double.isNaN(wh));
    for (int k = 0; k < at.length; k++) {
      double expectedWh = drawWh(at[k]);
      of.drawWh[k] = isLoadSeen ? drawWh(of.loadWh[k], at[k]) : expectedWh;
      of.atLimit[k] = forcing.clippedWh()[at[k]] > 0.0;
      of.mostTakenWh[k] =
          (Double.isNaN(of.drawWh[k]) ? expectedWh : of.drawWh[k])
              + run.design().bank().mostInWh() * forcing.chargeShare()[at[k]];
    }
    bank(of, at);
    return of;
  }

  private void bank(Weeks.Columns of, int[] at) {
    BankSpec bank = home.bank();
    of.contentWh = bank.monitorWh();
    of.chargeEfficiency = run.design().bank().chargeEfficiency();
    of.dischargeEfficiency = run.design().bank().dischargeEfficiency();
    of.emptyShare = new double[at.length];
    for (int k = 0; k < at.length; k++) {
      of.emptyShare[k] = bank.monitorShare(forcing.lockedShare()[at[k]] * bank.usableWh());
    }
    of.freeBelowShare = Math.min(FREE_BELOW_SHARE, bank.fullFraction() - 0.05);
    BankDetail detail = run.design().detail().bank();
    if (detail != null && detail.taper() != null) {
      of.freeBelowShare =
          Math.min(of.freeBelowShare, detail.taper().fromShare() - BELOW_TAPER_SHARE);
    }
  }

  private static double[] pick(double[] values, int[] at) {
    var picked = new double[at.length];
    for (int k = 0; k < at.length; k++) {
      picked[k] = values[at[k]];
    }
    return picked;
  }

  /** At the point at which the log measured it, if all of it is taken. */
  private double[] solarWh() {
    if (log.solarAt() == SolarAt.BUS) {
      return forcing.solarBusWh();
    }
    var wh = new double[forcing.hours()];
    for (int h = 0; h < wh.length; h++) {
      wh[h] = forcing.solarAvailableWh()[h] - forcing.clippedWh()[h];
    }
    return wh;
  }

  private double[] loadWh() {
    var wh = new double[forcing.hours()];
    for (int h = 0; h < wh.length; h++) {
      wh[h] =
          switch (log.loadAt()) {
            case SOCKETS -> forcing.acAskedWh()[h];
            case HOUSE -> forcing.acAskedWh()[h] + forcing.dcAskedWh()[h];
            case BUS -> drawWh(h) + forcing.otherWh(h);
          };
    }
    return wh;
  }

  /** Off the bus as expected, less what a second source brings. */
  private double drawWh(int h) {
    return run.design().inverter().busWh(forcing.acAskedWh()[h])
        + forcing.dcAskedWh()[h]
        + forcing.standingWh()[h]
        - forcing.otherWh(h);
  }

  /** Off the bus by the load that was seen. */
  private double drawWh(double seenWh, int h) {
    InverterLimits inverter = run.design().inverter();
    double dcWh = forcing.dcAskedWh()[h];
    double ownWh = forcing.standingWh()[h] - forcing.otherWh(h);
    return switch (log.loadAt()) {
      case SOCKETS -> inverter.busWh(seenWh) + dcWh + ownWh;
      case HOUSE ->
          Double.isNaN(seenWh)
              ? seenWh
              : inverter.busWh(Math.max(0.0, seenWh - dcWh)) + Math.min(dcWh, seenWh) + ownWh;
      case BUS -> seenWh - forcing.otherWh(h);
    };
  }

  /** Part of the light on all planes that comes straight from the sun, by rated power. */
  double[] directShare() {
    if (directShare.length == 0) {
      directShare = directShare(home, light);
    }
    return directShare;
  }

  /** Share of the light on a home's planes that comes straight from the sun, by hour. */
  static double[] directShare(Scenario home, HomeLight light) {
    Radiation radiation = light.radiation();
    HourCalendar calendar = light.weather().calendar();
    double[] diffuse = radiation.diffuseHorizontalWm2();
    double[] global = radiation.globalHorizontalWm2();
    var direct = new double[global.length];
    var all = new double[global.length];
    for (ArraySpec plane : home.arrays()) {
      double cosTilt = Math.cos(Math.toRadians(plane.tiltDeg()));
      double[] front = light.on(plane).frontWm2();
      for (int h = 0; h < all.length; h++) {
        double sky =
            diffuse[h] * 0.5 * (1.0 + cosTilt)
                + home.site().groundAlbedo().in(calendar.month(h))
                    * global[h]
                    * 0.5
                    * (1.0 - cosTilt);
        direct[h] += plane.ratedPowerW() * Math.max(0.0, front[h] - sky);
        all[h] += plane.ratedPowerW() * front[h];
      }
    }
    for (int h = 0; h < all.length; h++) {
      direct[h] = all[h] > 0.0 ? direct[h] / all[h] : 0.0;
    }
    return direct;
  }
}
