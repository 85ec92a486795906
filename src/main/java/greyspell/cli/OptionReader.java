package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Dimension;
import greyspell.quantity.Fault;
import greyspell.quantity.Place;
import greyspell.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads quantities from options, and gathers all that is wrong before anything is refused. */
final class OptionReader {
  private final List<Fault> faults = new ArrayList<>();

  @Nullable Double airC(String option, @Nullable String text) {
    return text == null
        ? null
        : Double.valueOf(within(option, text, Dimension.TEMPERATURE, -90.0, 60.0, "-90 to 60 C"));
  }

  @Nullable Double positive(String option, @Nullable String text, Dimension dimension) {
    return text == null
        ? null
        : Double.valueOf(within(option, text, dimension, Double.MIN_VALUE, 1e9, "above 0"));
  }

  /** Something harmless after a fault, so that the next option is read too. */
  double within(
      String option, String text, Dimension dimension, double low, double high, String range) {
    try {
      double value = Quantity.parse(text, dimension).inside();
      if (value >= low && value <= high) {
        return value;
      }
      fault(option, "found \"" + text + "\"", "must be " + range, "Is the unit right?");
    } catch (Quantity.NotUnderstood e) {
      fault(option, "found \"" + text + "\"", e.expected(), e.mend());
    }
    return Math.max(low, 1.0);
  }

  void fault(String option, String found, String expected, String mend) {
    var fault = new Fault(Place.of(option), found, expected, mend);
    if (!faults.contains(fault)) {
      faults.add(fault);
    }
  }

  void throwIfAny() {
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
  }
}
