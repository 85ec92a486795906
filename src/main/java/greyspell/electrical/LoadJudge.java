package greyspell.electrical;

import greyspell.load.ApplianceSpec;
import greyspell.load.Priority;
import greyspell.power.InverterSpec;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Can the inverter carry the largest load alone, and the hardest start beside what must run.
 *
 * <pre>
 * largest load    &lt;= continuous power
 * hardest start   &lt;= surge power                         else fail
 * hardest start + what must run &lt;= surge power           else caution
 * </pre>
 *
 * What must run counts at full power at once, which is seldom so. A start lasts seconds and an
 * hourly balance does not see it, so a pass is no promise: a motor's start depends on its age, its
 * cold and its cable. A motor typically draws three to seven times its running power (common
 * practice, no source). Appliances on direct current do not count.
 *
 * <p>Source: NEC 710.15(A), 2017 to 2023 editions: a stand-alone supply is not smaller than the
 * largest single load (from memory). Held by LoadJudgeTest.
 */
public final class LoadJudge {
  static final String LARGEST = "largest load";
  static final String START = "hardest start";
  static final String MEDICAL = "medical load";

  private LoadJudge() {}

  public static List<Finding> judge(List<ApplianceSpec> appliances, InverterSpec inverter) {
    var findings = new ArrayList<Finding>();
    ApplianceSpec largest = null;
    ApplianceSpec hardest = null;
    for (ApplianceSpec a : appliances) {
      if (a.quantity() == 0) {
        continue;
      }
      if (a.isMedical()) {
        findings.add(
            Finding.caution(
                MEDICAL,
                a.name() + " serves somebody's health",
                "no figure here says that the supply is good enough: it needs an independent backup"
                    + " and a plan agreed with those who give care"));
      }
      if (a.isDirectCurrent()) {
        continue;
      }
      largest = largest == null || a.powerW() > largest.powerW() ? a : largest;
      if (startW(a) > 0.0) {
        hardest = hardest == null || startW(a) > startW(hardest) ? a : hardest;
      }
    }
    if (largest != null) {
      findings.add(largest(largest, inverter));
    }
    if (hardest != null) {
      findings.add(start(hardest, appliances, inverter));
    }
    return List.copyOf(findings);
  }

  private static Finding largest(ApplianceSpec largest, InverterSpec inverter) {
    String text =
        largest.name()
            + " takes "
            + Show.power(largest.powerW())
            + "; the inverter holds "
            + Show.power(inverter.continuousW());
    String source =
        "a stand-alone supply is not smaller than its largest single load; NEC 710.15(A), 2017 to"
            + " 2023 editions (from memory)";
    return largest.powerW() <= inverter.continuousW()
        ? Finding.pass(LARGEST, text, source)
        : Finding.fail(LARGEST, text, source);
  }

  private static Finding start(
      ApplianceSpec hardest, List<ApplianceSpec> appliances, InverterSpec inverter) {
    double startW = startW(hardest);
    Double surgeW = inverter.surgeW();
    String text = hardest.name() + " starts with " + Show.power(startW);
    if (surgeW == null) {
      return Finding.caution(
          START,
          text + "; the inverter's surge power is not stated",
          "ask the maker for the power and for how many seconds");
    }
    text += "; the inverter gives " + Show.power(surgeW) + " for a moment";
    if (!(startW <= surgeW)) {
      return Finding.fail(START, text, "it would not start, and may darken the house");
    }
    double besideW = 0.0;
    for (ApplianceSpec a : appliances) {
      if (a.priority() == Priority.MUST_RUN && !a.isDirectCurrent()) {
        int others = a.equals(hardest) ? a.quantity() - 1 : a.quantity();
        besideW += Math.max(0, others) * a.powerW();
      }
    }
    text +=
        "; what must run takes up to "
            + Show.power(besideW)
            + " besides, which leaves "
            + Show.power(Math.max(0.0, surgeW - startW - besideW));
    return startW + besideW > surgeW
        ? Finding.caution(START, text, "it may start only while little else runs")
        : Finding.pass(
            START, text, "no promise: starts last seconds and differ by motor and cable");
  }

  private static double startW(ApplianceSpec a) {
    @Nullable Double surgeW = a.surgeW();
    return surgeW == null ? 0.0 : surgeW;
  }
}
