package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.cause.log.ClockFit;
import greyspell.cause.log.Finding;
import greyspell.cause.log.Finding.About;
import greyspell.cause.log.LogDiagnosis;
import greyspell.cause.log.SeenHours;
import greyspell.cause.log.Shade;
import greyspell.cause.log.SunFit;
import greyspell.cause.log.Weeks;
import greyspell.scenario.Scenario;
import greyspell.sky.SunClock;
import greyspell.sky.SunPath;
import greyspell.study.LogWeeks.Span;
import greyspell.weather.MonitorLog;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a monitor's log says of a home: the clock first, then what fits and what differs, then which
 * difference explains the charge. Nothing of the scenario is changed.
 *
 * @param hasWeather whether the weather holds the log's weeks; else only load, the system's own
 *     draw and the bank were looked at
 * @param clock null where it could not be told from the weather
 * @param sunClock from the symmetry of clear days, where there is no weather; null else
 * @param shiftMinutes that were added to the log's times
 * @param shadeSun where the sun stands in the hours that fall short, null if none do
 * @param alone charge error with each named finding put into the simulation alone, best first;
 *     empty without weather
 * @param together the same with all of them, null if none is named or there is no weather
 * @param chargeErrorShare root mean square of simulated less seen charge, nothing changed; NaN
 *     without weather
 * @param charge hourly charge, seen and simulated; null without weather
 * @param cautions what stands in the way of believing it
 */
