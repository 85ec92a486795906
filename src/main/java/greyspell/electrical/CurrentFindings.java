package greyspell.electrical;

import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.quantity.Show;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The checks of {@link StringJudge} on what the strings together bring to a controller: current,
 * power, how many side by side.
 */
final class CurrentFindings {
  static final String SHORT_CIRCUIT = "short-circuit current";
  static final String POWER = "array power";
  static final String PARALLEL = "strings in parallel";
  static final String SHARING = "controllers side by side";
  private static final int STRINGS_TO_PROTECT = 3;

  private CurrentFindings() {}

  static void shortCircuit(
      double shortCircuitA, ControllerSpec controller, List<Finding> findings) {
    double circuitA = StringJudge.BRIGHT_SUN_FACTOR * shortCircuitA;
    String text =
        StringFindings.amps(shortCircuitA)
            + " at test conditions, × 1.25 = "
            + StringFindings.amps(circuitA)
            + " (× 1.5625 = "
            + StringFindings.amps(StringJudge.CONTINUOUS_FACTOR * circuitA)
            + " for wires)";
    Double most = controller.maxShortCircuitA();
    String source = "factors of NEC 690.8, 2017 to 2023 editions (from memory)";
    if (most == null) {
      findings.add(
          Finding.unknown(
              SHORT_CIRCUIT,
              text + "; the controller's highest input current is not stated",
              "state max_short_circuit_current, from its data sheet; " + source));
    } else if (!(circuitA <= most)) {
      boolean isPlainAbove = shortCircuitA > most;
      findings.add(
          Finding.fail(
              SHORT_CIRCUIT,
              text + "; the controller bears " + StringFindings.amps(most),
              (isPlainAbove
                      ? "even without the factor it is too much; "
                      : "too much in brighter sun than the test's, as at the edge of a cloud; ask the"
                          + " maker whether the limit already allows for that; ")
                  + source));
    } else {
      findings.add(
          Finding.pass(
              SHORT_CIRCUIT, text + "; the controller bears " + StringFindings.amps(most), source));
    }
  }

  /** What one controller can pass on, null if not stated. */
  static @Nullable Double mostOutputW(ControllerSpec controller, StringRules rules) {
    Double mostW = controller.maxOutputW();
    Double mostA = controller.maxOutputA();
    if (mostA == null) {
      return mostW;
    }
    double byCurrentW = mostA * rules.bankV();
    return mostW == null ? byCurrentW : Math.min(mostW, byCurrentW);
  }

  static void power(
      double broughtW, ControllerSpec controller, StringRules rules, List<Finding> findings) {
    Double mostW = mostOutputW(controller, rules);
    if (mostW == null) {
      return;
    }
    Double mostA = controller.maxOutputA();
    double share = broughtW / mostW;
    String bankV = StringFindings.volts(rules.bankV());
    String text;
    if (controller.kind() == ControllerKind.PWM) {
      text =
          StringFindings.amps(broughtW / rules.bankV())
              + " of modules at the bank's "
              + bankV
              + " on "
              + StringFindings.amps(mostW / rules.bankV())
              + " of controller, which does not track";
    } else {
      text =
          Show.power(broughtW)
              + " of modules on "
              + Show.power(mostW)
              + " of controller"
              + (mostA == null
                  ? ""
                  : " ("
                      + StringFindings.amps(broughtW * controller.efficiency() / rules.bankV())
                      + " into "
                      + bankV
                      + ", it gives "
                      + StringFindings.amps(mostA)
                      + " at most)");
    }
    text += ": " + Show.percent(share);
    findings.add(
        share <= 1.0
            ? Finding.pass(POWER, text, "all of it passes")
            : Finding.caution(
                POWER,
                text,
                "the rest is clipped in full sun, which costs little in dull winters; some makers"
                    + " limit the array's power besides"));
  }

  static void parallel(int strings, List<Finding> findings) {
    if (strings >= STRINGS_TO_PROTECT) {
      findings.add(
          Finding.caution(
              PARALLEL,
              StringFindings.capital(StringFindings.word(strings))
                  + " strings side by side: each needs overcurrent protection",
              "the others together can drive more current back into a faulty string than its modules"
                  + " bear; NEC 690.9, 2017 to 2023 editions (from memory)"));
    } else if (strings == 2) {
      findings.add(
          Finding.pass(
              PARALLEL,
              "Two strings side by side",
              "one string alone cannot overload the other; NEC 690.9, 2017 to 2023 editions (from"
                  + " memory)"));
    }
  }

  static void sharing(int inParallel, ControllerSpec controller, List<Finding> findings) {
    int count = controller.count();
    if (count > 1 && inParallel % count != 0) {
      findings.add(
          Finding.caution(
              SHARING,
              inParallel
                  + (inParallel == 1 ? " string" : " strings")
                  + " cannot be shared equally by "
                  + count
                  + " controllers",
              inParallel < count
                  ? "some controllers would stand idle"
                  : "judged by the controller with the most strings"));
    }
  }
}
