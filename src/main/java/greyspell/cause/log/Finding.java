package greyspell.cause.log;

/**
 * One assumption beside what the log says of it.
 *
 * @param estimate of what {@link About} says
 * @param isNamed differs by more than is worth a word and more than chance brings
 */
public record Finding(About about, Estimate estimate, boolean isNamed) {
  /** What is looked at, its figure if nothing differs, and from which difference on it is told. */
  public enum About {
    /** Part of the expected sun that the panels gave, 1. */
    ARRAY(1.0, 0.05),
    /** Share of the direct light lost in some hours of the day. */
    SHADE(0.0, 0.15),
    /** Load over the expected. */
    LOAD(1.0, 0.05),
    /** Watts at the loads that are always there, beside what the factor brings. */
    ALWAYS_ON_LOAD(0.0, 5.0),
    /** Watts off the bus beside load and stated standby. */
    STANDBY(0.0, 5.0),
    /** All that is drawn over the expected, where the log has no load. */
    DRAW(1.0, 0.06),
    /** Content of the bank over the expected. */
    BANK(1.0, 0.06),
    /** Share that comes back, over the expected. */
    CHARGING(1.0, 0.04);

    private final double assumed;
    private final double worth;

    About(double assumed, double worth) {
      this.assumed = assumed;
      this.worth = worth;
    }

    public double assumed() {
      return assumed;
    }

    /** From which difference on it is worth a word. */
    double worth() {
      return worth;
    }
  }

  static Finding of(About about, Estimate estimate) {
    return new Finding(about, estimate, estimate.differsFrom(about.assumed, about.worth));
  }
}
