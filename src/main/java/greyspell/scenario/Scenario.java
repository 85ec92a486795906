package greyspell.scenario;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.UnknownRun;
import greyspell.load.LoadPlan;
import greyspell.power.GeneratorRules;
import greyspell.power.GeneratorSpec;
import greyspell.power.InverterSpec;
import greyspell.sky.Site;
import greyspell.sky.SkyChoices;
import greyspell.storage.BankSpec;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One home, as its scenario file says, checked and with every default filled in.
 *
 * @param file path as given
 * @param name of the home
 * @param note free words, empty if none
 * @param weather which, and how many winters of it
 * @param startChargeFraction of the usable window, null to start from the steady state of the
 *     weather repeated
 * @param electrical what only the electrical checks and the wires need
 * @param generator null if there is none
 * @param otherSource null if there is none
 * @param seed for whatever is drawn at random
 * @param assumptions every default that was used
 * @param cautions unusual but possible
 */
public record Scenario(
    String file,
    String name,
    String note,
    Site site,
    WeatherChoice weather,
    SkyChoices sky,
    List<ArraySpec> arrays,
    ControllerSpec controller,
    BankSpec bank,
    InverterSpec inverter,
    LoadPlan load,
    @Nullable Double startChargeFraction,
    Costs costs,
    Electrical electrical,
    @Nullable Generator generator,
    @Nullable OtherSource otherSource,
    long seed,
    List<Assumption> assumptions,
    List<String> cautions) {
  /** The same home with another bank. */
  public Scenario withBank(BankSpec other) {
    return with(arrays, controller, other, inverter, load, generator);
  }

  /** The same home with other panels. */
  public Scenario withArrays(List<ArraySpec> others) {
    return with(List.copyOf(others), controller, bank, inverter, load, generator);
  }

  /** The same home with other controllers. */
  public Scenario withController(ControllerSpec other) {
    return with(arrays, other, bank, inverter, load, generator);
  }

  /** The same home with another inverter. */
  public Scenario withInverter(InverterSpec other) {
    return with(arrays, controller, bank, other, load, generator);
  }

  /** The same home asking for something else. */
  public Scenario withLoad(LoadPlan other) {
    return with(arrays, controller, bank, inverter, other, generator);
  }

  /** The same home with another generator, null for none. */
  public Scenario withGenerator(@Nullable Generator other) {
    return with(arrays, controller, bank, inverter, load, other);
  }

  private Scenario with(
      List<ArraySpec> newArrays,
      ControllerSpec newController,
      BankSpec newBank,
      InverterSpec newInverter,
      LoadPlan newLoad,
      @Nullable Generator newGenerator) {
    return new Scenario(
        file,
        name,
        note,
        site,
        weather,
        sky,
        newArrays,
        newController,
        newBank,
        newInverter,
        newLoad,
        startChargeFraction,
        costs,
        electrical,
        newGenerator,
        otherSource,
        seed,
        assumptions,
        cautions);
  }

  /** The same home from the steady state of its weather, whatever its start was. */
  public Scenario steady() {
    return new Scenario(
        file,
        name,
        note,
        site,
        weather,
        sky,
        arrays,
        controller,
        bank,
        inverter,
        load,
        null,
        costs,
        electrical,
        generator,
        otherSource,
        seed,
        assumptions,
        cautions);
  }

  /** One without a generator and a second source. */
  public Scenario(
      String file,
      String name,
      String note,
      Site site,
      WeatherChoice weather,
      SkyChoices sky,
      List<ArraySpec> arrays,
      ControllerSpec controller,
      BankSpec bank,
      InverterSpec inverter,
      LoadPlan load,
      @Nullable Double startChargeFraction,
      Costs costs,
      Electrical electrical,
      long seed,
      List<Assumption> assumptions,
      List<String> cautions) {
    this(
        file,
        name,
        note,
        site,
        weather,
        sky,
        arrays,
        controller,
        bank,
        inverter,
        load,
        startChargeFraction,
        costs,
        electrical,
        null,
        null,
        seed,
        assumptions,
        cautions);
  }

  /** An engine and when it runs. */
  public record Generator(GeneratorSpec spec, GeneratorRules rules) {}

  /**
   * A second source, as hourly watts.
   *
   * @param file path as written
   * @param resolvedPath relative to where the program runs
   * @param isDirectCurrent feeds the bus, not the sockets' side
   */
  public record OtherSource(
      String name, String file, String resolvedPath, boolean isDirectCurrent) {}

  /**
   * A default that was used because the file was silent.
   *
   * @param key path of the key: {@code arrays[0].mismatch}
   * @param value with unit
   * @param why in a few words: where the figure comes from
   */
  public record Assumption(String key, String value, String why) {}

  /**
   * Prices, all optional, each in the user's own money.
   *
   * @param currency the user's own text
   * @param perModuleCost one panel more, mounted
   * @param perPackCost one battery more; in series, a row of them
   * @param perTiltedModuleCost for setting one panel to another tilt
   * @param generatorCost of one with its charger
   * @param perGeneratorHourCost oil and wear beside the fuel
   * @param yearlyCost upkeep
   * @param years over which costs are added up
   * @param discountFraction by which money of next year counts less
   * @param measures what else could be done
   */
  public record Costs(
      String currency,
      @Nullable Double perModuleCost,
      @Nullable Double perPackCost,
      @Nullable Double perControllerCost,
      @Nullable Double perTiltedModuleCost,
      @Nullable Double generatorCost,
      @Nullable Double fuelPerLitreCost,
      @Nullable Double perGeneratorHourCost,
      @Nullable Double yearlyCost,
      int years,
      double discountFraction,
      List<Measure> measures) {
    public static final Costs NONE =
        new Costs("", null, null, null, null, null, null, null, null, 20, 0.0, List.of());

    public Costs {
      measures = List.copyOf(measures);
    }
  }

  /**
   * Something that could be done beside buying panels and batteries: one key of the file changed.
   *
   * @param path of the key: {@code loads.appliances[LED lamp].power}
   */
  public record Measure(String name, double onceCost, String path, String value) {}

  /**
   * What the electrical checks need beyond the energy.
   *
   * @param isDwelling a one- or two-family dwelling, for which a voltage limit holds
   * @param chargingV highest voltage at which the bank is charged, null to take the chemistry's
   *     usual one
   * @param bankOhm internal resistance of the whole bank, null if not stated
   * @param cutOffV below which the inverter switches off: as stated, but never below the lowest
   *     voltage that its sheet states, which is taken where nothing is stated; null if neither is
   * @param conductors the wires as the user states them
   * @param unknownConductors wires that are there, but whose size nobody knows
   */
  public record Electrical(
      boolean isDwelling,
      @Nullable Double chargingV,
      @Nullable Double bankOhm,
      @Nullable Double cutOffV,
      List<Wire> conductors,
      List<UnknownWire> unknownConductors) {
    public Electrical {
      conductors = List.copyOf(conductors);
      unknownConductors = List.copyOf(unknownConductors);
    }

    /** All wires known. */
    public Electrical(
        boolean isDwelling,
        @Nullable Double chargingV,
        @Nullable Double bankOhm,
        @Nullable Double cutOffV,
        List<Wire> conductors) {
      this(isDwelling, chargingV, bankOhm, cutOffV, conductors, List.of());
    }

    public static final Electrical NONE = new Electrical(true, null, null, null, List.of());
  }

  /**
   * A run of wire and what it serves.
   *
   * @param arrayName the plane that an array run belongs to; empty for every plane, each with a run
   *     of its own
   */
  public record Wire(ConductorRun run, String arrayName) {}

  /**
   * A run of wire of unknown size.
   *
   * @param arrayName as in {@link Wire}
   */
  public record UnknownWire(UnknownRun run, String arrayName) {}
}
