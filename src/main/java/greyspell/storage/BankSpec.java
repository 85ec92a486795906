package greyspell.storage;

import java.util.List;

/**
 * The whole bank, all packs together.
 *
 * @param packs how many packs in parallel, for the record; every figure below is for all of them
 *     together
 * @param capacityWh nominal energy
 * @param nominalV system voltage
 * @param fullFraction charged up to this share of the nominal energy
 * @param reserveFraction never drawn below this share of the nominal energy
 * @param chargeEfficiency bus to cells
 * @param dischargeEfficiency cells to bus
 * @param maxChargeW at the bus
 * @param maxDischargeW at the bus
 * @param selfDischargePerMonthFraction lost in 30 days of rest
 * @param capacityByTemperature share of the nominal energy that can be drawn, rising with
 *     temperature; straight lines between, level outside
 * @param coldestChargeC no charging below this
 * @param standbyW drawn from the bus by its own electronics
 */
public record BankSpec(
    String name,
    Chemistry chemistry,
    int packs,
    double capacityWh,
    double nominalV,
    double fullFraction,
    double reserveFraction,
    double chargeEfficiency,
    double dischargeEfficiency,
    double maxChargeW,
    double maxDischargeW,
    double selfDischargePerMonthFraction,
    List<CapacityAt> capacityByTemperature,
    double coldestChargeC,
    double standbyW,
    Enclosure enclosure) {
  /** One point of the capacity curve. */
  public record CapacityAt(double temperatureC, double capacityShare) {}

  /** Energy between the reserve and full. */
  public double usableWh() {
    return capacityWh * (fullFraction - reserveFraction);
  }
}
