package greyspell.weather.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClimateFileTest {
  private static final String HEAD =
      """
      # place: Mewsand (invented)
      # latitude: 53.2
      # longitude: 6.1
      # utc_offset: 1
      """;
  private static final double[] GLOBAL = {
    .62, 1.29, 2.51, 4.11, 5.02, 5.18, 5.05, 4.25, 2.98, 1.62, .79, .48
  };

  @TempDir private Path folder = Path.of("");

  private static String rows(String header, String more) {
    var text = new StringBuilder(header + "\n");
    for (int m = 1; m <= 12; m++) {
      text.append(m).append(',').append(GLOBAL[m - 1]).append(",9.5").append(more).append('\n');
    }
    return text.toString();
  }

  private ClimateFile.Contents read(String text) throws IOException {
    Path file = folder.resolve("means.csv");
    Files.writeString(file, text);
    return ClimateFile.read(file, "means.csv");
  }

  private String refusal(String text) {
    return assertThrows(BadInput.class, () -> read(text)).faults().stream()
        .map(f -> f.text())
        .collect(Collectors.joining("\n"));
  }

  @Test
  void readsMeansOnLevelGround() throws IOException {
    var contents = read(HEAD + rows("month,global_kwhm2_day,temperature_c", ""));
    assertEquals(480.0, contents.climate().dailyGlobalWhm2().in(12), 1e-9);
    assertEquals(9.5, contents.climate().meanTemperatureC().in(7), 0.0);
    assertEquals("Mewsand (invented)", contents.climate().site().place());
    assertNull(contents.choices().yearSpreadFraction());
    assertNull(contents.climate().site().elevationM(), "not said, so not made up");
    assertEquals(List.of(), contents.notes());
  }

  @Test
  void readsWhatElseIsKnown() throws IOException {
    var contents =
        read(
            HEAD
                + rows(
                    "month,global_kwhm2_day,temperature_c,year_spread_pct,temperature_swing_k",
                    ",18,3.5"));
    var spread = contents.choices().yearSpreadFraction();
    assertNotNull(spread);
    assertEquals(0.18, spread.in(3), 1e-12);
    var swing = contents.choices().temperatureSwingK();
    assertNotNull(swing);
    assertEquals(3.5, swing.in(3), 0.0);
  }

  @Test
  void peakSunHoursOnAPlaneGoBackToLevelGround() throws IOException {
    var contents =
        read(
            HEAD + "# tilt: 60\n# azimuth: 180\n" + rows("month,peak_sun_hours,temperature_c", ""));
    var plane = new TiltedMeans(53.2, 60.0, 180.0, 0.2);
    for (int month = 1; month <= 12; month++) {
      double levelWhm2 = contents.climate().dailyGlobalWhm2().in(month);
      assertEquals(1000.0 * GLOBAL[month - 1], plane.tiltedWhm2(month, levelWhm2), 1e-6);
    }
    assertTrue(contents.climate().dailyGlobalWhm2().in(12) < 480.0, "a steep plane gets more");
    assertEquals(
        List.of(
            "peak sun hours turned back to level ground from a plane tilted 60.0 deg, azimuth 180.0"
                + " deg, ground albedo 0.20 (not said in the file)"),
        contents.notes());
  }

  @Test
  void tellsEveryFaultWithItsPlace() {
    String said =
        refusal("# latitud: 53\n" + HEAD + rows("month,global_kwhm2_day,temperature_c", "x"));
    assertTrue(said.contains("means.csv:1:3  unknown key \"latitud\""), said);
    assertTrue(said.contains("Did you mean latitude?"), said);
    assertTrue(said.contains("means.csv:7:8  temperature_c: found \"9.5x\""), said);
    assertTrue(said.contains("means.csv:18:"), said);
  }

  @Test
  void refusesMeansThatTheSunDoesNotBring() {
    String rows = rows("month,global_kwhm2_day,temperature_c", "");
    String said = refusal((HEAD + rows).replace("12,0.48", "12,4.8"));
    assertTrue(said.contains("means.csv:17:1  global_kwhm2_day: found 4.8 in month 12"), said);
    assertTrue(refusal(HEAD.replace("53.2", "78") + rows).contains("-66 to 66"));
    assertTrue(refusal(HEAD + rows.replace("12,0.48", "11,0.48")).contains("must be a new month"));
    assertTrue(refusal(HEAD + rows.replace("global_kwhm2_day", "globl_kwhm2_day")).contains("Did"));
    assertTrue(refusal(rows).contains("no latitude"));
    assertTrue(refusal(HEAD + HEAD + rows).contains("latitude a second time"));
    String peak = rows.replace("global_kwhm2_day", "peak_sun_hours");
    assertTrue(refusal(HEAD + peak).contains("peak_sun_hours without tilt"));
    assertTrue(
        refusal(
                HEAD
                    + "# tilt: 60\n"
                    + rows.replace("global_kwhm2_day", "peak_sun_hours").replace("12,0.48", "12,9"))
            .contains("peak_sun_hours: found 9.0"));
    BadInput none =
        assertThrows(
            BadInput.class, () -> ClimateFile.read(folder.resolve("none.csv"), "none.csv"));
    assertTrue(none.faults().get(0).found().contains("no such file"));
  }
}
