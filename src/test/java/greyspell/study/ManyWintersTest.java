package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Ledger;
import greyspell.calendar.HourCalendar;
import greyspell.outcome.WinterReader;
import greyspell.outcome.WinterRecord;
import greyspell.outcome.WinterSum;
import greyspell.quantity.BadInput;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.weather.PlainCsvWriter;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.WeatherYear;
import greyspell.weather.ensemble.WinterKind;
import greyspell.weather.ensemble.WinterSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A home through many winters is that home through each of them. */
class ManyWintersTest {
  private static final Study.Steps SILENT = (what, done) -> {};
  private static final String MEANS =
      """
      # place: Mewsand
      # latitude: 53.2
      # longitude: 6.1
      # utc_offset: 1
      month,global_kwhm2_day,temperature_c
      1,0.62,3.4
      2,1.29,3.7
      3,2.51,6.1
      4,4.11,9.3
      5,5.02,13.0
      6,5.18,15.8
      7,5.05,17.9
      8,4.25,17.7
      9,2.98,14.8
      10,1.62,11.0
      11,0.79,6.9
      12,0.48,4.1
      """;

  @TempDir private Path folder = Path.of("");

  private Scenario home(String name, String weather) throws IOException {
    String text = Files.readString(Path.of("scenarios", name + ".yaml"));
    String changed =
        text.replaceFirst("(?m)^weather:.*$", weather.isEmpty() ? "$0" : "weather: " + weather)
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString())
            .replace(
                "sedge-island-stream.csv",
                Path.of("scenarios", "sedge-island-stream.csv").toAbsolutePath().toString());
    Files.writeString(folder.resolve("means.csv"), MEANS);
    return ScenarioReader.read(
        Files.writeString(folder.resolve(name + ".yaml"), changed), Path.of("shared"));
  }

  private static void assertSame(WinterRecord a, WinterRecord b, double toleranceWh) {
    String what = a.name() + ", " + b.name() + ": ";
    for (int month = 1; month <= 12; month++) {
      for (WinterSum sum : WinterSum.values()) {
        double wh = a.months().wh(sum, month);
        assertEquals(wh, b.months().wh(sum, month), toleranceWh, what + sum + " " + month);
      }
      assertEquals(a.months().unmetHours(month), b.months().unmetHours(month), what + month);
    }
    assertEquals(a.lowestChargeWh(), b.lowestChargeWh(), toleranceWh, what);
    assertEquals(a.lowestDay(), b.lowestDay(), what);
    assertEquals(a.spells().size(), b.spells().size(), what);
    assertEquals(a.longestShortfall().hours(), b.longestShortfall().hours(), what);
    assertEquals(a.ridingBank().leastWh(), b.ridingBank().leastWh(), toleranceWh, what);
    for (int day = 0; day < WinterRecord.DAYS; day++) {
      assertEquals(a.lowestShare(day), b.lowestShare(day), toleranceWh, what);
    }
  }

  /** Made, spliced and measured; fast and full loop; voltage that is followed, outdoors, hot. */
  @ParameterizedTest
  @CsvSource({
    "alder-fold, made",
    "alder-fold, spliced",
    "alder-fold, measured",
    "grandfell-farm, made",
    "harrow-combe, spliced",
    "kelp-point, made",
    "peat-hut, made",
    "sedge-island, made",
    "tamarisk-mesa, measured",
    "whin-cabin, made"
  })
  void everyWinterIsWhatAStudyOfItAloneGives(String name, String how) throws IOException {
    Scenario home = home(name, "");
    WinterKind kind = WinterKind.valueOf(how.toUpperCase(Locale.ROOT));
    WintersWanted wanted = WintersWanted.of(home, 3).withHow(kind);
    ManyWinters many = ManyWinters.run(home, wanted, 2, SILENT);
    assertFalse(many.book().winters().isEmpty());
    for (WinterRecord winter : many.book().winters()) {
      StudyResult alone = many.inFull(winter, SILENT);
      Ledger books = alone.ledger();
      var design = new HomeDesign(home, Without.NOTHING).make(alone.weather(), new ArrayList<>());
      var reader = new WinterReader(design, winter.seamDay() * 24, home.bank().standbyW());
      assertSame(reader.read(books, winter.number(), winter.name()), winter, 1e-6);
      assertEquals(
          alone.outcome().total().unmetHours(), winter.unmetHours(), "as the page tells it");
    }
  }

  /**
   * More packs bring their electronics: the bank told from six is the one that is run with more.
   */
  @ParameterizedTest
  @CsvSource({"12", "24", "34"})
  void theBankThatRidesThroughIsThatOfSoManyPacks(int packs) throws IOException {
    Scenario six = home("alder-fold", "{means: means.csv}");
    Path file = folder.resolve("alder-fold.yaml");
    String more =
        Files.readString(file).replaceFirst("in_parallel: 6 ", "in_parallel: " + packs + " ");
    Scenario many = ScenarioReader.read(Files.writeString(file, more), Path.of("shared"));
    WintersWanted wanted = WintersWanted.of(six, 40);
    var book = ManyWinters.run(many, wanted, 2, SILENT).book();
    long told =
        ManyWinters.run(six, wanted, 2, SILENT).book().winters().stream()
            .filter(w -> w.ridingBank().leastWh() > book.usableBankWh())
            .count();
    assertTrue(told > 0 && told < 40, told + " of 40");
    assertEquals(told, book.darkCount());
  }

  @ParameterizedTest
  @CsvSource({"alder-fold", "kelp-point"})
  void threadsMakeNoDifference(String name) throws IOException {
    Scenario home = home(name, "");
    WintersWanted wanted = WintersWanted.of(home, 11).withHow(WinterKind.MADE);
    List<WinterRecord> one = ManyWinters.run(home, wanted, 1, SILENT).book().winters();
    for (int threads : new int[] {2, 5, 40}) {
      List<WinterRecord> more = ManyWinters.run(home, wanted, threads, SILENT).book().winters();
      assertEquals(11, more.size());
      for (int w = 0; w < 11; w++) {
        assertEquals(w, more.get(w).number());
        assertSame(one.get(w), more.get(w), 0.0);
      }
    }
  }

  @Test
  void anotherSeedIsOtherWintersAndTheSameSeedTheSame() throws IOException {
    Scenario home = home("alder-fold", "{means: means.csv, winters: 4, seed: 7}");
    WintersWanted wanted = WintersWanted.of(home, null);
    var seven = ManyWinters.run(home, wanted, 2, SILENT).book();
    assertSame(
        seven.winters().get(3),
        ManyWinters.run(home, wanted, 2, SILENT).book().winters().get(3),
        0);
    Scenario other = home("alder-fold", "{means: means.csv, winters: 4, seed: 8}");
    var eight = ManyWinters.run(other, WintersWanted.of(other, null), 2, SILENT).book();
    assertTrue(
        seven.winters().get(0).wh(WinterSum.UNMET) != eight.winters().get(0).wh(WinterSum.UNMET));
  }

  @Test
  void aStartThatIsStatedDoesNotCutIntoDecember() throws IOException {
    Scenario home = home("alder-fold", "{means: means.csv, winters: 2}\nstart: 10 %");
    Scenario steady = home("alder-fold", "{means: means.csv, winters: 2}");
    var stated = ManyWinters.run(home, WintersWanted.of(home, null), 1, SILENT).book();
    var round = ManyWinters.run(steady, WintersWanted.of(steady, null), 1, SILENT).book();
    assertSame(round.winters().get(1), stated.winters().get(1), 0.0);
  }

  @Test
  void troubleOfOneThreadIsTold() throws IOException {
    Scenario home = home("alder-fold", "");
    WintersWanted wanted = WintersWanted.of(home, 5).withHow(WinterKind.MADE);
    var told =
        assertThrows(
            IllegalStateException.class,
            () ->
                ManyWinters.run(
                    home,
                    wanted,
                    3,
                    (what, done) -> {
                      if (done > 0.5) {
                        throw new IllegalStateException("stopped");
                      }
                    }));
    assertEquals("stopped", told.getMessage());
  }

  // ---- which winters
  // -----------------------------------------------------------------------------

  @Test
  void byWhatThereIs() throws IOException {
    Scenario years = home("alder-fold", "");
    assertEquals(WinterKind.MEASURED, WintersWanted.of(years, null).draw(years).kind());
    assertEquals(WinterKind.SPLICED, WintersWanted.of(years, 20).draw(years).kind());
    assertEquals(20, WintersWanted.of(years, 20).source(years).years());
    Scenario means = home("alder-fold", "{means: means.csv}");
    WintersDrawn made = WintersWanted.of(means, null).draw(means);
    assertEquals(WinterKind.MADE, made.kind());
    assertEquals(WintersWanted.USUAL, made.source().years());
  }

  @Test
  void moreMeasuredWintersThanThereAreAreSaidAndFewerAreTheLast() throws IOException {
    Scenario home = home("alder-fold", "");
    WintersWanted all = WintersWanted.of(home, null);
    int has = all.source(home).years();
    WintersDrawn more = WintersWanted.of(home, 99).withHow(WinterKind.MEASURED).draw(home);
    assertEquals(has, more.source().years());
    assertTrue(more.cautions().get(0).startsWith("99 measured winters are wanted"));
    WintersDrawn one = WintersWanted.of(home, 1).withHow(WinterKind.MEASURED).draw(home);
    assertEquals(1, one.source().years());
    assertEquals(all.source(home).name(has - 1), one.source().name(0));
  }

  @Test
  void aTypicalYearHidesBadWintersAndSaysSo() throws IOException {
    writeTypicalYear();
    Scenario home = home("alder-fold", "{file: typical.csv}");
    WintersDrawn drawn = WintersWanted.of(home, null).draw(home);
    assertEquals(WinterKind.MADE, drawn.kind());
    assertTrue(drawn.cautions().get(0).contains("the bad winters are not in it"));
    var wanted = WintersWanted.of(home, 5).withHow(WinterKind.SPLICED);
    BadInput told = assertThrows(BadInput.class, () -> wanted.draw(home));
    assertEquals("found 1 typical year", told.faults().get(0).found());
    assertThrows(
        BadInput.class, () -> WintersWanted.of(home, 5).withHow(WinterKind.MEASURED).draw(home));
    assertNull(ManyWinters.run(home, WintersWanted.of(home, 2), 1, SILENT).typical());
  }

  @Test
  void aTypicalYearIsRankedBesideMeasuredOnes() throws IOException {
    writeTypicalYear();
    String years = Path.of("weather-samples/grey-maritime.csv").toAbsolutePath().toString();
    Scenario home = home("alder-fold", "{file: typical.csv, years: " + years + "}");
    TypicalRank rank = ManyWinters.run(home, WintersWanted.of(home, null), 1, SILENT).typical();
    assertNotNull(rank);
    assertTrue(rank.rank() >= 1 && rank.rank() <= rank.winters() + 1, rank.words());
    List<String> alone = Study.run(home, SILENT).cautions();
    assertEquals(rank.words(), alone.get(0), "run by itself it is ranked too");
  }

  @Test
  void aTypicalYearIsNoMeasuredOne() throws IOException {
    writeTypicalYear();
    Scenario home = home("alder-fold", "{file: typical.csv, years: typical.csv}");
    BadInput told = assertThrows(BadInput.class, () -> Study.run(home, SILENT));
    assertEquals("found a typical year", told.faults().get(0).found());
    var wanted = WintersWanted.of(home, 5);
    assertThrows(BadInput.class, () -> wanted.draw(home));
  }

  @Test
  void fewYearsBehindManyWintersAreTold() throws IOException {
    Scenario home = home("alder-fold", "");
    WintersDrawn spliced = WintersWanted.of(home, 60).draw(home);
    assertEquals(WinterKind.SPLICED, spliced.kind());
    assertTrue(spliced.cautions().get(0).startsWith("Only 3 measured years stand behind"));
  }

  @Test
  void aWinterShownInFullSaysWhatKindItIs() throws IOException {
    Scenario home = home("alder-fold", "");
    for (WinterKind kind : WinterKind.values()) {
      WinterSource source = WintersWanted.of(home, 2).withHow(kind).source(home);
      String format = EnsembleSeries.oneWinter(source, 0).source().format();
      assertTrue(format.startsWith(kind.name().toLowerCase(Locale.ROOT)), format);
    }
  }

  /** A winter of the sample, dressed up as a typical year, beside the home. */
  private void writeTypicalYear() throws IOException {
    Scenario years = home("alder-fold", "");
    WinterSource source = WintersWanted.of(years, null).source(years);
    var year = new WeatherYear();
    source.fill(0, year);
    PlainCsvWriter.write(
        EnsembleSeries.ring(source, year, HourCalendar.typicalYear()),
        List.of(),
        folder.resolve("typical.csv"));
  }
}
