package greyspell.sweep;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.study.Trials;
import greyspell.study.WintersWanted;
import greyspell.weather.ensemble.WinterKind;
import greyspell.weather.ensemble.WinterSource;
import org.jspecify.annotations.Nullable;

/**
 * Which winters the homes of a sweep stand in. Without either, what each scenario says: its own
 * winters if it asks for some, else its weather as it is.
 *
 * @param count how many are drawn, null if not said
 * @param how they come about, null if not said
 */
public record SweepWinters(@Nullable Integer count, @Nullable WinterKind how) {
  /** All are kept for all runs of a home, a few MB each. */
  public static final int MOST = 300;

  public static final SweepWinters NOT_SAID = new SweepWinters(null, null);

  /** Whether this home's weather is drawn, as {@code run} would. */
  boolean areDrawn(Scenario home) {
    return count != null
        || how != null
        || home.weather().winters() != null
        || home.weather().isMeansAlone();
  }

  /** Weather, sun and sky for all variants of this home. */
  Trials trials(Scenario home) {
    if (!areDrawn(home)) {
      return Trials.of(home, (what, share) -> {});
    }
    WinterSource source = WintersWanted.of(home, count).withHow(how).source(home);
    if (source.years() > MOST) {
      throw BadInput.of(
          Place.of(home.file()),
          "found " + source.years() + " winters",
          "must be at most " + MOST + " in a sweep",
          "Give fewer with --winters.");
    }
    return Trials.of(home, source, source.years(), (what, share) -> {});
  }
}
