package greyspell.load;

import greyspell.calendar.HourCalendar;
import java.time.DayOfWeek;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** One appliance over the calendar: which spans hold on each day, and how long it runs in them. */
final class ApplianceHours {
  final ApplianceSpec spec;
  private final LoadWeather weather;
  private final HourCalendar calendar;
  private final DaySpans spans;
  private final double[] todayRun; // duty × month factor of the day, 0 on a day that is not one
  private final double[] tailRun; // the same of the day before
  private final double[] run = new double[24];
  private final double[] hourlyRun = new double[24];
  private double lastToday = Double.NaN;
  private double lastTail = Double.NaN;

  ApplianceHours(ApplianceSpec spec, LoadWeather weather) {
    this.spec = spec;
    this.weather = weather;
    calendar = weather.calendar();
    spans = new DaySpans(spec.hours());
    int days = calendar.days();
    todayRun = new double[days];
    tailRun = new double[days];
    boolean[] isDay = new boolean[7];
    for (DayOfWeek day : spec.days()) {
      isDay[day.getValue() - 1] = true;
    }
    int weekday = calendar.dayOfWeek(0).getValue() - 1;
    LocalDate before = calendar.date(0).minusDays(1);
    double yesterday = isDay[(weekday + 6) % 7] ? runShare(before.getMonthValue(), 0) : 0.0;
    for (int d = 0; d < days; d++) {
      todayRun[d] = isDay[weekday] ? runShare(calendar.month(d * 24), d) : 0.0;
      tailRun[d] = yesterday;
      yesterday = todayRun[d];
      weekday = weekday == 6 ? 0 : weekday + 1;
    }
  }

  /** The day before the calendar's first has the first one's weather. */
  private double runShare(int month, int day) {
    double share = spec.dutyShare() * spec.monthFactor().in(month);
    Season season = spec.season();
    if (season != null && !season.holds(weather.meanAirC(day), weather.dayLengthH(day))) {
      return 0.0;
    }
    WeatherDraw draw = spec.weatherDraw();
    return draw == null ? share : Math.min(1.0, share * draw.dayFactor(weather.meanAirC(day)));
  }

  /**
   * Share of each hour of a day. What began the day before comes first, today's spans fill what it
   * leaves. Most days are like the day before, so that is kept.
   */
  double[] runOf(int day) {
    double today = todayRun[day];
    double tail = tailRun[day];
    if (today != lastToday || tail != lastTail) {
      for (int i = 0; i < 24; i++) {
        run[i] =
            tail == 0.0
                ? today * spans.todayShare[i]
                : today == 0.0
                    ? tail * spans.tailShare[i]
                    : tail * spans.tailShare[i] + today * (spans.bothShare[i] - spans.tailShare[i]);
      }
      lastToday = today;
      lastTail = tail;
    }
    WeatherDraw draw = spec.weatherDraw();
    if (draw == null || !draw.isHourly()) {
      return run;
    }
    for (int i = 0; i < 24; i++) {
      hourlyRun[i] = run[i] * draw.hourShare(weather.airC(day * 24 + i), spec.powerW());
    }
    return hourlyRun;
  }

  /** Adds the unvaried energy of each day. */
  void addDays(double[] dayWh) {
    double count = spec.quantity() * spec.energyFactor();
    for (int d = 0; d < dayWh.length; d++) {
      for (double share : runOf(d)) {
        dayWh[d] += count * (spec.powerW() * share + spec.standbyW() * (1.0 - share));
      }
    }
  }

  /**
   * Adds the energy of each hour and tells the books.
   *
   * @param growthFactor of everything
   * @param dayFactor one a day, null for 1
   * @param hourFactor one an hour, null for 1
   */
  LoadBook addHours(
      double[] toWh,
      double growthFactor,
      double @Nullable [] dayFactor,
      double @Nullable [] hourFactor) {
    var monthWh = new double[12];
    double standbyWh = 0.0;
    double countFactor = spec.quantity() * (growthFactor * spec.energyFactor());
    for (int d = 0; d < todayRun.length; d++) {
      double factor = countFactor * (dayFactor == null ? 1.0 : dayFactor[d]);
      double runW = factor * spec.powerW();
      double restW = factor * spec.standbyW();
      double dayWh = 0.0;
      double dayRestWh = 0.0;
      double[] share = runOf(d);
      for (int i = 0; i < 24; i++) {
        double ofHour = hourFactor == null ? 1.0 : hourFactor[d * 24 + i];
        double restingWh = ofHour * (restW * (1.0 - share[i]));
        double wh = ofHour * (runW * share[i]) + restingWh;
        dayWh += wh;
        dayRestWh += restingWh;
        toWh[d * 24 + i] += wh;
      }
      monthWh[calendar.month(d * 24) - 1] += dayWh;
      standbyWh += dayRestWh;
    }
    return book(monthWh, standbyWh);
  }

  private LoadBook book(double[] monthWh, double standbyWh) {
    return LoadHours.book(
        spec.name(),
        spec.priority(),
        spec.evidence(),
        spec.isDirectCurrent(),
        spec.isMedical(),
        spec.range(),
        calendar.years(),
        monthWh,
        standbyWh);
  }

  /** What it draws at every moment of the year, each and all. */
  double alwaysOnW() {
    boolean isWholeYear = spec.season() == null && spec.weatherDraw() == null;
    for (int month = 1; month <= 12; month++) {
      isWholeYear &= spec.dutyShare() * spec.monthFactor().in(month) == 1.0;
    }
    boolean isRoundTheClock = spec.days().size() == 7 && spec.dailySpanH() > 24.0 - 1e-9;
    double eachW = isWholeYear && isRoundTheClock ? spec.powerW() : spec.standbyW();
    return spec.quantity() * spec.energyFactor() * eachW;
  }
}
