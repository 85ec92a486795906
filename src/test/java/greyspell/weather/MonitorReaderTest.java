package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.published.ValidationData;
import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.zip.GZIPInputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MonitorReaderTest {
  private static final String MAP =
      """
      utc_offset: 2
      separator: semicolon
      decimal: comma
      names_begin: "Zeit"            # three lines of remarks stand above
      time: Zeit
      time_format: dd.MM.yyyy HH:mm:ss
      stamp: end
      missing: -1
      charge: Ladung, %
      solar: PV, kW
      load: Haus, Wh
      battery: Akku, -1 W
      load_at: house
      solar_at: panels
      """;

  @TempDir private Path folder = Path.of("");

  private MonitorLog read(@Nullable String map, String text) throws IOException {
    Path file = folder.resolve("log.csv");
    Files.writeString(file, text);
    if (map == null) {
      return MonitorReader.read(file, "log.csv", null, 1.0);
    }
    Path mapFile = folder.resolve("map.yaml");
    Files.writeString(mapFile, map);
    return MonitorReader.read(file, "log.csv", MonitorMap.read(mapFile, "map.yaml"), 1.0);
  }

  private String refusal(@Nullable String map, String text) {
    String message = assertThrows(BadInput.class, () -> read(map, text)).getMessage();
    return message == null ? "" : message;
  }

  private static long minute(String utc) {
    return LocalDateTime.parse(utc).toEpochSecond(ZoneOffset.UTC) / 60;
  }

  @Test
  void theMapTellsUnitsSignsClockAndHoles() throws IOException {
    MonitorLog log =
        read(
            MAP,
            """
            Anlage 7
            Export

            Zeit;PV;Haus;Akku;Ladung
            3.11.2024 12:15:03;1,25;40;-200;71,5
            3.11.2024 12:30:01;1,5;42,5;100;72
            3.11.2024 12:45:00;-1;;-50;72,5
            """);
    assertEquals(3, log.rows());
    assertEquals(15, log.stepMinutes());
    assertEquals(minute("2024-11-03T10:00"), log.startMinute(0), "12:15 at UTC+2 ends 10:00 UTC");
    assertEquals(15, log.chargeAtMinutes());
    assertEquals(1250.0, log.value(MonitorColumn.SOLAR, 0), 1e-9);
    assertEquals(160.0, log.value(MonitorColumn.LOAD, 0), 1e-9, "40 Wh in a quarter of an hour");
    assertEquals(200.0, log.value(MonitorColumn.BATTERY, 0), 1e-9);
    assertEquals(0.715, log.value(MonitorColumn.CHARGE, 0), 1e-9);
    assertTrue(Double.isNaN(log.value(MonitorColumn.SOLAR, 2)));
    assertTrue(Double.isNaN(log.value(MonitorColumn.LOAD, 2)));
    assertFalse(log.has(MonitorColumn.GENERATOR));
    assertEquals(MonitorLog.LoadAt.HOUSE, log.loadAt());
    assertEquals(MonitorLog.SolarAt.PANELS, log.solarAt());
  }

  @Test
  void thePlainFormNeedsNoMap() throws IOException {
    MonitorLog log =
        read(
            null,
            """
            # utc_offset: -6
            local_start,charge_pct,solar_w,load_wh,battery_v,battery_a
            2024-11-03T00:00,71.5,0,148,52,-3
            2024-11-03 01:00:00,70.5,0,150,,
            """);
    assertEquals(60, log.stepMinutes());
    assertEquals(minute("2024-11-03T06:00"), log.startMinute(0));
    assertEquals(148.0, log.value(MonitorColumn.LOAD, 0), 1e-9);
    assertEquals(52.0, log.value(MonitorColumn.VOLTAGE, 0), 1e-9);
    assertEquals(-3.0, log.value(MonitorColumn.CURRENT, 0), 1e-9);
    MonitorLog utc =
        read(null, "utc_end,charge_kwh\n2024-11-03T01:00Z,3.5\n2024-11-03T01:30Z,3.4\n");
    assertEquals(minute("2024-11-03T00:30"), utc.startMinute(0));
    assertTrue(utc.isChargeInWh());
    assertEquals(3500.0, utc.value(MonitorColumn.CHARGE, 0), 1e-9);
  }

  /** Else the log would be read on the site's clock, and nobody told. */
  @Test
  void aClockThatCannotBeReadIsRefused() {
    String rows = "local_start,load_w\n2024-11-03T00:00,5\n2024-11-03T01:00,6\n";
    String summer = refusal(null, "# made by hand\n# utc_offset: CEST\n" + rows);
    assertTrue(summer.contains(":2:15  utc_offset: found \"CEST\""), summer);
    assertTrue(summer.contains("must be hours from -14 to +14"), summer);
    assertTrue(summer.contains("Use standard time, not summer time."), summer);
    assertTrue(refusal(null, "# utc_offset: 15\n" + rows).contains("found \"15\""));
    assertTrue(refusal(null, "# utc_offset:\n" + rows).contains("found \"\""));
    String misspelt = refusal(null, "# utc-offset: 1\n" + rows);
    assertTrue(misspelt.contains(":1:3  unknown key \"utc-offset\""), misspelt);
    assertTrue(misspelt.contains("Did you mean utc_offset?"), misspelt);
  }

  @Test
  void rowsOfSecondsAreTakenOncePerMinute() throws IOException {
    var text = new StringBuilder("local_start,load_w\n");
    for (int s = 0; s < 3600; s += 20) {
      text.append(
          String.format(java.util.Locale.ROOT, "2024-11-03T05:%02d:%02d,%d%n", s / 60, s % 60, s));
    }
    MonitorLog log = read(null, text.toString());
    assertEquals(60, log.rows());
    assertEquals(1, log.stepMinutes());
    assertTrue(
        log.notes().stream().anyMatch(n -> n.startsWith("120 rows")), log.notes().toString());
  }

  @Test
  void faultsTellLineColumnAndHowToMend() {
    String back = refusal(null, "local_start,load_w\n2024-10-27T02:00,5\n2024-10-27T01:30,6\n");
    assertTrue(back.contains("log.csv:3:1") && back.contains("daylight saving"), back);
    String word = refusal(null, "local_start,load_w\n2024-10-27T02:00,five\n2024-10-27T03:00,6\n");
    assertTrue(word.contains("log.csv:2:18") && word.contains("must be a number"), word);
    String names = refusal(null, "when,watts\n2024-10-27T02:00,5\n");
    assertTrue(names.contains("--columns"), names);
    assertTrue(refusal(null, "").contains("empty"));
    assertTrue(
        refusal(null, "local_start,load_w\n2024-10-27T02:00,5\n").contains("1 row of values"));
    String daily = refusal(null, "local_start,load_w\n2024-10-27T00:00,5\n2024-10-28T00:00,6\n");
    assertTrue(daily.contains("1440 minutes apart"), daily);
    String cut =
        refusal(null, "local_start,charge_pct,load_w\n2024-10-27T00:00,5,1\n2024-10-27T01\n");
    assertTrue(cut.contains("cut off"), cut);
  }

  /**
   * Whichever way it leaps, one wrong date is one fault, at its own line where that can be told.
   */
  @Test
  void oneWrongDateIsToldOnce() {
    String rows = "local_start,load_w\n2024-11-03T00:00,5\n2024-11-03T01:00,6\n";
    String after = "2024-11-03T03:00,8\n2024-11-03T04:00,9\n2024-11-03T05:00,9\n";
    String ahead = rows + "2042-11-03T02:00,7\n" + after;
    String said = refusal(null, ahead);
    assertTrue(said.contains("log.csv:4:1  time is 6573 days ahead of line 5"), said);
    assertEquals(1, faults(ahead), said);
    String behind = rows + "2023-11-03T02:00,7\n" + after;
    assertTrue(refusal(null, behind).contains("log.csv:4:1  time goes back"), said);
    assertEquals(1, faults(behind));
    assertEquals(1, faults("local_start,load_w\n2042-11-03T02:00,7\n" + after));
    assertEquals(2, faults(ahead + "2042-11-03T06:00,7\n2024-11-03T07:00,7\n"));
  }

  private int faults(String text) {
    return assertThrows(BadInput.class, () -> read(null, text)).faults().size();
  }

  @Test
  void aWrongUnitIsRefusedNotRead() {
    String text = "t,soc\n2024-10-27 00:00,55\n2024-10-27 01:00,54\n";
    String map = "time: t\ntime_format: yyyy-MM-dd HH:mm\ncharge: soc, share\n";
    assertTrue(refusal(map, text).contains("unit"), refusal(map, text));
  }

  @Test
  void mapsAreRefusedWithEveryFault() {
    String map = "time: t\nstamp: noon\ncharge: soc, V\nsolar pv\nload_at: roof\nzone: 3\n";
    String said = refusal(map, "t,soc\n");
    for (String part :
        new String[] {
          "no time_format", "stamp", "(%, share, kWh, Wh)", "load_at", "Did you mean"
        }) {
      assertTrue(said.contains(part), part + " in " + said);
    }
    String missing =
        refusal(
            "time: t\ntime_format: yyyy-MM-dd HH:mm\ncharge: soc, %\n",
            "t,charge\n2024-10-27 00:00,55\n");
    assertTrue(missing.contains("no column \"soc\"") && missing.contains("t, charge"), missing);
  }

  @Test
  void twoColumnsOfOneThingAreRefused() {
    String rows = "2024-10-27T00:00,5,7\n2024-10-27T01:00,5,8\n";
    assertTrue(
        refusal(null, "local_start,solar_w,solar_w\n" + rows)
            .contains("log.csv:1:21  a second column of the same: solar_w and solar_w"));
    assertTrue(refusal(null, "local_start,load_w,load_kw\n" + rows).contains("load_w and load_kw"));
  }

  @Test
  void columnsThatAreNotReadAreTold() throws IOException {
    MonitorLog log =
        read(null, "local_start,load_w,charge\n2024-10-27T00:00,5,7\n2024-10-27T01:00,5,8\n");
    assertTrue(log.notes().contains("not read, since their names say nothing here: charge"));
  }

  @Test
  void aChargeWrittenAsAShareOfOneIsNoEmptyBank() throws IOException {
    var shares = new StringBuilder("local_start,charge_pct\n");
    var percents = new StringBuilder(shares);
    for (int h = 0; h < 24; h++) {
      String at = "2024-10-27T" + (h < 10 ? "0" : "") + h + ":00,";
      shares.append(at).append("0.").append(40 + h).append('\n');
      percents.append(at).append(40 + h).append('\n');
    }
    assertTrue(refusal(null, shares.toString()).contains("never above 1 %"));
    assertEquals(0.4, read(null, percents.toString()).value(MonitorColumn.CHARGE, 0), 1e-9);
  }

  /** A bank may well stay empty for half an hour. */
  @Test
  void minutesOfAnEmptyBankAreNoWrongUnit() throws IOException {
    var log = new StringBuilder("local_start,charge_pct\n");
    for (int m = 10; m < 50; m++) {
      log.append("2024-11-03T00:").append(m).append(",0\n");
    }
    assertEquals(0.0, read(null, log.toString()).value(MonitorColumn.CHARGE, 0), 1e-9);
  }

  @Test
  void columnsMayBeNamedByNumber() throws IOException {
    String map = "time: \"#1\"\ntime_format: yyyy-MM-dd HH:mm\nload: \"#3, W\"   # the house\n";
    MonitorLog log = read(map, "t,a,b\n2024-10-27 00:00,5,7\n2024-10-27 01:00,5,8\n");
    assertEquals(8.0, log.value(MonitorColumn.LOAD, 1), 1e-9);
  }

  @Test
  void halfLinesAndHalfColumnsAreNotRounded() {
    String map = "time: t\ntime_format: yyyy-MM-dd HH:mm\n";
    assertTrue(
        refusal(map + "skip_lines: 3.7\nload: w, W\n", "t,w\n").contains("must be a whole number"));
    assertTrue(
        refusal(map + "load: \"#2.5, W\"\n", "t,w\n2024-10-27 00:00,5\n")
            .contains("no column \"#2.5\""));
  }

  /** Rubbish ends in a fault of the input, never in one of the program. */
  @Test
  void brokenFilesEndInWords() {
    var random = new java.util.Random(5);
    String good =
        "local_start,charge_pct,load_w\n2024-10-27T00:00,55,100\n2024-10-27T01:00,54,90\n";
    for (int i = 0; i < 400; i++) {
      char[] text = good.toCharArray();
      for (int k = 0; k < 3; k++) {
        text[random.nextInt(text.length)] = (char) (32 + random.nextInt(95));
      }
      try {
        read(null, new String(text));
      } catch (BadInput e) {
        assertFalse(e.faults().isEmpty());
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
  }

  /** Years of a real house's hourly meter, read by a map; from the validation data. */
  @Test
  void aRealHousesLogIsRead() throws IOException {
    Path source = ValidationData.file("loads/uci_sceaux_household_hourly.csv.gz");
    byte[] text;
    try (var in = new GZIPInputStream(Files.newInputStream(source))) {
      text = in.readAllBytes();
    }
    Path file = Files.write(folder.resolve("house.csv"), text);
    Path mapFile =
        Files.writeString(
            folder.resolve("real.yaml"),
            """
            time: local_hour_start
            time_format: yyyy-MM-ddTHH:mm
            load: kwh, kWh
            """);
    MonitorLog log =
        MonitorReader.read(file, "house.csv", MonitorMap.read(mapFile, "real.yaml"), 1.0);
    assertEquals(60, log.stepMinutes());
    double sumWh = 0.0;
    for (int row = 0; row < log.rows(); row++) {
      double w = log.value(MonitorColumn.LOAD, row);
      sumWh += Double.isNaN(w) ? 0.0 : w;
    }
    double plainWh = 0.0;
    for (String line : Files.readAllLines(file)) {
      String[] cells = line.split(",", -1);
      boolean isValue = cells.length > 1 && !cells[1].isEmpty() && !cells[1].equals("kwh");
      plainWh += isValue ? 1000.0 * Double.parseDouble(cells[1]) : 0.0;
    }
    assertEquals(1.0, sumWh / plainWh, 1e-9);
    assertTrue(log.rows() > 10_000, "rows " + log.rows());
  }

  /** A real export that dates the midnight at a day's end by that day is told how to mend it. */
  @Test
  void aMidnightOfTheWrongDayIsTold() throws IOException {
    Path file = ValidationData.file("loads/openmv_home_hourly_2011-12.csv");
    Path mapFile =
        Files.writeString(
            folder.resolve("real.yaml"),
            """
            time: DateTime
            time_format: MM/dd/yyyy HH:mm:ss
            load: Consumption kWh, kWh
            """);
    MonitorMap map = MonitorMap.read(mapFile, "real.yaml");
    String said =
        assertThrows(BadInput.class, () -> MonitorReader.read(file, "house.csv", map, -5.0))
            .getMessage();
    assertTrue(said != null && said.contains("must bear the next day's date"), said);
  }

  /** Exports often put every name in quotes; the map's quotes are its own. */
  @Test
  void aQuotedRowOfNamesIsFoundByHowItBegins() throws IOException {
    String map =
        "names_begin: \"Zeit\"\ntime: Zeit\ntime_format: yyyy-MM-dd HH:mm\nload: Haus, W\n";
    String rows = "Anlage\n\"Zeit\",\"Haus\"\n2024-11-03 00:00,50\n2024-11-03 01:00,60\n";
    assertEquals(60, read(map, rows).stepMinutes());
    String refused = refusal(map, rows.replace("Zeit", "Datum"));
    assertTrue(refused.contains("no line begins \"Zeit\""), refused);
    assertTrue(refused.contains("names_begin"), refused);
    assertTrue(refused.contains("change the map"), refused);
  }
}
