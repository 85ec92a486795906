package greyspell.weather;

import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.quantity.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * Gathers the faults of one file, or of several read as one: the first ones in full, the rest as a
 * number.
 */
final class FaultList {
  private static final int SHOWN = 20;

  /** A file this bad is not read to its end. */
  private static final int ENOUGH = 1000;

  private String file;
  private final List<Fault> faults = new ArrayList<>();
  private int count;

  FaultList(String file) {
    this.file = file;
  }

  /** What is added from here on is of another file. */
  void in(String nextFile) {
    file = nextFile;
  }

  void add(int line, int column, String found, String expected, String mend) {
    count++;
    if (faults.size() < SHOWN) {
      faults.add(new Fault(new Place(file, line, column), found, expected, mend));
    }
    if (count >= ENOUGH) {
      throwIfAny();
    }
  }

  /** Of the file as a whole. */
  void add(String found, String expected, String mend) {
    add(0, 0, found, expected, mend);
  }

  BadInput alone(int line, int column, String found, String expected, String mend) {
    add(line, column, found, expected, mend);
    return badInput();
  }

  boolean isEmpty() {
    return count == 0;
  }

  void throwIfAny() {
    if (count > 0) {
      throw badInput();
    }
  }

  private BadInput badInput() {
    var all = new ArrayList<>(faults);
    if (count > faults.size()) {
      boolean isReadToItsEnd = count < ENOUGH;
      all.add(
          new Fault(
              Place.of(file),
              (isReadToItsEnd ? "and " : "and at least ") + (count - faults.size()) + " more",
              isReadToItsEnd
                  ? "only the first " + SHOWN + " faults are shown"
                  : "only the first " + SHOWN + " faults are shown; the rest was not read",
              ""));
    }
    return new BadInput(all);
  }
}
