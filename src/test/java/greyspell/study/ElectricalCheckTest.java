package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.LedgerColumn;
import greyspell.chart.SampleStudy;
import greyspell.electrical.Finding;
import greyspell.electrical.Finding.Severity;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ElectricalCheckTest {
  private static final StudyResult RESULT = new SampleStudy().run();
  private static final ElectricalCheck CHECK = ElectricalCheck.of(RESULT.scenario(), RESULT);

  @TempDir private Path folder = Path.of("");

  private static List<Finding> group(ElectricalCheck check, String title) {
    return check.groups().stream()
        .filter(g -> g.title().equals(title))
        .findFirst()
        .orElseThrow()
        .findings();
  }

  @Test
  void everyGroupIsThereAndTheWorstIsThatOfItsFindings() {
    assertEquals(
        List.of(
            "Data sheets",
            "Strings as built",
            "Wires",
            "Motor starts on the bank",
            "Loads",
            "Plausibility"),
        CHECK.groups().stream().map(ElectricalCheck.Group::title).toList());
    assertEquals(Finding.worst(CHECK.findings()), CHECK.worst());
  }

  private static Scenario wired(String file) {
    Scenario s = ScenarioReader.read(Path.of(file), Path.of("shared"));
    return new Scenario(
        s.file(),
        s.name(),
        s.note(),
        s.site(),
        s.weather(),
        s.sky(),
        s.arrays(),
        s.controller(),
        s.bank(),
        s.inverter(),
        s.load(),
        s.startChargeFraction(),
        s.costs(),
        SampleStudy.WIRED,
        s.seed(),
        s.assumptions(),
        s.cautions());
  }

  private static double lostWh(StudyResult result, String name) {
    double years = result.ledger().forcing().calendar().years();
    return result.outcome().total().lossesWh().stream()
            .filter(l -> l.name().equals(name))
            .findFirst()
            .orElseThrow()
            .wh()
        / years;
  }

  /** What the check says of the year is what the ledger booked. */
  @Test
  void wiresLoseWhatTheBooksSay() {
    StudyResult result = Study.run(wired("scenarios/whin-cabin.yaml"), (what, done) -> {});
    ElectricalCheck check = ElectricalCheck.of(result.scenario(), result);
    double bank = lostWh(result, "controller_wiring");
    double inverter = lostWh(result, "inverter_wiring");
    assertTrue(bank > 0.0 && inverter > 0.0);
    assertEquals(bank, check.runs().get(1).yearLossWh(), 1e-6);
    assertEquals(inverter, check.runs().get(2).yearLossWh(), 1e-6);
    // the flat share comes off, so the wire's own part is smaller than the sum
    double array = check.runs().get(0).yearLossWh();
    assertTrue(array > 0.0 && array <= lostWh(result, "array_wiring"), "" + array);
    for (var run : check.runs()) {
      var load = run.judged().load();
      assertTrue(run.yearLossWh() < 0.2 * load.throughputWh() * run.alike(), run.toString());
    }
  }

  /**
   * One statement for every plane makes a run each, named by its plane; together they are the
   * books.
   */
  @Test
  void everyPlaneHasItsOwnRunAndTheirLossesAddUp() {
    StudyResult result = Study.run(wired("scenarios/alder-fold.yaml"), (what, done) -> {});
    ElectricalCheck check = ElectricalCheck.of(result.scenario(), result);
    assertEquals(
        List.of("array to controller, barn roof", "array to controller, yard frame"),
        check.runs().subList(0, 2).stream().map(r -> r.judged().run().name()).toList());
    double three = check.runs().get(0).yearLossWh();
    double one = check.runs().get(1).yearLossWh();
    // three strings on one wire lose about nine times as much, more for the warmer metal; the two
    // planes see different light
    assertTrue(three / one > 9.0 && three / one < 12.0, three + " and " + one);
    double flatWh = 0.0;
    double years = result.ledger().forcing().calendar().years();
    for (int k = 0; k < 2; k++) {
      double passedWh = check.runs().get(k).judged().load().throughputWh();
      double share = result.scenario().arrays().get(k).wiringFraction();
      flatWh += passedWh * share / (1.0 - share);
      assertEquals(
          result.planes().get(k).availableWh() / years + check.runs().get(k).yearLossWh(),
          passedWh,
          1e-6);
    }
    assertEquals(lostWh(result, "array_wiring"), three + one + flatWh, 1e-6);
  }

  /** One module in a row never starts the controller, so its wire carries nothing. */
  @Test
  void aPlaneOutsideTheWindowLosesNothingInItsWire() throws Exception {
    String text =
        Files.readString(Path.of("scenarios/alder-fold.yaml"))
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString());
    int second = text.lastIndexOf("in_series: 6");
    Path file =
        Files.writeString(
            folder.resolve("home.yaml"),
            text.substring(0, second) + "in_series: 1" + text.substring(second + 12));
    StudyResult result =
        Study.run(ScenarioReader.read(file, Path.of("shared")), (what, done) -> {});
    ElectricalCheck check = ElectricalCheck.of(result.scenario(), result);
    assertEquals(0.0, check.runs().get(1).yearLossWh());
    assertEquals(lostWh(result, "array_wiring"), check.runs().get(0).yearLossWh(), 1e-6);
    assertTrue(check.runs().get(0).yearLossWh() > 50_000.0);
  }

  /** All that the bus gives goes to direct loads, standing parts, the wires or the inverter. */
  @Test
  void whatPassesToTheInverterIsTheRestOfTheBus() {
    double years = RESULT.ledger().forcing().calendar().years();
    double into = CHECK.runs().get(2).judged().load().throughputWh() * years;
    double bus = 0.0;
    double direct = 0.0;
    var ledger = RESULT.ledger();
    for (int h = 0; h < ledger.hours(); h++) {
      bus +=
          LedgerColumn.SOLAR_USED.of(ledger)[h]
              + LedgerColumn.BANK_OUT.of(ledger)[h]
              - LedgerColumn.BANK_IN.of(ledger)[h];
      double asked = ledger.askedWh(h) - LedgerColumn.UNMET_INVERTER.of(ledger)[h];
      direct +=
          LedgerColumn.SERVED.of(ledger)[h] * ledger.forcing().dcAskedWh()[h] / asked
              + LedgerColumn.STANDING.of(ledger)[h];
    }
    assertEquals(bus - direct, into, bus * 1e-9);
  }

  @Test
  void withoutAResultNothingIsLostAndTheRestIsTheSame() {
    ElectricalCheck bare = ElectricalCheck.of(RESULT.scenario(), null);
    assertEquals(CHECK.findings(), bare.findings());
    assertTrue(CHECK.runs().get(0).judged().load().isSimulated());
    bare.runs().forEach(run -> assertEquals(0.0, run.yearLossWh()));
  }

  @Test
  void withoutWiresTheGroupSaysSo() {
    var sample = new SampleStudy();
    sample.electrical = Scenario.Electrical.NONE;
    StudyResult result = sample.run();
    ElectricalCheck check = ElectricalCheck.of(result.scenario(), result);
    assertTrue(check.runs().isEmpty() && group(check, "Wires").isEmpty());
    assertTrue(check.groups().get(2).ifEmpty().startsWith("none stated"));
  }

  @Test
  void aBuildingThatIsNoDwellingHasNoDwellingLimit() {
    var sample = new SampleStudy();
    sample.electrical = new Scenario.Electrical(false, 56.0, null, null, List.of());
    Scenario home = sample.run().scenario();
    assertEquals(56.0, ElectricalCheck.rules(home, Records.of(home)).chargingV());
    assertFalse(
        group(ElectricalCheck.of(home, null), "Strings as built").stream()
            .anyMatch(f -> f.subject().contains("dwelling")));
    assertTrue(
        group(CHECK, "Strings as built").stream().anyMatch(f -> f.subject().contains("dwelling")));
  }

  /** The sheet of an inverter is judged here too, not only where it is used. */
  @Test
  void anInverterWhoseSheetDisagreesIsACaution() throws Exception {
    String text =
        Files.readString(Path.of("scenarios/peat-hut.yaml"))
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString())
            .replaceAll(
                "(?m)^inverter:.*$",
                "inverter: {from: Brill BR-400, standby_day: 0.2 W, standby_night: 0.1 W,"
                    + " efficiency: [[10 %, 70 %], [100 %, 90 %]]}");
    Path file = Files.writeString(folder.resolve("home.yaml"), text);
    ElectricalCheck check = ElectricalCheck.of(ScenarioReader.read(file, Path.of("shared")), null);
    assertTrue(
        group(check, "Data sheets").stream()
            .anyMatch(
                f ->
                    f.severity() == Severity.CAUTION
                        && f.text().contains("does not suit its standby of 0.2 W")),
        check.findings().toString());
    assertEquals("", check.failing());
  }

  /** Never guessed: not judged, and what to write. */
  @Test
  void withoutRecordTemperaturesNothingIsJudged() throws Exception {
    String text =
        Files.readString(Path.of("scenarios/whin-cabin.yaml"))
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString())
            .replaceAll("(?m)^ *record_(low|high):.*\n", "");
    Path file = Files.writeString(folder.resolve("home.yaml"), text);
    Scenario home = ScenarioReader.read(file, Path.of("shared"));
    List<Finding> strings = group(ElectricalCheck.of(home, null), "Strings as built");
    List<Finding> unknown = strings.stream().filter(f -> f.severity() == Severity.UNKNOWN).toList();
    assertEquals(2, unknown.size());
    for (Finding f : unknown) {
      assertTrue(f.text().startsWith("not judged. State the record "), f.text());
      assertTrue(f.reason().contains("record_low: -16 °C"), f.reason());
    }
    // currents need no temperature
    assertTrue(strings.stream().anyMatch(f -> f.subject().equals("short-circuit current")));
    assertEquals(
        "The electrical check cannot judge, and so does not pass: strings in cold and heat.",
        ElectricalCheck.of(home, null).failing());
  }

  private Scenario changed(String home, String... pairs) throws Exception {
    String text =
        Files.readString(Path.of("scenarios/" + home))
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString());
    for (int i = 0; i < pairs.length; i += 2) {
      assertTrue(text.contains(pairs[i]), pairs[i]);
      text = text.replace(pairs[i], pairs[i + 1]);
    }
    return ScenarioReader.read(
        Files.writeString(folder.resolve("home.yaml"), text), Path.of("shared"));
  }

  /** Told under the strings, not once more under plausibility; the scenario's reader keeps it. */
  @Test
  void aStringTooLongIsToldOnce() throws Exception {
    Scenario home = changed("peat-hut.yaml", "in_series: 1", "in_series: 3");
    ElectricalCheck check = ElectricalCheck.of(home, null);
    assertTrue(home.cautions().toString().contains("it would be destroyed"));
    assertEquals(List.of(), group(check, "Plausibility"));
    assertTrue(check.failing().contains("hut wall: coldest morning, controller"));
  }

  @Test
  void aCableOfUnknownSizeIsAFindingAndCostsNothing() throws Exception {
    Scenario home =
        changed("peat-hut.yaml", "size: 16 mm2, allowed_current: 85 A", "size: unknown");
    ElectricalCheck check = ElectricalCheck.of(home, null);
    assertEquals(2, check.runs().size());
    assertEquals(Severity.UNKNOWN, check.worst());
    List<Finding> wires = group(check, "Wires");
    assertTrue(
        wires.stream()
            .anyMatch(
                f ->
                    f.severity() == Severity.UNKNOWN
                        && f.subject().equals("bank to inverter: heat")));
    assertTrue(wires.stream().anyMatch(f -> f.reason().contains("no loss of it is booked")));
  }

  /** The panel works at the bank's 12 V, not at its own 18. */
  @Test
  void aCableBeforeAControllerThatDoesNotTrackIsJudgedAtTheBanksVoltage() throws Exception {
    Scenario home = changed("peat-hut.yaml");
    var load = ElectricalCheck.of(home, null).runs().get(0).judged().load();
    var module = home.arrays().get(0).module();
    assertEquals(12.0, load.voltageV());
    assertTrue(load.ratedA() > module.maxPowerA() && load.ratedA() <= module.shortCircuitA());
  }

  /** A home that is shipped as an example has no quarrel with its own data sheets. */
  @Test
  void theShippedHomesSheetsAreClean() throws Exception {
    for (String home :
        List.of("alder-fold", "grandfell-farm", "kelp-point", "peat-hut", "tamarisk-mesa")) {
      List<Finding> sheets =
          group(ElectricalCheck.of(changed(home + ".yaml"), null), "Data sheets");
      assertEquals(Severity.PASS, Finding.worst(sheets), home);
    }
  }
}
