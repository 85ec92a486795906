package greyspell.study;

import greyspell.scenario.Scenario;
import greyspell.sizing.HandMethod;
import greyspell.sizing.Tally;
import greyspell.sizing.Target;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a target takes.
 *
 * @param home as it is, its generator left out if that was asked for
 * @param wholeWinters in the weather
 * @param years of it
 * @param present what the home comes to as it is
 * @param steps panels that can be built
 * @param isPresentEnough whether it keeps to the targets as it is
 * @param leastBank with the panels that are there, null if no bank that was looked at is enough
 * @param largestBank that was looked at, where none is enough
 * @param fewestPanels with the bank that is there, null if no panels that can be built are enough
 * @param frontier pairs of which neither can be smaller, from few panels to many; empty where only
 *     the standards' rule is asked, which sees bank and array apart
 * @param cheapest of the frontier, null without prices or without a frontier
 * @param missingPrices keys of {@code costs} that would be needed, empty if none
 * @param byPrice which is cheapest at which price while one is missing; null if none is, or without
 *     a frontier
 * @param handPair what the hand method comes to, run through the hours; null if the hand method's
 *     panels cannot be built
 * @param isBySums whether sums were enough, or the full loop was run for each pair
 * @param tried pairs that were looked at
 * @param possible pairs that there are
 */
public record SizeResult(
    Scenario home,
    List<Target> targets,
    int years,
    int wholeWinters,
    PanelSteps steps,
    BankSteps banks,
    Point present,
    boolean isPresentEnough,
    @Nullable Point leastBank,
    @Nullable Point largestBank,
    @Nullable Point fewestPanels,
    List<Point> frontier,
    @Nullable Point cheapest,
    List<String> missingPrices,
    @Nullable CheapestByPrice byPrice,
    HandMethod hand,
    @Nullable Point handPair,
    boolean isHandPairEnough,
    Deficit deficit,
    boolean isBySums,
    int tried,
    int possible) {
  public SizeResult {
    targets = List.copyOf(targets);
    frontier = List.copyOf(frontier);
    missingPrices = List.copyOf(missingPrices);
  }

  /**
   * One pair of panels and bank.
   *
   * @param home the variant, as its own scenario file would read
   * @param packs null for a bank of any size
   * @param cost of panels, packs and added controllers; null if a price is missing
   */
  public record Point(
      Scenario home,
      int modules,
      double ratedW,
      int controllers,
      @Nullable Integer packs,
      double capacityWh,
      Tally tally,
      @Nullable Double cost) {}

  /** Whether only the standards' rule is asked, for which the weather plays no part. */
  public boolean isByRule() {
    return targets.stream().allMatch(Target::isByRule);
  }

  /**
   * How the present panels compare with what is asked.
   *
   * @param deepestWh drawn from a full bank by the longest run of lacking sun, with what the
   *     smallest bank that is enough, or the largest looked at, draws itself; infinite if inverter
   *     or discharge limit leave something unserved with any bank; not a number where sums are not
   *     enough to tell
   */
  public record Deficit(double deepestWh) {
    public boolean isKnown() {
      return deepestWh > 0.0 && deepestWh < Double.POSITIVE_INFINITY;
    }
  }
}
