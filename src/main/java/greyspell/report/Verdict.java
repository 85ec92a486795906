package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Say;
import greyspell.chart.WinterShown;
import greyspell.outcome.Figures;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The answer in plain words: a count of winters, then the worst of them.
 *
 * @param headline one sentence
 * @param demand what has to be done whatever else is said here, empty if nothing
 * @param more what must be said with it, a sentence each
 * @param isAllServed nothing was unserved in any winter that counts
 */
public record Verdict(String headline, String demand, List<String> more, boolean isAllServed) {
  private static final double CONFIDENCE_LEFT = 0.05;

  public static Verdict of(StudyResult result) {
    var winters = Facts.wholeWinters(result);
    HourCalendar calendar = Facts.calendar(result);
    int failed = 0;
    double emptyWh = 0.0;
    Reason[] reasons = reasons();
    for (WinterBooks w : winters) {
      Figures f = w.figures();
      failed += f.unmetHours() > 0 ? 1 : 0;
      emptyWh += f.unmetEmptyWh();
      for (Reason r : reasons) {
        r.add(f);
      }
    }
    var more = new ArrayList<String>();
    String headline;
    if (failed == 0) {
      boolean isHelped = result.outcome().total().beyond().generatorHours() > 0;
      headline =
          "No shortfall in "
              + allOf(winters.size(), calendar)
              + (isHelped ? ", with the generator's help." : ".");
      if (!calendar.isTypical() && !calendar.isOneWinter()) {
        more.add(stillAllows(winters.size(), calendar));
      }
    } else if (emptyWh > 0.0) {
      headline = "The lights went out in " + countOf(failed, winters, calendar) + worst(result);
      middling(winters, more);
      otherReasons(reasons, more);
    } else {
      headline = limitOnly(result, failed, reasons);
    }
    if (calendar.isTypical()) {
      more.add(
          "A typical year is one middling draw: it holds no hard winter, and real winters differ from it"
              + " both ways.");
    }
    generator(result, more);
    rules(result, more);
    halfWinters(result, more);
    return new Verdict(headline, medical(result), List.copyOf(more), failed == 0);
  }

  /** All in one paragraph. */
  public String text() {
    var all = new ArrayList<String>();
    all.add(headline);
    if (!demand.isEmpty()) {
      all.add(demand);
    }
    all.addAll(more);
    return String.join(" ", all);
  }

  /** The upper end of a one-sided 95 % bound on the chance a winter, seen none fail. */
  static double allowedShare(int winters) {
    return 1.0 - Math.pow(CONFIDENCE_LEFT, 1.0 / winters);
  }

  private static String stillAllows(int winters, HourCalendar calendar) {
    String share = Say.number(allowedShare(winters) * 100.0, 0) + " % a winter";
    return (calendar.years() == 1 ? "One year" : Say.count(winters, "winter", "winters"))
        + " without a shortfall still "
        + (winters == 1 ? "allows" : "allow")
        + " a risk of up to "
        + share
        + " (at 95 % confidence).";
  }

  private static String allOf(int winters, HourCalendar calendar) {
    if (calendar.isTypical()) {
      return "the typical year";
    }
    if (calendar.isOneWinter()) {
      return calendar.name();
    }
    return calendar.years() == 1
        ? "the one year looked at, " + calendar.firstYear()
        : Say.count(winters, "winter", "winters");
  }

  private static String countOf(int failed, List<WinterBooks> winters, HourCalendar calendar) {
    if (calendar.years() == 1) {
      return allOf(1, calendar) + ": ";
    }
    if (winters.size() == 1) {
      return "the one whole winter looked at, " + winters.get(0).winter().name() + ": ";
    }
    return failed + " of " + Say.count(winters.size(), "winter", "winters") + "; ";
  }

  private static String worst(StudyResult result) {
    var worst = WinterShown.of(result);
    HourCalendar calendar = Facts.calendar(result);
    Figures f = worst.figures();
    var shortfalls = Facts.shortfallsIn(result, worst.winter().fromHour(), worst.winter().toHour());
    String name =
        Facts.wholeWinters(result).size() == 1
            ? "it was "
            : "the worst, " + worst.winter().name() + ", was ";
    String size = name + Say.kwh(f.unmetWh()) + " short over " + Say.hours(f.unmetHours());
    if (shortfalls.isEmpty()) {
      return size + ".";
    }
    var longest = Facts.longest(shortfalls);
    String from =
        Say.hours(longest.hours()) + " from " + Say.dayMonth(calendar, longest.fromHour()) + ".";
    return shortfalls.size() == 1
        ? size + " in one shortfall, " + from
        : size + " in " + shortfalls.size() + " shortfalls, the longest " + from;
  }

