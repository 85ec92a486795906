package greyspell.electrical;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Which strings a controller accepts: every way to wire the wanted modules in equal strings is held
 * against the coldest morning, the hottest afternoon and the controller's currents.
 *
 * <pre>
 * circuit current   = 1.25 strings Isc      conductor current = 1.25 circuit current
 * controller share  = rated power / min(most power, most charging current × bank voltage)
 *                     where it does not track: the strings' current at the bank's voltage instead
 * </pre>
 *
 * Above a limit of voltage or current: fail. Where such a limit is not stated: unknown, and no
 * arrangement is called allowed. Within the margin of a limit: caution. Power that is only clipped,
 * and three or more strings side by side: caution. The best has the mildest verdict, keeps clear of
 * the limits in the cold, has the fewest cautions, the highest voltage. Currents are reckoned on
 * the strings that one controller gets.
 *
 * <p>Source of the factors: NEC 690.8(A) and (B), of the rule for parallel strings: NEC 690.9, 2017
 * to 2023 editions (from memory). Held by ElectricalPublishedTest and StringJudgeTest.
 */
public final class StringJudge {
  public static final double BRIGHT_SUN_FACTOR = 1.25;
  public static final double CONTINUOUS_FACTOR = 1.25;
  private static final int LARGEST_SPLIT_TOLD = 4;

  private StringJudge() {}

  /** Every arrangement of equal strings. */
  public static StringJudgement judge(
      ModuleSpec module, ControllerSpec controller, StringRules rules, Wanted wanted) {
    List<String> missing = missing(rules);
    Double low = rules.recordLowC();
    Double high = rules.recordHighC();
    if (low == null || high == null) {
      return new StringJudgement(
          module, controller, rules, missing, null, List.of(), null, "", List.of());
    }
    var volts = StringVoltages.of(module, low, high);
    var arrangements = new ArrayList<Arrangement>();
    var notes = new ArrayList<String>();
    for (int count : wanted.counts(module.ratedPowerW())) {
      for (int inSeries = count; inSeries >= 1; inSeries--) {
        if (count % inSeries == 0) {
          arrangements.add(
              arrangement(module, volts, controller, rules, inSeries, count / inSeries));
        }
      }
      String unequal = unequalNote(count);
      if (!unequal.isEmpty()) {
        notes.add(unequal);
      }
    }
    notes.add(riseNote(module, volts, high));
    if (volts.coldOpenTableV() == null) {
      notes.add(
          ColdTable.SOURCE
              + " ends at -40 °C: at "
              + Show.temperature(low)
              + " there is no cross-check.");
    }
    Arrangement best = best(arrangements);
    return new StringJudgement(
        module,
        controller,
        rules,
        missing,
        volts,
        arrangements,
        best,
        best == null ? noneFits(arrangements) : whyBest(best, arrangements),
        notes);
  }

  /** One arrangement; the record temperatures must be stated. */
  static Arrangement arrangement(
      ModuleSpec module,
      StringVoltages volts,
      ControllerSpec controller,
      StringRules rules,
      int inSeries,
      int inParallel) {
    int stringsOnOne = (inParallel + controller.count() - 1) / controller.count();
    var findings = new ArrayList<Finding>();
    StringFindings.voltage(module, volts, controller, rules, inSeries, findings);
    double shortCircuitA = stringsOnOne * module.shortCircuitA();
    double onOneW = RunLoad.broughtW(module, inSeries, stringsOnOne, controller, rules.bankV());
    CurrentFindings.shortCircuit(shortCircuitA, controller, findings);
    CurrentFindings.power(onOneW, controller, rules, findings);
    CurrentFindings.parallel(stringsOnOne, findings);
    CurrentFindings.sharing(inParallel, controller, findings);
    return built(
        module, volts, controller, rules, inSeries, inParallel, stringsOnOne, onOneW, findings);
  }

  private static Arrangement built(
      ModuleSpec module,
      StringVoltages volts,
      ControllerSpec controller,
      StringRules rules,
      int inSeries,
      int inParallel,
      int stringsOnOne,
      double onOneW,
      List<Finding> findings) {
    StringFindings.Limit lowest = null;
    for (StringFindings.Limit limit : StringFindings.limits(module, controller, rules)) {
      lowest = lowest == null || limit.voltageV() < lowest.voltageV() ? limit : lowest;
    }
    double shortCircuitA = stringsOnOne * module.shortCircuitA();
    Double mostW = CurrentFindings.mostOutputW(controller, rules);
    Double tableV = volts.coldOpenTableV();
    return new Arrangement(
        inSeries,
        inParallel,
        stringsOnOne,
        inSeries * volts.coldOpenV(),
        tableV == null ? null : inSeries * tableV,
        lowest == null ? null : lowest.voltageV(),
        lowest == null ? "" : lowest.name(),
        inSeries * volts.coldPowerV(),
        inSeries * volts.hotPowerV(),
        StringFindings.neededV(controller, rules),
        shortCircuitA,
        BRIGHT_SUN_FACTOR * shortCircuitA,
        CONTINUOUS_FACTOR * BRIGHT_SUN_FACTOR * shortCircuitA,
        stringsOnOne * module.maxPowerA(),
        inSeries * inParallel * module.ratedPowerW(),
        mostW == null ? null : onOneW / mostW,
        findings);
  }

