package greyspell.load;

import greyspell.calendar.Monthly;
import greyspell.quantity.Check;
import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
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
 * @param season the days on which it is used at all, null for every one
 * @param weatherDraw how the weather moves what it draws, null if it does not
 * @param statedRange how far its energy may lie from this, null for what its evidence says
 * @param energyFactor multiplies its energy, not its power; 1 as stated
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
    boolean isMedical,
    @Nullable Season season,
    @Nullable WeatherDraw weatherDraw,
    @Nullable LoadRange statedRange,
    double energyFactor) {
  public ApplianceSpec {
    Check.within("quantity", quantity, 0, 1_000_000);
    Check.notNegative("powerW", powerW);
    Check.notNegative("standbyW", standbyW);
    if (surgeW != null) {
      Check.notNegative("surgeW", surgeW);
    }
    Check.share("dutyShare", dutyShare);
    for (int month = 1; month <= 12; month++) {
      Check.share("dutyShare times monthFactor", dutyShare * monthFactor.in(month));
    }
    hours = List.copyOf(hours);
    days =
        Collections.unmodifiableSet(
            days.isEmpty() ? EnumSet.noneOf(DayOfWeek.class) : EnumSet.copyOf(days));
    if (weatherDraw != null && weatherDraw.isHourly()) {
      Check.positive("powerW", powerW);
    }
    Check.notNegative("energyFactor", energyFactor);
  }

  /** By clock and calendar alone, as stated. */
  public ApplianceSpec(
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
    this(
        name,
        quantity,
        powerW,
        standbyW,
        surgeW,
        dutyShare,
        hours,
        days,
        monthFactor,
        priority,
        evidence,
        isDirectCurrent,
        isMedical,
        null,
        null,
        null,
        1.0);
  }

  /** Stated, or what its evidence says. */
  public LoadRange range() {
    return statedRange != null ? statedRange : LoadRange.of(evidence);
  }

  /** Whether the weather or the sun decides when or how much it draws. */
  public boolean isWeatherDriven() {
    return season != null || weatherDraw != null;
  }

  /** Length of its spans together, in hours of a day. */
  public double dailySpanH() {
    var spans = new DaySpans(hours);
    double sumH = 0.0;
    for (int h = 0; h < 24; h++) {
      sumH += spans.bothShare[h];
    }
    return sumH;
  }

  /** With another season, draw and range. */
  public ApplianceSpec with(
      @Nullable Season newSeason, @Nullable WeatherDraw newDraw, @Nullable LoadRange newRange) {
    return remade(newSeason, newDraw, newRange, energyFactor);
  }

  ApplianceSpec times(double more) {
    return remade(season, weatherDraw, statedRange, energyFactor * more);
  }

  private ApplianceSpec remade(
      @Nullable Season newSeason,
      @Nullable WeatherDraw newDraw,
      @Nullable LoadRange newRange,
      double newEnergyFactor) {
    return new ApplianceSpec(
        name,
        quantity,
        powerW,
        standbyW,
        surgeW,
        dutyShare,
        hours,
        days,
        monthFactor,
        priority,
        evidence,
        isDirectCurrent,
        isMedical,
        newSeason,
        newDraw,
        newRange,
        newEnergyFactor);
  }

  /**
   * From one time of day to another, in hours after midnight; {@code toH} below {@code fromH} runs
   * past midnight, and the whole span then belongs to the day on which it starts. 0 to 24 is the
   * whole day.
   */
  public record HourSpan(double fromH, double toH) {
    public HourSpan {
      Check.within("fromH", fromH, 0.0, Math.nextDown(24.0));
      Check.within("toH", toH, 0.0, 24.0);
      if (fromH == toH) {
        throw new IllegalArgumentException("a span of no length at " + fromH + " h");
      }
    }
  }
}
