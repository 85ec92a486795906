package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerKind;
import greyspell.electrical.ConductorJudge;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.Finding;
import greyspell.electrical.LoadJudge;
import greyspell.electrical.RunLoad;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringRules;
import greyspell.electrical.SurgeJudge;
import greyspell.scenario.StarterScenario.Answers;
import greyspell.study.ElectricalCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped homes are examples: nothing in their strings and wires may fail. */
class ShippedHomesTest {
  private static final Path HOMES = TestFolder.PROJECT.resolve("scenarios");

  static Stream<Path> homes() throws IOException {
    try (var files = Files.list(HOMES)) {
      List<Path> homes = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
      assertTrue(homes.size() >= 6);
      return homes.stream();
    }
  }

  private static StringRules rules(Scenario home) {
    var rules = StringRules.usual(home.site().recordLowC(), home.site().recordHighC(), home.bank());
    Double chargingV = home.electrical().chargingV();
    if (chargingV != null) {
      rules = rules.withChargingV(chargingV);
    }
    if (!home.electrical().isDwelling()) {
      rules = rules.withDwellingLimitV(null);
    }
    return home.controller().kind() == ControllerKind.PWM ? rules.withHeadroomV(0.0) : rules;
  }

  private static List<Finding> fails(List<Finding> findings) {
    return findings.stream().filter(f -> f.severity().isRefused()).toList();
  }

  @ParameterizedTest
  @MethodSource("homes")
  void stringsHold(Path file) {
    Scenario home = ScenarioReader.read(file, TestFolder.LIBRARY);
    assertNotNull(home.site().recordLowC());
    assertNotNull(home.site().recordHighC());
    var built = StringJudge.asBuilt(home.arrays(), home.controller(), rules(home));
    assertEquals(List.of(), built.missing());
    assertEquals(home.arrays().size(), built.arrays().size());
    assertEquals(List.of(), fails(built.findings()));
  }

  @ParameterizedTest
  @MethodSource("homes")
  void wiresHoldAndEachIsReallyJudged(Path file) {
    Scenario home = ScenarioReader.read(file, TestFolder.LIBRARY);
    assertTrue(home.electrical().conductors().size() >= 2);
    var findings = new ArrayList<Finding>();
    for (Scenario.Wire wire : home.electrical().conductors()) {
      for (RunLoad load : loads(home, wire)) {
        var judged = ConductorJudge.judge(wire.run(), load);
        assertNotNull(judged.ampacityA(), wire.run().name() + ": not judged by heat");
        assertTrue(judged.stated().dropShare() < 0.03, wire.run().name() + " drops too much");
        findings.addAll(judged.namedFindings());
      }
    }
    assertEquals(List.of(), fails(findings));
  }

  private static List<RunLoad> loads(Scenario home, Scenario.Wire wire) {
    StringRules rules = rules(home);
    var loads = new ArrayList<RunLoad>();
    switch (wire.run().kind()) {
      case ARRAY_TO_CONTROLLER -> {
        for (ArraySpec array : home.arrays()) {
          if (wire.arrayName().isEmpty() || wire.arrayName().equals(array.name())) {
            loads.add(RunLoad.ofArray(array, home.controller(), home.bank().nominalV()));
          }
        }
      }
      case CONTROLLER_TO_BANK -> {
        double modulesW =
            home.arrays().stream()
                .mapToDouble(a -> RunLoad.broughtW(a, home.controller(), rules.bankV()))
                .sum();
        loads.add(
            RunLoad.ofController(home.controller(), rules, modulesW / home.controller().count()));
      }
      case BANK_TO_INVERTER ->
          loads.add(RunLoad.ofInverter(home.inverter(), home.bank(), home.electrical().cutOffV()));
    }
    assertTrue(!loads.isEmpty(), wire.run().name());
    return loads;
  }

  @ParameterizedTest
  @MethodSource("homes")
  void motorsStartAndEveryPlaneHasItsWire(Path file) {
    Scenario home = ScenarioReader.read(file, TestFolder.LIBRARY);
    Double cableOhm = null;
    for (Scenario.Wire wire : home.electrical().conductors()) {
      if (wire.run().kind() == ConductorRun.Kind.BANK_TO_INVERTER) {
        cableOhm = ConductorJudge.workingOhm(wire.run(), loads(home, wire).get(0).ratedA());
      }
    }
    var path =
        new SurgeJudge.Path(
            null, ElectricalCheck.bankOhm(home), cableOhm, home.electrical().cutOffV());
    List<Finding> surge = SurgeJudge.judge(home.inverter(), home.bank(), path);
    assertTrue(surge.stream().noneMatch(f -> f.text().startsWith("not judged")), surge.toString());
    assertEquals(List.of(), fails(surge));
    assertEquals(List.of(), fails(LoadJudge.judge(home.load().appliances(), home.inverter())));
    for (ArraySpec array : home.arrays()) {
      assertTrue(ElectricalBinder.serves(home.electrical().conductors(), array.name()));
      assertEquals(0.0, array.wiringFraction(), array.name());
    }
  }

  @Test
  void oneOfThemShowsEachKindOfController() throws IOException {
    var kinds = homes().map(f -> ScenarioReader.read(f, TestFolder.LIBRARY).controller().kind());
    assertEquals(
        List.of(ControllerKind.MPPT, ControllerKind.PWM), kinds.distinct().sorted().toList());
  }

  /** With the temperatures that the starter leaves to its reader. */
  @Test
  void theStarterHoldsToo(@TempDir Path temp) throws IOException {
    Files.createDirectories(temp.resolve("weather-samples"));
    Files.writeString(temp.resolve("weather-samples/grey-maritime.csv"), "");
    Path file = temp.resolve("home.yaml");
    for (int panels = 3; panels <= 60; panels++) {
      StarterScenario.write(file, new Answers(null, null, null, panels, null, null));
      Files.writeString(
          file,
          Files.readString(file)
              .replace("# record_low", "record_low")
              .replace("# record_high", "record_high"));
      Scenario home = ScenarioReader.read(file, TestFolder.LIBRARY);
      var built = StringJudge.asBuilt(home.arrays(), home.controller(), rules(home));
      assertEquals(List.of(), fails(built.findings()), panels + " panels");
      Files.delete(file);
    }
  }
}
