package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.electrical.Finding;
import greyspell.electrical.Finding.Severity;
import greyspell.quantity.BadInput;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A header's extremes serve where the user is silent, said so, and never for the milder. */
class RecordsTest {
  private static final String HEADER =
      """
      LOCATION,Tarn Head,-,ARD,made,0,53.5,6.0,1.0,50.0
      DESIGN CONDITIONS,1,Handbook,,Heating,12,-2.6,Extremes,10,9,8,27,-7.5,31,3,2,-10,33,-12,34.5,-14,36,-17.4,37.6
      TYPICAL/EXTREME PERIODS,0
      GROUND TEMPERATURES,0
      HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0
      COMMENTS 1,made for a test
      COMMENTS 2,
      DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31
      """;

  @TempDir private Path folder = Path.of("");

  /** Ten degrees all year but for the first day. */
  private void weather(String header, double firstC) throws IOException {
    var text = new StringBuilder(header);
    var start = LocalDateTime.of(2019, 1, 1, 0, 0);
    for (int h = 0; h < 8760; h++) {
      LocalDateTime at = start.plusHours(h);
      text.append(at.getYear() + "," + at.getMonthValue() + "," + at.getDayOfMonth() + ",")
          .append(at.getHour() + 1)
          .append(",60,A7A7,")
          .append(h < 24 ? firstC : 10.0)
          .append(",2.0,80,99000,0,0,300,0,0,0,0,0,0,0,90,3.0,10,5,16.0,7620,9,")
          .append("999999999,89,0.0600,0,88,0.420,0.0,1.0\n");
    }
    Files.writeString(folder.resolve("w.epw"), text);
  }

  /** Peat Hut, 53.4 N 6.0 E, 8 m. */
  private Scenario home(String low, String high) throws IOException {
    String text =
        Files.readString(Path.of("scenarios/peat-hut.yaml"))
            .replace("../weather-samples/grey-maritime.csv", "w.epw")
            .replaceAll(
                "(?m)^ *record_low:.*\n", low.isEmpty() ? "" : "  record_low: " + low + "\n")
            .replaceAll(
                "(?m)^ *record_high:.*\n", high.isEmpty() ? "" : "  record_high: " + high + "\n");
    return ScenarioReader.read(
        Files.writeString(folder.resolve("home.yaml"), text), Path.of("shared"));
  }

  @Test
  void whatIsLeftOutIsTakenFromTheHeaderAndSaid() throws IOException {
    weather(HEADER, 0.0);
    Records records = Records.of(home("", ""));
    assertEquals(-17.4, records.lowC());
    assertEquals(37.6, records.highC());
    assertEquals(2, records.findings().size());
    Finding low = records.findings().get(0);
    assertEquals(Severity.CAUTION, low.severity());
    // 0.1 degree of latitude is 11 km
    assertEquals(
        "record_low is not stated; -17.4 °C is taken: what the weather file states once in 50 years"
            + " for Tarn Head, 11 km away and 42 m higher than the house",
        low.text());
    assertTrue(low.reason().contains("an old record may lie beyond: state record_low"));
    ElectricalCheck check = ElectricalCheck.of(home("", ""), null);
    assertTrue(check.findings().containsAll(records.findings()));
    assertEquals(-17.4, ElectricalCheck.rules(home("", ""), Records.of(home("", ""))).recordLowC());
  }

  /** Only what is really used is told. */
  @Test
  void oneThatIsStatedIsLeftAsItIs() throws IOException {
    weather(HEADER, 0.0);
    Records records = Records.of(home("-20 °C", ""));
    assertEquals(-20.0, records.lowC());
    assertEquals(37.6, records.highC());
    assertEquals(1, records.findings().size());
    assertTrue(records.findings().get(0).text().startsWith("record_high is not stated; 37.6 °C"));
    assertEquals(List.of(), Records.of(home("-20 °C", "40 °C")).findings());
  }

  /** The hours of the file may be colder than its own header. */
  @Test
  void theColderOfHeaderAndHoursIsTaken() throws IOException {
    weather(HEADER, -21.5);
    Records records = Records.of(home("", "40 °C"));
    assertEquals(-21.5, records.lowC());
    assertTrue(
        records
            .findings()
            .get(0)
            .text()
            .contains("the coldest hour of the weather file, beyond the -17.4 °C that it states"),
        records.findings().toString());
  }

  /** A mistyped record is not overruled, but not passed over either. */
  @Test
  void aStatedRecordThatIsMilderIsACaution() throws IOException {
    weather(HEADER, 0.0);
    Records records = Records.of(home("-1.4 °C", "30 °C"));
    assertEquals(-1.4, records.lowC());
    assertEquals(30.0, records.highC());
    assertEquals(2, records.findings().size());
    assertTrue(
        records
            .findings()
            .get(0)
            .text()
            .startsWith("record_low -1.4 °C, but the weather file states -17.4 °C once in 50"),
        records.findings().toString());
    assertTrue(records.findings().get(1).reason().contains("never were hotter"));
  }

  @Test
  void aPlaceFarAwayOrMuchLowerDoesNotSpeakForTheHouse() throws IOException {
    for (String place : List.of("55.0,6.0,1.0,50.0", "53.5,6.0,1.0,400.0")) {
      weather(HEADER.replace("53.5,6.0,1.0,50.0", place), 0.0);
      Records records = Records.of(home("", "33 °C"));
      assertNull(records.lowC(), place);
      assertTrue(records.findings().get(0).text().endsWith("the house: not taken"), place);
      ElectricalCheck check = ElectricalCheck.of(home("", "33 °C"), null);
      assertEquals(Severity.UNKNOWN, check.worst());
      assertTrue(check.failing().contains("cannot judge"), check.failing());
      assertEquals(List.of(), Records.of(home("-14 °C", "33 °C")).findings());
    }
  }

  /** A stated low above the header's high cannot be: nothing is made of it. */
  @Test
  void recordsThatContradictEachOtherAreNotKnown() throws IOException {
    weather(
        HEADER
            .replace("31,3,2", "12,3,2")
            .replace("33,-12,34.5,-14,36,-17.4,37.6", "13,-12,14,-14,15,-17.4,16"),
        0.0);
    assertNull(Records.of(home("20 °C", "")).highC());
  }

  @Test
  void weatherThatCannotBeReadIsNoGroundForARecord() throws IOException {
    Files.writeString(folder.resolve("w.epw"), HEADER + "2019,1,1,1\n");
    Scenario home = home("", "");
    assertThrows(BadInput.class, () -> Records.of(home));
    assertEquals(-14.0, Records.of(home("-14 °C", "33 °C")).lowC());
  }
}
