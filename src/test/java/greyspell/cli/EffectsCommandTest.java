package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EffectsCommandTest {
  private static final String HUT = "scenarios/peat-hut.yaml";
  private static final String COMBE = "scenarios/harrow-combe.yaml";

  @TempDir private Path temp = Path.of("");

  @Test
  void tellsInAHundredColumnsOnlyWhatTheHomeHas() {
    Cli got = Cli.run("effects", HUT, COMBE, "--library", "shared");
    assertEquals(0, got.code, got.err);
    for (String line : got.out.split("\n", -1)) {
      assertTrue(line.length() <= 100, line);
    }
    String hut = got.out.substring(0, got.out.indexOf("Harrow Combe"));
    assertTrue(hut.contains("panels held at the bank's voltage"), hut);
    assertFalse(hut.contains("kWh generator") || hut.contains("kWh let go"), hut);
    assertFalse(hut.contains("the generator") || hut.contains("shade of near objects"), hut);
    String combe = got.out.substring(hut.length());
    assertTrue(combe.contains("kWh generator") && combe.contains("kWh let go"), combe);
    assertFalse(combe.contains("panels held at the bank's voltage"), combe);
  }

  @Test
  void pageAndFiguresTogether() throws IOException {
    Path page = temp.resolve("effects.md");
    Cli got = Cli.run("effects", HUT, "--json", "--page", page.toString(), "--library", "shared");
    assertEquals(0, got.code, got.err);
    assertTrue(Files.readString(page).contains("## Peat Hut"));
    JsonNode home = new ObjectMapper().readTree(got.out).get(0);
    assertEquals("Peat Hut", home.get("home").asText());
    double wholeKwh = home.get("with_everything").get("unmet_kwh_per_year").asDouble();
    JsonNode held = home.get("without").get("held_at_bank_voltage");
    assertTrue(held.get("unmet_kwh_per_year").asDouble() < wholeKwh, got.out);
    assertFalse(home.get("without").has("generator"), got.out);
  }

  @Test
  void aFileThatIsNotThereIsBadInput() {
    assertEquals(Main.BAD_INPUT, Cli.run("effects", temp.resolve("none.yaml").toString()).code);
  }
}
