package greyspell.storage;

import greyspell.storage.step.CellStep;
import greyspell.storage.step.Taper;
import greyspell.storage.step.TwoTank;
import org.jspecify.annotations.Nullable;

/** Turns a bank that is reckoned in detail into what the hourly loop needs. */
public final class CellModel {
  private CellModel() {}

  /**
   * Voltage, losses and voltage limits.
   *
   * @param chargingV highest voltage at which the bank is charged, null for the chemistry's usual
   * @param cutOffV below which the inverter switches off, null for the chemistry's usual
   * @throws IllegalArgumentException if the bank has no cell sheet
   */
  public static CellStep step(BankSpec bank, @Nullable Double chargingV, @Nullable Double cutOffV) {
    CellSheet cells = sheet(bank);
    CellDefaults usual = CellDefaults.of(bank.chemistry());
    double inSeries = usual.cells(bank.nominalV());
    var step =
        new CellStep(
            new VoltageCurve(cells.voltageByCharge()).table(),
            cells.resistanceOhm(),
            cells.coulombicEfficiency(),
            chargingV == null ? usual.chargingCellV() * inSeries : chargingV,
            cutOffV == null ? usual.cutOffCellV() * inSeries : cutOffV);
    return cells.isLossStated()
        ? step.withStated(bank.chargeEfficiency(), bank.dischargeEfficiency())
        : step;
  }

  /** How acceptance falls near full; charge is counted over {@link BankSpec#contentWh}. */
  public static Taper taper(BankSpec bank) {
    CellSheet cells = sheet(bank);
    return new Taper(cells.taperFromShare(), cells.taperTopShare(), bank.fullFraction());
  }

  /** Null for a bank without two tanks. */
  public static @Nullable TwoTank tanks(BankSpec bank) {
    KineticSheet tanks = bank.tanks();
    return tanks == null ? null : TwoTank.of(tanks.availableShare(), tanks.exchangePerH());
  }

  /**
   * Constant efficiencies that come near the losses of the resistance: at half charge and 25 °C,
   * charged and drawn at a tenth of the energy an hour. For readers of the books that know only
   * constants.
   *
   * @return bus to cells, cells to bus
   */
  static double[] nearEfficiencies(CellSheet cells, double capacityWh) {
    var step =
        new CellStep(
            new VoltageCurve(cells.voltageByCharge()).table(),
            cells.resistanceOhm(),
            cells.coulombicEfficiency(),
            1.0,
            0.0);
    double busWh = 0.1 * capacityWh;
    double inLossWh = step.inLossWh(busWh, 0.5, 1.0);
    double outLossWh = step.outLossWh(busWh, 0.5, 1.0);
    return new double[] {1.0 - inLossWh / busWh, busWh / (busWh + outLossWh)};
  }

  private static CellSheet sheet(BankSpec bank) {
    CellSheet cells = bank.cells();
    if (cells == null) {
      throw new IllegalArgumentException("a bank of constant efficiencies has no cells");
    }
    return cells;
  }
}
