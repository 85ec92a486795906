package greyspell.ladder;

import greyspell.study.Unmet;

/**
 * One assumption at two ends of its range, all else as it is.
 *
 * @param what the assumption
 * @param lowWords its lower end
 * @param highWords its upper end
 * @param low what goes unserved there
 * @param high what goes unserved there
 * @param firstLow the first rung that costs money there, {@link #FUEL} where fuel is cheaper than
 *     any; empty if there is none
 * @param firstHigh the first rung that costs money there
 */
public record Bar(
    String what,
    String lowWords,
    String highWords,
    Unmet low,
    Unmet high,
    String firstLow,
    String firstHigh) {
  /** No purchase: a kWh from the generator is cheaper than one that the best step avoids. */
  public static final String FUEL = "fuel for the generator";

  /** How far apart the ends lie, unserved or given by an engine. */
  public double widthWh() {
    return Math.abs(high.wh() + high.generatorWh() - low.wh() - low.generatorWh());
  }
}
