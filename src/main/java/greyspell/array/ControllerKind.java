package greyspell.array;

/** How a charge controller sets the voltage at which the panels work. */
public enum ControllerKind {
  /** Follows the maximum-power point inside its window. */
  MPPT,
  /** Switches the panels on to the bank in pulses: they work at the bank's voltage. */
  PWM
}
