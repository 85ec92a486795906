package greyspell.study;

import greyspell.study.SizeResult.Point;
import java.util.List;

/**
 * Which pair costs least while a price is missing: it hangs on that price alone, so the prices at
 * which it changes can be told.
 *
 * @param unknown whose price it hangs on
 * @param areControllersLeftAside whether more controllers are needed and their price is left out
 * @param ranges by rising price, the last without end
 */
public record CheapestByPrice(
    Unknown unknown, boolean areControllersLeftAside, List<Range> ranges) {
  public CheapestByPrice {
    ranges = List.copyOf(ranges);
  }

  /** What has no price. */
  public enum Unknown {
    MODULE,
    PACK,
    CONTROLLER,
    /** Neither modules nor packs have one: a pack is told in modules. */
    PACK_IN_MODULES
  }

  /**
   * One pair is the cheapest.
   *
   * @param upToCost in the user's money, or in modules; infinite for the last
   */
  public record Range(double upToCost, Point point) {}
}
