package greyspell.report;

import greyspell.ladder.Rung;
import greyspell.ladder.Step.Kind;
import greyspell.ladder.Step.Price;
import greyspell.ladder.Turn;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario.Costs;
import java.util.ArrayList;
import java.util.List;

/** At what prices the order of the ladder turns, a sentence for each. */
final class TurnText {
  private TurnText() {}

  static List<String> of(Rung rung, Costs costs) {
    var told = new ArrayList<String>();
    Turn upTo = rung.upTo();
    if (upTo != null && upTo.isPossible()) {
      told.add(
          "It comes first up to "
              + money(upTo.cost(), costs)
              + " for "
              + upTo.price().piece()
              + stated(upTo, costs)
              + ".");
    }
    rung.flips().forEach(flip -> told.add(flip(flip, costs)));
    return told;
  }

  private static String flip(Turn flip, Costs costs) {
    Price price = flip.price();
    if (!flip.isPossible()) {
      return "No price of " + price.piece() + " turns the order" + beside(flip) + ".";
    }
    return "The order flips if "
        + price.piece()
        + beside(flip)
        + " costs less than "
        + money(flip.cost(), costs)
        + stated(flip, costs)
        + ".";
  }

  /** What comes with it, where that has no price either; a controller comes with its panels. */
  private static String beside(Turn flip) {
    if (!flip.alsoMissing().isEmpty()) {
      return " with all that it takes (" + String.join(", ", flip.alsoMissing()) + ")";
    }
    boolean isController = flip.tried().step().kind() == Kind.PANELS && !isFirst(flip);
    return isController ? " for " + flip.tried().step().pieces() + " panels more" : "";
  }

  private static boolean isFirst(Turn turn) {
    return turn.price().key().equals(turn.tried().step().prices().get(0).key());
  }

  private static String stated(Turn turn, Costs costs) {
    Double stated = turn.price().cost();
    return stated == null
        ? " (" + turn.price().key() + ", not stated)"
        : " (now " + money(stated, costs) + ")";
  }

  private static String money(double cost, Costs costs) {
    return Double.isInfinite(cost) ? "any price" : Show.money(costs.currency(), cost);
  }
}
