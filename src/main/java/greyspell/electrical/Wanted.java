package greyspell.electrical;

import greyspell.quantity.Check;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How large the array is to be: a number of modules, or a power.
 *
 * @param modules null if a power is wanted
 * @param powerW rated, null if a number is wanted
 */
public record Wanted(@Nullable Integer modules, @Nullable Double powerW) {
  /** Far above any home; keeps the list of arrangements readable. */
  public static final int MOST_MODULES = 1000;

  private static final double SPARE_SHARE = 0.1;
  private static final double ROUNDING = 1e-9;

  public Wanted {
    if ((modules == null) == (powerW == null)) {
      throw new IllegalArgumentException("either modules or powerW");
    }
    if (modules != null) {
      Check.within("modules", modules, 1, MOST_MODULES);
    }
    if (powerW != null) {
      Check.positive("powerW", powerW);
    }
  }

  public static Wanted modules(int count) {
    return new Wanted(count, null);
  }

  public static Wanted power(double powerW) {
    return new Wanted(null, powerW);
  }

  /**
   * The counts to look at: the wanted number; for a power the fewest modules that reach it and up
   * to a tenth more (at least one more), because a few more often split into better strings.
   */
  public List<Integer> counts(double moduleW) {
    if (modules != null) {
      return List.of(modules);
    }
    double wantedW = powerW == null ? 0.0 : powerW;
    int fewest = (int) Math.ceil(wantedW / moduleW - ROUNDING);
    Check.within("modules for the wanted power", fewest, 1, MOST_MODULES);
    int spare = Math.max(1, (int) Math.ceil(fewest * SPARE_SHARE));
    var counts = new ArrayList<Integer>();
    for (int n = fewest; n <= fewest + spare; n++) {
      counts.add(n);
    }
    return List.copyOf(counts);
  }
}
