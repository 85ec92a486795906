package greyspell.electrical;

import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.List;

/**
 * The checks of {@link StringJudge} on the voltages of one string, each with its numbers in words.
 */
final class StringFindings {
  static final String COLD = "coldest morning";
  static final String HOT = "hottest afternoon";
  static final String START = "start voltage";
  static final String TRACKING_TOP = "cold operating voltage";
  private static final List<String> WORDS =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  private StringFindings() {}

  // ---- voltages -------------------------------------------------------------------------------

  record Limit(String name, double voltageV, String reason) {}

  static List<Limit> limits(ModuleSpec module, ControllerSpec controller, StringRules rules) {
    var limits = new ArrayList<Limit>(3);
    Double controllerV = controller.absoluteMaximumV();
    if (controllerV != null) {
      limits.add(
          new Limit(
              "controller",
              controllerV,
              "above its absolute maximum a controller can be destroyed, even switched off"));
    }
    Double moduleV = module.maxSystemV();
    if (moduleV != null) {
      limits.add(new Limit("module", moduleV, "above it the module's insulation is not certified"));
    }
    Double dwellingV = rules.dwellingLimitV();
    if (dwellingV != null) {
      limits.add(
          new Limit(
              "dwelling",
              dwellingV,
              "600 V for one- and two-family dwellings is NEC 690.7, 2017 to 2023 editions (from"
                  + " memory); other codes differ"));
    }
    return limits;
  }

  static void voltage(
      ModuleSpec module,
      StringVoltages volts,
      ControllerSpec controller,
      StringRules rules,
      int inSeries,
      List<Finding> findings) {
    for (Limit limit : limits(module, controller, rules)) {
      findings.add(cold(volts, rules, inSeries, limit));
    }
    unstated(module, controller, findings);
    hot(volts, controller, rules, inSeries, findings);
    start(volts, controller, inSeries, findings);
    trackingTop(volts, controller, rules, inSeries, findings);
  }

  private static void unstated(
      ModuleSpec module, ControllerSpec controller, List<Finding> findings) {
    if (controller.absoluteMaximumV() == null) {
      findings.add(
          Finding.unknown(
              COLD + ", controller",
              "the controller's absolute maximum input voltage is not stated",
              "without it nobody can say whether the cold destroys it: state"
                  + " absolute_maximum_voltage, from its data sheet"));
    }
    if (module.maxSystemV() == null) {
      findings.add(
          Finding.unknown(
              COLD + ", module",
              "the module's maximum system voltage is not stated",
              "nobody can say what its insulation bears: state max_system_voltage, from the"
                  + " sticker"));
    }
  }

  /**
   * What is certain without record temperatures: too high at 25 °C is higher still in the cold, too
   * low at test conditions lower still in the heat.
   */
  static void voltageWithoutRecords(
      ModuleSpec module,
      ControllerSpec controller,
      StringRules rules,
      int inSeries,
      List<Finding> findings) {
    double openV = inSeries * module.openCircuitV();
    for (Limit limit : limits(module, controller, rules)) {
      if (!(openV <= limit.voltageV)) {
        findings.add(
            Finding.fail(
                COLD + ", " + limit.name,
                string(inSeries)
                    + (inSeries == 1 ? " reaches " : " reach ")
                    + volts(openV)
                    + " at 25 °C already, limit "
                    + volts(limit.voltageV)
                    + ": "
                    + volts(openV - limit.voltageV)
                    + " too high, and more in the cold",
                limit.reason));
      }
    }
    unstated(module, controller, findings);
    double neededV = neededV(controller, rules);
    double workV = inSeries * module.maxPowerV();
    if (!(workV >= neededV)) {
      findings.add(
          Finding.fail(
              HOT,
              string(inSeries)
                  + (inSeries == 1 ? " works at " : " work at ")
                  + volts(workV)
                  + " with cells at 25 °C already, "
                  + volts(neededV)
                  + " are needed",
              "in the heat it is lower still"));
    }
  }

  private static Finding cold(StringVoltages volts, StringRules rules, int inSeries, Limit limit) {
    double openV = inSeries * volts.coldOpenV();
    Double tableEachV = volts.coldOpenTableV();
    double tableV = tableEachV == null ? 0.0 : inSeries * tableEachV;
    double marginShare = (limit.voltageV - openV) / limit.voltageV;
    Double low = rules.recordLowC();
    String subject = COLD + ", " + limit.name;
    String text =
        string(inSeries)
            + (inSeries == 1 ? " reaches " : " reach ")
            + volts(openV)
            + " at "
            + Show.temperature(low == null ? Double.NaN : low)
            + (tableEachV == null
                ? " (the handbook's table ends at -40 °C)"
                : " (" + volts(tableV) + " by the handbook's table)")
            + ", limit "
            + volts(limit.voltageV)
            + ": ";
    if (!(openV <= limit.voltageV)) {
      return Finding.fail(
          subject, text + volts(openV - limit.voltageV) + " too high", limit.reason);
    }
    text += volts(limit.voltageV - openV) + " of room, " + Show.percent(marginShare);
    if (marginShare < rules.marginShare()) {
      return Finding.caution(
          subject,
          text,
          "under "
              + Show.percent(rules.marginShare())
              + " of room is swallowed by tolerances and colder nights than any on record (common"
              + " practice, no source)");
    }
    if (tableV > limit.voltageV) {
      return Finding.caution(
          subject,
          text,
          "by "
              + ColdTable.SOURCE
              + ", it would be "
              + volts(tableV - limit.voltageV)
              + " too high: be sure of the sheet's coefficient");
    }
    return Finding.pass(subject, text, limit.reason);
  }

