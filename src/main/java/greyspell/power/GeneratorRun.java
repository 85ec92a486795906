package greyspell.power;

import greyspell.calendar.HourCalendar;
import greyspell.power.GeneratorRules.Policy;
import greyspell.power.step.GeneratorLimits;

/** From a generator's data sheet and rules to what the hourly loop asks of each hour. */
public final class GeneratorRun {
  private GeneratorRun() {}

  /**
   * Limits hour by hour.
   *
   * @param siteElevationM above the sea
   * @param airC one for each hour of the calendar
   */
  public static GeneratorLimits limits(
      GeneratorSpec spec,
      GeneratorRules rules,
      double siteElevationM,
      double[] airC,
      HourCalendar calendar) {
    if (airC.length != calendar.hours()) {
      throw new IllegalArgumentException(
          airC.length + " air temperatures for " + calendar.hours() + " hours");
    }
    var mostW = new double[airC.length];
    for (int h = 0; h < mostW.length; h++) {
      mostW[h] = spec.mostW(siteElevationM, airC[h]);
    }
    boolean[] permitted = rules.permitted().hours(calendar);
    if (rules.policy() == Policy.MANUAL) {
      boolean[] home = rules.home().hours(calendar);
      for (int h = 0; h < permitted.length; h++) {
        permitted[h] &= home[h];
      }
    }
    return new GeneratorLimits(
        mostW,
        permitted,
        rules.charger().mostAcW(),
        rules.charger().efficiency(),
        rules.startBelowShare(),
        rules.stopAboveShare(),
        rules.minimumRunH());
  }
}
