package greyspell.operate;

import greyspell.quantity.Show;
import java.util.List;

/**
 * A rule for the fridge door: at sunset look at the charge, and perhaps at tomorrow's sky; if both
 * say so, leave something off until the next sunset.
 *
 * @param belowShare of the bank, as a monitor shows it
 * @param ifGrey only if tomorrow's sun will bring less than the house asks for
 * @param appliances numbers of those that stay off
 * @param names of them
 */
public record Rule(double belowShare, boolean ifGrey, List<Integer> appliances, String names) {
  public Rule {
    appliances = List.copyOf(appliances);
  }

  /** "Below 55 % at sunset with a grey day ahead: no washing machine until the next sunset." */
  public String words() {
    return "Below "
        + Show.percent(belowShare)
        + " at sunset"
        + (ifGrey ? " with a grey day ahead" : "")
        + ": leave off until the next sunset: "
        + names
        + ".";
  }
}
