package greyspell.storage;

import greyspell.quantity.Check;
import greyspell.storage.step.BankLimits;
import java.util.List;
import org.jspecify.annotations.Nullable;

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
 * @param fullChargeFromC charged at the full limit from here up, along a straight line below; the
 *     same as {@code coldestChargeC} for a limit without slope
 * @param healthShare capacity now over nominal
 * @param cells null for constant efficiencies and no voltage
 * @param tanks null for one tank
 * @param life how it ages
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
    Enclosure enclosure,
    double fullChargeFromC,
    double healthShare,
    @Nullable CellSheet cells,
    @Nullable KineticSheet tanks,
    LifeSheet life) {
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
    Check.within("fullChargeFromC", fullChargeFromC, coldestChargeC, 100.0);
    Check.within("healthShare", healthShare, 0.01, 1.5);
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

  /** A new bank of constant efficiencies. */
  public BankSpec(
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
    this(
        name,
        chemistry,
        packs,
        capacityWh,
        nominalV,
        fullFraction,
        reserveFraction,
        chargeEfficiency,
        dischargeEfficiency,
        maxChargeW,
        maxDischargeW,
        selfDischargePerMonthFraction,
        capacityByTemperature,
        coldestChargeC,
        standbyW,
        enclosure,
        coldestChargeC,
        1.0,
        null,
        null,
        LifeSheet.usual(chemistry));
  }

  /** One point of the capacity curve; shares above 1 are allowed and count as 1. */
  public record CapacityAt(double temperatureC, double capacityShare) {
    public CapacityAt {
      Check.finite("temperatureC", temperatureC);
      Check.within("capacityShare", capacityShare, 0.0, 10.0);
    }
  }

  /** Whether voltage, resistance and the like are reckoned. */
  public boolean isDetailed() {
    return cells != null;
  }

  /**
   * All that the cells hold now, from empty to charged to the top: what shares of charge are
   * counted over. With two tanks that is both, which is more than the nominal capacity.
   */
  public double contentWh() {
    return (tanks == null ? capacityWh : tanks.tanksWh()) * healthShare;
  }

  /**
   * Energy between the reserve and full: shares of the capacity on the sheet. What two tanks hold
   * beyond it, which only a very slow draw would reach, is never used.
   */
  public double usableWh() {
    return capacityWh * healthShare * (fullFraction - reserveFraction);
  }

  /** Energy below the reserve; with two tanks also what they hold beyond the sheet's capacity. */
  public double reserveWh() {
    return contentWh() * fullFraction - usableWh();
  }

  /** Charge over all that the cells hold, from the energy above the reserve. */
  public double chargeShare(double aboveReserveWh) {
    return (reserveWh() + aboveReserveWh) / contentWh();
  }

  /** Energy over which a monitor counts that was set to the sheet, at the bank's health. */
  public double monitorWh() {
    return capacityWh * healthShare;
  }

  /**
   * What a monitor shows that counts down from the capacity of the sheet, at the bank's health: the
   * reserve of the scenario shows as it is stated there. With one tank the same as {@link
   * #chargeShare}; two tanks hold more than the sheet says, and that never shows.
   */
  public double monitorShare(double aboveReserveWh) {
    return reserveFraction + aboveReserveWh / monitorWh();
  }

  /** Energy above the reserve when such a monitor shows this; 0 below. */
  public double aboveReserveWh(double monitorShare) {
    return Math.max(0.0, (monitorShare - reserveFraction) * monitorWh());
  }

  /**
   * The same bank at another health. Its capacity goes with it, and its resistance as one over the
   * square (own choice, no source: 1.56 times at 80 %, where one and a half to two times is often
   * told); power limits and efficiencies that are stated stay.
   */
  public BankSpec withHealth(double newHealthShare) {
    double before = healthShare / newHealthShare;
    CellSheet aged =
        cells == null ? null : cells.withResistanceOhm(cells.resistanceOhm() * before * before);
    if (aged == null || aged.isLossStated()) {
      return with(chargeEfficiency, dischargeEfficiency, newHealthShare, aged, tanks, life);
    }
    double[] near = CellModel.nearEfficiencies(aged, capacityWh * newHealthShare);
    return with(near[0], near[1], newHealthShare, aged, tanks, life);
  }

  /**
   * The same bank in detail; constant efficiencies become those near the losses of the resistance
   * where these are not stated.
   */
  public BankSpec inDetail(CellSheet sheet, @Nullable KineticSheet twoTanks) {
    if (sheet.isLossStated()) {
      return with(chargeEfficiency, dischargeEfficiency, healthShare, sheet, twoTanks, life);
    }
    double[] near = CellModel.nearEfficiencies(sheet, capacityWh);
    return with(near[0], near[1], healthShare, sheet, twoTanks, life);
  }

  /**
   * The same batteries, so many of them (rows of them, where they stand in series) side by side:
   * energy, power limits and standby in proportion, resistance in inverse proportion.
   *
   * @param newPacks from 1
   */
  public BankSpec withPacks(int newPacks) {
    return newPacks == packs ? this : sized((double) newPacks / packs, newPacks);
  }

  /**
   * A bank of any size made of the same cells: as {@link #withPacks}, though no whole number of
   * packs may come to it.
   *
   * @param newCapacityWh nominal energy, above 0
   */
  public BankSpec withCapacityWh(double newCapacityWh) {
    return sized(newCapacityWh / capacityWh, packs);
  }

  private BankSpec sized(double share, int newPacks) {
    return new BankSpec(
        name,
        chemistry,
        newPacks,
        capacityWh * share,
        nominalV,
        fullFraction,
        reserveFraction,
        chargeEfficiency,
        dischargeEfficiency,
        maxChargeW * share,
        maxDischargeW * share,
        selfDischargePerMonthFraction,
        capacityByTemperature,
        coldestChargeC,
        standbyW * share,
        enclosure,
        fullChargeFromC,
        healthShare,
        cells == null ? null : cells.withResistanceOhm(cells.resistanceOhm() / share),
        tanks == null
            ? null
            : new KineticSheet(
                tanks.availableShare(), tanks.exchangePerH(), tanks.tanksWh() * share),
        life);
  }

  public BankSpec withLife(LifeSheet newLife) {
    return with(chargeEfficiency, dischargeEfficiency, healthShare, cells, tanks, newLife);
  }

  private BankSpec with(
      double newChargeEfficiency,
      double newDischargeEfficiency,
      double newHealthShare,
      @Nullable CellSheet newCells,
      @Nullable KineticSheet newTanks,
      LifeSheet newLife) {
    return new BankSpec(
        name,
        chemistry,
        packs,
        capacityWh,
        nominalV,
        fullFraction,
        reserveFraction,
        newChargeEfficiency,
        newDischargeEfficiency,
        maxChargeW,
        maxDischargeW,
        selfDischargePerMonthFraction,
        capacityByTemperature,
        coldestChargeC,
        standbyW,
        enclosure,
        fullChargeFromC,
        newHealthShare,
        newCells,
        newTanks,
        newLife);
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
