package greyspell.cause;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Games whose shares stand in textbooks. */
class ShapleySharesPublishedTest implements PublishedChecks {
  private static final String AIRPORT =
      "Littlechild and Owen (1973), Management Science 20, 370: runways (worked example from memory)";
  private static final String GLOVES =
      "Shapley (1953), market of one left and two right gloves (from memory)";
  private static final String VOTES =
      "Shapley and Shubik (1954), American Political Science Review 48, 787: majority games (from memory)";

  private final List<PublishedCheck> checks = new ArrayList<>();

  @Override
  public List<PublishedCheck> checks() {
    double[] runways = {8, 11, 13, 18};
    double[] pays = {2, 3, 4, 9};
    ShapleyShares airport = game(4, set -> longest(runways, set));
    for (int i = 0; i < runways.length; i++) {
      add(
          AIRPORT,
          "runways of 8, 11, 13, 18: pays for " + (int) runways[i],
          pays[i],
          1e-12,
          airport,
          i);
    }
    ShapleyShares gloves = game(3, set -> (set & 1) == 1 && (set & 6) != 0 ? 1.0 : 0.0);
    add(GLOVES, "the one left glove", 2.0 / 3.0, 1e-12, gloves, 0);
    add(GLOVES, "each right glove", 1.0 / 6.0, 1e-12, gloves, 1);
    int[] votes = {2, 1, 1, 1};
    ShapleyShares majority = game(4, set -> votesOf(votes, set) >= 3 ? 1.0 : 0.0);
    add(VOTES, "two votes against three single ones, quota 3", 0.5, 1e-12, majority, 0);
    return checks;
  }

  private void add(
      String source, String what, double expected, double tolerance, ShapleyShares game, int i) {
    checks.add(
        new PublishedCheck(
            "cause", source, what, "1", expected, tolerance, () -> game.share(i, 0)));
  }

  private static ShapleyShares game(int players, IntToDoubleFunction value) {
    return ShapleyShares.exact(players, set -> new double[] {value.applyAsDouble(set)});
  }

  private static double longest(double[] lengths, int set) {
    double longest = 0.0;
    for (int i = 0; i < lengths.length; i++) {
      longest = (set >> i & 1) == 1 ? Math.max(longest, lengths[i]) : longest;
    }
    return longest;
  }

  private static int votesOf(int[] votes, int set) {
    int sum = 0;
    for (int i = 0; i < votes.length; i++) {
      sum += (set >> i & 1) * votes[i];
    }
    return sum;
  }
}
