package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.load.LoadPolicy;
import greyspell.scenario.StarterScenario.Answers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
}
