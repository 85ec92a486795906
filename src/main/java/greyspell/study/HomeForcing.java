package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.PowerModel;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.balance.NamedHours;
import greyspell.load.ApplianceSpec;
import greyspell.load.LoadHours;
import greyspell.load.LoadLog;
import greyspell.load.LoadPlan;
import greyspell.load.LoadWeather;
import greyspell.load.Priority;
import greyspell.power.InverterSpec.Search;
import greyspell.power.SearchMode;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.scenario.Scenario.OtherSource;
import greyspell.storage.Enclosure;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything about one home that does not depend on the charge: its weather and panels turned into
 * solar energy on the bus, what the house asks for, what the system itself draws, and what the cold
 * does to the bank. Straight down the page, in the order of the flow.
 */
final class HomeForcing {
  private final Scenario scenario;
  private final HomeLight light;
  private final WeatherSeries weather;
  private final List<Assumption> assumptions;
  private final List<String> cautions;
  private final List<PowerModel> models = new ArrayList<>();
  private List<StudyResult.PlaneBooks> planeBooks = List.of();

  private final Without without;
  private HomePanels.Detail detail = HomePanels.Detail.WHOLE;
  private @Nullable LoadHours load;
  private @Nullable LoadLog log;
  private @Nullable LoadWeather loadWeather;

  /** What has to be said is added to the two lists. */
  HomeForcing(
      Scenario scenario,
      HomeLight light,
      Without without,
      List<Assumption> assumptions,
      List<String> cautions) {
    this.scenario = scenario;
    this.light = light;
    weather = light.weather();
    this.without = without;
    this.assumptions = assumptions;
    this.cautions = cautions;
  }

  /**
   * Weather and house to solar energy on the bus, demand, and what the cold does to the bank; with
   * the bank at its nominal voltage.
   */
  Forcing make() {
    if (detail
        != HomePanels.Detail
            .BY_STRINGS) { // many times in the same weather: said once, by the home as it stands
      cautions.addAll(WeatherNotes.cautions(scenario.site(), weather));
      cautions.addAll(0, lightCautions());
      assumptions.addAll(WeatherNotes.assumptions(weather, light.radiation()));
    }
    for (ArraySpec array : scenario.arrays()) {
      PowerModel model = PowerModel.of(array.module(), array.choices());
      models.add(model);
      addNew(model.cautions());
      SnowOn.say(array, weather, cautions);
    }
    var columns = new Forcing.Columns();
    panels(columns, null);
    ask(columns);
    keep(columns);
    return new Forcing(weather.calendar(), columns);
  }

  /** The same to rounding, much sooner where only the numbers of strings change: for sizing. */
  Forcing makeByStrings() {
    detail = HomePanels.Detail.BY_STRINGS;
    return make();
  }

  /** The same without the single losses of the panels, for {@link Ledger#brief} books. */
  Forcing makeBrief() {
    detail = HomePanels.Detail.BRIEF;
    return make();
  }

  /** The same home, panels and wires at each hour's bank voltage; once {@link #make} has run. */
  Forcing atVoltage(double[] bankV, Forcing forcing) {
    Forcing.Columns columns = forcing.columns();
    panels(columns, bankV);
    return new Forcing(weather.calendar(), columns);
  }

  private void panels(Forcing.Columns columns, double @Nullable [] bankV) {
    var wires = new Wires(scenario);
    PanelHours panels =
        new HomePanels(scenario, light, without, models).hours(wires, bankV, detail);
    planeBooks = panels.planes();
    columns.solarNominalWh = panels.nominalWh();
    columns.arrayLosses = panels.losses();
    columns.solarAvailableWh = panels.availableWh();
    columns.clippedWh = panels.controller().clippedWh();
    double[] busWh = panels.controller().busWh();
    double[] wiresWh =
        without.isBusWiringOut() ? new double[weather.hours()] : wires.toBankWh(busWh, bankV);
    columns.controllerParts =
        List.of(
            new NamedHours("controller", panels.controller().lossWh()),
            new NamedHours("controller_wiring", wiresWh));
    columns.controllerLossWh = sum(columns.controllerParts);
    columns.solarBusWh = less(busWh, wiresWh);
  }

  /** What the house asks for, and what else feeds it. */
  private void ask(Forcing.Columns columns) {
    log = LoadNotes.log(scenario, light.keptUnderAnySky(), assumptions);
    loadWeather =
        light
            .kept()
            .get(
                new LoadWeatherKey(),
                () ->
                    LoadWeather.of(
                        weather.calendar(), weather.airTemperatureC(), light.sun().sunlitShare()));
    LoadHours asked = asked(without.plan(scenario.load()), log, loadWeather);
    LoadNotes.fit(asked, assumptions);
    load = asked;
    put(asked, columns);
    OtherSource other = scenario.otherSource();
    if (other != null && !without.has(Effect.OTHER_SOURCE)) {
      columns.otherBusWh =
          OtherSourceHours.busWh(
              scenario, other, weather.calendar(), light.keptUnderAnySky(), assumptions);
    }
  }

  private List<String> lightCautions() {
    return light.kept().get(new LightKey(), () -> WeatherNotes.lightCautions(light.radiation()));
  }

  private LoadHours asked(LoadPlan plan, @Nullable LoadLog log, LoadWeather loadWeather) {
    return light
        .kept()
        .get(
            new LoadKey(plan, scenario.seed()),
            () -> LoadHours.of(plan, log, loadWeather, scenario.seed()));
  }

