package greyspell.study;

import greyspell.array.ArrayLoss;
import greyspell.array.ArraySpec;
import greyspell.array.ControllerChain;
import greyspell.array.ControllerHours;
import greyspell.array.ControllerInput;
import greyspell.array.ControllerKind;
import greyspell.array.PowerModel;
import greyspell.array.SolarChain;
import greyspell.array.SolarHours;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Ledger;
import greyspell.balance.NamedHours;
import greyspell.load.LoadHours;
import greyspell.load.LoadLog;
import greyspell.load.LoadLogReader;
import greyspell.load.LogSpec;
import greyspell.outcome.OutcomeReader;
import greyspell.power.InverterCurve;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.sky.PlaneIrradiance;
import greyspell.sky.Radiation;
import greyspell.sky.SunPath;
import greyspell.storage.BankTemperature;
import greyspell.storage.ColdLimits;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One home through its weather: the whole flow, straight down the page. Scenario and weather become
 * forcing and design, these a ledger, the ledger an outcome. Read this first.
 */
public final class Study {
  private static final int MOST_LAPS = 10;
  private static final double SAME_CHARGE_WH = 0.01;

  private final Scenario scenario;
  private final WeatherSeries weather;
  private final List<Assumption> assumptions;
  private final List<String> cautions;

  /** Told what is being done and how much of the run lies behind, 0 to 1. */
  public interface Steps {
    void step(String what, double doneShare);
  }

  private Study(Scenario scenario, WeatherSeries weather) {
    this.scenario = scenario;
    this.weather = weather;
    assumptions = new ArrayList<>(scenario.assumptions());
    cautions = new ArrayList<>(scenario.cautions());
  }

  /** Runs a home through all hours of its weather. */
  public static StudyResult run(Scenario scenario, Steps steps) {
    steps.step("reading the weather", 0.0);
    var study = new Study(scenario, read(scenario));
    steps.step("sun and sky", 0.3);
    Forcing forcing = study.forcing();
    Design design = study.design();
    steps.step("hour by hour", 0.8);
    var ledger = new Ledger(forcing, design.bank().windowWh());
    String startNote = study.runFromStart(forcing, design, ledger);
    steps.step("reading the books", 0.95);
    return new StudyResult(
        scenario,
        study.weather,
        ledger,
        OutcomeReader.read(ledger, design, scenario.site().isNorthern()),
        List.copyOf(study.assumptions),
        List.copyOf(study.cautions),
        startNote);
  }

  private static WeatherSeries read(Scenario scenario) {
    return WeatherReader.read(
        Path.of(scenario.weather().resolvedPath()),
        scenario.weather().resolvedPath(),
        scenario.site().utcOffsetH());
  }

  /** Weather and house to solar energy on the bus, demand, and what the cold does to the bank. */
  private Forcing forcing() {
    cautions.addAll(WeatherNotes.cautions(scenario.site(), weather));
    var site = scenario.site();
    var sun =
        SunPath.of(
            site.latitudeDeg(),
            site.longitudeDeg(),
            weather.source().utcOffsetH(),
            weather.calendar());
    Radiation radiation = Radiation.of(weather, sun, site, scenario.sky());
    cautions.addAll(0, WeatherNotes.lightCautions(radiation));
    assumptions.addAll(WeatherNotes.assumptions(weather, radiation));

    var wires = new Wires(scenario);
    var planes = new ArrayList<SolarHours>();
    for (ArraySpec array : scenario.arrays()) {
      planes.add(plane(array, sun, radiation, wires));
    }
    SolarHours solar = SolarHours.sum(planes);
    ControllerHours controller =
        new ControllerChain(scenario.controller(), scenario.bank().nominalV())
            .run(solar.availableWh());
    double[] wiresWh = wires.toBankWh(controller.busWh());

    LoadHours load = LoadHours.of(scenario.load(), log(), weather.calendar(), scenario.seed());
    BankTemperature bank =
        BankTemperature.of(scenario.bank().enclosure(), weather.airTemperatureC());
    ColdLimits cold = ColdLimits.of(scenario.bank(), bank.temperatureC());
    List<NamedHours> standing = standing(sun, bank);

    var columns = new Forcing.Columns();
    columns.solarNominalWh = solar.nominalWh();
    columns.arrayLosses = losses(solar);
    columns.solarAvailableWh = solar.availableWh();
    columns.clippedWh = controller.clippedWh();
    columns.controllerParts =
        List.of(
            new NamedHours("controller", controller.lossWh()),
            new NamedHours("controller_wiring", wiresWh));
    columns.controllerLossWh = sum(columns.controllerParts);
    columns.solarBusWh = less(controller.busWh(), wiresWh);
    columns.acAskedWh = load.acWh();
    columns.dcAskedWh = load.dcWh();
    columns.standingParts = standing;
    columns.standingWh = sum(standing);
    columns.bankTemperatureC = bank.temperatureC();
    columns.lockedShare = cold.lockedShare();
    columns.chargeShare = cold.chargeShare();
    return new Forcing(weather.calendar(), columns);
  }

