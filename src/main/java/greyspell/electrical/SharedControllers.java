package greyspell.electrical;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The strings of all planes on several controllers of one kind: as evenly as whole strings can be
 * shared, the fullest controller with the strongest strings.
 *
 * <pre>
 * strings on one = ⌈ all strings / controllers ⌉
 * kept apart     = the smallest m with Σ planes ⌈ strings of the plane / m ⌉ ≤ controllers
 * </pre>
 *
 * Which string goes to which controller is not stated, so what cannot be derived is a caution:
 * where kept apart is more than strings on one, some controller gets strings of several planes.
 * Source: own bookkeeping. Held by SharedControllersTest.
 */
final class SharedControllers {
  private final List<ArraySpec> planes;
  private final ControllerSpec controller;
  private final int strings;
  private final int stringsOnOne;

  SharedControllers(List<ArraySpec> planes, ControllerSpec controller) {
    this.planes = List.copyOf(planes);
    this.controller = controller;
    strings = planes.stream().mapToInt(ArraySpec::inParallel).sum();
    stringsOnOne = (strings + controller.count() - 1) / controller.count();
  }

  int stringsOnOne() {
    return stringsOnOne;
  }

  /** Of the fullest controller, should it get the strongest strings. */
  double shortCircuitA() {
    double sumA = 0.0;
    int left = stringsOnOne;
    for (ArraySpec plane : sorted(Comparator.comparingDouble(p -> p.module().shortCircuitA()))) {
      int taken = Math.min(left, plane.inParallel());
      sumA += taken * plane.module().shortCircuitA();
      left -= taken;
    }
    return sumA;
  }

  /** Brought to the fullest controller, should it get the largest strings. */
  double broughtW(double bankV) {
    double sumW = 0.0;
    int left = stringsOnOne;
    for (ArraySpec plane : sorted(Comparator.comparingDouble(p -> stringW(p, bankV)))) {
      int taken = Math.min(left, plane.inParallel());
      sumW += taken * stringW(plane, bankV);
      left -= taken;
    }
    return sumW;
  }

  private double stringW(ArraySpec plane, double bankV) {
    return RunLoad.broughtW(plane.module(), plane.inSeries(), 1, controller, bankV);
  }

  /** The largest first. */
  private List<ArraySpec> sorted(Comparator<ArraySpec> by) {
    return planes.stream().sorted(by.reversed()).toList();
  }

  /** How the strings are taken to be shared; nothing for a single controller. */
  void sharing(List<Finding> findings) {
    int count = controller.count();
    if (count == 1) {
      return;
    }
    boolean isEven = strings % count == 0;
    if (planes.size() == 1) {
      findings.add(
          new Finding(
              isEven ? Finding.Severity.PASS : Finding.Severity.CAUTION,
              CurrentFindings.SHARING,
              strings + " strings on " + count + " controllers: taken as evenly shared",
              isEven
                  ? "each gets as many"
                  : "which string goes to which controller is not stated; judge each controller's"
                      + " share"));
      return;
    }
    Integer apart = apart();
    boolean isApart = apart != null && apart <= stringsOnOne;
    String text =
        told()
            + " on "
            + count
            + " controllers: shared evenly "
            + (isEven ? "each gets " : "the fullest gets ")
            + stringsOnOne
            + (isApart
                ? ", and no controller need get strings of more than one plane"
                : ", and at least one controller gets strings of more than one plane"
                    + unlike()
                    + (apart == null ? "" : keptApart(apart)));
    boolean isSure = isEven && isApart && voltages().size() == 1;
    findings.add(
        new Finding(
            isSure ? Finding.Severity.PASS : Finding.Severity.CAUTION,
            CurrentFindings.SHARING,
            text,
            isSure
                ? "each gets as many"
                : "which string goes to which controller is not stated; on one tracking input strings"
                    + " of unlike voltage or light pull each other off their best voltage, and the"
                    + " hours reckon every plane on an input of its own"));
  }

  /** "4 strings of 2 planes (barn 3, yard 1)". */
  private String told() {
    var each = new ArrayList<String>();
    planes.forEach(plane -> each.add(plane.name() + " " + plane.inParallel()));
    return strings + " strings of " + planes.size() + " planes (" + String.join(", ", each) + ")";
  }

  private String unlike() {
    return voltages().size() == 1
        ? ""
        : ", of " + String.join(" and ", voltages()) + " at test conditions";
  }

  private Set<String> voltages() {
    var volts = new TreeSet<String>();
    planes.forEach(p -> volts.add(Show.voltage(p.inSeries() * p.module().maxPowerV())));
    return volts;
  }

  /** Null if there are more planes than controllers. */
  private @Nullable Integer apart() {
    for (int m = 1; m <= strings; m++) {
      int needed = 0;
      for (ArraySpec plane : planes) {
        needed += (plane.inParallel() + m - 1) / m;
      }
      if (needed <= controller.count()) {
        return m;
      }
    }
    return null;
  }

  private String keptApart(int most) {
    double circuitA = 0.0;
    for (ArraySpec plane : planes) {
      int on = (plane.inParallel() + most - 1) / most;
      int each = (plane.inParallel() + on - 1) / on;
      circuitA = Math.max(circuitA, each * plane.module().shortCircuitA());
    }
    Double bearsA = controller.maxShortCircuitA();
    return "; with the planes kept apart one gets "
        + most
        + " strings, "
        + StringFindings.amps(circuitA)
        + " × 1.25 = "
        + StringFindings.amps(StringJudge.BRIGHT_SUN_FACTOR * circuitA)
        + (bearsA == null ? "" : ", and bears " + StringFindings.amps(bearsA));
  }
}
