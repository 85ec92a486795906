package greyspell.scenario;

import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.quantity.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is found while a file is read: faults, defaults that were used, cautions. */
final class Border {
  private static final int MOST_FAULTS = 100;
  private static final int LONGEST_SHOWN = 60;

  private final List<Fault> faults = new ArrayList<>();
  private final List<Scenario.Assumption> assumptions = new ArrayList<>();
  private final List<String> cautions = new ArrayList<>();
  private int faultsLeftOut;

  void fault(Place place, String found, String expected, String mend) {
    var fault = new Fault(place, found, expected, mend);
    if (faults.size() < MOST_FAULTS) {
      if (!faults.contains(fault)) {
        faults.add(fault);
      }
    } else {
      faultsLeftOut++;
    }
  }

  /**
   * A record refused what was read. Where a fault was told before, a value in it may be no number
   * and the record refuses it: then a sound stand-in goes on, so that the rest of the file is read
   * too. What only the record knows to be impossible is a fault of its own.
   */
  <T> T refused(Place place, IllegalArgumentException refused, T standIn) {
    if (faults.isEmpty()) {
      fault(
          place,
          "found an impossible value",
          String.valueOf(refused.getMessage()),
          "Compare it with the data sheet.");
    }
    return standIn;
  }

  void faults(BadInput bad) {
    for (Fault f : bad.faults()) {
      fault(f.place(), f.found(), f.expected(), f.mend());
    }
  }

  void assume(String path, String value, String why) {
    assumptions.add(new Scenario.Assumption(path, value, why));
  }

  void caution(String text) {
    if (!cautions.contains(text)) {
      cautions.add(text);
    }
  }

  boolean isClean() {
    return faults.isEmpty();
  }

  List<Scenario.Assumption> assumptions() {
    return assumptions;
  }

  List<String> cautions() {
    return cautions;
  }

  /** All at once, in the order of the file. */
  void throwIfAny(String file) {
    if (faults.isEmpty()) {
      return;
    }
    faults.sort(
        Comparator.comparing((Fault f) -> f.place().file().equals(file) ? 0 : 1)
            .thenComparing(f -> f.place().file())
            .thenComparing(f -> f.place().line())
            .thenComparing(f -> f.place().column()));
    if (faultsLeftOut > 0) {
      faults.add(
          new Fault(
              Place.of(file),
              faultsLeftOut + " more faults",
              "are not listed",
              "Mend these first."));
    }
    throw new BadInput(faults);
  }

  /** {@code tilt: found "95 deg"}, cut short and with control characters made harmless. */
  static String found(String key, String text) {
    return key + ": found \"" + shown(text) + "\"";
  }

  static String shown(String text) {
    var out = new StringBuilder();
    for (int i = 0; i < text.length() && i < LONGEST_SHOWN; i++) {
      char c = text.charAt(i);
      out.append(Character.isISOControl(c) || Character.isSurrogate(c) ? '?' : c);
    }
    return text.length() > LONGEST_SHOWN ? out.append("...").toString() : out.toString();
  }
}
