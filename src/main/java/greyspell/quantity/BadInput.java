package greyspell.quantity;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Everything wrong with an input, gathered before anything is refused. The command line turns it
 * into exit code 2.
 */
public final class BadInput extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<Fault> faults;

  public BadInput(List<Fault> faults) {
    super(faults.stream().map(Fault::text).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  public static BadInput of(Place place, String found, String expected, String mend) {
    return new BadInput(List.of(new Fault(place, found, expected, mend)));
  }

  public List<Fault> faults() {
    return faults;
  }
}
