package greyspell.storage;

import greyspell.quantity.Check;
import greyspell.storage.step.BankLimits;
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
  private static final double HOURS_IN_30_DAYS = 720.0;

  public BankSpec {
    Check.within("packs", packs, 1, 100_000);
    Check.positive("capacityWh", capacityWh);
    Check.positive("nominalV", nominalV);
    Check.within("fullFraction", fullFraction, Double.MIN_VALUE, 1.0);
    Check.within("reserveFraction", reserveFraction, 0.0, Math.nextDown(fullFraction));
    Check.within("chargeEfficiency", chargeEfficiency, Double.MIN_VALUE, 1.0);
    Check.within("dischargeEfficiency", dischargeEfficiency, Double.MIN_VALUE, 1.0);
    Check.positive("maxChargeW", maxChargeW);
    Check.positive("maxDischargeW", maxDischargeW);
    Check.within(
        "selfDischargePerMonthFraction", selfDischargePerMonthFraction, 0.0, Math.nextDown(1.0));
    Check.finite("coldestChargeC", coldestChargeC);
    Check.notNegative("standbyW", standbyW);
    capacityByTemperature = List.copyOf(capacityByTemperature);
    Check.within("points of capacityByTemperature", capacityByTemperature.size(), 1, 1000);
    for (int i = 1; i < capacityByTemperature.size(); i++) {
      Check.within(
          "temperatureC of a point of capacityByTemperature",
          capacityByTemperature.get(i).temperatureC(),
          Math.nextUp(capacityByTemperature.get(i - 1).temperatureC()),
          Double.MAX_VALUE);
    }
  }

  /** One point of the capacity curve; shares above 1 are allowed and count as 1. */
  public record CapacityAt(double temperatureC, double capacityShare) {
    public CapacityAt {
      Check.finite("temperatureC", temperatureC);
      Check.within("capacityShare", capacityShare, 0.0, 10.0);
    }
  }

  /** Energy between the reserve and full. */
  public double usableWh() {
    return capacityWh * (fullFraction - reserveFraction);
  }

  /**
   * What the hourly loop needs. The share kept after an hour's rest is the one that leaves, after
   * 720 hours, all but the monthly loss.
   */
  public BankLimits limits() {
    return new BankLimits(
        usableWh(),
        chargeEfficiency,
        dischargeEfficiency,
        maxChargeW,
        maxDischargeW,
        Math.pow(1.0 - selfDischargePerMonthFraction, 1.0 / HOURS_IN_30_DAYS));
  }
}
