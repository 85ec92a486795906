package greyspell.load;

import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * What the house does when the charge runs low. Shares are of the usable bank, from the reserve up;
 * null is "does not happen".
 *
 * @param shedShouldRunBelowShare below it what should run is switched off
 * @param shedCanWaitBelowShare below it what can wait is switched off
 * @param canWaitAboveShare what can wait is moved to hours with a charge above it
 * @param longestWaitDays after so many days what waits is given up
 */
public record LoadPolicy(
    @Nullable Double shedShouldRunBelowShare,
    @Nullable Double shedCanWaitBelowShare,
    @Nullable Double canWaitAboveShare,
    @Nullable Integer longestWaitDays) {
  public static final LoadPolicy NONE = new LoadPolicy(null, null, null, null);

  public LoadPolicy {
    share("shedShouldRunBelowShare", shedShouldRunBelowShare);
    share("shedCanWaitBelowShare", shedCanWaitBelowShare);
    share("canWaitAboveShare", canWaitAboveShare);
    if (longestWaitDays != null) {
      Check.within("longestWaitDays", longestWaitDays, 0, 60);
    }
  }

  /** Whether anything at all is switched off or moved. */
  public boolean isIdle() {
    return shedShouldRunBelowShare == null
        && shedCanWaitBelowShare == null
        && canWaitAboveShare == null;
  }

  private static void share(String name, @Nullable Double share) {
    if (share != null) {
      Check.share(name, share);
    }
  }
}
