package greyspell.load;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What the house asks for, hour by hour.
 *
 * <pre>
 * run  = share of the hour within the spans × duty × month factor × what the weather makes of it
 * load = quantity [power run + standby (1 - run)] × factor of the day × of the hour × (1 + growth)
 *
 * run     share of the hour that the appliance runs        1     0 .. 1
 * load    energy                                           Wh
 * factor of the day, of the hour: 1, or {@link DailyVariation}, {@link HourlyVariation} on request
 * what the weather makes of it: 1, or a {@link Season}, {@link DegreeHours}, {@link RoomDraw}
 * </pre>
 *
 * Spans hold on the appliance's days of the week; one that runs past midnight belongs, with its
 * month, season and weekday, to the day on which it starts, and the first night of the calendar is
 * run on from the day before it. Spans that overlap count once. Duty is spread evenly over the
 * hour. All appliances share the factors of day and hour, standby included. A measured log is added
 * to the AC side in its class, times its factor, without variation (it has its own). Weekdays are
 * the calendar's; a typical year has those of the year it is dated. The whole of each side is the
 * sum of its three classes, exactly. The arrays are not written.
 *
 * <p>Source: own bookkeeping. Held by LoadHoursTest, LoadClassesLawTest.
 */
public final class LoadHours {
  static final String LOG_NAME = "measured log";

  private final LoadPlan plan;
  private final HourCalendar calendar;
  private final long seed;
  private final List<ApplianceHours> appliances;
  private final @Nullable LogHours log;
  private final double logFactor;
  private final Map<Priority, double[]> acClassWh = new EnumMap<>(Priority.class);
  private final Map<Priority, double[]> dcClassWh = new EnumMap<>(Priority.class);
  private final double[] acWh;
  private final double[] dcWh;
  private final List<LoadBook> books;

  private @Nullable Peaks peaks;

  private LoadHours(LoadPlan plan, @Nullable LoadLog read, LoadWeather weather, long seed) {
    this.plan = plan;
    this.seed = seed;
    calendar = weather.calendar();
    for (Priority priority : Priority.values()) {
      acClassWh.put(priority, new double[calendar.hours()]);
      dcClassWh.put(priority, new double[calendar.hours()]);
    }
    var laid = new ArrayList<ApplianceHours>();
    for (ApplianceSpec appliance : plan.appliances()) {
      laid.add(new ApplianceHours(appliance, weather));
    }
    appliances = List.copyOf(laid);
    double growthFactor = 1.0 + plan.growthFraction();
    double[] dayFactor = dayFactor();
    double[] hourFactor = hourFactor(dayFactor);
    var written = new ArrayList<LoadBook>();
    for (ApplianceHours appliance : appliances) {
      double[] toWh =
          classWh(
              appliance.spec.isDirectCurrent() ? dcClassWh : acClassWh, appliance.spec.priority());
      written.add(appliance.addHours(toWh, growthFactor, dayFactor, hourFactor));
    }
    LogSpec logSpec = plan.log();
    if (read != null && logSpec != null) {
      log = LogHours.of(read, logSpec, weather, seed);
      logFactor = logSpec.factor() * growthFactor;
      written.add(addLog(log.wh(), classWh(acClassWh, logSpec.priority()), logSpec.priority()));
    } else {
      log = null;
      logFactor = 0.0;
    }
    acWh = sum(acClassWh);
    dcWh = sum(dcClassWh);
    books = List.copyOf(written);
  }

  /**
   * Lays the plan out over the weather's calendar.
   *
   * @param log the plan's log, read; null if it has none
   * @param seed for the variation from day to day and hour to hour
   */
  public static LoadHours of(LoadPlan plan, @Nullable LoadLog log, LoadWeather weather, long seed) {
    if ((plan.log() == null) != (log == null)) {
      throw new IllegalArgumentException("a plan with a log needs the log, one without has none");
    }
    return new LoadHours(plan, log, weather, seed);
  }

  /** Asked for at the sockets. */
  public double[] acWh() {
    return acWh;
  }

  /** Asked for on the bus. */
  public double[] dcWh() {
    return dcWh;
  }

  /** Asked for at the sockets by one class. */
  public double[] acWh(Priority priority) {
    return classWh(acClassWh, priority);
  }

  /** Asked for on the bus by one class. */
  public double[] dcWh(Priority priority) {
    return classWh(dcClassWh, priority);
  }

  /** One an appliance, in the plan's order, then the log's. */
  public List<LoadBook> books() {
    return books;
  }

  /**
   * Asked for by one load, by its place among {@link #books}: a new array, worked out anew. The sum
   * over all loads is what the house asks for.
   */
  public double[] wh(int book) {
    var wh = new double[calendar.hours()];
    if (book < appliances.size()) {
      double[] dayFactor = dayFactor();
      appliances
          .get(book)
          .addHours(wh, 1.0 + plan.growthFraction(), dayFactor, hourFactor(dayFactor));
    } else if (log != null) {
      addLog(log.wh(), wh, books.get(book).priority());
    }
    return wh;
  }

  /** How the log was extended, null where it has no fit. */
  public @Nullable LogFit logFit() {
    return log == null ? null : log.fit();
  }

