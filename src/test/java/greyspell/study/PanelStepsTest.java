package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.ArraySpec;
import greyspell.electrical.Finding;
import greyspell.electrical.StringJudge;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.storage.BankSpec;
import greyspell.study.PanelSteps.Room;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Panels and banks that can really be had, against the files in which they are written. */
final class PanelStepsTest {
  @TempDir Path folder;

  private static Scenario home(String name) {
    return ScenarioReader.read(Path.of("scenarios/" + name + ".yaml"));
  }

  /** A shipped home with words of its file replaced. */
  private Scenario edited(String name, String... changes) throws IOException {
    String text = Files.readString(Path.of("scenarios/" + name + ".yaml"));
    for (int k = 0; k < changes.length; k += 2) {
      assertTrue(text.contains(changes[k]), changes[k]);
      text = text.replaceFirst(Pattern.quote(changes[k]), changes[k + 1]);
    }
    Path samples = Path.of("weather-samples").toAbsolutePath();
    Files.copy(
        Path.of("scenarios/sedge-island-stream.csv"),
        folder.resolve("sedge-island-stream.csv"),
        StandardCopyOption.REPLACE_EXISTING);
    Path file = folder.resolve(name + ".yaml");
    Files.writeString(file, text.replace("../weather-samples", samples.toString()));
    return ScenarioReader.read(file);
  }

  @Test
  void everyStepIsWholeStringsThatTheRulesAllow() {
    for (String name : List.of("alder-fold", "whin-cabin", "tamarisk-mesa", "kelp-point")) {
      Scenario home = home(name);
      var steps = PanelSteps.of(home, Room.FREE);
      assertFalse(steps.steps().isEmpty(), name + ": " + steps.end());
      assertFalse(steps.end().isEmpty(), name);
      var rules = ElectricalCheck.rules(home, Records.of(home));
      int before = 0;
      for (var step : steps.steps()) {
        assertTrue(step.modules() > before, name);
        before = step.modules();
        var built =
            StringJudge.asBuilt(step.home().arrays(), step.home().controller(), rules).findings();
        assertFalse(Finding.worst(built).isRefused(), name);
        for (int k = 0; k < home.arrays().size(); k++) {
          assertEquals(
              home.arrays().get(k).inSeries(), step.home().arrays().get(k).inSeries(), name);
        }
      }
      assertSame(home, steps.steps().get(steps.present()).home(), name);
    }
  }

  @Test
  void theNextStringGoesWhereTheProportionAsksForIt() {
    var steps = PanelSteps.of(home("alder-fold"), new Room(null, null, true)).steps();
    var told = new StringBuilder();
    for (int k = 0; k < 4; k++) {
      List<ArraySpec> arrays = steps.get(k).home().arrays();
      told.append(arrays.get(0).inParallel()).append('+').append(arrays.get(1).inParallel());
      told.append(' ');
    }
    // three to one is kept: 2, 3, 4 (as built), 5 strings
    assertEquals("1+1 2+1 3+1 4+1 ", told.toString());
  }

  @Test
  void oneOfThePlanesAloneMayVary() {
    var steps = PanelSteps.of(home("alder-fold"), new Room("yard frame", null, true)).steps();
    for (var step : steps) {
      assertEquals(3, step.home().arrays().get(0).inParallel());
    }
    assertEquals(24, steps.get(0).modules());
    assertEquals(30, steps.get(1).modules());
  }

  @Test
  void theRoofEndsThem() {
    var steps = PanelSteps.of(home("alder-fold"), new Room(null, 29, false));
    assertEquals(24, steps.steps().get(steps.count() - 1).modules());
    assertTrue(steps.end().contains("room for 29 modules"), steps.end());
  }

  @Test
  void aControllersInputEndsThemOrAnotherIsAdded() {
    Scenario home = home("whin-cabin");
    var alone = PanelSteps.of(home, Room.FREE);
    assertTrue(alone.end().contains("short-circuit current"), alone.end());
    var more = PanelSteps.of(home, new Room(null, null, true));
    assertTrue(more.count() > alone.count());
    var next = more.steps().get(alone.count());
    assertEquals(2, next.controllers());
    assertEquals(2 * home.controller().standbyW(), next.home().controller().standbyOfAllW());
  }

  @Test
  void aControllerInsideTheInverterHasNoSecond() {
    var steps = PanelSteps.of(home("kelp-point"), new Room(null, null, true));
    assertTrue(steps.end().contains("inside the inverter"), steps.end());
  }

  @Test
  void withoutRecordTemperaturesNothingIsPassed() throws IOException {
    Scenario home = edited("alder-fold", "  record_low: -16 °C", "  # none");
    var steps = PanelSteps.of(home, Room.FREE);
    assertEquals(0, steps.count());
    assertEquals(-1, steps.present());
    assertTrue(steps.end().contains("record_low"), steps.end());
  }

  @Test
  void panelsAreWhatTheEditedFileSays() throws IOException {
    Scenario file = edited("alder-fold", "in_parallel: 3", "in_parallel: 2");
    Scenario step = PanelSteps.of(home("alder-fold"), Room.FREE).steps().get(1).home();
    assertEquals(file.arrays(), step.arrays());
    assertEquals(file.controller(), step.controller());
    Scenario two = edited("whin-cabin", "SR-B50\n", "SR-B50\n", "in_parallel: 2", "in_parallel: 3");
    assertEquals(
        two.arrays(),
        PanelSteps.of(home("whin-cabin"), new Room(null, null, true))
            .steps()
            .get(2)
            .home()
            .arrays());
  }

  @ParameterizedTest
  @CsvSource({
    "alder-fold, in_parallel: 6, 6",
    "grandfell-farm, 'SC-280\n  in_parallel: 3', 3",
    "tamarisk-mesa, in_parallel: 2, 2",
    "harrow-combe, in_series: 8, 1",
    "sedge-island, SC-280H, 1"
  })
  void packsAreWhatTheEditedFileSays(String name, String key, int now) throws IOException {
    Scenario home = home(name);
    assertEquals(now, home.bank().packs());
    BankSteps steps = BankSteps.packs(home, 13);
    assertSame(home.bank(), steps.banks().get(now - 1));
    for (int packs : new int[] {1, 2, 7, 13}) {
      String with =
          key.contains("in_parallel")
              ? key.replaceAll("in_parallel: \\d", "in_parallel: " + packs)
              : key + "\n  in_parallel: " + packs;
      same(edited(name, key, with).bank(), steps.on(home, packs - 1).bank());
    }
  }

  /** To the last digits: a file multiplies one battery, a step divides the bank first. */
  private static void same(BankSpec file, BankSpec step) {
    assertEquals(rounded(file.toString()), rounded(step.toString()));
  }

  private static String rounded(String text) {
    return Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?")
        .matcher(text)
        .replaceAll(m -> String.format(Locale.ROOT, "%.11g", Double.parseDouble(m.group())));
  }

  @Test
  void aBankOfAnySizeIsMadeOfTheSameCells() {
    Scenario home = home("alder-fold");
    BankSteps steps = BankSteps.sizes(home, home.bank().capacityWh() / 12.0, 24);
    same(home.bank(), steps.banks().get(11));
    BankSpec half = steps.banks().get(5);
    assertEquals(0.5 * home.bank().usableWh(), half.usableWh(), 1e-6);
    assertEquals(0.5 * home.bank().maxChargeW(), half.maxChargeW(), 1e-9);
    assertEquals(0.5 * home.bank().standbyW(), half.standbyW(), 1e-9);
  }
}
