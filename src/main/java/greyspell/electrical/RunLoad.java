package greyspell.electrical;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.DataSheetFit;
import greyspell.array.ModuleSpec;
import greyspell.array.SingleDiode;
import greyspell.array.TestConditions;
import greyspell.power.InverterSpec;
import greyspell.quantity.Check;
import greyspell.storage.BankSpec;
import org.jspecify.annotations.Nullable;

/**
 * What a run carries.
 *
 * @param ratedA current at which drop and loss are told
 * @param circuitA most current that is reckoned with for the wire's heat: for panels 1.25 times the
 *     short-circuit current, elsewhere the most that lasts for hours
 * @param voltageV against which the drop is a share
 * @param squareCurrentA2H sum over the year of current squared times hours, 0 if nothing was
 *     simulated
 * @param throughputWh energy that passes in the year, for the share that is lost; 0 if nothing was
 *     simulated
 */
public record RunLoad(
    double ratedA, double circuitA, double voltageV, double squareCurrentA2H, double throughputWh) {
  public RunLoad {
    Check.notNegative("ratedA", ratedA);
    Check.notNegative("circuitA", circuitA);
    Check.positive("voltageV", voltageV);
    Check.notNegative("squareCurrentA2H", squareCurrentA2H);
    Check.notNegative("throughputWh", throughputWh);
  }

  /**
   * From the strings of one plane, at test conditions: where a controller tracks, at their best
   * voltage; one that does not joins them to the bank, so they work at its voltage, with the higher
   * current that the module's curve has there.
   *
   * @param bankV nominal voltage of the bank
   */
  public static RunLoad ofArray(ArraySpec array, ControllerSpec controller, double bankV) {
    ModuleSpec module = array.module();
    boolean isAtBank = controller.kind() == ControllerKind.PWM;
    return new RunLoad(
        array.inParallel()
            * (isAtBank ? currentA(module, bankV / array.inSeries()) : module.maxPowerA()),
        StringJudge.BRIGHT_SUN_FACTOR * array.inParallel() * module.shortCircuitA(),
        isAtBank ? bankV : array.inSeries() * module.maxPowerV(),
        0.0,
        0.0);
  }

  /** At test conditions; the short-circuit current, which is never less, where no curve fits. */
  private static double currentA(ModuleSpec module, double voltageV) {
    SingleDiode diode = DataSheetFit.of(module).diode();
    return diode == null
        ? module.shortCircuitA()
        : Math.max(
            0.0, diode.currentA(TestConditions.IRRADIANCE_WM2, TestConditions.CELL_C, voltageV));
  }

  /**
   * What strings bring to a controller at test conditions: their rated power where it tracks; where
   * it does not, their current at the bank's voltage, which no controller can raise.
   */
  public static double broughtW(
      ModuleSpec module, int inSeries, int strings, ControllerSpec controller, double bankV) {
    return controller.kind() == ControllerKind.PWM
        ? strings * currentA(module, bankV / inSeries) * bankV
        : strings * inSeries * module.ratedPowerW();
  }

  /** The same of a whole plane. */
  public static double broughtW(ArraySpec array, ControllerSpec controller, double bankV) {
    return broughtW(array.module(), array.inSeries(), array.inParallel(), controller, bankV);
  }

  /**
   * From one controller to the bank: the most that it can pass on, or that its modules bring.
   *
   * @param modulesW sum of {@link #broughtW}
   */
  public static RunLoad ofController(
      ControllerSpec controller, StringRules rules, double modulesW) {
    Double mostW = CurrentFindings.mostOutputW(controller, rules);
    double broughtW = modulesW * controller.efficiency();
    double currentA = (mostW == null ? broughtW : Math.min(mostW, broughtW)) / rules.bankV();
    double limitA = mostW == null ? currentA : mostW / rules.bankV();
    return new RunLoad(currentA, limitA, rules.bankV(), 0.0, 0.0);
  }

  /**
   * From the bank to the inverter: continuous power at the bank's nominal voltage; for heat at the
   * lowest voltage, where the current is highest.
   *
   * @param cutOffV below which the inverter switches off, null if not stated: then the nominal
   *     voltage serves for heat too
   */
  public static RunLoad ofInverter(InverterSpec inverter, BankSpec bank, @Nullable Double cutOffV) {
    double drawnW = inverter.continuousW() / SurgeJudge.fullEfficiency(inverter);
    double lowestV = cutOffV == null ? bank.nominalV() : cutOffV;
    return new RunLoad(drawnW / bank.nominalV(), drawnW / lowestV, bank.nominalV(), 0.0, 0.0);
  }

  public boolean isSimulated() {
    return throughputWh > 0.0;
  }

  /**
   * With a simulated run: energy that passes each hour at this voltage.
   *
   * @param years how many years the hours span, so that sums are per year
   */
  public RunLoad withHours(double[] passingWh, double hourVoltageV, double years) {
    double squareA2H = 0.0;
    double sumWh = 0.0;
    for (double wh : passingWh) {
      double currentA = wh / hourVoltageV;
      squareA2H += currentA * currentA;
      sumWh += wh;
    }
    return new RunLoad(ratedA, circuitA, voltageV, squareA2H / years, sumWh / years);
  }

  /**
   * With hourly currents and the energy that passes.
   *
   * @param years how many years the hours span, so that sums are per year
   */
  public RunLoad withCurrents(double[] currentA, double passedWh, double years) {
    double squareA2H = 0.0;
    for (double a : currentA) {
      squareA2H += a * a;
    }
    return new RunLoad(ratedA, circuitA, voltageV, squareA2H / years, passedWh / years);
  }
}
