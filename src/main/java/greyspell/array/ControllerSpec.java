package greyspell.array;

import greyspell.quantity.Check;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A charge controller; several alike may stand side by side.
 *
 * @param count how many
 * @param maxOutputW of one, null if only the current is limited
 * @param maxOutputA charging current of one at the bank's voltage, null if only power is limited
 * @param efficiency solar to bus at every load, 0 to 1; not used where {@code efficiencyPoints} and
 *     an output limit are stated
 * @param lowestTrackingV lower end of the tracking window, null if not stated
 * @param highestTrackingV upper end of the tracking window
 * @param startV voltage from which it starts, null if not stated
 * @param absoluteMaximumV never to be exceeded on the input, null if not stated
 * @param maxShortCircuitA never to be exceeded on the input, null if not stated
 * @param standbyW drawn from the bus all day and night, each
 * @param kind whether it tracks; one that does not has no use for the window
 * @param efficiencyPoints efficiency by load, rising load; empty if only one figure is known
 */
public record ControllerSpec(
    String name,
    int count,
    @Nullable Double maxOutputW,
    @Nullable Double maxOutputA,
    double efficiency,
    @Nullable Double lowestTrackingV,
    @Nullable Double highestTrackingV,
    @Nullable Double startV,
    @Nullable Double absoluteMaximumV,
    @Nullable Double maxShortCircuitA,
    double standbyW,
    ControllerKind kind,
    List<EfficiencyPoint> efficiencyPoints) {
  public ControllerSpec {
    Check.within("count", count, 1, 1000);
    positiveIfStated("maxOutputW", maxOutputW);
    positiveIfStated("maxOutputA", maxOutputA);
    Check.within("efficiency", efficiency, Double.MIN_VALUE, 1.0);
    positiveIfStated("lowestTrackingV", lowestTrackingV);
    positiveIfStated("highestTrackingV", highestTrackingV);
    positiveIfStated("startV", startV);
    positiveIfStated("absoluteMaximumV", absoluteMaximumV);
    positiveIfStated("maxShortCircuitA", maxShortCircuitA);
    Check.notNegative("standbyW", standbyW);
    if (lowestTrackingV != null && highestTrackingV != null) {
      Check.within("lowestTrackingV", lowestTrackingV, Double.MIN_VALUE, highestTrackingV);
    }
    efficiencyPoints = List.copyOf(efficiencyPoints);
    double loadShare = 0.0;
    double inputShare = 0.0;
    for (EfficiencyPoint point : efficiencyPoints) {
      if (!(point.loadShare() > loadShare && point.inputShare() > inputShare)) {
        throw new IllegalArgumentException("efficiencyPoints must rise in load and in input");
      }
      loadShare = point.loadShare();
      inputShare = point.inputShare();
    }
  }

  /** So many times as many of the same. */
  public ControllerSpec times(int more) {
    return withCount(count * more);
  }

  /** The same, so many of it. */
  public ControllerSpec withCount(int newCount) {
    return new ControllerSpec(
        name,
        newCount,
        maxOutputW,
        maxOutputA,
        efficiency,
        lowestTrackingV,
        highestTrackingV,
        startV,
        absoluteMaximumV,
        maxShortCircuitA,
        standbyW,
        kind,
        efficiencyPoints);
  }

  /** Drawn from the bus by all of them together. */
  public double standbyOfAllW() {
    return count * standbyW;
  }

  private static void positiveIfStated(String name, @Nullable Double value) {
    if (value != null) {
      Check.positive(name, value);
    }
  }
}
