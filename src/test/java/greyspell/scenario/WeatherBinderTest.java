package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.weather.ensemble.WinterKind;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WeatherBinderTest {
  @TempDir Path temp;

  private WeatherChoice weather(String yaml) {
    return new TestFolder(temp)
        .read(TestFolder.good().replace("weather: sample.csv", "weather:" + yaml))
        .weather();
  }

  @Test
  void aBareNameIsOneFileAndNothingMore() {
    WeatherChoice weather = weather(" sample.csv");
    assertEquals("sample.csv", weather.file());
    assertEquals(1, weather.files().size());
    assertNull(weather.winters());
    assertNull(weather.how());
    assertNull(weather.means());
    assertEquals(WeatherChoice.Memory.GREY_SPELLS, weather.memory());
    assertEquals(1, weather.seed());
  }

  @Test
  void severalFilesAreSeveralYears() throws Exception {
    Files.writeString(temp.resolve("more.csv"), "");
    WeatherChoice weather =
        weather(" {file: [sample.csv, more.csv], winters: 200, how: spliced, seed: 9}");
    assertEquals("sample.csv and 1 more", weather.file());
    assertEquals(temp.resolve("more.csv"), weather.files().get(1).path());
    assertEquals(200, weather.winters());
    assertEquals(WinterKind.SPLICED, weather.how());
    assertEquals(9, weather.seed());
  }

  @Test
  void meansAloneAreEnough() {
    WeatherChoice weather = weather(" {means: sample.csv, memory: one_lag}");
    assertTrue(weather.isMeansAlone());
    assertEquals("sample.csv", weather.file());
    assertEquals(WeatherChoice.Memory.ONE_LAG, weather.memory());
  }
}