public record LogStudy(
    Scenario home,
    MonitorLog log,
    LogCoverage coverage,
    boolean hasWeather,
    @Nullable ClockFit clock,
    @Nullable SunClock sunClock,
    long shiftMinutes,
    LogDiagnosis diagnosis,
    @Nullable SunStands shadeSun,
    List<Explained> alone,
    @Nullable Explained together,
    double chargeErrorShare,
    List<LogDay> days,
    @Nullable ChargeLines charge,
    List<String> cautions) {
  private static final double LOWEST_MATCH = 0.8;
  private static final double NOON_DEG = 20.0;

  /**
   * What the simulation comes to with something put right.
   *
   * @param about what was changed, one or all
   * @param isLoadAsSeen whether the load of the log was taken, hour by hour
   * @param chargeErrorShare root mean square of simulated less seen charge
   */
  public record Explained(List<About> about, boolean isLoadAsSeen, double chargeErrorShare) {}

  /** Where the sun stands in some hours of the day over the log's weeks. */
  public record SunStands(double fromAzimuthDeg, double toAzimuthDeg, double highestDeg) {}

  /** Compares. */
  public static LogStudy of(Scenario home, MonitorLog log) {
    return of(home, log, Study.read(home));
  }

  static LogStudy of(Scenario home, MonitorLog log, WeatherSeries weather) {
    var cautions = new ArrayList<String>();
    HomeLight light = HomeLight.of(home, weather);
    HomeRun run = HomeRun.of(home, light, Without.NOTHING, new ArrayList<>(), new ArrayList<>());
    return new Work(home, log, light, new LogWeeks(home, run, light, log), run, cautions).done();
  }

  /** Hands the steps from one to the next. */
  private static final class Work {
    private final Scenario home;
    private final MonitorLog log;
    private final HomeLight light;
    private final LogWeeks weeksOf;
    private final HomeRun run;
    private final List<String> cautions;

    Work(
        Scenario home,
        MonitorLog log,
        HomeLight light,
        LogWeeks weeksOf,
        HomeRun run,
        List<String> cautions) {
      this.home = home;
      this.log = log;
      this.light = light;
      this.weeksOf = weeksOf;
      this.run = run;
      this.cautions = cautions;
    }

    LogStudy done() {
      SeenHours seen = weeksOf.seen(0);
      Span span = weeksOf.shared(seen);
      return span.hours() >= LogWeeks.FEWEST_SHARED_H ? withWeather(seen, span) : without(seen);
    }

    private LogStudy without(SeenHours seen) {
      SunClock sunClock = sunClock(seen);
      long shift =
          sunClock != null && sunClock.isWrong() ? Math.round(sunClock.shiftH() * 2.0) * 30L : 0L;
      SeenHours right = shift == 0 ? seen : weeksOf.seen(shift);
      Weeks weeks = weeksOf.withoutWeather(right);
      LogDiagnosis diagnosis = LogDiagnosis.of(weeks);
      LogCautions.house(home, log, cautions);
      LogCautions.plausible(diagnosis, cautions);
      return new LogStudy(
          home,
          log,
          LogCoverage.of(log, right, new Span(0, right.hours())),
          false,
          null,
          sunClock,
          shift,
          diagnosis,
          null,
          List.of(),
          null,
          Double.NaN,
          List.of(),
          null,
          List.copyOf(cautions));
    }

    /** From clear days alone; only where the panels look to the noon sun. */
    private @Nullable SunClock sunClock(SeenHours seen) {
      double noon = home.site().isNorthern() ? 180.0 : 0.0;
      for (ArraySpec plane : home.arrays()) {
        double off = Math.abs((plane.azimuthDeg() - noon + 540.0) % 360.0 - 180.0);
        if (off > NOON_DEG) {
          return null;
        }
      }
      var solar = new double[light.sun().hours()];
      for (int h = 0; h < seen.hours(); h++) {
        double wh = seen.solarWh()[h];
        solar[weeksOf.hourOfSeason(seen.firstHour() + h)] = Double.isNaN(wh) ? 0.0 : wh;
      }
      return SunClock.find(solar, light.sun());
    }

    private LogStudy withWeather(SeenHours asWritten, Span spanAsWritten) {
      ClockFit clock = LogDiagnosis.clock(weeksOf.sameWeather(asWritten, spanAsWritten));
      long shift = clock == null ? 0L : clock.shiftMinutes();
      SeenHours seen = shift == 0 ? asWritten : weeksOf.seen(shift);
      Span span = weeksOf.shared(seen);
      Weeks weeks = weeksOf.sameWeather(seen, span);
      LogDiagnosis diagnosis = LogDiagnosis.of(weeks);
      LogCautions.house(home, log, cautions);
      LogCautions.weather(
          clock, clock != null && clock.matchCorrelation() < LOWEST_MATCH, cautions);
      LogCautions.span(seen, span, cautions);
      LogCautions.plausible(diagnosis, cautions);
      var simulated = new LogSimulated(home, log, run, light, weeksOf, seen, span, diagnosis);
      Shade shade = shade(diagnosis);
      return new LogStudy(
          home,
          log,
          LogCoverage.of(log, seen, span),
          true,
          clock,
          null,
          shift,
          diagnosis,
          shade == null ? null : sunStands(shade, seen, span),
          simulated.alone(),
          simulated.together(),
          simulated.errorShare(),
          simulated.days(weeks),
          simulated.chargeLines(),
          List.copyOf(cautions));
    }

    private SunStands sunStands(Shade shade, SeenHours seen, Span span) {
      SunPath sun = light.sun();
      double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY, top = 0.0;
      for (int h = span.from(); h < span.to(); h++) {
        int at = weeksOf.calendarHour(seen, h);
        int k = at % 24;
        if (k >= shade.fromHour() && k < shade.toHour() && sun.sunlitShare()[at] > 0.5) {
          low = Math.min(low, sun.azimuthDeg(at));
          high = Math.max(high, sun.azimuthDeg(at));
          top = Math.max(top, 90.0 - sun.zenithDeg()[at]);
        }
      }
      return new SunStands(low, high, top);
    }
  }

  static @Nullable Shade shade(LogDiagnosis diagnosis) {
    SunFit sun = diagnosis.sun();
    return sun == null ? null : sun.shade();
  }

  /** What is named, in the order in which it was looked at. */
  public List<Finding> named() {
    return diagnosis.findings().stream().filter(Finding::isNamed).toList();
  }

  /** The same, what explains most of the charge first, where that is known. */
  public List<Finding> namedByWeight() {
    var left = new ArrayList<>(named());
    var ordered = new ArrayList<Finding>();
    for (Explained one : alone) {
      left.stream()
          .filter(f -> one.about().contains(f.about()))
          .findFirst()
          .ifPresent(ordered::add);
    }
    left.removeAll(ordered);
    ordered.addAll(left);
    return ordered;
  }

  /** Best first. */
  static List<Explained> sorted(List<Explained> all) {
    return all.stream().sorted(Comparator.comparingDouble(Explained::chargeErrorShare)).toList();
  }
}
