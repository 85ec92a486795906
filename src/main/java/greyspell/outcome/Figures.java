package greyspell.outcome;

import java.util.List;

/**
 * The books of a stretch of hours: a month, a winter, all.
 *
 * @param hours hours in the stretch
 * @param days days in the stretch
 * @param loadWh asked for at the sockets and on the bus
 * @param unmetHours hours in which something asked for was not served
 * @param unmetDays days with at least one such hour
 * @param solarUsedWh put on the bus
 * @param lossesWh every loss between the panels and the sockets by name, standing draw included
 * @param startChargeWh above the reserve
 * @param lowestChargeWh above the reserve, at the end of {@code lowestChargeHour}
 * @param equivalentFullCycles energy drawn from the cells over the usable energy
 * @param beyond what only the full loop books
 */
public record Figures(
    int hours,
    int days,
    double loadWh,
    double servedWh,
    double unmetWh,
    double unmetEmptyWh,
    double unmetRateWh,
    double unmetInverterWh,
    int unmetHours,
    int unmetDays,
    double solarNominalWh,
    double solarAvailableWh,
    double solarUsedWh,
    double clippedWh,
    double curtailedFullWh,
    double curtailedRateWh,
    double curtailedColdWh,
    double bankInWh,
    double bankOutWh,
    double standingWh,
    List<Named> lossesWh,
    double startChargeWh,
    double endChargeWh,
    double lowestChargeWh,
    int lowestChargeHour,
    double equivalentFullCycles,
    Beyond beyond) {
  /** A named sum. */
  public record Named(String name, double wh) {}

  /**
   * Generator, second source, rules and the voltage of the bank: zeros where there is none of it.
   *
   * @param generatorWh at its own terminals
   * @param generatorStarts how often it was started
   * @param otherUsedWh from the second source, put on the bus
   * @param otherCurtailedWh from it, not taken
   * @param curtailedAbsorptionWh sun not taken because the bank takes less near full
   * @param unmetCutOffWh not served because the voltage fell to the cut-off
   * @param unmetSlowWh not served because charge could not be reached in time
   * @param unmetAsleepWh not served because it did not wake the inverter
   * @param shedWh let go by rule
   * @param putOffWh put off by rule
   * @param madeUpWh served of what was put off
   */
  public record Beyond(
      double generatorWh,
      int generatorHours,
      int generatorStarts,
      double otherUsedWh,
      double otherCurtailedWh,
      double curtailedAbsorptionWh,
      double unmetCutOffWh,
      double unmetSlowWh,
      double unmetAsleepWh,
      double shedWh,
      double putOffWh,
      double madeUpWh) {
    public static final Beyond NONE =
        new Beyond(0.0, 0, 0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
  }

  /** Sun that was not taken, for whatever reason. */
  public double curtailedWh() {
    return curtailedFullWh + curtailedRateWh + curtailedColdWh + beyond.curtailedAbsorptionWh;
  }

  /** Share of the hours in which something was not served. */
  public double lossOfLoadProbabilityHours() {
    return (double) unmetHours / hours;
  }

  /** Share of the days with at least one such hour. */
  public double lossOfLoadProbabilityDays() {
    return (double) unmetDays / days;
  }

  /** Share of the energy asked for that was not served; 0 if nothing was asked for. */
  public double unmetShare() {
    return loadWh > 0.0 ? unmetWh / loadWh : 0.0;
  }
}
