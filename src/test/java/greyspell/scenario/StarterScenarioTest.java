package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import greyspell.scenario.StarterScenario.Answers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StarterScenarioTest {
  @TempDir Path temp;
  private Path file;

  @BeforeEach
  void makeSamples() throws IOException {
    Files.createDirectories(temp.resolve("weather-samples"));
    for (String name :
        List.of("grey-maritime", "cold-continental", "high-plateau", "south-island-coast")) {
      Files.writeString(temp.resolve("weather-samples/" + name + ".csv"), "");
    }
    file = Files.createDirectories(temp.resolve("mine")).resolve("home.yaml");
  }

  private Scenario readBack() {
    return ScenarioReader.read(file, TestFolder.LIBRARY);
  }

  @Test
  void readsAsItIs() throws IOException {
    StarterScenario.write(file, Answers.NONE);
    Scenario home = readBack();
    assertEquals("My home", home.name());
    assertEquals("../weather-samples/grey-maritime.csv", home.weather().file());
    assertEquals(12, home.arrays().get(0).modules());
    assertEquals(List.of(), home.cautions());
    assertFalse(Files.readString(file).contains("@"), "a blank was left");
    try (var left = Files.list(file.getParent())) {
      assertEquals(1, left.count(), "nothing else is left behind");
    }
  }

  @Test
  void takesTheAnswers() {
    StarterScenario.write(
        file, new Answers("The \"Nest\" \\ here", -41.2, 174.0, 14, 15_360.0, 7200.0));
    Scenario home = readBack();
    assertEquals("The \"Nest\" \\ here", home.name());
    assertEquals(-41.2, home.site().latitudeDeg());
    assertEquals(12.0, home.site().utcOffsetH());
    assertEquals(0.0, home.arrays().get(0).azimuthDeg(), "north");
    assertEquals(14, home.arrays().get(0).modules());
    assertEquals(15_360.0, home.bank().capacityWh());
    assertEquals(300.0, home.load().appliances().get(0).powerW());
    assertTrue(home.weather().file().endsWith("south-island-coast.csv"));
    assertEquals(List.of(), home.cautions());
  }

  @Test
  void anyNumberOfPanelsMakesStringsThatTheInverterTakes() throws IOException {
    for (int panels = 3; panels <= 60; panels++) {
      StarterScenario.write(file, new Answers(null, null, null, panels, null, null));
      Scenario home = readBack();
      assertTrue(panels - home.arrays().get(0).modules() < home.arrays().get(0).inParallel());
      assertEquals(List.of(), home.cautions(), panels + " panels");
      Files.delete(file);
    }
  }

  @Test
  void neverWritesOverAFile() throws IOException {
    Files.writeString(file, "mine");
    var bad = assertThrows(BadInput.class, () -> StarterScenario.write(file, Answers.NONE));
    assertTrue(String.valueOf(bad.getMessage()).contains("this file exists already"));
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void refusesAFolderThatDoesNotExist() {
    Path nowhere = temp.resolve("no/such/home.yaml");
    assertThrows(BadInput.class, () -> StarterScenario.write(nowhere, Answers.NONE));
  }

  @Test
  void refusesAnswersThatCannotBe() {
    var answers = new Answers(null, 99.0, Double.NaN, 1, -5.0, 1e12);
    var bad = assertThrows(BadInput.class, () -> StarterScenario.write(file, answers));
    assertEquals(5, bad.faults().size());
    assertEquals("latitude: found 99 deg", bad.faults().get(0).found());
    assertFalse(Files.exists(file));
  }
}
