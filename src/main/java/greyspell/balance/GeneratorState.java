package greyspell.balance;

import greyspell.power.step.GeneratorLimits;
import org.jspecify.annotations.Nullable;

/**
 * Whether the generator runs, hour by hour; it runs whole hours.
 *
 * <pre>
 * starts   permitted, and the charge is below the start level now or would be after this hour, or
 *          the bank cannot give what the house lacks
 * stops    not permitted; or the charge has reached the stop level, the shortest run is over and the
 *          bank can give what the house lacks
 * </pre>
 *
 * An hour in which it stops is not one in which it starts again.
 */
final class GeneratorState {
  static final int REMEMBERED = 1;

  private final @Nullable GeneratorLimits limits;
  private boolean isOn;
  private int onH;

  GeneratorState(@Nullable GeneratorLimits limits) {
    this.limits = limits;
  }

  /** For how long it has run; 0 is off. */
  void remember(double[] into, int at) {
    into[at] = onH;
  }

  GeneratorLimits limits() {
    if (limits == null) {
      throw new IllegalStateException("there is no generator");
    }
    return limits;
  }

  /** Whether it may run at all in this hour; if not, it is off. */
  boolean mayRun(int h) {
    if (limits == null) {
      return false;
    }
    if (!limits.permitted()[h]) {
      isOn = false;
      onH = 0;
      return false;
    }
    return true;
  }

  /**
   * Decides an hour in which it may run.
   *
   * @param share charge at its start
   * @param shareAfter what it would be after the hour without a generator
   * @param isShort whether the bank cannot give what the house lacks
   */
  boolean runs(double share, double shareAfter, boolean isShort) {
    GeneratorLimits levels = limits();
    if (isOn) {
      isOn = onH < levels.minimumRunH() || share < levels.stopAboveShare() || isShort;
    } else {
      isOn = share < levels.startBelowShare() || shareAfter < levels.startBelowShare() || isShort;
    }
    onH = isOn ? onH + 1 : 0;
    return isOn;
  }
}
