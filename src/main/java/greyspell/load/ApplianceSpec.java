package greyspell.load;

import greyspell.calendar.Monthly;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One kind of appliance.
 *
 * @param quantity how many alike
 * @param powerW while it runs, each
 * @param standbyW when it does not run, each
 * @param surgeW for a motor start, each, null if none
 * @param dutyShare share of its hours that it really runs
 * @param hours spans of the day, local standard time
 * @param days of the week
 * @param monthFactor multiplies the duty in each month; 0 is off
 * @param isDirectCurrent fed from the bus, not through the inverter
 */
public record ApplianceSpec(
    String name,
    int quantity,
    double powerW,
    double standbyW,
    @Nullable Double surgeW,
    double dutyShare,
    List<HourSpan> hours,
    Set<DayOfWeek> days,
    Monthly monthFactor,
    Priority priority,
    Evidence evidence,
    boolean isDirectCurrent,
    boolean isMedical) {
  /**
   * From one time of day to another, in hours after midnight; {@code toH} below {@code fromH} runs
   * past midnight.
   */
  public record HourSpan(double fromH, double toH) {}
}
