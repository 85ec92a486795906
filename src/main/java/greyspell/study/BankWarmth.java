package greyspell.study;

import greyspell.storage.BankSpec;
import greyspell.storage.BankSpec.CapacityAt;
import greyspell.storage.BankTemperature;
import greyspell.storage.CellSheet;
import greyspell.storage.ColdLimits;
import greyspell.storage.Enclosure;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How warm a bank is hour by hour, and what that does to it. The arrays are not written. */
final class BankWarmth {
  /** At which sheets state a bank's capacity. */
  private static final double WARM_C = 25.0;

  private static final Set<Effect> HEEDED =
      Set.of(Effect.COLD_BANK, Effect.COLD_CAPACITY, Effect.COLD_CHARGING);

  private final double[] temperatureC;
  private final double[] heaterWh;
  private final double[] lockedShare;
  private final double[] chargeShare;
  private final double[] resistanceFactor;

  /** All that it depends on in one air. */
  private record Key(
      Enclosure enclosure,
      List<CapacityAt> capacityByTemperature,
      double coldestChargeC,
      double fullChargeFromC,
      @Nullable CellSheet cells,
      Set<Effect> leftOut) {}

  static Record key(BankSpec bank, Without without) {
    return new Key(
        bank.enclosure(),
        bank.capacityByTemperature(),
        bank.coldestChargeC(),
        bank.fullChargeFromC(),
        bank.cells(),
        HEEDED.stream().filter(without::has).collect(Collectors.toUnmodifiableSet()));
  }

  private BankWarmth(BankSpec bank, double[] airC, Without without) {
    int hours = airC.length;
    BankTemperature own = BankTemperature.of(bank.enclosure(), airC);
    boolean isWarm = without.has(Effect.COLD_BANK);
    temperatureC = isWarm ? all(hours, WARM_C) : own.temperatureC();
    heaterWh = isWarm ? new double[hours] : own.heaterWh();
    ColdLimits cold = ColdLimits.of(bank, temperatureC);
    // a cause of its own: judged by the real warmth
    ColdLimits lockOut = isWarm ? ColdLimits.of(bank, own.temperatureC()) : cold;
    lockedShare = without.has(Effect.COLD_CAPACITY) ? new double[hours] : cold.lockedShare();
    chargeShare = without.has(Effect.COLD_CHARGING) ? all(hours, 1.0) : lockOut.chargeShare();
    CellSheet cells = bank.cells();
    resistanceFactor = cells == null ? new double[0] : cells.resistanceFactors(temperatureC);
  }

  static BankWarmth of(BankSpec bank, double[] airC, Without without) {
    return new BankWarmth(bank, airC, without);
  }

  double[] temperatureC() {
    return temperatureC;
  }

  /** Drawn from the bus. */
  double[] heaterWh() {
    return heaterWh;
  }

  /** Of the window, see {@link ColdLimits}. */
  double[] lockedShare() {
    return lockedShare;
  }

  /** Of the charge limit, see {@link ColdLimits}. */
  double[] chargeShare() {
    return chargeShare;
  }

  /** Empty where the cells are not followed. */
  double[] resistanceFactor() {
    return resistanceFactor;
  }

  private static double[] all(int hours, double value) {
    var values = new double[hours];
    Arrays.fill(values, value);
    return values;
  }
}
