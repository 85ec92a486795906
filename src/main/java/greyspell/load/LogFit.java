package greyspell.load;

import greyspell.calendar.HourCalendar;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/**
 * What a log's days hang on: weekday, season and temperature, by ordinary least squares. Days that
 * were not measured are made from it.
 *
 * <pre>
 * E = b0 + b1 [Saturday or Sunday] + b2 max(0, 15 °C - T) + b3 max(0, T - 22 °C)
 *        + b4 cos(2 pi n / 365) + b5 sin(2 pi n / 365) + e
 *
 * E   energy of the day                         Wh
 * T   mean outdoor temperature of the day       °C
 * n   day of the year                           1     1 .. 366
 * e   residual                                  Wh
 * </pre>
 *
 * A term is taken only where the log can tell it: weekday from 14 days on, temperature where at
 * least 30 measured days lie in the weather's own years and at least a tenth of them (and not all
 * alike) is cold, or hot, enough; season from 300 days on. Days with more than six filled hours are
 * left out. A made day is never below the lowest measured one; its hours have the shape of the
 * nearest day of the year with the same weekday. Scatter, on request, adds the residual of a
 * measured day that the seed picks.
 *
 * <p>The bases 15 °C and 22 °C and the numbers of days are own choices. Source: ordinary least
 * squares; standard errors from the residuals' variance. Held by LogFitTest.
 */
public final class LogFit {
  static final double HEATING_BASE_C = 15.0;
  static final double COOLING_BASE_C = 22.0;
  private static final int FEWEST_DAYS = 14;
  private static final int FEWEST_WEATHER_DAYS = 30;
  private static final int FEWEST_SEASON_DAYS = 300;
  private static final int MOST_FILLED_H = 6;
  private static final double YEAR_D = 365.0;
  private static final long OWN_STREAM = 0x6C62272E07BB0142L;

  /** What a day's energy may hang on. */
  public enum Term {
    CONSTANT("every day"),
    WEEKEND("Saturday or Sunday"),
    COLD("each degree below 15 °C"),
    HEAT("each degree above 22 °C"),
    COSINE("cosine of the season"),
    SINE("sine of the season");

    private final String words;