  static double neededV(ControllerSpec controller, StringRules rules) {
    Double lowest = controller.lowestTrackingV();
    return lowest == null ? rules.chargingV() : Math.max(lowest, rules.chargingV());
  }

  private static void hot(
      StringVoltages volts,
      ControllerSpec controller,
      StringRules rules,
      int inSeries,
      List<Finding> findings) {
    double hotV = inSeries * volts.hotPowerV();
    String at =
        string(inSeries)
            + (inSeries == 1 ? " works at " : " work at ")
            + volts(hotV)
            + " with cells at "
            + Show.temperature(volts.hotCellC())
            + "; ";
    Double lowest = controller.lowestTrackingV();
    if (lowest != null) {
      String subject = HOT + ", window";
      String text = at + "the tracking window begins at " + volts(lowest);
      if (!(hotV >= lowest)) {
        findings.add(
            Finding.fail(
                subject,
                text + ": " + volts(lowest - hotV) + " too low",
                "below the window the controller holds the string off its best voltage or stops"));
      } else if (hotV < lowest * (1.0 + rules.marginShare())) {
        findings.add(
            Finding.caution(
                subject,
                text + ": " + volts(hotV - lowest) + " of room",
                "a roof-mounted or older module works lower still"));
      } else {
        findings.add(
            Finding.pass(
                subject, text + ": " + volts(hotV - lowest) + " of room", "the window is met"));
      }
    }
    String subject = HOT + ", bank";
    String text = at + "the bank is charged at up to " + volts(rules.chargingV());
    if (!(hotV >= rules.chargingV())) {
      findings.add(
          Finding.fail(
              subject,
              text + ": " + volts(rules.chargingV() - hotV) + " too low",
              "a controller that steps voltage down cannot fill the bank from below (common"
                  + " practice, no source)"));
    } else if (hotV < rules.chargingV() + rules.headroomV()) {
      findings.add(
          Finding.caution(
              subject,
              text + ": only " + volts(hotV - rules.chargingV()) + " above it",
              "controllers need some "
                  + volts(rules.headroomV())
                  + " above the bank, and cables take their part (common practice, no source)"));
    } else {
      findings.add(
          Finding.pass(
              subject,
              text + ": " + volts(hotV - rules.chargingV()) + " above it",
              "enough to charge to the full (common practice, no source)"));
    }
  }

  private static void start(
      StringVoltages volts, ControllerSpec controller, int inSeries, List<Finding> findings) {
    Double startV = controller.startV();
    if (startV == null) {
      return;
    }
    double fullV = inSeries * volts.hotOpenV();
    double weakV = inSeries * volts.weakOpenV();
    String limit = "; the controller starts from " + volts(startV);
    if (!(fullV >= startV)) {
      findings.add(
          Finding.fail(
              START,
              "open circuit in full sun when hottest "
                  + volts(fullV)
                  + limit
                  + ": "
                  + volts(startV - fullV)
                  + " too low",
              "on hot days it would never start"));
    } else if (!(weakV >= startV)) {
      findings.add(
          Finding.caution(
              START,
              "open circuit in a tenth of full sun when hot " + volts(weakV) + limit,
              "it starts late on hot or dull days"));
    } else {
      findings.add(
          Finding.pass(
              START,
              "open circuit in a tenth of full sun when hot " + volts(weakV) + limit,
              "it starts in weak light"));
    }
  }

  private static void trackingTop(
      StringVoltages volts,
      ControllerSpec controller,
      StringRules rules,
      int inSeries,
      List<Finding> findings) {
    Double highest = controller.highestTrackingV();
    if (highest == null) {
      return;
    }
    double coldV = inSeries * volts.coldPowerV();
    Double low = rules.recordLowC();
    String text =
        string(inSeries)
            + " would work at "
            + volts(coldV)
            + " at "
            + Show.temperature(low == null ? Double.NaN : low)
            + "; the tracking window ends at "
            + volts(highest);
    findings.add(
        coldV <= highest
            ? Finding.pass(TRACKING_TOP, text, "the window is met")
            : Finding.caution(
                TRACKING_TOP, text, "power is lost in the cold; this alone damages nothing"));
  }

  // ---- words ---------------------------------------------------------------------------------

  static String word(int n) {
    return n < WORDS.size() ? WORDS.get(n) : Integer.toString(n);
  }

  static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  private static String string(int inSeries) {
    return inSeries == 1 ? "one module" : inSeries + " in series";
  }

  static String volts(double voltageV) {
    return Show.voltage(voltageV);
  }

  static String amps(double currentA) {
    return Show.current(currentA);
  }
}
