package greyspell.power;

import greyspell.quantity.Check;

/**
 * When a generator runs, and what it charges through. Where rules disagree the permitted hours win:
 * when they end it stops, however short the run was.
 *
 * @param startBelowShare of the usable window: it starts when the charge falls below, or when the
 *     bank cannot give what the house lacks
 * @param stopAboveShare of the usable window: it stops when the charge has reached it and the bank
 *     can give what the house lacks
 * @param minimumRunH whole hours that a run lasts at least
 * @param permitted when it may run; the hours outside are quiet hours
 * @param home when someone is at home to start it and to stay near it; only the manual policy asks
 * @param charger what it charges the bank through
 */
public record GeneratorRules(
    Policy policy,
    double startBelowShare,
    double stopAboveShare,
    int minimumRunH,
    RunTimes permitted,
    RunTimes home,
    Charger charger) {
  /** Who starts it. */
  public enum Policy {
    /** It starts by itself. */
    AUTO,
    /** Someone starts it, and is at home as long as it runs. */
    MANUAL
  }

  public GeneratorRules {
    Check.share("startBelowShare", startBelowShare);
    Check.share("stopAboveShare", stopAboveShare);
    if (!(startBelowShare < stopAboveShare)) {
      throw new IllegalArgumentException("startBelowShare is not below stopAboveShare");
    }
    Check.within("minimumRunH", minimumRunH, 0, 24);
  }
}