  private SolarHours plane(ArraySpec array, SunPath sun, Radiation radiation, Wires wires) {
    PlaneIrradiance light =
        PlaneIrradiance.of(
            radiation,
            sun,
            weather,
            scenario.site(),
            scenario.sky(),
            array.tiltDeg(),
            array.azimuthDeg());
    if (scenario.controller().kind() == ControllerKind.PWM
        && !SolarChain.isVoltageKnown(array.module())) {
      throw BadInput.of(
          Place.of(scenario.file()),
          "module " + array.module().name() + " on a controller that does not track",
          "needs a data sheet from which the panel's curve can be worked out",
          "Look at its voltages, currents and coefficients, or choose a controller with tracking: mppt.");
    }
    PowerModel model = PowerModel.of(array.module(), array.choices());
    addNew(model.cautions());
    return SolarChain.run(
        array,
        model.power(),
        weather.calendar(),
        light.frontWm2(),
        light.absorbedWm2(),
        weather.airTemperatureC(),
        weather.windMs(),
        ControllerInput.of(scenario.controller(), scenario.bank().nominalV()),
        wires.arrayOhm(array));
  }

  private List<NamedHours> losses(SolarHours solar) {
    return Arrays.stream(ArrayLoss.values())
        .map(l -> new NamedHours(l.key(), solar.lossWh(l)))
        .toList();
  }

  private @Nullable LoadLog log() {
    LogSpec log = scenario.load().log();
    if (log == null) {
      return null;
    }
    LoadLog read =
        LoadLogReader.read(Path.of(log.file()), log.file(), scenario.site().utcOffsetH());
    assumptions.add(
        new Assumption(
            "loads.log",
            read.days() + " days from " + read.firstDate(),
            "days outside the log are taken from the nearest day of the year with the same weekday; "
                + read.filledHours()
                + " missing hours filled from the same hour of other days"));
    return read;
  }

  /** What the system itself draws day and night, by part. */
  private List<NamedHours> standing(SunPath sun, BankTemperature bank) {
    var controllerWh = new double[weather.hours()];
    Arrays.fill(controllerWh, scenario.controller().standbyW() * scenario.controller().count());
    var bankWh = new double[weather.hours()];
    Arrays.fill(bankWh, scenario.bank().standbyW());
    return List.of(
        new NamedHours("standing_inverter", scenario.inverter().standbyWh(sun.sunlitShare())),
        new NamedHours("standing_controller", controllerWh),
        new NamedHours("standing_bank", bankWh),
        new NamedHours("standing_bank_heater", bank.heaterWh()));
  }

  private static double[] sum(List<NamedHours> parts) {
    var sum = new double[parts.get(0).wh().length];
    for (NamedHours part : parts) {
      double[] wh = part.wh();
      for (int h = 0; h < sum.length; h++) {
        sum[h] += wh[h];
      }
    }
    return sum;
  }

  private static double[] less(double[] wh, double[] lossWh) {
    var rest = new double[wh.length];
    for (int h = 0; h < rest.length; h++) {
      rest[h] = wh[h] - lossWh[h];
    }
    return rest;
  }

  private Design design() {
    InverterCurve.Fit inverter = InverterCurve.fit(scenario.inverter());
    addNew(inverter.cautions());
    return new Design(scenario.bank().limits(), new Wires(scenario).before(inverter.limits()));
  }

  /**
   * From the stated charge, or round and round until the first hour starts as the last one ends.
   */
  private String runFromStart(Forcing forcing, Design design, Ledger ledger) {
    double windowWh = design.bank().windowWh();
    Double stated = scenario.startChargeFraction();
    if (stated != null) {
      HourLoop.run(forcing, design, stated * windowWh, ledger);
      return "The first hour starts at "
          + Show.percent(stated)
          + " of the usable bank, as the scenario says.";
    }
    double startWh = windowWh;
    for (int lap = 1; lap <= MOST_LAPS; lap++) {
      double endWh = HourLoop.run(forcing, design, startWh, ledger);
      if (Math.abs(endWh - startWh) <= SAME_CHARGE_WH) {
        return "The first hour starts at the charge at which the last one ends ("
            + (windowWh > 0.0 ? Show.percent(endWh / windowWh) : "0 %")
            + " of the usable bank): the weather was run "
            + lap
            + (lap == 1 ? " time." : " times.");
      }
      startWh = endWh;
    }
    return "The first hour starts at "
        + Show.energy(startWh)
        + "; after "
        + MOST_LAPS
        + " laps the charge still drifts.";
  }

  private void addNew(List<String> more) {
    for (String caution : more) {
      if (!cautions.contains(caution)) {
        cautions.add(caution);
      }
    }
  }
}