  // ---- what stands on the roof already --------------------------------------------------------

  /**
   * The arrays of a house as they are stated, all on one kind of controller.
   *
   * @param missing as in {@link StringJudgement}; currents are judged all the same
   * @param arrays one a plane, in order; each with the findings about its voltages; empty if a
   *     record temperature is missing
   * @param together findings about the currents and powers that meet at the controller; where a
   *     record temperature is missing, also what is certain about the voltages without it
   */
  public record Built(List<String> missing, List<Arrangement> arrays, List<Finding> together) {
    public Built {
      missing = List.copyOf(missing);
      arrays = List.copyOf(arrays);
      together = List.copyOf(together);
    }

    /** Of all planes and of what they have in common. */
    public List<Finding> findings() {
      var all = new ArrayList<Finding>();
      arrays.forEach(array -> all.addAll(array.findings()));
      all.addAll(together);
      return List.copyOf(all);
    }
  }

  /**
   * Judges the arrays as they are. Several controllers are taken to share the strings as evenly as
   * they can, and that is said.
   */
  public static Built asBuilt(
      List<ArraySpec> arrays, ControllerSpec controller, StringRules rules) {
    Double low = rules.recordLowC();
    Double high = rules.recordHighC();
    var each = new ArrayList<Arrangement>();
    var together = new ArrayList<Finding>();
    var lengths = new TreeSet<String>();
    for (ArraySpec array : arrays) {
      ModuleSpec module = array.module();
      var findings = new ArrayList<Finding>();
      if (low == null || high == null) {
        StringFindings.voltageWithoutRecords(module, controller, rules, array.inSeries(), findings);
        together.addAll(named(array.name(), findings));
      } else {
        var volts = StringVoltages.of(module, low, high);
        StringFindings.voltage(module, volts, controller, rules, array.inSeries(), findings);
        each.add(
            built(
                module,
                volts,
                controller,
                rules,
                array.inSeries(),
                array.inParallel(),
                array.inParallel(),
                RunLoad.broughtW(array, controller, rules.bankV()),
                named(array.name(), findings)));
      }
      lengths.add(Show.voltage(array.inSeries() * module.maxPowerV()));
    }
    var shared = new SharedControllers(arrays, controller);
    CurrentFindings.shortCircuit(shared.shortCircuitA(), controller, together);
    CurrentFindings.power(shared.broughtW(rules.bankV()), controller, rules, together);
    CurrentFindings.parallel(shared.stringsOnOne(), together);
    shared.sharing(together);
    if (lengths.size() > 1 && controller.count() == 1) {
      together.add(
          Finding.caution(
              "unlike strings",
              "operating voltages at test conditions of " + String.join(" and ", lengths),
              "on one tracking input unlike strings pull each other off their best voltage; they"
                  + " need inputs of their own"));
    }
    return new Built(missing(rules), each, together);
  }

  private static List<Finding> named(String array, List<Finding> findings) {
    var named = new ArrayList<Finding>();
    for (Finding f : findings) {
      named.add(new Finding(f.severity(), array + ": " + f.subject(), f.text(), f.reason()));
    }
    return named;
  }

  private static List<String> missing(StringRules rules) {
    var missing = new ArrayList<String>();
    if (rules.recordLowC() == null) {
      missing.add(
          "State the record low of the site (record_low), the coldest air ever noted there: it"
              + " decides the highest voltage of a string and is never guessed.");
    }
    if (rules.recordHighC() == null) {
      missing.add(
          "State the record high of the site (record_high), the hottest air ever noted there: it"
              + " decides the lowest voltage of a string and is never guessed.");
    }
    return missing;
  }

  // ---- words ----------------------------------------------------------------------------------

  private static final Comparator<Arrangement> BETTER =
      Comparator.comparing(Arrangement::verdict)
          .thenComparing(StringJudge::isNearLimit)
          .thenComparing(StringJudge::cautions)
          .thenComparing(Comparator.comparingInt(Arrangement::inSeries).reversed())
          .thenComparing(Arrangement::modules);

  private static @Nullable Arrangement best(List<Arrangement> arrangements) {
    Arrangement best = null;
    for (Arrangement a : arrangements) {
      if (!a.verdict().isRefused() && (best == null || BETTER.compare(a, best) < 0)) {
        best = a;
      }
    }
    return best;
  }

