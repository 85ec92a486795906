package greyspell.array;

import greyspell.calendar.HourCalendar;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Energy a year that the same panels bring to a controller that tracks their maximum-power point,
 * and to one that holds them at the bank's voltage.
 *
 * <pre>
 * tracking = available on a tracking input
 * held     = available at the bank's voltage
 * lost     = 1 - held / tracking
 *
 * both at the controller's input, before its own efficiency and limits; Wh in an average year
 * </pre>
 *
 * Parallel strings of as many modules in a row as stand in the array: a string whose voltage is far
 * above the bank's loses most. Source: {@link ControllerInput}. Held by ControllerInputTest.
 *
 * @param trackingWh in an average year
 * @param heldWh in an average year
 */
public record TrackingComparison(double trackingWh, double heldWh) {

  /**
   * Runs one plane both ways. Needs a module whose curve is known, see {@link
   * SolarChain#isVoltageKnown}.
   *
   * @param tracking the tracking controller's input
   * @param bankV voltage at which the other controller holds the array
   */
  public static TrackingComparison of(
      ArraySpec array,
      ModulePower power,
      HourCalendar calendar,
      double[] frontWm2,
      double[] absorbedWm2,
      double[] airC,
      double @Nullable [] windMs,
      ControllerInput tracking,
      double bankV) {
    double years = calendar.years();
    return new TrackingComparison(
        sum(SolarChain.run(array, power, calendar, frontWm2, absorbedWm2, airC, windMs, tracking))
            / years,
        sum(
                SolarChain.run(
                    array,
                    power,
                    calendar,
                    frontWm2,
                    absorbedWm2,
                    airC,
                    windMs,
                    ControllerInput.atBankVoltage(bankV)))
            / years);
  }

  /** Part of the tracking controller's energy that is lost without tracking. */
  public double lostShare() {
    return trackingWh > 0.0 ? 1.0 - heldWh / trackingWh : 0.0;
  }

  private static double sum(SolarHours hours) {
    return Arrays.stream(hours.availableWh()).sum();
  }
}
