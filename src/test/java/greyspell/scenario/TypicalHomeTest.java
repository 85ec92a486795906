package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.load.ApplianceSpec;
import greyspell.load.LoadPolicy;
import greyspell.scenario.StarterScenario.Answers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every typical home is read as it is written, with nothing unusual in it. */
class TypicalHomeTest {
  @TempDir private Path temp = Path.of("");

  @ParameterizedTest
  @EnumSource(TypicalHome.class)
  void readsAsItIs(TypicalHome kind) throws IOException {
    Files.createDirectories(temp.resolve("weather-samples"));
    Files.writeString(temp.resolve("weather-samples/grey-maritime.csv"), "");
    Path file = temp.resolve("home.yaml");
    StarterScenario.write(file, Answers.NONE, kind);
    assertFalse(Files.readString(file).contains("@"), "a blank was left");
    Scenario home = ScenarioReader.read(file, TestFolder.LIBRARY);
    assertEquals(kind.words(), home.name());
    assertEquals(java.util.List.of(), home.cautions());
    assertEquals(kind.panels(), home.arrays().get(0).modules());
    assertEquals(kind.packs() * 5120.0, home.bank().capacityWh());
    assertTrue(home.load().appliances().size() >= 7);
    assertEquals(LoadPolicy.NONE, home.load().policy());
  }

  /** Its own draw stays below what the cabin has always on, and that is enough to wake it. */
  @Test
  void theCabinHasASmallInverterThatItsCamerasKeepAwake() throws IOException {
    Files.createDirectories(temp.resolve("weather-samples"));
    Files.writeString(temp.resolve("weather-samples/grey-maritime.csv"), "");
    Path file = temp.resolve("cabin.yaml");
    StarterScenario.write(file, Answers.NONE, TypicalHome.CABIN);
    Scenario home = ScenarioReader.read(file, TestFolder.LIBRARY);
    var inverter = home.inverter();
    var search = inverter.search();
    assertNotNull(search);
    double awakeW = 0.0;
    double mostW = 0.0;
    for (ApplianceSpec a : home.load().appliances()) {
      mostW += a.quantity() * a.powerW();
      if (a.dailySpanH() == 24.0 && a.dutyShare() == 1.0) {
        awakeW += a.quantity() * a.powerW();
      }
    }
    assertTrue(inverter.standbyDayW() < awakeW, "standby above all that is always on");
    assertTrue(awakeW >= search.wakesAtW(), awakeW + " W would not wake it");
    assertTrue(mostW <= inverter.continuousW(), mostW + " W asked together");
  }
}
