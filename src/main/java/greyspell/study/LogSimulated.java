package greyspell.study;

import greyspell.cause.log.Finding;
import greyspell.cause.log.Finding.About;
import greyspell.cause.log.LogDiagnosis;
import greyspell.cause.log.SeenHours;
import greyspell.cause.log.Shade;
import greyspell.cause.log.Weeks;
import greyspell.scenario.Scenario;
import greyspell.study.LogRun.Books;
import greyspell.study.LogStudy.Explained;
import greyspell.study.LogWeeks.Span;
import greyspell.weather.MonitorLog;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The same weeks simulated: as the scenario has them, and with what the log says. */
final class LogSimulated {
  private static final int DAY = 24;

  private final LogDiagnosis diagnosis;
  private final List<Finding> named;
  private final @Nullable LogRun trial;
  private final long firstHour;
  private final double[] chargeShare;
  private final double[] expectedShare;
  private final double[] fittedShare;
  private final int hours;
  private final int begin;
  private final boolean isLoadSeen;

  LogSimulated(
      Scenario home,
      MonitorLog log,
      HomeRun run,
      HomeLight light,
      LogWeeks weeksOf,
      SeenHours seen,
      Span span,
      LogDiagnosis diagnosis) {
    this.diagnosis = diagnosis;
    hours = span.hours();
    firstHour = seen.firstHour() + span.from();
    chargeShare = Arrays.copyOfRange(seen.chargeShare(), span.from(), span.to() + 1);
    named = diagnosis.findings().stream().filter(Finding::isNamed).toList();
    int start = 0;
    while (start < hours && Double.isNaN(chargeShare[start])) {
      start++;
    }
    expectedShare = new double[hours];
    fittedShare = new double[hours];
    Arrays.fill(expectedShare, Double.NaN);
    Arrays.fill(fittedShare, Double.NaN);
    begin = start;
    trial =
        start >= hours
            ? null
            : new LogRun(
                home,
                run,
                light,
                weeksOf.calendarHour(seen, span.from() + start),
                Arrays.copyOfRange(
                    weeksOf.directShare(),
                    weeksOf.calendarHour(seen, span.from() + start),
                    weeksOf.calendarHour(seen, span.to() - 1) + 1),
                Arrays.copyOfRange(seen.generatorWh(), span.from() + start, span.to()),
                chargeShare[start],
                loadWh(seen, span, start, diagnosis),
                log.loadAt());
    fill(LogChange.NONE, expectedShare);
    isLoadSeen = diagnosis.load() != null;
    LogChange all = LogChange.of(named, LogStudy.shade(diagnosis));
    fill(isLoadSeen ? all.withLoadAsSeen() : all, fittedShare);
  }

  /** NaN where the lights were out: the house asked for more than it got. */
  private static double[] loadWh(SeenHours seen, Span span, int start, LogDiagnosis diagnosis) {
    double[] wh = Arrays.copyOfRange(seen.loadWh(), span.from() + start, span.to());
    for (int h = 0; h < wh.length && diagnosis.lightsOut().hours() > 0; h++) {
      wh[h] = wh[h] < 1.0 ? Double.NaN : wh[h];
    }
    return wh;
  }

  private void fill(LogChange change, double[] toShare) {
    if (trial == null) {
      return;
    }
    Books books = trial.with(change);
    for (int h = begin; h < hours; h++) {
      toShare[h] = books.chargeShare(h - begin);
    }
  }

  double errorShare() {
    return errorShare(expectedShare);
  }

  private double errorShare(double[] simulated) {
    double sum = 0.0;
    int count = 0;
    for (int h = 0; h < hours; h++) {
      double by = simulated[h] - chargeShare[h + 1];
      if (!Double.isNaN(by)) {
        sum += by * by;
        count++;
      }
    }
    return count == 0 ? Double.NaN : Math.sqrt(sum / count);
  }

  /** Each named finding by itself, the one that explains most first. */
  List<Explained> alone() {
    var all = new ArrayList<Explained>();
    for (Finding finding : named) {
      var share = new double[hours];
      Arrays.fill(share, Double.NaN);
      fill(LogChange.of(List.of(finding), LogStudy.shade(diagnosis)), share);
      all.add(new Explained(List.of(finding.about()), false, errorShare(share)));
    }
    if (isLoadSeen) {
      var share = new double[hours];
      Arrays.fill(share, Double.NaN);
      fill(LogChange.NONE.withLoadAsSeen(), share);
      all.add(new Explained(List.of(), true, errorShare(share)));
    }
    return LogStudy.sorted(all);
  }

  @Nullable Explained together() {
    List<About> about = named.stream().map(Finding::about).toList();
    return named.isEmpty() ? null : new Explained(about, isLoadSeen, errorShare(fittedShare));
  }

  @Nullable ChargeLines chargeLines() {
    LocalDateTime start =
        LocalDate.ofEpochDay(Math.floorDiv(firstHour, (long) DAY))
            .atTime((int) Math.floorMod(firstHour, (long) DAY), 0);
    return new ChargeLines(
        start, Arrays.copyOfRange(chargeShare, 1, hours + 1), expectedShare, fittedShare);
  }

  List<LogDay> days(Weeks weeks) {
    var days = new ArrayList<LogDay>();
    boolean[] free = LogDiagnosis.freeHours(weeks);
    for (int from = 0; from < hours; ) {
      int to = from;
      long day = Math.floorDiv(firstHour + from, (long) DAY);
      while (to < hours && Math.floorDiv(firstHour + to, (long) DAY) == day) {
        to++;
      }
      days.add(day(weeks.columns(), free, LocalDate.ofEpochDay(day), from, to));
      from = to;
    }
    return days;
  }

  private LogDay day(Weeks.Columns of, boolean[] free, LocalDate date, int from, int to) {
    double seen = 0.0, expected = 0.0, fitted = 0.0, freeSeen = 0.0, freeExpected = 0.0;
    double load = 0.0, expectedLoad = 0.0;
    int freeHours = 0, solarHours = 0, loadHours = 0;
    LogChange all = LogChange.of(named, LogStudy.shade(diagnosis));
    for (int h = from; h < to; h++) {
      if (!Double.isNaN(of.solarWh[h])) {
        solarHours++;
        seen += of.solarWh[h];
        expected += of.expectedSolarWh[h];
        fitted += of.expectedSolarWh[h] * all.arrayFactor() * open(all.shade(), of, h);
        freeSeen += free[h] ? of.solarWh[h] : 0.0;
        freeExpected += free[h] ? of.expectedSolarWh[h] : 0.0;
        freeHours += free[h] ? 1 : 0;
      }
      if (!Double.isNaN(of.loadWh[h])) {
        loadHours++;
        load += of.loadWh[h];
        expectedLoad += of.expectedLoadWh[h];
      }
    }
    double none = Double.NaN;
    return new LogDay(
        date,
        solarHours == 0 ? none : seen,
        solarHours == 0 ? none : expected,
        solarHours == 0 ? none : fitted,
        freeSeen,
        freeExpected,
        freeHours,
        loadHours == 0 ? none : load,
        loadHours == 0 ? none : expectedLoad,
        chargeShare[to],
        expectedShare[to - 1],
        fittedShare[to - 1]);
  }

  private double open(@Nullable Shade shade, Weeks.Columns of, int h) {
    int k = (int) Math.floorMod(firstHour + h, (long) DAY);
    if (shade == null || k < shade.fromHour() || k >= shade.toHour()) {
      return 1.0;
    }
    return Math.max(0.0, 1.0 - shade.lostShare().value() * of.directShare[h]);
  }
}
