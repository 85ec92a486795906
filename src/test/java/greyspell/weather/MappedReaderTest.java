package greyspell.weather;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.published.ValidationData;
import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MappedReaderTest {
  /** A service's way of writing: remarks above the names, tenths, J/cm2, two columns of time. */
  private static final String SERVICE =
      """
      place: Otter Narrows        # invented
      latitude: 46.3
      longitude: -93.8
      elevation: 390 m
      utc_offset: 0
      separator: semicolon
      decimal: comma
      names_begin: "# STN;"
      time: DAY + HH
      time_format: yyyyMMdd + HH
      stamp: end
      missing: -999, 9999
      ghi: Q, J/cm2
      tair: T, 0.1 C, at stamp
      wind: FF, km/h
      cloud: N, okta
      """;

  private static final String HEAD = "Remarks above\n\n# STN;DAY;HH;Q;T;FF;N\n";

  @TempDir private Path folder = Path.of("");

  private WeatherSeries read(String map, String text) throws IOException {
    Path file = folder.resolve("w.csv");
    Path mapFile = folder.resolve("map.yaml");
    Files.writeString(file, text);
    Files.writeString(mapFile, map);
    return WeatherReader.readAll(
        List.of(file), List.of("w.csv"), null, ColumnMap.read(mapFile, "map.yaml"));
  }

  private String refusal(String map, String text) {
    String message = assertThrows(BadInput.class, () -> read(map, text)).getMessage();
    return message == null ? "" : message;
  }

  /** 2019, an hour a row, stamped at its end as hour 1 to 24 of its day. */
  private static String service(Function<LocalDateTime, String> values) {
    var text = new StringBuilder(HEAD);
    for (int h = 0; h < 8760; h++) {
      LocalDateTime start = LocalDateTime.of(2019, 1, 1, 0, 0).plusHours(h);
      text.append(
          String.format(
              Locale.ROOT,
              "  9;%d%02d%02d; %2d;%s%n",
              start.getYear(),
              start.getMonthValue(),
              start.getDayOfMonth(),
              start.getHour() + 1,
              values.apply(start)));
    }
    return text.toString();
  }

  @Test
  void readsUnitsClockAndStamps() throws IOException {
    WeatherSeries series =
        read(
            SERVICE,
            service(
                t ->
                    t.equals(LocalDateTime.of(2019, 6, 1, 12, 0))
                        ? "180;215;36,9;9"
                        : "0;200;7,2;4"));
    int hour = series.calendar().hourOf(2019, 6, 1, 12);
    assertEquals(
        500.0, requireNonNull(series.globalHorizontalWm2())[hour], 1e-9, "180 J/cm2 / 0.36");
    assertEquals(0.0, requireNonNull(series.globalHorizontalWm2())[hour + 1], 0.0);
    assertEquals(20.75, series.airTemperatureC()[hour], 1e-9, "mean of both ends");
    assertEquals(20.75, series.airTemperatureC()[hour + 1], 1e-9, "and of the next hour's");
    assertEquals(10.25, requireNonNull(series.windMs())[hour], 1e-9, "36.9 km/h");
    assertEquals(1.0, requireNonNull(series.cloudShare())[hour], 0.0, "nine eighths: overcast");
    assertEquals(0.5, requireNonNull(series.cloudShare())[0], 0.0);
    assertEquals("Otter Narrows", series.source().place());
    assertEquals(390.0, requireNonNull(series.source().elevationM()), 0.0);
    assertTrue(series.gaps().notes().toString().contains("9 okta"), series.gaps().toString());
  }

  @Test
  void codesAndBlanksAreGaps() throws IOException {
    WeatherSeries series =
        read(
            SERVICE,
            service(
                t ->
                    t.getDayOfYear() == 40 && t.getHour() < 2
                        ? "-999;;9999;"
                        : "36;" + (100 + t.getHour()) + ";10;2"));
    assertEquals(2, series.gaps().missingHours());
    assertEquals(
        100.0, requireNonNull(series.globalHorizontalWm2())[39 * 24], 1e-9, "a straight line");
  }

  @Test
  void longGapsAreRefusedAsInAnyFormat() {
    String message =
        refusal(
            SERVICE,
            service(t -> (t.getDayOfYear() > 40 && t.getDayOfYear() < 47 ? "" : "36") + ";9;9;2"));
    assertTrue(message.contains("global horizontal irradiance: no value for 144 hours"), message);
  }

  @Test
  void otherMarksAndStampsInTheMiddle() throws IOException {
    String map =
        """
        utc_offset: +01:00
        separator: tab
        names: no
        skip_lines: 1
        remarks: "!"
        time: 1
        time_format: dd.MM.yyyy HH:mm
        stamp: middle
        minutes: 30
        ghi: 3, kJ/m2
        tair: 2, F
        """;
    var text = new StringBuilder("a line about the file\n! and a remark\n");
    for (int i = 0; i < 2 * 8760; i++) {
      LocalDateTime middle = LocalDateTime.of(2019, 1, 1, 0, 15).plusMinutes(30L * i);
      text.append(
          String.format(
              Locale.ROOT,
              "%d.%d.%d %02d:%02d\t50\t%d%n",
              middle.getDayOfMonth(),
              middle.getMonthValue(),
              middle.getYear(),
              middle.getHour(),
              middle.getMinute(),
              middle.getHour() == 11 ? 900 : 0));
    }
    WeatherSeries series = read(map, text.toString());
    assertEquals(1.0, series.source().utcOffsetH(), 0.0);
    assertEquals(
        500.0, requireNonNull(series.globalHorizontalWm2())[11], 1e-9, "900 kJ in half an hour");
    assertEquals(0.0, requireNonNull(series.globalHorizontalWm2())[12], 0.0);
    assertEquals(10.0, series.airTemperatureC()[0], 1e-9, "50 F");
  }

  /** Energies over another interval than the rows' would be wrong by a factor, unseen. */
  @Test
  void rowsMustBeAsFarApartAsTheMapSays() {
    String rows = service(t -> "0;200;7,2;4");
    String message = refusal(SERVICE + "minutes: 30\n", rows);
    assertTrue(message.contains("w.csv:5:1  rows are 60 minutes apart"), message);
    assertTrue(message.contains("Write minutes: 60 in the map."), message);
  }

  @Test
  void faultsOfAMapHaveLineAndColumn() {
    String map =
        SERVICE
            .replace("ghi: Q, J/cm2", "ghi: Q, J/cm3")
            .replace("stamp: end", "stmp: end")
            .replace("wind: FF, km/h", "wind: FF")
            .replace("missing: -999, 9999", "missing: none");
    String message = refusal(map, HEAD);
    for (String said :
        List.of(
            "map.yaml:11:1  unknown key \"stmp\"",
            "Did you mean stamp?",
            "map.yaml:12:10  missing: found \"none\"",
            "map.yaml:13:6  ghi: found \"Q, J/cm3\"",
            "W/m2, kW/m2, Wh/m2",
            "map.yaml:15:7  wind: found \"FF\"",
            "map.yaml  no stamp")) {
      assertTrue(message.contains(said), said + " in\n" + message);
    }
  }

  @Test
  void faultsOfTheTableHaveLineAndColumn() {
    String table =
        HEAD
            + """
              9;20190101; 1;0;200;7,2;4
              9;20190101; 2;x;200;7,2;4
              9;20191301; 3;0;200;7,2;4
              9;20190101; 4;0;200
              9;20190101; 5;900000;200;7,2;4
              """;
    String message = refusal(SERVICE, table);
    for (String said :
        List.of(
            "w.csv:5:15  Q: found \"x\"",
            "w.csv:6:3  time: found \"20191301 3\"",
            "must be like yyyyMMdd HH",
            "w.csv:7:1  5 fields",
            "w.csv:8:15  Q: found \"900000\"")) {
      assertTrue(message.contains(said), said + " in\n" + message);
    }
    assertTrue(
        refusal(SERVICE.replace("tair: T", "tair: TT"), table)
            .contains("w.csv:3:1  no column \"TT\" (air temperature)"));
    assertTrue(
        refusal(SERVICE.replace("# STN;", "STATION"), table)
            .contains("no line begins \"STATION\""));
  }

  /**
   * The same ten years twice: as the service writes them, and as they were gathered for the
   * validation data (not shipped).
   */
  @Test
  void aNationalServicesFileIsReadAsItWasGathered() throws IOException {
    Path zip = ValidationData.file("samples/knmi_uurgeg_380_2011-2020.zip");
    Path gathered = ValidationData.file("measured/maastricht-2011-2020.csv.gz");
    Path file = folder.resolve("hours.txt");
    try (var in = new ZipInputStream(Files.newInputStream(zip))) {
      in.getNextEntry();
      Files.copy(in, file);
    }
    Path map = folder.resolve("map.yaml");
    Files.writeString(
        map,
        """
        utc_offset: 0
        names_begin: "# STN,"
        time: YYYYMMDD + HH
        time_format: yyyyMMdd + HH
        stamp: end
        ghi: Q, J/cm2
        tair: T, 0.1 C
        cloud: N, okta
        """);
    WeatherSeries mapped =
        WeatherReader.readAll(
            List.of(file), List.of("hours.txt"), 0.0, ColumnMap.read(map, "map.yaml"));
    WeatherSeries plain = WeatherReader.read(gathered, "gathered", 0.0);
    assertArrayEquals(
        requireNonNull(plain.globalHorizontalWm2()),
        requireNonNull(mapped.globalHorizontalWm2()),
        0.05 + 1e-9,
        "gathered to a tenth");
    assertArrayEquals(plain.airTemperatureC(), mapped.airTemperatureC(), 1e-9);
    assertArrayEquals(
        requireNonNull(plain.cloudShare()), requireNonNull(mapped.cloudShare()), 1e-9);
    assertEquals(plain.gaps().missingHours(), mapped.gaps().missingHours());
  }
}
