package greyspell.report;

import greyspell.study.Explanation.Cost;
import greyspell.words.Words;
import java.util.List;

/** A sentence on what a change costs, by prices that the scenario states, and on its wires. */
public final class RemedyCost {
  private RemedyCost() {}

  /**
   * Told and what has to be bought for it; told alone where nothing of that has a price.
   *
   * @param currency the user's own text, may be empty
   */
  public static String after(String told, Cost cost, String currency, Words words) {
    if (cost.onceCost() == 0.0) {
      return told;
    }
    String number = words.number(cost.onceCost(), 0);
    return words.say(
        cost.unpriced().isEmpty() ? "remedy.costs" : "remedy.costs.over",
        told,
        currency.isEmpty() ? number : currency + " " + number);
  }

  /** Told and which wires it asks to be thicker; told alone where they bear it. */
  public static String withWires(String told, List<String> wires, Words words) {
    return wires.isEmpty() ? told : words.say("remedy.wires", told, String.join(", ", wires));
  }
}
