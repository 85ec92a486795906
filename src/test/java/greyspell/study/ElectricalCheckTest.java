package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.LedgerColumn;
import greyspell.chart.SampleStudy;
import greyspell.electrical.ConductorRun;
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

  /** Loss of a year = R x sum of (Wh / V)^2 / years, worked here from the ledger's own columns. */
  @Test
  void wiresLoseWhatTheLedgersCurrentsMake() {
    double years = RESULT.ledger().forcing().calendar().years();
    double[] used = LedgerColumn.SOLAR_USED.of(RESULT.ledger());
    double squares = 0.0;
    for (double wh : used) {
      squares += wh / 51.2 * (wh / 51.2);
    }
    var run = CHECK.runs().get(1).judged();
    assertEquals(ConductorRun.Kind.CONTROLLER_TO_BANK, run.run().kind());
    assertEquals(run.stated().loopOhm() * squares / years, CHECK.runs().get(1).yearLossWh(), 1e-6);
  }

  /** All that the bus gives goes to direct loads, standing parts or the inverter. */
  @Test
  void whatGoesIntoTheInverterIsTheRestOfTheBus() {
    double years = RESULT.ledger().forcing().calendar().years();
    double into = CHECK.runs().get(2).judged().load().throughputWh() * years;
    double bus = 0.0;
    var ledger = RESULT.ledger();
    for (int h = 0; h < ledger.hours(); h++) {
      bus +=
          LedgerColumn.SOLAR_USED.of(ledger)[h]
              + LedgerColumn.BANK_OUT.of(ledger)[h]
              - LedgerColumn.BANK_IN.of(ledger)[h];
    }
    double direct = 0.0;
    for (int h = 0; h < ledger.hours(); h++) {
      double asked = ledger.askedWh(h) - LedgerColumn.UNMET_INVERTER.of(ledger)[h];
      direct +=
          LedgerColumn.SERVED.of(ledger)[h] * ledger.forcing().dcAskedWh()[h] / asked
              + LedgerColumn.STANDING.of(ledger)[h];
    }
    // the sample's standing parts bear other names, so none is counted to the inverter here
    assertEquals(bus - direct, into, bus * 1e-9);
  }

  @Test
  void withoutAResultNothingIsLostAndTheRestIsTheSame() {
    ElectricalCheck bare = ElectricalCheck.of(RESULT.scenario(), null);
    assertEquals(CHECK.findings(), bare.findings());
    assertTrue(CHECK.runs().get(0).yearLossWh() > 0.0);
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
    assertEquals(56.0, ElectricalCheck.rules(home).chargingV());
    assertFalse(
        group(ElectricalCheck.of(home, null), "Strings as built").stream()
            .anyMatch(f -> f.subject().contains("dwelling")));
    assertTrue(
        group(CHECK, "Strings as built").stream().anyMatch(f -> f.subject().contains("dwelling")));
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
    assertEquals(2, strings.size());
    for (Finding f : strings) {
      assertEquals(Severity.CAUTION, f.severity());
      assertTrue(f.text().startsWith("not judged. State the record "), f.text());
      assertTrue(f.reason().contains("record_low: -16 °C"), f.reason());
    }
  }
}