  /** Hardly any room in the cold, or too high by the handbook's table: what a colder night ends. */
  private static boolean isNearLimit(Arrangement a) {
    for (Finding f : a.findings()) {
      if (f.severity() == Finding.Severity.CAUTION && f.subject().startsWith(StringFindings.COLD)) {
        return true;
      }
    }
    return false;
  }

  private static String whyBest(Arrangement best, List<Arrangement> all) {
    var why = new StringBuilder();
    int allowed = 0;
    int near = 0;
    Arrangement next = null;
    for (Arrangement a : all) {
      if (a.verdict().isRefused()) {
        continue;
      }
      allowed++;
      near += isNearLimit(a) ? 1 : 0;
      if (!a.equals(best) && (next == null || BETTER.compare(a, next) < 0)) {
        next = a;
      }
    }
    boolean isOthersNear = near > 0 && !isNearLimit(best);
    String allowedWords =
        isOthersNear
            ? (allowed - near)
                + " of "
                + allowed
                + " allowed that keep clear of the limits in the cold"
            : allowed + " allowed";
    if (next == null) {
      why.append("The only arrangement that is allowed");
    } else if (next.verdict() != best.verdict()) {
      why.append("The only one of ").append(allowed).append(" allowed that passes everything");
    } else if (isOthersNear && allowed - near == 1) {
      why.append("The only one of ")
          .append(allowed)
          .append(" allowed that keeps clear of the limits in the cold");
    } else if (cautions(next) != cautions(best)) {
      why.append("Fewest cautions of ").append(allowedWords);
    } else if (next.inSeries() != best.inSeries()) {
      why.append("Highest voltage of ")
          .append(allowedWords)
          .append(": ")
          .append(StringFindings.amps(best.operatingA()))
          .append(" instead of ")
          .append(StringFindings.amps(next.operatingA()))
          .append(" with ")
          .append(next.words())
          .append("; higher voltage means less current, less heat, thinner wire");
    } else {
      why.append("Tied in verdict and voltage with ")
          .append(next.modules())
          .append(" modules; fewer modules reach what was wanted");
    }
    why.append(": it works between ")
        .append(StringFindings.volts(best.hotPowerV()))
        .append(" and ")
        .append(StringFindings.volts(best.coldPowerV()));
    Double marginShare = best.marginShare();
    if (marginShare != null) {
      why.append(" and stays ")
          .append(Show.percent(marginShare))
          .append(" below the limit of the ")
          .append(best.limitName());
    }
    return why.append('.').toString();
  }

  private static int cautions(Arrangement a) {
    return Finding.count(a.findings(), Finding.Severity.CAUTION);
  }

  private static String noneFits(List<Arrangement> all) {
    boolean isOne = all.size() == 1;
    String fails = subjects(all, Finding.Severity.FAIL);
    String unknown = subjects(all, Finding.Severity.UNKNOWN);
    var why =
        new StringBuilder(
            isOne
                ? "The only arrangement is not allowed"
                : "None of " + all.size() + " is allowed");
    if (!fails.isEmpty()) {
      why.append(isOne ? "; it fails by " : "; they fail by ").append(fails);
    }
    if (!unknown.isEmpty()) {
      why.append("; what cannot be judged is not passed: ").append(unknown);
    }
    return why.append('.').toString();
  }

  /** "coldest morning, controller (3), short-circuit current (1)". */
  private static String subjects(List<Arrangement> all, Finding.Severity severity) {
    var reasons = new LinkedHashMap<String, Integer>();
    for (Arrangement a : all) {
      for (Finding f : a.findings()) {
        if (f.severity() == severity) {
          reasons.merge(f.subject(), 1, Integer::sum);
        }
      }
    }
    var told = new ArrayList<String>();
    reasons.forEach((subject, n) -> told.add(subject + " (" + n + ")"));
    return String.join(", ", told);
  }

  private static String unequalNote(int count) {
    var splits = new ArrayList<String>();
    for (int strings = 2; strings <= Math.min(LARGEST_SPLIT_TOLD, count - 1); strings++) {
      if (count % strings != 0) {
        splits.add(StringFindings.word(strings));
      }
    }
    if (splits.isEmpty()) {
      return "";
    }
    return StringFindings.capital(StringFindings.word(count))
        + " modules do not split into "
        + either(splits)
        + " equal strings; unequal strings on one input pull each other down.";
  }

  /** "two, three or four". */
  private static String either(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  private static String riseNote(ModuleSpec module, StringVoltages volts, double highC) {
    return "Hottest cells: "
        + Show.temperature(highC)
        + " of air and "
        + Show.trimmed(volts.hotRiseK(), 1)
        + " K of rise in full sun, from the nominal cell temperature of "
        + Show.temperature(module.nominalCellC())
        + "; close to a roof it is more"
        + (volts.isFromCurve()
            ? "."
            : ". No single-diode curve fits this sheet: operating voltages follow its power"
                + " coefficient.");
  }
}
