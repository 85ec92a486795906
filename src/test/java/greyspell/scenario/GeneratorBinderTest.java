package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.power.Charger;
import greyspell.power.Fuel;
import greyspell.power.GeneratorRules;
import greyspell.power.GeneratorRules.Policy;
import greyspell.power.GeneratorSpec;
import greyspell.power.GeneratorSpec.FuelAt;
import greyspell.power.InverterSpec;
import greyspell.power.RunTimes;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GeneratorBinderTest {
  private static final String SHEET =
      "rated_power: 6 kW\n  fuel: diesel\n  fuel_use: [[50 %, 1.25 l/h], [100 %, 2.1 l/h]]\n";

  @TempDir Path temp;
  private TestFolder folder;

  @BeforeEach
  void makeFolder() {
    folder = new TestFolder(temp);
  }

  private Scenario home(String more) {
    return folder.read(TestFolder.good() + more);
  }

  private Scenario.Generator generator(String lines) {
    Scenario.Generator read = home("generator:\n  " + lines).generator();
    assertNotNull(read);
    return read;
  }

  private String faults(String more) {
    String text = folder.faults(TestFolder.good() + more);
    return text.replaceAll("home\\.yaml:\\d+:", "");
  }

  @Test
  void aHomeWithoutOneHasNone() {
    assertNull(home("").generator());
    assertNull(home("").otherSource());
  }

  @Test
  void readsEveryKey() {
    GeneratorRules.Policy manual = Policy.MANUAL;
    Scenario.Generator got =
        generator(
            "name: shed engine\n  count: 2\n  "
                + SHEET
                + """
                  derating: {above_elevation: 500 ft, per_300_m: 3 %, above_temperature: 30 °C, per_degree: 0.1 %/°F}
                  policy: manual
                  start_below: 25 %
                  stop_above: 70 %
                  minimum_run: 180 min
                  permitted_hours: [08:00-12:30, 14:00-20:00]
                  permitted_days: Mon-Sat
                  permitted_months: Oct-Feb
                  home_hours: 17:00-22:00
                  home_days: [Sat, Sun]
                  charger: {power: 3 kW, efficiency: 93 %}
                """);
    GeneratorSpec spec = got.spec();
    assertEquals("shed engine", spec.name());
    assertEquals(2, spec.count());
    assertEquals(12_000.0, spec.ratedPowerW());
    assertEquals(Fuel.DIESEL, spec.fuel());
    assertEquals(List.of(new FuelAt(0.5, 2.5), new FuelAt(1.0, 4.2)), spec.fuelUse());
    assertEquals(152.4, spec.derating().fromElevationM(), 1e-9);
    assertEquals(1e-4, spec.derating().perMShare(), 1e-15);
    assertEquals(30.0, spec.derating().fromTemperatureC());
    assertEquals(0.0018, spec.derating().perK(), 1e-15);
    GeneratorRules rules = got.rules();
    assertEquals(manual, rules.policy());
    assertEquals(0.25, rules.startBelowShare());
    assertEquals(0.7, rules.stopAboveShare());
    assertEquals(3, rules.minimumRunH());
    assertEquals(
        new RunTimes(
            List.of(new RunTimes.Span(8, 12.5), new RunTimes.Span(14, 20)),
            EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.SATURDAY),
            EnumSet.of(
                Month.OCTOBER, Month.NOVEMBER, Month.DECEMBER, Month.JANUARY, Month.FEBRUARY)),
        rules.permitted());
    assertEquals(
        new RunTimes(
            List.of(new RunTimes.Span(17, 22)),
            EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY),
            EnumSet.allOf(Month.class)),
        rules.home());
    assertEquals(new Charger(3000.0, 0.93), rules.charger());
  }

  @Test
  void listsWhatItAssumed() {
    Scenario home = home("generator:\n  " + SHEET);
    var keys = home.assumptions().stream().map(Scenario.Assumption::key).toList();
    assertTrue(
        keys.containsAll(
            List.of(
                "generator.derating.per_300_m",
                "generator.derating.above_temperature",
                "generator.policy",
                "generator.start_below",
                "generator.stop_above",
                "generator.minimum_run",
                "generator.permitted_hours",
                "generator.charger.power",
                "generator.charger.efficiency")),
        () -> "" + keys);
    var generator = home.generator();
    assertNotNull(generator);
    assertEquals(RunTimes.ALWAYS, generator.rules().permitted());
    assertEquals(new Charger(6000.0, 0.9), generator.rules().charger());
  }

  @Test
  void takesOneFromTheLibraryAndOverridesIt() {
    GeneratorSpec plain = generator("from: Grindle GR-6D\n").spec();
    assertEquals(6000.0, plain.ratedPowerW());
    assertEquals(4, plain.fuelUse().size());
    assertEquals(1000.0, plain.derating().fromElevationM());
    GeneratorSpec line =
        generator("from: Grindle GR-6D\n  fuel_at_no_load: 0.1 gal/h\n  fuel_at_full_load: 2 l/h\n")
            .spec();
    assertEquals(
        List.of(new FuelAt(0.0, 0.3785411784), new FuelAt(1.0, 2.0)),
        line.fuelUse(),
        "the scenario's line goes before the library's points");
    GeneratorSpec points =
        generator("from: Sorrel SP-12\n  fuel_use: [[50 %, 5 l/h], [100 %, 7 l/h]]\n").spec();
    assertEquals(List.of(new FuelAt(0.5, 5.0), new FuelAt(1.0, 7.0)), points.fuelUse());
  }

  /** A quarter of the full-load fuel idle: 1.25 l/h at half load are 2 l/h at full load. */
  @Test
  void oneFigureMakesALineAndIsSaid() {
    Scenario home = home("generator: {rated_power: 6 kW, fuel: diesel, fuel_use: 1.25 l/h}\n");
    var generator = home.generator();
    assertNotNull(generator);
    assertEquals(2.0, generator.spec().fuelLPerH(6000.0), 1e-12);
    assertEquals(0.5, generator.spec().fuelLPerH(0.0), 1e-12);
    assertTrue(home.assumptions().stream().anyMatch(a -> a.key().equals("generator.fuel_use")));
  }

  @Test
  void chargesThroughTheInverterWhereItHasACharger() {
    String text =
        TestFolder.good()
            .replace(
                "inverter:\n",
                """
                inverter:
                  count: 2
                  charger: {power: 2 kW, efficiency: 88 %}
                  search: {draw: 2 W, wakes_at: 15 W}
                """);
    Scenario home = folder.read(text + "generator:\n  " + SHEET);
    var generator = home.generator();
    assertNotNull(generator);
    assertEquals(new Charger(4000.0, 0.88), generator.rules().charger());
    assertEquals(new InverterSpec.Search(4.0, 15.0), home.inverter().search());
    assertEquals(80.0, home.inverter().standbyDayW());
    assertEquals(10_000.0, home.inverter().continuousW());
  }

  @Test
  void secondSource() throws java.io.IOException {
    java.nio.file.Files.writeString(temp.resolve("stream.csv"), "source_w\n");
    var got =
        home("other_source: {file: stream.csv, bus: ac, name: stream turbine}\n").otherSource();
    assertEquals(
        new Scenario.OtherSource(
            "stream turbine", "stream.csv", temp.resolve("stream.csv").toString(), false),
        got);
    var plain = home("other_source: stream.csv\n").otherSource();
    assertNotNull(plain);
    assertTrue(plain.isDirectCurrent());
    assertTrue(
        faults("other_source: no.csv\n").contains("must be a file that exists"),
        faults("other_source: no.csv\n"));
    assertTrue(
        faults("other_source: {file: stream.csv, bus: both}\n")
            .contains("bus: found \"both\"\n    must be one of: ac, dc"));
  }

  @Test
  void aPriceForAGallonIsOneForALitre() {
    String costs = "costs: {currency: EUR, per_module: 200}";
    String good = TestFolder.good();
    Double cost =
        folder
            .read(good.replace(costs, "costs: {fuel_per_gallon: 3.785411784}"))
            .costs()
            .fuelPerLitreCost();
    assertNotNull(cost);
    assertEquals(1.0, cost, 1e-12);
    assertTrue(
        folder
            .faults(good.replace(costs, "costs: {fuel_per_litre: 1, fuel_per_gallon: 4}"))
            .contains("\"fuel_per_gallon\" beside \"fuel_per_litre\" in costs"));
  }

  @Test
  void refusesWhatCannotBe() {
    String sheet = "generator:\n  " + SHEET;
    assertTrue(
        faults(sheet + "  start_below: 80 %\n  stop_above: 60 %\n")
            .contains("start_below: 80 % with stop_above: 60 %"));
    assertTrue(
        faults(sheet + "  minimum_run: 90 min\n")
            .contains("minimum_run: found 1.5 h\n    must be whole hours"));
    assertTrue(
        faults(sheet + "  permitted_hours: 8-20\n")
            .contains("permitted_hours: found \"8-20\"\n    must be spans of the day"));
    assertTrue(faults(sheet + "  permitted_days: Mun\n").contains("permitted_days: found \"Mun\""));
    assertTrue(
        faults(sheet + "  permitted_months: Octember\n")
            .contains("permitted_months: found \"Octember\"\n    must be months such as Nov-Feb"));
    assertTrue(
        faults(sheet + "  home_hours: 17:00-22:00\n")
            .contains("\"home_hours\" with policy: auto\n    has no meaning there"));
    assertTrue(
        faults(sheet + "  fuel_at_no_load: 0.4 l/h\n")
            .contains("\"fuel_use\" beside \"fuel_at_no_load\" in generator"));
    assertTrue(faults(sheet + "  charger: {power: 3 kWh}\n").contains("power: found \"3 kWh\""));
    assertTrue(
        faults(sheet + "  charger: {efficiency: 90 %}\n")
            .contains("\"power\" is missing in charger"));
    assertTrue(
        faults(sheet + "  derating: {per_degree: -0.1 %/K}\n")
            .contains("must be 0 to 5 %/K\n    Written without a minus sign"));
    assertTrue(faults(sheet + "  policy: auot\n").contains("Nearest: \"auto\"."));
    String unknownPolicy = faults(sheet + "  policy: maybe\n  home_hours: 17:00-22:00\n");
    assertTrue(unknownPolicy.contains("policy: found \"maybe\""), unknownPolicy);
    assertFalse(unknownPolicy.contains("home_hours"), unknownPolicy);
    String bare = "generator: {rated_power: 6 kW, fuel: diesel";
    assertTrue(faults(bare + "}\n").contains("neither \"fuel_use\" nor \"fuel_at_no_load\""));
    assertTrue(
        faults(bare + ", fuel_at_no_load: 1 l/h}\n")
            .contains("\"fuel_at_full_load\" is missing in generator"));
    assertTrue(
        faults(bare + ", fuel_at_no_load: 2 l/h, fuel_at_full_load: 1 l/h}\n")
            .contains("fuel_at_no_load not below fuel_at_full_load"));
    assertTrue(
        faults(bare + ", fuel_use: [[50 %, 2 l/h], [100 %, 1 l/h]]}\n")
            .contains("fuel_use: found less fuel for more load"));
    assertTrue(
        faults(bare + ", fuel_use: [[0 %, 1 l/h]]}\n")
            .contains("fuel_use: found one point, at no load"));
    assertTrue(faults("generator: No Such Engine\n").contains("No Such Engine"));
  }

  @Test
  void refusesASleepThatDrawsMoreThanBeingAwake() {
    String text =
        TestFolder.good()
            .replace("inverter:\n", "inverter:\n  search: {draw: 50 W, wakes_at: 15 W}\n");
    assertTrue(
        folder.faults(text).contains("draw: found 50 W\n    must not exceed the standby of 40 W"),
        folder.faults(text));
  }

  @Test
  void saysWhatIsUnusual() {
    List<String> cautions =
        home("generator:\n  "
                + SHEET.replace("1.25 l/h", "0.3 l/h")
                + """
                  permitted_hours: 08:00-10:00
                  minimum_run: 3 h
                  charger: {power: 7 kW}
                """)
            .cautions();
    assertEquals(3, cautions.size(), () -> "" + cautions);
    assertTrue(cautions.get(0).contains("at 50 % load its fuel becomes power at"));
    assertTrue(
        cautions
            .get(1)
            .contains(" and the charger takes up to 7.00 kW: set the charger's own input limit"),
        cautions.get(1));
    assertTrue(cautions.get(2).contains("permitted_hours leave 2 whole hours in a row"));
  }
}
