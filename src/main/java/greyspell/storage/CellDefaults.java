package greyspell.storage;

import greyspell.storage.CellSheet.FactorAt;
import greyspell.storage.LifeSheet.CyclesAt;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the cells of a chemistry are taken to be where a bank is reckoned in detail and its data
 * sheet does not say; beside {@link BankDefaults}. Guidance, from memory or our own choice as
 * marked: the maker's figures should take their place. The scenario lists each one that was used.
 *
 * @param cellV nominal voltage of one cell
 * @param chargingCellV voltage to which a cell is charged
 * @param cutOffCellV voltage of a cell below which the inverter switches off
 * @param ohmAh resistance of a cell times its capacity, so that a large cell has less of it
 * @param resistanceByTemperature factors on it
 * @param coulombicEfficiency charge out over charge in
 * @param taperFromShare above this charge acceptance falls
 * @param taperTopShare acceptance left when full
 * @param tanks null for lithium
 * @param specificHeatJPerKgK of a whole battery
 * @param cycleLife depth to cycles
 * @param calendarLifeH at 25 °C
 * @param fullChargeEveryH null for lithium
 * @param resistanceWhy where the resistance comes from
 * @param lifeWhy where the life comes from
 */
public record CellDefaults(
    double cellV,
    double chargingCellV,
    double cutOffCellV,
    double ohmAh,
    List<FactorAt> resistanceByTemperature,
    double coulombicEfficiency,
    double taperFromShare,
    double taperTopShare,
    @Nullable Tanks tanks,
    double specificHeatJPerKgK,
    List<CyclesAt> cycleLife,
    double calendarLifeH,
    @Nullable Double fullChargeEveryH,
    String resistanceWhy,
    String lifeWhy) {
  public static final String VOLTAGE_WHY = "typical of this chemistry (from memory, guidance)";
  public static final String FACTORS_WHY =
      "typical of this chemistry (from memory, guidance): cold cells resist more";
  public static final String COULOMBIC_WHY =
      "within the usual range of this chemistry (from memory, guidance)";
  public static final String TAPER_WHY =
      "common practice, no source: the last part of a charge takes hours";
  public static final String TANKS_WHY =
      "our own fit to usual capacities at 5, 20 and 100 hours (from memory, guidance)";
  public static final String END_WHY = "common practice, no source";

  /** Of every chemistry. */
  public static final double END_OF_LIFE_SHARE = 0.80;

  /** The time over which a nominal capacity is taken to be stated. */
  public static final double RATED_H = 20.0;

  /**
   * Two tanks without a size.
   *
   * @param availableShare of the charge that is at hand at once
   * @param exchangePerH constant of the flow between them
   */
  public record Tanks(double availableShare, double exchangePerH) {}

  private static final double HALF_MONTH_H = 14.0 * 24.0;
  private static final String LEAD_OHM =
      "our own choice, between what meters show and the sag over hours";

  public static CellDefaults of(Chemistry chemistry) {
    return switch (chemistry) {
      case LITHIUM_IRON_PHOSPHATE ->
          new CellDefaults(
              3.2,
              3.6,
              2.8,
              0.15,
              List.of(
                  new FactorAt(-20.0, 4.5),
                  new FactorAt(-10.0, 3.0),
                  new FactorAt(0.0, 2.1),
                  new FactorAt(10.0, 1.5),
                  new FactorAt(25.0, 1.0),
                  new FactorAt(45.0, 0.8)),
              0.995,
              0.95,
              0.05,
              null,
              1000.0,
              List.of(
                  new CyclesAt(0.2, 30_000.0),
                  new CyclesAt(0.5, 9000.0),
                  new CyclesAt(0.8, 5000.0),
                  new CyclesAt(1.0, 3500.0)),
              15.0 * LifeSheet.HOURS_IN_YEAR,
              null,
              "1.5 mΩ for a cell of 100 Ah with its joints (from memory, guidance)",
              "usual for lithium iron phosphate (from memory, guidance); calendar life is our own"
                  + " choice");
      case LEAD_ACID_FLOODED ->
          new CellDefaults(
              2.0,
              2.4,
              1.75,
              0.8,
              leadFactors(),
              0.88,
              0.80,
              0.05,
              new Tanks(0.55, 0.24),
              1000.0,
              List.of(
                  new CyclesAt(0.2, 3000.0),
                  new CyclesAt(0.5, 1300.0),
                  new CyclesAt(0.8, 750.0),
                  new CyclesAt(1.0, 550.0)),
              12.0 * LifeSheet.HOURS_IN_YEAR,
              HALF_MONTH_H,
              LEAD_OHM,
              "usual for flooded deep-cycle batteries (from memory, guidance)");
      case LEAD_ACID_SEALED ->
          new CellDefaults(
              2.0,
              2.4,
              1.75,
              0.5,
              leadFactors(),
              0.92,
              0.80,
              0.05,
              new Tanks(0.65, 0.18),
              900.0,
              List.of(
                  new CyclesAt(0.2, 2200.0),
                  new CyclesAt(0.5, 900.0),
                  new CyclesAt(0.8, 500.0),
                  new CyclesAt(1.0, 350.0)),
              10.0 * LifeSheet.HOURS_IN_YEAR,
              HALF_MONTH_H,
              LEAD_OHM,
              "usual for sealed deep-cycle batteries (from memory, guidance)");
    };
  }

  private static List<FactorAt> leadFactors() {
    return List.of(
        new FactorAt(-20.0, 2.2),
        new FactorAt(0.0, 1.5),
        new FactorAt(25.0, 1.0),
        new FactorAt(45.0, 0.85));
  }

  /** Cells in series at this nominal voltage; at least one. */
  public double cells(double nominalV) {
    double cells = Math.rint(nominalV / cellV);
    return cells > 1.0 ? cells : 1.0;
  }

  /** Resistance of one battery or of a whole bank of this voltage and energy. */
  public double resistanceOhm(double nominalV, double capacityWh) {
    return cells(nominalV) * ohmAh * nominalV / capacityWh;
  }
}
