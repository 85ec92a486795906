package greyspell.study;

import greyspell.calendar.HourCalendar;
import greyspell.electrical.Finding;
import greyspell.electrical.LoadJudge;
import greyspell.load.AlwaysOn;
import greyspell.load.LoadBook;
import greyspell.load.LoadHours;
import greyspell.load.LoadWeather;
import greyspell.load.LogFit;
import greyspell.load.Priority;
import greyspell.power.InverterSpec;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.sky.SunPath;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a home asks for, by appliance and month, laid over its weather: the audit before any sun is
 * counted.
 */
public final class LoadAudit {
  private static final int DECEMBER = 12;
  private static final int JUNE = 6;

  private final Scenario home;
  private final HourCalendar calendar;
  private final LoadHours load;
  private final double[] peakW;
  private final AlwaysOn system;
  private final List<Assumption> assumptions = new ArrayList<>();
  private final int[] daysOfMonth = new int[13];

  private LoadAudit(Scenario home, WeatherSeries weather) {
    this.home = home;
    calendar = weather.calendar();
    SunPath sun = HomeLight.sun(home, weather);
    load =
        LoadHours.of(
            home.load(),
            LoadNotes.log(home, new Kept(0), assumptions),
            LoadWeather.of(calendar, weather.airTemperatureC(), sun.sunlitShare()),
            home.seed());
    LoadNotes.fit(load, assumptions);
    peakW = load.peakW();
    system = system(home, sun.sunlitShare());
    for (int d = 0; d < calendar.days(); d++) {
      daysOfMonth[calendar.month(d * 24)]++;
    }
  }

  /** Reads the weather, because seasons and temperatures move the load. */
  public static LoadAudit of(Scenario home) {
    return of(home, Study.read(home));
  }

  /** Over weather that was read already. */
  public static LoadAudit of(Scenario home, WeatherSeries weather) {
    return new LoadAudit(home, weather);
  }

  private static AlwaysOn system(Scenario home, double[] sunlitShare) {
    double inverterWh = 0.0;
    for (double wh : home.inverter().standbyWh(sunlitShare)) {
      inverterWh += wh;
    }
    var parts = new ArrayList<AlwaysOn.Part>();
    parts.add(new AlwaysOn.Part("inverter, standing by", inverterWh / sunlitShare.length));
    parts.add(
        new AlwaysOn.Part(
            "controller, standing by", home.controller().standbyW() * home.controller().count()));
    parts.add(new AlwaysOn.Part("the bank's own electronics", home.bank().standbyW()));
    parts.removeIf(part -> !(part.meanW() > 0.0));
    return new AlwaysOn(parts);
  }

  public Scenario home() {
    return home;
  }

  public HourCalendar calendar() {
    return calendar;
  }

  public List<LoadBook> books() {
    return load.books();
  }

  /** What the log's fit and the reading of it took for granted. */
  public List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  public @Nullable LogFit logFit() {
    return load.logFit();
  }

  /** December in the north, June in the south. */
  public int winterMonth() {
    return home.site().isNorthern() ? DECEMBER : JUNE;
  }

  public int summerMonth() {
    return home.site().isNorthern() ? JUNE : DECEMBER;
  }

  /** One load's energy on a mean day of a month. */
  public double dayWh(LoadBook book, int month) {
    return book.monthlyWh().in(month) * calendar.years() / daysOfMonth[month];
  }

  /** All loads on a mean day of a month. */
  public double dayWh(int month) {
    double sumWh = 0.0;
    for (LoadBook book : books()) {
      sumWh += dayWh(book, month);
    }
    return sumWh;
  }

  public double yearlyWh() {
    double sumWh = 0.0;
    for (LoadBook book : books()) {
      sumWh += book.yearlyWh();
    }
    return sumWh;
  }

  /** Every load at the low end of its range. */
  public double lowYearlyWh() {
    double sumWh = 0.0;
    for (LoadBook book : books()) {
      sumWh += book.lowYearlyWh();
    }
    return sumWh;
  }

  public double highYearlyWh() {
    double sumWh = 0.0;
    for (LoadBook book : books()) {
      sumWh += book.highYearlyWh();
    }
    return sumWh;
  }

  /** From energy of a mean year to that of its mean day. */
  public double daily(double yearWh) {
    return yearWh * calendar.years() / calendar.days();
  }

  /** The load whose range is widest in energy, null if none has any. */
  public @Nullable LoadBook leastKnown() {
    LoadBook widest = null;
    for (LoadBook book : books()) {
      double widthWh = book.highYearlyWh() - book.lowYearlyWh();
      if (widthWh > 0.0
          && (widest == null || widthWh > widest.highYearlyWh() - widest.lowYearlyWh())) {
        widest = book;
      }
    }
    return widest;
  }

  /** Mean of each hour of the day in a month, of one class, on both sides. */
  public double[] profileWh(int month, Priority priority) {
    var profile = new double[24];
    double[] acWh = load.acWh(priority);
    double[] dcWh = load.dcWh(priority);
    for (int h = 0; h < calendar.hours(); h++) {
      if (calendar.month(h) == month) {
        profile[h % 24] += (acWh[h] + dcWh[h]) / daysOfMonth[month];
      }
    }
    return profile;
  }

  /** All classes together. */
  public double[] profileWh(int month) {
    var sum = new double[24];
    for (Priority priority : Priority.values()) {
      double[] part = profileWh(month, priority);
      for (int i = 0; i < 24; i++) {
        sum[i] += part[i];
      }
    }
    return sum;
  }

  // ---- peak -------------------------------------------------------------------------------------

  /** Hour with the greatest AC demand. */
  public int peakHour() {
    int best = 0;
    for (int h = 1; h < peakW.length; h++) {
      if (peakW[h] > peakW[best]) {
        best = h;
      }
    }
    return best;
  }

  public double peakW() {
    return peakW[peakHour()];
  }

  /** Greatest AC demand as the mean of an hour. */
  public double mostHourW() {
    double most = 0.0;
    for (double wh : load.acWh()) {
      most = Math.max(most, wh);
    }
    return most;
  }

  /** Hours of a mean year in which the peak lies above a power. */
  public double hoursAbove(double powerW) {
    int hours = 0;
    for (double w : peakW) {
      hours += w > powerW ? 1 : 0;
    }
    return (double) hours / calendar.years();
  }

  public InverterSpec inverter() {
    return home.inverter();
  }

  /** Largest load and hardest start against the inverter, and what is medical. */
  public List<Finding> findings() {
    return LoadJudge.judge(home.load().appliances(), home.inverter());
  }

  // ---- always on --------------------------------------------------------------------------------

  /** What the system itself takes. */
  public AlwaysOn system() {
    return system;
  }

  /** What the loads take at every moment. */
  public AlwaysOn alwaysOn() {
    return load.alwaysOn();
  }

  public double alwaysOnW() {
    return system.meanW() + load.alwaysOn().meanW();
  }

  /** Share of a mean day of a month, the system's own draw counted in. */
  public double alwaysOnShare(int month) {
    double dayWh = dayWh(month) + system.meanW() * 24.0;
    return dayWh > 0.0 ? alwaysOnW() * 24.0 / dayWh : 0.0;
  }
}
