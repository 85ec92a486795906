package greyspell.load;

import greyspell.quantity.Check;

/** On which days an appliance is used, told by the weather or the sun instead of the calendar. */
public sealed interface Season {
  /**
   * Whether it is used on this day.
   *
   * @param meanAirC mean of the day's outdoor temperature
   * @param dayLengthH time that the sun's centre is up
   */
  boolean holds(double meanAirC, double dayLengthH);

  /** Days colder, or warmer, than a limit. */
  record ByTemperature(boolean isBelow, double limitC) implements Season {
    public ByTemperature {
      Check.within("limitC", limitC, -60.0, 60.0);
    }

    @Override
    public boolean holds(double meanAirC, double dayLengthH) {
      return isBelow ? meanAirC < limitC : meanAirC > limitC;
    }
  }

  /** Days shorter, or longer, than a limit. */
  record ByDayLength(boolean isShorter, double limitH) implements Season {
    public ByDayLength {
      Check.within("limitH", limitH, 0.0, 24.0);
    }

    @Override
    public boolean holds(double meanAirC, double dayLengthH) {
      return isShorter ? dayLengthH < limitH : dayLengthH > limitH;
    }
  }
}