  private static void middling(List<WinterBooks> winters, List<String> more) {
    if (winters.size() < 3) {
      return;
    }
    double[] unmetWh = winters.stream().mapToDouble(w -> w.figures().unmetWh()).sorted().toArray();
    int middle = unmetWh.length / 2;
    double medianWh =
        unmetWh.length % 2 == 1 ? unmetWh[middle] : 0.5 * (unmetWh[middle - 1] + unmetWh[middle]);
    more.add("A middling winter is " + Say.kwh(medianWh) + " short.");
  }

  private static void otherReasons(Reason[] reasons, List<String> more) {
    for (Reason r : reasons) {
      if (r.wh > 0.0) {
        more.add("In all, " + Say.kwh(r.wh) + " was not served because " + r.words + ".");
      }
    }
  }

  private static String limitOnly(StudyResult result, int failed, Reason[] reasons) {
    var winters = Facts.wholeWinters(result);
    int hours = 0;
    double wh = 0.0;
    var what = new ArrayList<String>();
    for (WinterBooks w : winters) {
      hours += w.figures().unmetHours();
    }
    for (Reason r : reasons) {
      wh += r.wh;
      if (r.wh > 0.0) {
        what.add(r.words);
      }
    }
    HourCalendar calendar = Facts.calendar(result);
    String where =
        winters.size() == 1 ? "" : " of " + failed + " of " + winters.size() + " winters";
    return "The bank held through "
        + allOf(winters.size(), calendar)
        + ", but "
        + String.join(" or ", what)
        + " in "
        + Say.hours(hours)
        + where
        + ": "
        + Say.kwh(wh)
        + " was not served.";
  }

  /** What kept a load from being served other than an empty bank. */
  private static final class Reason {
    final String words;
    private final ToDoubleFunction<Figures> unmetWh;
    double wh;

    Reason(String words, ToDoubleFunction<Figures> unmetWh) {
      this.words = words;
      this.unmetWh = unmetWh;
    }

    void add(Figures f) {
      wh += unmetWh.applyAsDouble(f);
    }
  }

  private static Reason[] reasons() {
    return new Reason[] {
      new Reason("the inverter was too small", Figures::unmetInverterWh),
      new Reason("the bank's discharge limit was too low", Figures::unmetRateWh),
      new Reason("the bank's voltage fell to the cut-off", f -> f.beyond().unmetCutOffWh()),
      new Reason(
          "the charge in the bank could not be reached in time", f -> f.beyond().unmetSlowWh()),
      new Reason("it was too little to wake the inverter", f -> f.beyond().unmetAsleepWh())
    };
  }

  private static void generator(StudyResult result, List<String> more) {
    var total = result.outcome().total().beyond();
    if (total.generatorHours() == 0) {
      return;
    }
    double years = Facts.calendar(result).years();
    double litresL = result.fuelBetween(0, result.ledger().hours()).fuelL() / years;
    more.add(
        "In the average year the generator ran "
            + Say.number(total.generatorHours() / years, 0)
            + " hours and burnt "
            + GeneratorPage.fuelWords(litresL)
            + "; what is said here of shortfalls is with its help.");
  }

  private static void rules(StudyResult result, List<String> more) {
    var total = result.outcome().total().beyond();
    double years = Facts.calendar(result).years();
    if (total.shedWh() > 0.0) {
      more.add(
          "By the house's own rules "
              + Say.kwh(total.shedWh() / years)
              + " a year was let go when the charge was low; it is not counted as a shortfall.");
    }
    if (total.madeUpWh() > 0.0) {
      more.add(
          Say.kwh(total.madeUpWh() / years)
              + " a year waited for sun or charge and was served later.");
    }
  }

  private static void halfWinters(StudyResult result, List<String> more) {
    double unmetWh = 0.0;
    int hours = 0;
    for (WinterBooks w : result.outcome().winters()) {
      if (!w.winter().isWhole()) {
        unmetWh += w.figures().unmetWh();
        hours += w.figures().unmetHours();
      }
    }
    if (hours > 0) {
      more.add(
          "The half winters at the two ends of the weather, which are not counted, were "
              + Say.kwh(unmetWh)
              + " short over "
              + Say.hours(hours)
              + ".");
    }
  }

  private static String medical(StudyResult result) {
    var medical = Facts.medical(result);
    return medical.isEmpty()
        ? ""
        : "A medical load depends on this system ("
            + String.join(", ", medical)
            + "): it needs an independent backup of its own, whatever is said here.";
  }
}
