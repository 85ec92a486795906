package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.ControllerKind;
import greyspell.array.EfficiencyPoint;
import greyspell.array.ModuleChoices;
import greyspell.calendar.Monthly;
import greyspell.electrical.Ampacity;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.UnknownRun;
import greyspell.electrical.WireResistance;
import greyspell.electrical.WireSize;
import greyspell.load.ApplianceSpec.HourSpan;
import greyspell.load.Evidence;
import greyspell.load.Priority;
import greyspell.power.InverterSpec;
import greyspell.sky.Horizon;
import greyspell.storage.BankDefaults;
import greyspell.storage.BankSpec;
import greyspell.storage.Enclosure;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScenarioReaderTest {
  @TempDir Path temp;
  private TestFolder folder;

  @BeforeEach
  void makeFolder() {
    folder = new TestFolder(temp);
  }

  private Scenario with(String old, String changed) {
    String good = TestFolder.good();
    assertTrue(good.contains(old), old);
    return folder.read(good.replace(old, changed));
  }

  @Test
  void readsEveryPart() {
    Scenario home = folder.read(TestFolder.good());
    assertEquals("Test House", home.name());
    assertEquals(53.1, home.site().latitudeDeg());
    assertEquals(-16.0, home.site().recordLowC());
    assertNull(home.site().recordHighC());
    assertEquals(Monthly.constant(0.2), home.site().groundAlbedo());
    assertEquals(
        List.of(new Horizon.Point(135, 8), new Horizon.Point(180, 4), new Horizon.Point(225, 12)),
        home.site().horizon().points());
    assertEquals("sample.csv", home.weather().file());
    assertEquals(
        temp.resolve("sample.csv").toString(), home.weather().files().get(0).resolvedPath());
    var array = home.arrays().get(0);
    assertEquals(180.0, array.azimuthDeg());
    assertEquals(8, array.modules());
    assertEquals(-0.0034, array.module().powerPerK());
    assertEquals(-0.0029, array.module().openCircuitPerK());
    assertEquals(ModuleChoices.usual(), array.choices());
    assertEquals(100.0, home.controller().maxOutputA());
    assertEquals(2 * 5120.0, home.bank().capacityWh());
    assertEquals(2 * 50 * 51.2, home.bank().maxChargeW());
    assertEquals(2, home.bank().packs());
    assertEquals(0.15, home.bank().reserveFraction());
    assertEquals(new Enclosure.Indoors(15), home.bank().enclosure());
    assertEquals(40.0, home.inverter().standbyNightW());
    assertEquals(3, home.inverter().efficiencies().size());
    var lamp = home.load().appliances().get(1);
    assertEquals(List.of(new HourSpan(6.5, 8), new HourSpan(17, 23)), lamp.hours());
    assertEquals(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), lamp.days());
    assertEquals(Monthly.of(1, 1, 1, 0, 0, 0, 0, 0, 0, 1, 1, 1), lamp.monthFactor());
    assertEquals(Evidence.GUESS, lamp.evidence());
    assertEquals(Priority.MUST_RUN, home.load().appliances().get(0).priority());
    assertNull(home.startChargeFraction());
    assertEquals(200.0, home.costs().perModuleCost());
    assertEquals(3, home.seed());
    assertEquals(List.of(), home.cautions());
  }

  @Test
  void listsEveryDefaultThatItUsed() {
    var assumed = folder.read(TestFolder.good()).assumptions();
    assertTrue(
        assumed.contains(
            new Scenario.Assumption("arrays[0].mismatch", "1 %", "common practice, no source")));
    assertTrue(
        assumed.contains(
            new Scenario.Assumption(
                "bank.battery.max_discharge", "2560 W each", BankDefaults.USUAL_WHY)));
    assertTrue(assumed.stream().noneMatch(a -> a.key().equals("reserve")), "it was written");
    assertTrue(assumed.stream().anyMatch(a -> a.key().equals("sky.turbidity")));
  }

  @Test
  void takesEquipmentByNameAndOverridesIt() {
    Scenario home =
        with(
            "inverter:\n  continuous_power: 5 kW\n",
            "inverter:\n  from: Kestrel Mere KM-5K\n  count: 2\n");
    assertEquals(10_000.0, home.inverter().continuousW());
    assertEquals(2 * 40.0, home.inverter().standbyDayW(), "the file's 40 W, not the library's");
    assertEquals(2 * 45.0, home.inverter().standbyNightW(), "the library's");
  }

  @Test
  void usesTheControllerInsideTheInverter() {
    String text =
        TestFolder.good()
            .replace("controller:\n  max_output_current: 100 A\n", "")
            .replaceAll(
                "(?s)inverter:.*?loads:", "inverter: {from: Kestrel Mere KM-5K, count: 2}\nloads:");
    Scenario home = folder.read(text);
    assertEquals("Kestrel Mere KM-5K, solar input", home.controller().name());
    assertEquals(2, home.controller().count());
  }

  @Test
  void withoutAnyControllerOneWithoutLimitsIsAssumed() {
    Scenario home = with("controller:\n  max_output_current: 100 A\n", "");
    assertNull(home.controller().maxOutputW());
    assertNull(home.controller().maxOutputA());
    assertTrue(home.assumptions().stream().anyMatch(a -> a.key().equals("controller")));
  }

  @Test
  void turnsAbsoluteCoefficientsIntoRelativeOnes() {
    var module =
        with("power_coefficient: -0.34 %/K", "voltage_coefficient: -93.5 mV/K")
            .arrays()
            .get(0)
            .module();
    assertEquals(-0.0935 / 37.4, module.openCircuitPerK(), 1e-15);
  }

  @Test
  void batteriesInSeriesAddVoltageAndEnergy() {
    BankSpec bank =
        with(
                "    capacity: 100 Ah\n    voltage: 51.2 V\n    max_charge: 50 A\n  in_parallel: 2",
                "    capacity: 200 Ah\n    voltage: 12.8 V\n    max_charge: 50 A\n  in_parallel: 3\n"
                    + "  in_series: 4")
            .bank();
    assertEquals(51.2, bank.nominalV());
    assertEquals(12 * 2560.0, bank.capacityWh());
    assertEquals(12 * 640.0, bank.maxChargeW());
    assertEquals(3, bank.packs());
  }

  @Test
  void readsHorizonPairsAndTwelveMonths() {
    Scenario home =
        with(
            "horizon: {SE: 8 deg, S: 4 deg, SW: 12 deg}",
            "horizon: [[240 deg, 12], [120, 8 deg]]\n"
                + "  albedo: [0.6, 0.6, 0.4, 20 %, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.3, 0.5]");
    assertEquals(
        List.of(new Horizon.Point(120, 8), new Horizon.Point(240, 12)),
        home.site().horizon().points());
    assertEquals(0.2, home.site().groundAlbedo().in(4));
  }

  @Test
  void readsUsUnits() {
    Scenario home = with("elevation: 210 m", "elevation: 1000 ft");
    assertEquals(304.8, home.site().elevationM());
    Double lowC = with("record_low: -16 °C", "record_low: 41 °F").site().recordLowC();
    assertNotNull(lowC);
    assertEquals(5.0, lowC, 1e-12);
  }

  @Test
  void takesTheClockFromTheLongitudeIfItMust() {
    Scenario home = with("longitude: -1.9\n", "longitude: -96.4\n");
    assertTrue(home.cautions().get(0).startsWith("utc_offset 0 h is more than 2 h"));
    home =
        folder.read(TestFolder.good().replace("-1.9", "-96.4").replace("  utc_offset: 0 h\n", ""));
    assertEquals(-6.0, home.site().utcOffsetH());
    assertEquals(List.of(), home.cautions());
  }

  @Test
  void libraryMonthsAreMovedForTheSouth() {
    String text =
        TestFolder.good()
            .replace("latitude: 53.1", "latitude: -44")
            .replace("azimuth: S", "azimuth: N")
            .replace("    - name: fridge\n", "    - Pellet stove\n    - name: fridge\n");
    var stove = folder.read(text).load().appliances().get(0);
    assertEquals(0.0, stove.monthFactor().in(1));
    assertEquals(1.0, stove.monthFactor().in(7));
  }

  @Test
  void resolvesTheLogBesideTheFile() {
    Scenario home = with("loads:\n", "loads:\n  log: {file: sample.csv, factor: 110 %}\n");
    var log = home.load().log();
    assertNotNull(log);
    assertEquals(temp.resolve("sample.csv").toString(), log.file());
    assertEquals(1.1, log.factor(), 1e-15);
  }

  @Test
  void cautionsWhatIsUnusualButPossible() {
    assertEquals(
        List.of("roof: panels at 0° face away from the equator, which lies to the south here."),
        with("azimuth: S", "azimuth: N").cautions());
    assertEquals(
        List.of(
            "roof: a tilt of 5° is flat for latitude 53.1°: the winter sun is low, and snow and"
                + " dirt stay."),
        with("tilt: 40 deg", "tilt: 5 deg").cautions());
    assertEquals(
        List.of(
            "test module: rated power 450 W, but max_power_voltage times max_power_current is 410"
                + " W (8.9 % less): one of the three is misread."),
        with("rated_power: 410 W", "rated_power: 450 W").cautions());
    // night 17:00-07:00: fridge 35 W x 14 h, lamps 80 W x 6.5 h x 5/7, inverter 40 W x 14 h
    assertEquals(
        List.of(
            "The bank gives 0.44 kWh above its reserve, less than the 1.42 kWh of one midwinter"
                + " night."),
        with("capacity: 100 Ah", "capacity: 5 Ah").cautions());
    assertTrue(with("quantity: 10", "medical: yes").cautions().get(0).contains("marked medical"));
    assertTrue(
        with("controller:\n", "controller:\n  absolute_maximum_voltage: 150 V\n")
            .cautions()
            .get(0)
            .contains("it would be destroyed"));
    assertFalse(
        with("power: 100 W", "power: 6 kW").cautions().isEmpty(), "more than the inverter holds");
  }

  @Test
  void findsTheLibraryAboveTheFile() {
    Path inProject = TestFolder.PROJECT.resolve("scenarios/alder-fold.yaml");
    assertEquals(TestFolder.LIBRARY, Library.find(inProject, null));
    assertNull(Library.find(temp.resolve("home.yaml"), null));
    assertEquals(
        TestFolder.LIBRARY,
        Library.find(temp.resolve("home.yaml"), TestFolder.PROJECT.resolve("target")));
  }

  // ---- electrical, conductors, controllers ------------------------------------------------------

  private static final String WIRES =
      """
      seed: 3
      electrical: {dwelling: no, charging_voltage: 57.6 V, bank_resistance: 15 mΩ, cut_off_voltage: 44 V}
      conductors:
        - run: array_to_controller
          array: roof
          name: along the ridge
          length: 40 ft
          size: 10 awg
          insulation: 194 °F
          ambient: 45 °C
          allowed_current: 31 A
        - {run: bank_to_inverter, length: 150 cm, size: 70mm², strands: stranded, metal: aluminium, in_parallel: 2}
      """;

  @Test
  void readsWiresAndWhatTheElectricalChecksNeed() {
    Scenario.Electrical electrical = with("seed: 3", WIRES).electrical();
    assertEquals(
        new Scenario.Electrical(
            false,
            57.6,
            0.015,
            44.0,
            List.of(
                new Scenario.Wire(
                    new ConductorRun(
                        ConductorRun.Kind.ARRAY_TO_CONTROLLER,
                        "along the ridge",
                        40 * 0.3048,
                        WireSize.AWG_10,
                        WireSize.Strands.FINE,
                        WireResistance.Metal.COPPER,
                        1,
                        45.0,
                        Ampacity.Insulation.C90,
                        31.0),
                    "roof"),
                new Scenario.Wire(
                    new ConductorRun(
                        ConductorRun.Kind.BANK_TO_INVERTER,
                        "bank to inverter",
                        1.5,
                        WireSize.MM2_70,
                        WireSize.Strands.STRANDED,
                        WireResistance.Metal.ALUMINIUM,
                        2,
                        30.0,
                        Ampacity.Insulation.C75,
                        null),
                    ""))),
        electrical);
  }

  @Test
  void aWireOfUnknownSizeIsKeptApart() {
    Scenario home =
        with(
            "seed: 3",
            "conductors:\n  - {run: array_to_controller, length: 5 m, size: Unknown}\n"
                + "  - {run: bank_to_inverter, length: 1 m, size: unknown, allowed_current: 90 A}");
    assertEquals(List.of(), home.electrical().conductors());
    assertEquals(
        List.of(
            new Scenario.UnknownWire(
                new UnknownRun(ConductorRun.Kind.ARRAY_TO_CONTROLLER, "array to controller", null),
                ""),
            new Scenario.UnknownWire(
                new UnknownRun(ConductorRun.Kind.BANK_TO_INVERTER, "bank to inverter", 90.0), "")),
        home.electrical().unknownConductors());
    // its loss is not known, so the usual flat share stays
    assertEquals(0.02, home.arrays().get(0).wiringFraction());
  }

  @Test
  void anInverterStopsAtItsOwnLowestVoltage() {
    String lowest = "inverter:\n  lowest_input_voltage: 42 V\n";
    Scenario silent = with("inverter:\n", lowest);
    assertEquals(42.0, silent.electrical().cutOffV());
    assertTrue(
        silent.assumptions().stream()
            .anyMatch(
                a -> a.key().equals("electrical.cut_off_voltage") && a.value().equals("42 V")));
    String set = lowest.replace("inverter:", "electrical: {cut_off_voltage: CUT}\ninverter:");
    Scenario below = with("inverter:\n", set.replace("CUT", "40 V"));
    assertEquals(42.0, below.electrical().cutOffV());
    assertTrue(
        below.cautions().toString().contains("cut_off_voltage 40 V lies below the 42 V"),
        below.cautions().toString());
    Scenario above = with("inverter:\n", set.replace("CUT", "44 V"));
    assertEquals(44.0, above.electrical().cutOffV());
    assertEquals(List.of(), above.cautions());
  }

  /** Switched off by hand: the sheet's points go with the sheet's no-load draw, BR-400's 5 W. */
  @Test
  void lessStandbyThanTheSheetsDoesNotContradictIt() {
    String good = TestFolder.good();
    String less =
        good.substring(0, good.indexOf("inverter:\n"))
            + "inverter: {from: Brill BR-400, count: 2, standby_day: 0.2 W}\n"
            + good.substring(good.indexOf("loads:\n"));
    InverterSpec inverter = folder.read(less).inverter();
    assertEquals(0.4, inverter.standbyDayW());
    assertEquals(10.0, inverter.sheetNoLoadW());
    assertEquals(30.0, folder.read(less.replace("0.2 W", "15 W")).inverter().sheetNoLoadW());
    String own = less.replace("0.2 W", "0.2 W, efficiency: [[10 %, 70 %], [100 %, 90 %]]");
    assertEquals(4.0, folder.read(own).inverter().sheetNoLoadW());
  }

  @Test
  void withoutThemTheUsualIsTakenAndSaid() {
    Scenario home = folder.read(TestFolder.good());
    assertEquals(Scenario.Electrical.NONE, home.electrical());
    assertTrue(
        home.assumptions()
            .contains(
                new Scenario.Assumption(
                    "electrical.dwelling",
                    "yes",
                    "one- or two-family dwelling: the voltage limit of the code holds")));
    assertTrue(
        home.assumptions()
            .contains(
                new Scenario.Assumption(
                    "electrical.charging_voltage", "57.6 V", "common practice, no source")));
    assertEquals(0.02, home.arrays().get(0).wiringFraction());
  }

  @Test
  void aStatedCableTakesThePlaceOfTheUsualWiringLoss() {
    Scenario home = with("seed: 3", WIRES);
    assertEquals(0.0, home.arrays().get(0).wiringFraction());
    assertTrue(
        home.assumptions()
            .contains(
                new Scenario.Assumption(
                    "arrays[0].wiring_loss",
                    "0 %",
                    "the cable of this plane is stated under conductors")));
    assertEquals(List.of(), home.cautions());
    Scenario both =
        folder.read(
            TestFolder.good()
                .replace("soiling: 2 %", "wiring_loss: 1.5 %")
                .replace("seed: 3", WIRES));
    assertEquals(0.015, both.arrays().get(0).wiringFraction());
    assertEquals(
        List.of(
            "roof: a wiring_loss of 1.5 % stands beside a cable under conductors: both are"
                + " counted."),
        both.cautions());
    String busOnly = WIRES.replace("array_to_controller\n    array: roof", "controller_to_bank");
    assertEquals(0.02, with("seed: 3", busOnly).arrays().get(0).wiringFraction());
  }

  @Test
  void aRunWithoutPlaneServesThemAll() {
    String two =
        TestFolder.good()
            .replace(
                "arrays:\n",
                "arrays:\n"
                    + "  - {name: shed, tilt: 40 deg, azimuth: S, in_series: 2, module: Orrin Bay"
                    + " OB-410H}\n");
    String run = "seed: 3\nconductors:\n  - {run: array_to_controller, length: 5 m, size: 4 mm2}\n";
    Scenario all = folder.read(two.replace("seed: 3\n", run));
    assertEquals(0.0, all.arrays().get(0).wiringFraction());
    assertEquals(0.0, all.arrays().get(1).wiringFraction());
    Scenario one =
        folder.read(two.replace("seed: 3\n", run.replace("length", "array: shed, length")));
    assertEquals(0.0, one.arrays().get(0).wiringFraction());
    assertEquals(0.02, one.arrays().get(1).wiringFraction());
    assertEquals("array to controller, shed", one.electrical().conductors().get(0).run().name());
  }

  @Test
  void voltagesThatDoNotBelongToTheBankAreAsked() {
    assertEquals(
        List.of(
            "charging_voltage 28.8 V for a bank of 51.2 V: lithium is usually charged to 1.13"
                + " times, lead-acid to 1.2 times its nominal voltage.",
            "cut_off_voltage 52 V is not below the bank's 51.2 V: the inverter would switch off"
                + " early."),
        with("seed: 3", "seed: 3\nelectrical: {charging_voltage: 28.8 V, cut_off_voltage: 52 V}")
            .cautions());
  }

  @Test
  void readsControllersThatDoNotTrack() {
    assertEquals(ControllerKind.MPPT, folder.read(TestFolder.good()).controller().kind());
    assertEquals(
        ControllerKind.PWM,
        with("max_output_current: 100 A", "max_output_current: 100 A\n  tracking: pwm")
            .controller()
            .kind());
  }

  @Test
  void readsTheEfficiencyOfAControllerAsOneFigureOrAsPoints() {
    Scenario usual = folder.read(TestFolder.good());
    assertEquals(0.97, usual.controller().efficiency());
    assertEquals(List.of(), usual.controller().efficiencyPoints());
    assertTrue(
        usual.assumptions().stream()
            .anyMatch(a -> a.key().equals("controller.efficiency") && a.value().equals("97 %")));
    String limit = "max_output_current: 100 A";
    Scenario one = with(limit, limit + "\n  efficiency: 96 %");
    assertEquals(0.96, one.controller().efficiency());
    assertEquals(List.of(), one.controller().efficiencyPoints());
    Scenario points =
        with(limit, limit + "\n  efficiency: [[10 %, 94 %], [50 %, 98 %], [100 %, 97 %]]");
    assertEquals(0.97, points.controller().efficiency());
    assertEquals(
        List.of(
            new EfficiencyPoint(0.1, 0.94),
            new EfficiencyPoint(0.5, 0.98),
            new EfficiencyPoint(1.0, 0.97)),
        points.controller().efficiencyPoints());
    Scenario single = with(limit, limit + "\n  efficiency: [[40 %, 95 %]]");
    assertEquals(List.of(new EfficiencyPoint(0.4, 0.95)), single.controller().efficiencyPoints());
  }
}
