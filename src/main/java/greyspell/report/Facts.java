package greyspell.report;

import greyspell.balance.Forcing;
import greyspell.balance.NamedHours;
import greyspell.calendar.HourCalendar;
import greyspell.load.ApplianceSpec;
import greyspell.load.Priority;
import greyspell.outcome.Figures;
import greyspell.outcome.Figures.Named;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.outcome.Shortfall;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/** What several pages need to know of a result and the outcome does not hold ready. */
final class Facts {
  private Facts() {}

  static HourCalendar calendar(StudyResult result) {
    return result.ledger().forcing().calendar();
  }

  static List<WinterBooks> wholeWinters(StudyResult result) {
    return result.outcome().winters().stream().filter(w -> w.winter().isWhole()).toList();
  }

  /** Month with the shortest days: 12 in the north, 6 in the south. */
  static int darkMonth(StudyResult result) {
    return result.scenario().site().isNorthern() ? 12 : 6;
  }

  static List<Shortfall> shortfallsIn(StudyResult result, int fromHour, int toHour) {
    return result.outcome().shortfalls().stream()
        .filter(s -> s.fromHour() >= fromHour && s.fromHour() < toHour)
        .toList();
  }

  static Shortfall longest(List<Shortfall> shortfalls) {
    Shortfall longest = shortfalls.get(0);
    for (Shortfall s : shortfalls) {
      longest = s.hours() > longest.hours() ? s : longest;
    }
    return longest;
  }

  /**
   * The always-on draw of the system itself in the dark month.
   *
   * @param meanW all of it
   * @param partsW by name, mean W
   * @param needShare of what house and system together ask for in that month
   */
  record AlwaysOn(double meanW, List<Named> partsW, double needShare) {}

  static AlwaysOn alwaysOn(StudyResult result) {
    Forcing forcing = result.ledger().forcing();
    HourCalendar calendar = forcing.calendar();
    int dark = darkMonth(result);
    List<NamedHours> parts = forcing.standingParts();
    var partWh = new double[parts.size()];
    double standingWh = 0.0;
    double askedWh = 0.0;
    int hours = 0;
    for (int h = 0; h < forcing.hours(); h++) {
      if (calendar.month(h) == dark) {
        hours++;
        standingWh += forcing.standingWh()[h];
        askedWh += result.ledger().askedWh(h);
        for (int p = 0; p < partWh.length; p++) {
          partWh[p] += parts.get(p).wh()[h];
        }
      }
    }
    var named = new ArrayList<Named>();
    for (int p = 0; p < partWh.length; p++) {
      named.add(new Named(parts.get(p).name(), partWh[p] / hours));
    }
    double needWh = standingWh + askedWh;
    return new AlwaysOn(
        standingWh / hours, List.copyOf(named), needWh > 0.0 ? standingWh / needWh : 0.0);
  }

  /** What the house asks for on a day of the dark month, without the system's own draw. */
  static double darkMonthLoadWhPerDay(StudyResult result) {
    HourCalendar calendar = calendar(result);
    double askedWh = 0.0;
    int hours = 0;
    for (int h = 0; h < calendar.hours(); h++) {
      if (calendar.month(h) == darkMonth(result)) {
        hours++;
        askedWh += result.ledger().askedWh(h);
      }
    }
    return askedWh / hours * 24.0;
  }

  /** Lost in inverter, its wires, charger and bank; the same names as the outcome gives them. */
  static double conversionLossWh(Figures figures) {
    double wh = 0.0;
    for (Named loss : figures.lossesWh()) {
      switch (loss.name()) {
        case "charging",
            "discharging",
            "self_discharge",
            "inverter",
            "inverter_wiring",
            "generator_charger" ->
            wh += loss.wh();
        default -> {}
      }
    }
    return wh;
  }

  static List<String> appliances(StudyResult result, Priority priority) {
    return result.scenario().load().appliances().stream()
        .filter(a -> a.priority() == priority)
        .map(ApplianceSpec::name)
        .distinct()
        .toList();
  }

  static List<String> medical(StudyResult result) {
    return result.scenario().load().appliances().stream()
        .filter(ApplianceSpec::isMedical)
        .map(ApplianceSpec::name)
        .distinct()
        .toList();
  }

  /** Whether a second source feeds the house beside the sun. */
  static boolean hasOther(StudyResult result) {
    return result.scenario().otherSource() != null;
  }

  /** Name of the home and, if it is another, of its place. */
  static String heading(StudyResult result) {
    String home = result.scenario().name();
    String place = result.scenario().site().name();
    return place.isEmpty() || place.equals(home) ? home : home + ", " + place;
  }

  /** "2021 to 2023", "2018", "typical year", "winter 18". */
  static String years(HourCalendar calendar) {
    if (calendar.isTypical() || calendar.isOneWinter()) {
      return calendar.name();
    }
    int last = calendar.firstYear() + calendar.years() - 1;
    return calendar.years() == 1 ? Integer.toString(last) : calendar.firstYear() + " to " + last;
  }
}