  /** The demand as a whole and by class; where no rule is stated the classes make no difference. */
  void put(LoadHours asked, Forcing.Columns columns) {
    columns.acAskedWh = usual(asked, "AC", asked.acWh());
    columns.dcAskedWh = usual(asked, "DC", asked.dcWh());
    if (!without.plan(scenario.load()).policy().isIdle()) {
      columns.acShouldRunWh = usual(asked, "AC should", asked.acWh(Priority.SHOULD_RUN));
      columns.acCanWaitWh = usual(asked, "AC can wait", asked.acWh(Priority.CAN_WAIT));
      columns.dcShouldRunWh = usual(asked, "DC should", asked.dcWh(Priority.SHOULD_RUN));
      columns.dcCanWaitWh = usual(asked, "DC can wait", asked.dcWh(Priority.CAN_WAIT));
    }
  }

  /** That day's, or the month's mean where what differs from it is left out. */
  private double[] usual(LoadHours asked, String part, double[] wh) {
    return without.has(Effect.THAT_DAYS_LOAD)
        ? light.kept().get(new UsualKey(asked, part), () -> without.load(wh, weather.calendar()))
        : wh;
  }

  /** What the system itself draws, and what cold does to the bank. */
  private void keep(Forcing.Columns columns) {
    BankWarmth bank =
        light
            .keptUnderAnySky()
            .get(
                BankWarmth.key(scenario.bank(), without),
                () -> BankWarmth.of(scenario.bank(), weather.airTemperatureC(), without));
    Search search = scenario.inverter().search();
    if (search != null && load != null && !without.has(Effect.SEARCH)) {
      LoadHours asked = load;
      columns.asleep =
          light
              .kept()
              .get(
                  new AsleepKey(asked, search),
                  () ->
                      SearchMode.of(search, asked.acWh(), asked.peaksBelowW(search.wakesAtW()))
                          .asleep());
    }
    columns.standingParts = standing(bank, columns.asleep);
    columns.standingWh = sum(columns.standingParts);
    columns.bankTemperatureC = bank.temperatureC();
    columns.lockedShare = bank.lockedShare();
    columns.chargeShare = bank.chargeShare();
    columns.resistanceFactor = bank.resistanceFactor();
  }

  /**
   * Where the weather's hours were written over: what of demand, system draw and the bank's warmth
   * follows them, anew; the panels are not. Once {@link #make} has run.
   */
  void again(Forcing.Columns columns) {
    LoadPlan plan = without.plan(scenario.load());
    boolean isLoadByWeather =
        plan.log() != null || plan.appliances().stream().anyMatch(ApplianceSpec::isWeatherDriven);
    if (isLoadByWeather) {
      loadWeather =
          LoadWeather.of(weather.calendar(), weather.airTemperatureC(), light.sun().sunlitShare());
      load = asked(plan, log, loadWeather);
      put(load, columns);
    }
    if (isLoadByWeather || !(scenario.bank().enclosure() instanceof Enclosure.Indoors)) {
      keep(columns);
    }
  }

  /** Of each plane. */
  List<PowerModel> models() {
    return models;
  }

  /** The same home asking for something else; once {@link #make} has run. */
  Forcing asking(LoadPlan plan, Forcing forcing) {
    if (loadWeather == null) {
      throw new IllegalStateException("not made yet");
    }
    Forcing.Columns columns = forcing.columns();
    put(asked(plan, log, loadWeather), columns);
    return new Forcing(weather.calendar(), columns);
  }

  /** What the house asks for; once {@link #make} has run. */
  LoadHours load() {
    if (load == null) {
      throw new IllegalStateException("not made yet");
    }
    return load;
  }

  /** Of each plane, once {@link #make} has run. */
  List<StudyResult.PlaneBooks> planeBooks() {
    return planeBooks;
  }

  /** What is said of the light is the same for every variant in it. */
  private record LightKey() {}

  private record AsleepKey(LoadHours asked, Search search) {}

  private record LoadWeatherKey() {}

  /** These very hours, not some like them. */
  private record UsualKey(LoadHours asked, String part) {}

  private record LoadKey(LoadPlan plan, long seed) {}

  /** What the system itself draws day and night, by part. */
  private List<NamedHours> standing(BankWarmth bank, boolean[] asleep) {
    double[] inverterWh = scenario.inverter().standbyWh(light.sun().sunlitShare());
    Search search = scenario.inverter().search();
    for (int h = 0; h < asleep.length && search != null; h++) {
      inverterWh[h] = asleep[h] ? search.drawW() : inverterWh[h];
    }
    var controllerWh = new double[weather.hours()];
    Arrays.fill(controllerWh, scenario.controller().standbyW() * scenario.controller().count());
    var bankWh = new double[weather.hours()];
    Arrays.fill(bankWh, scenario.bank().standbyW());
    var none = new double[weather.hours()];
    boolean isOut = without.has(Effect.STANDBY);
    return List.of(
        new NamedHours("standing_inverter", isOut ? none : inverterWh),
        new NamedHours("standing_controller", isOut ? none : controllerWh),
        new NamedHours("standing_bank", isOut ? none : bankWh),
        new NamedHours("standing_bank_heater", isOut ? none : bank.heaterWh()));
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