  /**
   * Greatest AC power within each hour, a motor's start included; how it is made up stands at
   * {@link LoadPeaks}. Not to be written.
   */
  public double[] peakW() {
    return peaks().peakW;
  }

  /** The same without the start. Not to be written. */
  public double[] runningW() {
    return peaks().runningW;
  }

  /**
   * {@link #peakW} in the hours whose mean power is less than this, the mean itself in all others:
   * for whoever asks only whether so much is reached, and much sooner.
   */
  public Supplier<double[]> peaksBelowW(double enoughW) {
    return () -> new Peaks(h -> acWh[h] < enoughW).peakW;
  }

  /** Worked out at the first call: most readers do not ask. */
  private Peaks peaks() {
    if (peaks == null) {
      peaks = new Peaks(h -> true);
    }
    return peaks;
  }

  private final class Peaks {
    final double[] runningW = new double[calendar.hours()];
    final double[] peakW = new double[calendar.hours()];

    Peaks(IntPredicate isAsked) {
      boolean isVaried =
          plan.dailyVariationFraction() > 0.0 || plan.hourlyVariationFraction() > 0.0;
      LoadPeaks.fill(
          appliances,
          calendar,
          1.0 + plan.growthFraction(),
          isVaried,
          seed,
          isAsked,
          runningW,
          peakW);
      for (int h = 0; h < peakW.length; h++) {
        double loggedW = log == null || !isAsked.test(h) ? 0.0 : logFactor * log.peakW()[h];
        runningW[h] = Math.max(acWh[h], runningW[h] + loggedW);
        peakW[h] = Math.max(runningW[h], peakW[h] + loggedW);
      }
    }
  }

  /** What is drawn at every moment; of a log the mean of each day's lowest hour. */
  public AlwaysOn alwaysOn() {
    var parts = new ArrayList<AlwaysOn.Part>();
    double growthFactor = 1.0 + plan.growthFraction();
    for (ApplianceHours appliance : appliances) {
      parts.add(new AlwaysOn.Part(appliance.spec.name(), growthFactor * appliance.alwaysOnW()));
    }
    if (log != null) {
      parts.add(new AlwaysOn.Part(LOG_NAME, logFactor * log.lowestHourW()));
    }
    parts.removeIf(part -> !(part.meanW() > 0.0));
    parts.sort((a, b) -> Double.compare(b.meanW(), a.meanW()));
    return new AlwaysOn(parts);
  }

  private double @Nullable [] dayFactor() {
    if (!(plan.dailyVariationFraction() > 0.0)) {
      return null;
    }
    var dayWh = new double[calendar.days()];
    for (ApplianceHours appliance : appliances) {
      appliance.addDays(dayWh);
    }
    return DailyVariation.factors(calendar, dayWh, plan.dailyVariationFraction(), seed);
  }

  private double @Nullable [] hourFactor(double @Nullable [] dayFactor) {
    if (!(plan.hourlyVariationFraction() > 0.0)) {
      return null;
    }
    var hourWh = new double[calendar.hours()];
    for (ApplianceHours appliance : appliances) {
      appliance.addHours(hourWh, 1.0, dayFactor, null);
    }
    return HourlyVariation.factors(calendar, hourWh, plan.hourlyVariationFraction(), seed);
  }

  private LoadBook addLog(double[] wh, double[] toWh, Priority priority) {
    var monthWh = new double[12];
    for (int h = 0; h < wh.length; h++) {
      double loggedWh = wh[h] * logFactor;
      toWh[h] += loggedWh;
      monthWh[calendar.month(h) - 1] += loggedWh;
    }
    return book(
        LOG_NAME,
        priority,
        Evidence.MEASURED,
        false,
        false,
        LoadRange.of(Evidence.MEASURED),
        calendar.years(),
        monthWh,
        0.0);
  }

  private static double[] classWh(Map<Priority, double[]> side, Priority priority) {
    return Objects.requireNonNull(side.get(priority));
  }

  private static double[] sum(Map<Priority, double[]> side) {
    double[] mustWh = classWh(side, Priority.MUST_RUN);
    double[] shouldWh = classWh(side, Priority.SHOULD_RUN);
    double[] waitWh = classWh(side, Priority.CAN_WAIT);
    var sum = new double[mustWh.length];
    for (int h = 0; h < sum.length; h++) {
      sum[h] = mustWh[h] + shouldWh[h] + waitWh[h];
    }
    return sum;
  }

  /** From sums over so many years. */
  static LoadBook book(
      String name,
      Priority priority,
      Evidence evidence,
      boolean isDirectCurrent,
      boolean isMedical,
      LoadRange range,
      int years,
      double[] monthWh,
      double standbyWh) {
    double sumWh = 0.0;
    for (int m = 0; m < 12; m++) {
      monthWh[m] /= years;
      sumWh += monthWh[m];
    }
    return new LoadBook(
        name,
        priority,
        evidence,
        isDirectCurrent,
        isMedical,
        range,
        sumWh,
        standbyWh / years,
        Monthly.of(monthWh));
  }
}
