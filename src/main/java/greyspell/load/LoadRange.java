package greyspell.load;

import greyspell.quantity.Check;

/**
 * How far a load's energy may lie from what is stated, as factors of it.
 *
 * @param lowFactor 0 to 1
 * @param highFactor 1 to 10
 */
public record LoadRange(double lowFactor, double highFactor) {
  public LoadRange {
    Check.share("lowFactor", lowFactor);
    Check.within("highFactor", highFactor, 1.0, 10.0);
  }

  /** By evidence, where the user states none: own choice, no source. */
  public static LoadRange of(Evidence evidence) {
    return switch (evidence) {
      case MEASURED -> new LoadRange(0.95, 1.05);
      case LABEL -> new LoadRange(0.85, 1.15);
      case GUESS -> new LoadRange(0.6, 1.4);
    };
  }
}