    Term(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** One term's coefficient with its standard error. */
  public record Coefficient(Term term, double valueWh, double standardErrorWh) {}

  private final List<Coefficient> coefficients;
  private final double[] residualWh;
  private final double lowestWh;
  private final double rSquaredShare;
  private final double standardErrorWh;
  private final List<String> notes;

  private LogFit(
      List<Coefficient> coefficients,
      double[] residualWh,
      double lowestWh,
      double rSquaredShare,
      double standardErrorWh,
      List<String> notes) {
    this.coefficients = List.copyOf(coefficients);
    this.residualWh = residualWh;
    this.lowestWh = lowestWh;
    this.rSquaredShare = rSquaredShare;
    this.standardErrorWh = standardErrorWh;
    this.notes = List.copyOf(notes);
  }

  /** Whether the log is long enough for any fit; if not, {@link #notes} say why. */
  public boolean isUsable() {
    return !coefficients.isEmpty();
  }

  public List<Coefficient> coefficients() {
    return coefficients;
  }

  /** Days that were fitted. */
  public int days() {
    return residualWh.length;
  }

  /** Share of the days' variance that the fit explains. */
  public double rSquaredShare() {
    return rSquaredShare;
  }

  /** Of a single day about the fit. */
  public double standardErrorWh() {
    return standardErrorWh;
  }

  /** What could not be told from this log, in words. */
  public List<String> notes() {
    return notes;
  }

  /** Fits the measured days. */
  public static LogFit of(LoadLog log, LoadWeather weather) {
    var notes = new ArrayList<String>();
    int[] weatherDay = weatherDays(log, weather.calendar());
    var days = new ArrayList<Integer>();
    var daysWithWeather = new ArrayList<Integer>();
    for (int d = 0; d < log.days(); d++) {
      if (log.filledOfDay(d) <= MOST_FILLED_H) {
        days.add(d);
        if (weatherDay[d] >= 0) {
          daysWithWeather.add(d);
        }
      }
    }
    if (days.size() < FEWEST_DAYS) {
      notes.add(
          "the log is too short for a fit ("
              + days.size()
              + " measured days, "
              + FEWEST_DAYS
              + " are needed): other days are taken from the nearest");
      return new LogFit(List.of(), new double[0], 0.0, Double.NaN, Double.NaN, notes);
    }
    boolean hasWeather = daysWithWeather.size() >= FEWEST_WEATHER_DAYS;
    if (hasWeather) {
      days = daysWithWeather;
    } else {
      notes.add(
          "temperature could not be fitted: "
              + daysWithWeather.size()
              + " measured days lie in the years of the weather, "
              + FEWEST_WEATHER_DAYS
              + " are needed");
    }
    return fit(
        log,
        weather,
        days,
        weatherDay,
        terms(log, weather, days, weatherDay, hasWeather, notes),
        notes);
  }

  private static List<Term> terms(
      LoadLog log,
      LoadWeather weather,
      List<Integer> days,
      int[] weatherDay,
      boolean hasWeather,
      List<String> notes) {
    var terms = new ArrayList<Term>(List.of(Term.CONSTANT, Term.WEEKEND));
    if (hasWeather) {
      for (Term term : List.of(Term.COLD, Term.HEAT)) {
        if (varies(term, log, weather, days, weatherDay)) {
          terms.add(term);
        } else {
          notes.add("too few measured days differ in \"" + term.words() + "\": it was left out");
        }
      }
    }
    if (days.size() >= FEWEST_SEASON_DAYS) {
      terms.add(Term.COSINE);
      terms.add(Term.SINE);
    } else {
      notes.add(
          "the log is too short for the season ("
              + days.size()
              + " days, "
              + FEWEST_SEASON_DAYS
              + " are needed)");
    }
    return terms;
  }

  private static boolean varies(
      Term term, LoadLog log, LoadWeather weather, List<Integer> days, int[] weatherDay) {
    int above = 0;
    double least = Double.MAX_VALUE;
    double most = 0.0;
    for (int d : days) {
      double x = value(term, log.firstDate().plusDays(d), weather.meanAirC(weatherDay[d]));
      above += x > 0.0 ? 1 : 0;
      least = Math.min(least, x);
      most = Math.max(most, x);
    }
    return 10 * above >= days.size() && most > least;
  }

  private static LogFit fit(
      LoadLog log,
      LoadWeather weather,
      List<Integer> days,
      int[] weatherDay,
      List<Term> terms,
      List<String> notes) {
    var y = new double[days.size()];
    var x = new double[days.size()][terms.size() - 1];
    double lowestWh = Double.MAX_VALUE;
    for (int i = 0; i < y.length; i++) {
      int d = days.get(i);
      y[i] = log.dayWh(d);
      lowestWh = Math.min(lowestWh, y[i]);
      double airC = weatherDay[d] < 0 ? Double.NaN : weather.meanAirC(weatherDay[d]);
      for (int t = 1; t < terms.size(); t++) {
        x[i][t - 1] = value(terms.get(t), log.firstDate().plusDays(d), airC);
      }
    }
    try {
      var regression = new OLSMultipleLinearRegression();
      regression.newSampleData(y, x);
      double[] beta = regression.estimateRegressionParameters();
      double[] error = regression.estimateRegressionParametersStandardErrors();
      var coefficients = new ArrayList<Coefficient>();
      for (int t = 0; t < beta.length; t++) {
        coefficients.add(new Coefficient(terms.get(t), beta[t], error[t]));
      }
      double rSquared = regression.calculateRSquared();
      return new LogFit(
          coefficients,
          regression.estimateResiduals(),
          lowestWh,
          Double.isNaN(rSquared) ? 0.0 : rSquared,
          regression.estimateRegressionStandardError(),
          notes);
    } catch (SingularMatrixException e) {
      notes.add("the log's days cannot be told apart: other days are taken from the nearest");
      return new LogFit(List.of(), new double[0], 0.0, Double.NaN, Double.NaN, notes);
    }
  }

  /** The weather's day of each of the log's, -1 where it has none. */
  private static int[] weatherDays(LoadLog log, HourCalendar calendar) {
    var day = new int[log.days()];
    for (int d = 0; d < day.length; d++) {
      LocalDate date = log.firstDate().plusDays(d);
      int hour =
          calendar.isTypical()
              ? -1
              : calendar.hourOf(date.getYear(), date.getMonthValue(), date.getDayOfMonth(), 0);
      day[d] = hour < 0 ? -1 : hour / 24;
    }
    return day;
  }

  private static double value(Term term, LocalDate date, double airC) {
    double angle = 2.0 * Math.PI * date.getDayOfYear() / YEAR_D;
    return switch (term) {
      case CONSTANT -> 1.0;
      case WEEKEND -> {
        DayOfWeek day = date.getDayOfWeek();
        yield day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY ? 1.0 : 0.0;
      }
      case COLD -> Math.max(0.0, HEATING_BASE_C - airC);
      case HEAT -> Math.max(0.0, airC - COOLING_BASE_C);
      case COSINE -> Math.cos(angle);
      case SINE -> Math.sin(angle);
    };
  }

  /** Energy of each of the calendar's days as fitted. */
  double[] dayWh(LoadWeather weather, boolean isScattered, long seed) {
    HourCalendar calendar = weather.calendar();
    var out = new double[calendar.days()];
    int year = 0;
    var random = new SplittableRandom(seed);
    for (int d = 0; d < out.length; d++) {
      LocalDate date = calendar.date(d * 24);
      if (date.getYear() != year) {
        year = date.getYear();
        random = new SplittableRandom(YearSeed.of(seed, OWN_STREAM, year));
      }
      double wh = 0.0;
      for (Coefficient c : coefficients) {
        wh += c.valueWh() * value(c.term(), date, weather.meanAirC(d));
      }
      if (isScattered) {
        wh += residualWh[random.nextInt(residualWh.length)];
      }
      out[d] = Math.max(lowestWh, wh);
    }
    return out;
  }
}
