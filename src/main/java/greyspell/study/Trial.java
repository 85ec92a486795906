package greyspell.study;

import greyspell.outcome.Figures;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.scenario.Scenario;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one variant of a home comes to in the weather of {@link Trials}.
 *
 * @param scenario the variant
 * @param unmet what goes unserved in an average year of all hours, as {@code run} tells it
 * @param winters whole winters only, in the order of the trials
 * @param generatorHours in an average year
 * @param generatorStarts in all years together
 * @param fuelL burnt in an average year, 0 without a generator
 * @param curtailedWh sun not taken in an average year
 * @param loadWh asked for in an average year
 * @param lowestChargeWh above the reserve, in the worst hour of all
 */
public record Trial(
    Scenario scenario,
    Unmet unmet,
    List<WinterBooks> winters,
    double generatorHours,
    int generatorStarts,
    double fuelL,
    double curtailedWh,
    double loadWh,
    double lowestChargeWh) {
  public Trial {
    winters = List.copyOf(winters);
  }

  /** Whole winters in which something was not served. */
  public int darkWinters() {
    int count = 0;
    for (WinterBooks winter : winters) {
      count += winter.figures().unmetHours() > 0 ? 1 : 0;
    }
    return count;
  }

  /** The most unmet hours of any whole winter, 0 where there is none. */
  public int mostUnmetHours() {
    int most = 0;
    for (WinterBooks winter : winters) {
      most = Math.max(most, winter.figures().unmetHours());
    }
    return most;
  }

  /** Books of the winter with the most energy unserved, the first of several. */
  public Figures worst() {
    WinterBooks worst = worstWinter();
    if (worst == null) {
      throw new IllegalStateException("no whole winter");
    }
    return worst.figures();
  }

  /** The whole winter of {@link #worst}; null if there is none. */
  public @Nullable WinterBooks worstWinter() {
    WinterBooks worst = null;
    for (WinterBooks winter : winters) {
      worst =
          worst == null || winter.figures().unmetWh() > worst.figures().unmetWh() ? winter : worst;
    }
    return worst;
  }
}
