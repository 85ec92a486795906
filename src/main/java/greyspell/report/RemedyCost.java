package greyspell.report;

import greyspell.study.Explanation.Cost;
import greyspell.words.Words;

/** A sentence on what a change costs, by prices that the scenario states. */
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
}
