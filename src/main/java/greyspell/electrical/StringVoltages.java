package greyspell.electrical;

import greyspell.array.DataSheetFit;
import greyspell.array.ModuleSpec;
import greyspell.array.NominalCell;
import greyspell.array.SingleDiode;
import org.jspecify.annotations.Nullable;

/**
 * The voltages of one module between the coldest morning and the hottest afternoon.
 *
 * <pre>
 * Voc(cold) = Voc [1 + beta (Tlow - 25)]             or f(Tlow) Voc by the handbook's table
 * Tcell     = Thigh + rise,  rise = (Tn - 20) 1000 / 800
 * Vmp(cold) = Vmp of the single-diode curve at 1000 W/m² and Tlow
 * Vmp(hot)  = Vmp of the single-diode curve at 1000 W/m² and Tcell
 *
 * Voc   open-circuit voltage at 1000 W/m², 25 °C       V
 * beta  its relative change, negative                  1/K
 * Tlow  coldest air ever noted                         °C    -90 .. 60
 * Thigh hottest air ever noted                         °C    up to 70
 * Tn    nominal cell temperature of the data sheet     °C
 * </pre>
 *
 * Full sun on a cell as cold as the night is rare, but a break in the cloud after a cold morning
 * comes near it, and the codes reckon so too. The rise is that of a freely mounted module in full
 * sun; close to a roof it is larger (common practice, no source). Strings are multiples: in series
 * voltages add. Where no single-diode curve fits the sheet, Vmp changes with the power coefficient,
 * and {@code isFromCurve} is false.
 *
 * <p>Source: temperature coefficient as the codes use it, NEC 690.7(A)(1), 2017 to 2023 editions
 * (from memory); rise by the definition of the nominal cell temperature (from memory). Held by
 * ElectricalPublishedTest and StringJudgeTest.
 *
 * @param coldOpenV by the maker's coefficient
 * @param coldOpenTableV by {@link ColdTable}, null where the table ends
 * @param hotRiseK of the cell over the air in full sun
 * @param hotOpenV open circuit in full sun on the hottest afternoon
 * @param weakOpenV open circuit in a tenth of full sun at the record high
 */
public record StringVoltages(
    double coldOpenV,
    @Nullable Double coldOpenTableV,
    double coldPowerV,
    double hotRiseK,
    double hotCellC,
    double hotPowerV,
    double hotOpenV,
    double weakOpenV,
    boolean isFromCurve) {
  private static final double TEST_CELL_C = 25.0;
  private static final double FULL_SUN_WM2 = 1000.0;
  private static final double WEAK_SUN_WM2 = 100.0;
  // Without a curve: common practice, no source, for a tenth of full sun.
  private static final double WEAK_LIGHT_FACTOR = 0.9;

  /** Of one module. */
  public static StringVoltages of(ModuleSpec module, double recordLowC, double recordHighC) {
    var cell = new NominalCell(module.nominalCellC());
    double hotCellC = cell.cellC(FULL_SUN_WM2, recordHighC, 1.0);
    double weakCellC = cell.cellC(WEAK_SUN_WM2, recordHighC, 1.0);
    Double factor = ColdTable.factor(recordLowC);
    Double tableV = factor == null ? null : factor * module.openCircuitV();
    SingleDiode diode = DataSheetFit.of(module).diode();
    if (diode == null) {
      return new StringVoltages(
          openV(module, recordLowC),
          tableV,
          sheetPowerV(module, recordLowC),
          hotCellC - recordHighC,
          hotCellC,
          sheetPowerV(module, hotCellC),
          openV(module, hotCellC),
          WEAK_LIGHT_FACTOR * openV(module, weakCellC),
          false);
    }
    return new StringVoltages(
        openV(module, recordLowC),
        tableV,
        diode.maxPower(FULL_SUN_WM2, recordLowC).voltageV(),
        hotCellC - recordHighC,
        hotCellC,
        diode.maxPower(FULL_SUN_WM2, hotCellC).voltageV(),
        openV(module, hotCellC),
        diode.openCircuitV(WEAK_SUN_WM2, weakCellC),
        true);
  }

  /** Open-circuit voltage in full sun by the maker's coefficient. */
  public static double openV(ModuleSpec module, double cellC) {
    return module.openCircuitV() * (1.0 + module.openCircuitPerK() * (cellC - TEST_CELL_C));
  }

  private static double sheetPowerV(ModuleSpec module, double cellC) {
    return module.maxPowerV() * (1.0 + module.powerPerK() * (cellC - TEST_CELL_C));
  }
}
