package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Say;
import greyspell.chart.WinterShown;
import greyspell.outcome.Figures;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/**
 * The answer in plain words: a count of winters, then the worst of them.
 *
 * @param headline one sentence
 * @param more what must be said with it, a sentence each
 * @param isAllServed nothing was unserved in any winter that counts
 */
public record Verdict(String headline, List<String> more, boolean isAllServed) {
  private static final double CONFIDENCE_LEFT = 0.05;

  public static Verdict of(StudyResult result) {
    var winters = Facts.wholeWinters(result);
    HourCalendar calendar = Facts.calendar(result);
    int failed = 0;
    double emptyWh = 0.0;
    double rateWh = 0.0;
    double inverterWh = 0.0;
    for (WinterBooks w : winters) {
      Figures f = w.figures();
      failed += f.unmetHours() > 0 ? 1 : 0;
      emptyWh += f.unmetEmptyWh();
      rateWh += f.unmetRateWh();
      inverterWh += f.unmetInverterWh();
    }
    var more = new ArrayList<String>();
    String headline;
    if (failed == 0) {
      headline = "No shortfall in " + allOf(winters.size(), calendar) + ".";
      if (!calendar.isTypical()) {
        more.add(stillAllows(winters.size(), calendar));
      }
    } else if (emptyWh > 0.0) {
      headline = "The lights went out in " + countOf(failed, winters, calendar) + worst(result);
      middling(winters, more);
      otherReasons(rateWh, inverterWh, more);
    } else {
      headline = limitOnly(result, failed, rateWh, inverterWh);
    }
    if (calendar.isTypical()) {
      more.add(
          "A typical year is one middling draw: it holds no hard winter, and real winters differ from it"
              + " both ways.");
    }
    halfWinters(result, more);
    medical(result, more);
    return new Verdict(headline, List.copyOf(more), failed == 0);
  }

  /** All in one paragraph. */
  public String text() {
    return more.isEmpty() ? headline : headline + " " + String.join(" ", more);
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

  private static void otherReasons(double rateWh, double inverterWh, List<String> more) {
    if (inverterWh > 0.0) {
      more.add(
          "In all, "
              + Say.kwh(inverterWh)
              + " of what was not served was not a matter of charge: the inverter was too small.");
    }
    if (rateWh > 0.0) {
      more.add(
          "In all, "
              + Say.kwh(rateWh)
              + " was not served because the bank could not give it fast enough.");
    }
  }

  private static String limitOnly(
      StudyResult result, int failed, double rateWh, double inverterWh) {
    var winters = Facts.wholeWinters(result);
    int hours = 0;
    for (WinterBooks w : winters) {
      hours += w.figures().unmetHours();
    }
    HourCalendar calendar = Facts.calendar(result);
    String where =
        winters.size() == 1 ? "" : " of " + failed + " of " + winters.size() + " winters";
    String what =
        inverterWh > 0.0 && rateWh > 0.0
            ? "the inverter or the bank's discharge limit was too small"
            : inverterWh > 0.0
                ? "the inverter was too small"
                : "the bank's discharge limit was too low";
    return "The bank held through "
        + allOf(winters.size(), calendar)
        + ", but "
        + what
        + " in "
        + Say.hours(hours)
        + where
        + ": "
        + Say.kwh(inverterWh + rateWh)
        + " was not served.";
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

  private static void medical(StudyResult result, List<String> more) {
    var medical = Facts.medical(result);
    if (!medical.isEmpty()) {
      more.add(
          "A medical load depends on this system ("
              + String.join(", ", medical)
              + "): it needs a backup of its own, whatever is said here.");
    }
  }
}
