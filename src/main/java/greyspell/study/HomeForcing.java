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
import greyspell.balance.Forcing;
import greyspell.balance.NamedHours;
import greyspell.load.LoadHours;
import greyspell.load.LoadWeather;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.sky.PlaneIrradiance;
import greyspell.sky.Radiation;
import greyspell.sky.SunPath;
import greyspell.storage.BankTemperature;
import greyspell.storage.ColdLimits;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Everything about one home that does not depend on the charge: its weather and panels turned into
 * solar energy on the bus, what the house asks for, what the system itself draws, and what the cold
 * does to the bank. Straight down the page, in the order of the flow.
 */
final class HomeForcing {
  private final Scenario scenario;
  private final WeatherSeries weather;
  private final List<Assumption> assumptions;
  private final List<String> cautions;
  private final List<StudyResult.PlaneBooks> planeBooks = new ArrayList<>();

  /** What has to be said is added to the two lists. */
  HomeForcing(
      Scenario scenario,
      WeatherSeries weather,
      List<Assumption> assumptions,
      List<String> cautions) {
    this.scenario = scenario;
    this.weather = weather;
    this.assumptions = assumptions;
    this.cautions = cautions;
  }

  /** Weather and house to solar energy on the bus, demand, and what the cold does to the bank. */
  Forcing make() {
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
      SolarHours plane = plane(array, sun, radiation, wires);
      planes.add(plane);
      planeBooks.add(StudyResult.PlaneBooks.of(array.name(), plane));
    }
    SolarHours solar = SolarHours.sum(planes);
    ControllerHours controller =
        new ControllerChain(scenario.controller(), scenario.bank().nominalV())
            .run(solar.availableWh());
    double[] wiresWh = wires.toBankWh(controller.busWh());

    LoadHours load =
        LoadHours.of(
            scenario.load(),
            LoadNotes.log(scenario, assumptions),
            LoadWeather.of(weather.calendar(), weather.airTemperatureC(), sun.sunlitShare()),
            scenario.seed());
    LoadNotes.fit(load, assumptions);
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

  /** Of each plane, once {@link #make} has run. */
  List<StudyResult.PlaneBooks> planeBooks() {
    return List.copyOf(planeBooks);
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

  private void addNew(List<String> more) {
    for (String caution : more) {
      if (!cautions.contains(caution)) {
        cautions.add(caution);
      }
    }
  }
}
