package greyspell.power;

import org.jspecify.annotations.Nullable;

/**
 * What the inverter's two ratings say to the highest demand within each hour, which the hour's
 * energy does not show.
 *
 * @param hoursAboveContinuous hours in which what runs together asks more than it can hold
 * @param hoursAboveSurge hours in which a motor start beside it asks more than it can give for a
 *     moment; null if the inverter's surge power is not stated
 * @param worstHour hour of the highest peak, the first of equals; -1 without hours
 * @param worstPeakW the peak of that hour
 * @param worstRunningHour hour in which most runs together, the first of equals; -1 without hours
 * @param worstRunningW what runs together in that hour
 */
public record PeakCheck(
    int hoursAboveContinuous,
    @Nullable Integer hoursAboveSurge,
    int worstHour,
    double worstPeakW,
    int worstRunningHour,
    double worstRunningW) {
  /**
   * Looks through the hours.
   *
   * @param runningW highest power within each hour without motor starts
   * @param peakW the same with the motor start that adds most
   */
  public static PeakCheck of(InverterSpec inverter, double[] runningW, double[] peakW) {
    if (runningW.length != peakW.length) {
      throw new IllegalArgumentException(runningW.length + " hours running, " + peakW.length);
    }
    double continuousW = inverter.continuousW();
    Double stated = inverter.surgeW();
    double surgeW = stated == null ? Double.POSITIVE_INFINITY : stated;
    int aboveContinuous = 0;
    int aboveSurge = 0;
    int worst = -1;
    int worstRunning = -1;
    for (int h = 0; h < peakW.length; h++) {
      if (runningW[h] > continuousW) {
        aboveContinuous++;
      }
      if (peakW[h] > surgeW) {
        aboveSurge++;
      }
      if (worst < 0 || peakW[h] > peakW[worst]) {
        worst = h;
      }
      if (worstRunning < 0 || runningW[h] > runningW[worstRunning]) {
        worstRunning = h;
      }
    }
    return new PeakCheck(
        aboveContinuous,
        stated == null ? null : Integer.valueOf(aboveSurge),
        worst,
        worst < 0 ? 0.0 : peakW[worst],
        worstRunning,
        worstRunning < 0 ? 0.0 : runningW[worstRunning]);
  }
}
