package greyspell.load;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the house asks for, hour by hour.
 *
 * <pre>
 * run  = share of the hour within the spans × duty × month factor
 * load = quantity [power run + standby (1 - run)] × factor of the day
 *
 * run     share of the hour that the appliance runs        1     0 .. 1
 * load    energy                                           Wh
 * factor of the day: 1, or {@link DailyVariation} on request
 * </pre>
 *
 * Spans hold on the appliance's days of the week; one that runs past midnight belongs, with its
 * month and weekday, to the day on which it starts, and the first night of the calendar is run on
 * from the day before it. Spans that overlap count once. Duty is spread evenly over the hour. All
 * appliances share the factor of the day, standby included. A measured log is added to the AC side,
 * times its factor, without variation (it has its own). Weekdays are the calendar's; a typical year
 * has those of the year it is dated. The arrays are not written.
 *
 * <p>Source: own bookkeeping. Held by LoadHoursTest.
 */
public final class LoadHours {
  private final double[] acWh;
  private final double[] dcWh;
  private final List<LoadBook> books;

  private LoadHours(double[] acWh, double[] dcWh, List<LoadBook> books) {
    this.acWh = acWh;
    this.dcWh = dcWh;
    this.books = List.copyOf(books);
  }

  /**
   * Lays the plan out over a calendar.
   *
   * @param log the plan's log, read; null if it has none
   * @param seed for the day-to-day variation
   */
  public static LoadHours of(
      LoadPlan plan, @Nullable LoadLog log, HourCalendar calendar, long seed) {
    if ((plan.log() == null) != (log == null)) {
      throw new IllegalArgumentException("a plan with a log needs the log, one without has none");
    }
    var acWh = new double[calendar.hours()];
    var dcWh = new double[calendar.hours()];
    var applianceWh = new ArrayList<ApplianceHours>();
    for (ApplianceSpec appliance : plan.appliances()) {
      applianceWh.add(new ApplianceHours(appliance, calendar));
    }
    double[] factor = null;
    if (plan.dailyVariationFraction() > 0.0) {
      var dayWh = new double[calendar.days()];
      for (ApplianceHours appliance : applianceWh) {
        appliance.addDays(dayWh);
      }
      factor = DailyVariation.factors(calendar, dayWh, plan.dailyVariationFraction(), seed);
    }
    var books = new ArrayList<LoadBook>();
    for (ApplianceHours appliance : applianceWh) {
      books.add(appliance.addHours(appliance.spec.isDirectCurrent() ? dcWh : acWh, factor));
    }
    LogSpec logSpec = plan.log();
    if (log != null && logSpec != null) {
      double[] loggedWh = log.over(calendar);
      for (int h = 0; h < loggedWh.length; h++) {
        loggedWh[h] *= logSpec.factor();
        acWh[h] += loggedWh[h];
      }
      books.add(logBook(calendar, loggedWh));
    }
    return new LoadHours(acWh, dcWh, books);
  }

  /** Asked for at the sockets. */
  public double[] acWh() {
    return acWh;
  }

  /** Asked for on the bus. */
  public double[] dcWh() {
    return dcWh;
  }

  /** One an appliance, in the plan's order, then the log's. */
  public List<LoadBook> books() {
    return books;
  }

  private static LoadBook logBook(HourCalendar calendar, double[] wh) {
    var monthWh = new double[12];
    for (int h = 0; h < wh.length; h++) {
      monthWh[calendar.month(h) - 1] += wh[h];
    }
    return book("measured log", false, calendar.years(), monthWh, 0.0);
  }

  private static LoadBook book(
      String name, boolean isDirectCurrent, int years, double[] monthWh, double standbyWh) {
    double sumWh = 0.0;
    for (int m = 0; m < 12; m++) {
      monthWh[m] /= years;
      sumWh += monthWh[m];
    }
    return new LoadBook(name, isDirectCurrent, sumWh, standbyWh / years, Monthly.of(monthWh));
  }

  /** One appliance over the calendar: which spans hold on each day. */
  private static final class ApplianceHours {
    final ApplianceSpec spec;
    private final HourCalendar calendar;
    private final DaySpans spans;
    private final double[] todayRun; // duty × month factor of the day, 0 on a day that is not one
    private final double[] tailRun; // the same of the day before
    private final double[] run = new double[24];
    private double lastToday = Double.NaN;
    private double lastTail = Double.NaN;

    ApplianceHours(ApplianceSpec spec, HourCalendar calendar) {
      this.spec = spec;
      this.calendar = calendar;
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
      double yesterday = isDay[(weekday + 6) % 7] ? runShare(before.getMonthValue()) : 0.0;
      for (int d = 0; d < days; d++) {
        todayRun[d] = isDay[weekday] ? runShare(calendar.month(d * 24)) : 0.0;
        tailRun[d] = yesterday;
        yesterday = todayRun[d];
        weekday = weekday == 6 ? 0 : weekday + 1;
      }
    }

    private double runShare(int month) {
      return spec.dutyShare() * spec.monthFactor().in(month);
    }

    /**
     * Share of each hour of a day. What began the day before comes first, today's spans fill what
     * it leaves. Most days are like the day before, so that is kept.
     */
    private double[] runOf(int day) {
      double today = todayRun[day];
      double tail = tailRun[day];
      if (today != lastToday || tail != lastTail) {
        for (int i = 0; i < 24; i++) {
          run[i] =
              tail == 0.0
                  ? today * spans.todayShare[i]
                  : today == 0.0
                      ? tail * spans.tailShare[i]
                      : tail * spans.tailShare[i]
                          + today * (spans.bothShare[i] - spans.tailShare[i]);
        }
        lastToday = today;
        lastTail = tail;
      }
      return run;
    }

    void addDays(double[] dayWh) {
      for (int d = 0; d < dayWh.length; d++) {
        for (double run : runOf(d)) {
          dayWh[d] += spec.quantity() * (spec.powerW() * run + spec.standbyW() * (1.0 - run));
        }
      }
    }

    LoadBook addHours(double[] toWh, double @Nullable [] dayFactor) {
      var monthWh = new double[12];
      double standbyWh = 0.0;
      for (int d = 0; d < todayRun.length; d++) {
        double factor = spec.quantity() * (dayFactor == null ? 1.0 : dayFactor[d]);
        double runW = factor * spec.powerW();
        double restW = factor * spec.standbyW();
        double dayWh = 0.0;
        double dayRestWh = 0.0;
        double[] run = runOf(d);
        for (int i = 0; i < 24; i++) {
          double restingWh = restW * (1.0 - run[i]);
          double wh = runW * run[i] + restingWh;
          dayWh += wh;
          dayRestWh += restingWh;
          toWh[d * 24 + i] += wh;
        }
        monthWh[calendar.month(d * 24) - 1] += dayWh;
        standbyWh += dayRestWh;
      }
      return book(spec.name(), spec.isDirectCurrent(), calendar.years(), monthWh, standbyWh);
    }
  }
}
