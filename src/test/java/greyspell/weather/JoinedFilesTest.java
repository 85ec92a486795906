package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JoinedFilesTest {
  private static final String HEAD = "# utc_offset: -6\nlocal_start,ghi_wm2,tair_c";

  @TempDir private Path folder = Path.of("");

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static String csv(int year, int hours) {
    return SmallFiles.csv(
        HEAD, LocalDateTime.of(year, 1, 1, 0, 0), hours, 60, t -> t + "," + (year - 1900) + ",4");
  }

  private Path epw(String name, int year, int hours, String windMs) throws IOException {
    return file(
        name,
        SmallFiles.epw(
            SmallFiles.EPW_HEAD,
            LocalDateTime.of(year, 1, 1, 0, 0),
            hours,
            1,
            row -> {
              row.globalWm2 = Integer.toString(year - 1900);
              row.windMs = windMs;
              return row;
            }));
  }

  private static String refusal(Path... files) {
    String message =
        assertThrows(BadInput.class, () -> WeatherReader.readAll(List.of(files), -6.0))
            .getMessage();
    return message == null ? "" : message;
  }

  @Test
  void yearsOfEpwFollowEachOther() throws IOException {
    WeatherSeries series =
        WeatherReader.readAll(
            List.of(epw("a.epw", 2019, 8760, "3.0"), epw("b.epw", 2020, 8784, "999")), -6.0);
    assertEquals(2019, series.calendar().firstYear());
    assertEquals(2, series.calendar().years());
    assertEquals(8760 + 8784, series.hours());
    double[] global = series.globalHorizontalWm2();
    assertEquals(119.0, global == null ? 0.0 : global[8759], 0.0);
    assertEquals(120.0, global == null ? 0.0 : global[8760], 0.0);
    assertNull(series.windMs(), "only one of them has wind");
    assertTrue(
        series.gaps().notes().contains("wind speed: left out, not all of the files have it"),
        series.gaps().toString());
  }

  @Test
  void yearsMustFollowEachOther() throws IOException {
    Path first = epw("a.epw", 2017, 8760, "3.0");
    String gap = refusal(first, epw("b.epw", 2019, 8760, "3.0"));
    assertTrue(gap.contains("b.epw  is of 2019"), gap);
    assertTrue(gap.contains("must be of 2018"), gap);
    Path tmy = file("t.csv", SmallFiles.tmy3(SmallFiles.TMY3_HEAD, SmallFiles::tmy3Line));
    String typical = refusal(tmy, tmy);
    assertTrue(typical.contains("t.csv  is a typical year"), typical);
    assertTrue(refusal(first, tmy).contains("t.csv  is of another format than"));
  }

  @Test
  void rowsOfPlainFilesFollowEachOther() throws IOException {
    Path one = file("1.csv", csv(2018, 8760));
    Path two = file("2.csv", csv(2019, 8760));
    WeatherSeries series = WeatherReader.readAll(List.of(one, two), -6.0);
    assertEquals(2, series.calendar().years());
    double[] global = series.globalHorizontalWm2();
    assertEquals(118.0, global == null ? 0.0 : global[8759], 0.0);
    assertEquals(119.0, global == null ? 0.0 : global[8760], 0.0);
    assertEquals(0, series.gaps().missingHours());
    Path other =
        file(
            "3.csv",
            csv(2019, 8760).replace("local_start,ghi_wm2,tair_c", "local_start,tair_c,ghi_wm2"));
    assertTrue(refusal(one, other).contains("3.csv  has other columns"));
    Path north = file("4.csv", "# latitude: 9\n" + csv(2018, 8760));
    Path south = file("5.csv", "# latitude: -9\n" + csv(2019, 8760));
    assertTrue(refusal(north, south).contains("5.csv  is of another place than"));
  }

  @Test
  void filesInTheWrongOrderAreToldOnce() throws IOException {
    String message = refusal(file("2.csv", csv(2019, 8760)), file("1.csv", csv(2018, 8760)));
    assertTrue(message.contains("time goes back 729 days against the end of the file"), message);
    assertEquals(1, message.split("goes back", -1).length - 1, message);
  }

  @Test
  void holesBetweenFilesAreHoles() throws IOException {
    Path one = file("1.csv", csv(2018, 8760 - 100));
    Path two = file("2.csv", csv(2019, 8760));
    assertEquals(100, WeatherReader.readAll(List.of(one, two), -6.0).gaps().missingHours());
    String message =
        refusal(file("1.csv", csv(2018, 8760 - 121)), two, file("3.csv", csv(2020, 9)));
    assertTrue(message.contains("1.csv and 2 more"), message);
  }
}
