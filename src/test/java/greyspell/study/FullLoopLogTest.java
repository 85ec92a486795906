package greyspell.study;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.cause.log.Estimate;
import greyspell.cause.log.Finding;
import greyspell.cause.log.Finding.About;
import greyspell.cause.log.Shade;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.weather.MonitorReader;
import greyspell.weather.WeatherSeries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * As {@link LogStudyTest}, in a home that needs the full loop: two tanks, slow charging near full,
 * loads let go, and a generator that runs by its own rules and of which the log has a column.
 */
final class FullLoopLogTest {
  private static final int SEEDS = 6;
  private static final LocalDate AUTUMN = LocalDate.of(2023, 10, 10);
  private static final LocalDate WINTER = LocalDate.of(2023, 1, 15);
  private static final double HIDDEN_SHADE = 0.7;
  private static final Scenario COMBE =
      ScenarioReader.read(Path.of("scenarios/harrow-combe.yaml"), null);
  private static final WeatherSeries WEATHER = Study.read(COMBE);

  @TempDir private Path folder = Path.of("");

  private LogStudy study(LogChange fault, LocalDate from, long seed) throws IOException {
    var made = new MadeLog(COMBE, WEATHER);
    made.from = from;
    made.startShare = 0.9;
    made.driftPerDayShare = driftPerDayShare(seed);
    // a careful log: less chance from day to day than the 18 % that are looked for
    made.dayVariationShare = 0.08;
    made.hasGenerator = true;
    made.fault = fault;
    Path file = folder.resolve("log.csv");
    Files.writeString(file, made.text(seed));
    assertTrue(made.generatorHours >= 10, "it ran " + made.generatorHours + " hours");
    double offsetH = COMBE.site().utcOffsetH();
    return LogStudy.of(COMBE, MonitorReader.read(file, "log.csv", null, offsetH), WEATHER);
  }

  /** None with every third seed. */
  private static double driftPerDayShare(long seed) {
    return (seed % 3 - 1) * 0.002;
  }

  /** In every log what was hidden is named and nothing else; all but one of the ranges hold. */
  private List<LogStudy> assertFound(LogChange fault, About... hidden) throws IOException {
    var studies = new ArrayList<LogStudy>();
    Map<About, Integer> missed = new EnumMap<>(About.class);
    for (int seed = 1; seed <= SEEDS; seed++) {
      LogStudy study = study(fault, AUTUMN, seed);
      studies.add(study);
      assertNamed(study, hidden);
      for (Finding finding : study.diagnosis().findings()) {
        Estimate e = finding.estimate();
        if (e.isKnown()) {
          double truth = truth(fault, finding.about());
          missed.merge(
              finding.about(), truth >= e.low() && truth <= e.high() ? 0 : 1, Integer::sum);
        }
      }
    }
    missed.forEach((about, times) -> assertTrue(times <= 1, about + " missed " + times));
    assertTrue(missed.containsKey(About.BANK) && missed.containsKey(About.ARRAY));
    return studies;
  }

  private static void assertNamed(LogStudy study, About... hidden) {
    for (About about : About.values()) {
      Finding finding = study.diagnosis().about(about);
      boolean isNamed = finding != null && finding.isNamed();
      assertEquals(List.of(hidden).contains(about), isNamed, String.valueOf(finding));
    }
  }

  private static double truth(LogChange fault, About about) {
    return switch (about) {
      case ARRAY -> fault.arrayFactor();
      case LOAD -> fault.loadFactor();
      case BANK -> fault.bankFactor();
      default -> about.assumed();
    };
  }

  @Test
  void nothingIsNamedWhereNothingIsWrong() throws IOException {
    for (LogStudy study : assertFound(LogChange.NONE)) {
      assertEquals(0, study.shiftMinutes());
    }
  }

  @Test
  void dirtIsFound() throws IOException {
    assertFound(new LogChange(0.88, null, 1.0, 0.0, 0.0, 1.0, 1.0, 1.0), About.ARRAY);
  }

  /** In the grey of a sea coast few hours tell it: not found in every log, but nothing else is. */
  @Test
  void aMorningInShadeIsFoundWithItsHours() throws IOException {
    var share = new Estimate(HIDDEN_SHADE, HIDDEN_SHADE, HIDDEN_SHADE, 0, 0, "");
    var shade = new Shade(10, 13, share, Double.NaN, 0);
    var fault = new LogChange(1.0, shade, 1.0, 0.0, 0.0, 1.0, 1.0, 1.0);
    int found = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      LogStudy study = study(fault, WINTER, seed);
      Shade told = LogStudy.shade(study.diagnosis());
      if (told == null) {
        assertNamed(study);
      } else {
        found++;
        assertNamed(study, About.SHADE);
        assertEquals(10, told.fromHour());
        assertEquals(13, told.toHour());
        assertEquals(HIDDEN_SHADE, told.lostShare().value(), 0.1);
      }
    }
    assertTrue(found >= SEEDS / 2 + 1, "found in " + found);
  }

  @Test
  void aLoadEighteenPercentHigherIsFound() throws IOException {
    assertFound(new LogChange(1.0, null, 1.18, 0.0, 0.0, 1.0, 1.0, 1.0), About.LOAD);
  }

  @Test
  void aTiredBankOfTwoTanksIsFound() throws IOException {
    assertFound(new LogChange(1.0, null, 1.0, 0.0, 0.0, 1.0, 0.78, 1.0), About.BANK);
  }

  @Test
  void dirtAndATiredBankAreToldApart() throws IOException {
    var fault = new LogChange(0.88, null, 1.0, 0.0, 0.0, 1.0, 0.78, 1.0);
    List<LogStudy> studies = assertFound(fault, About.ARRAY, About.BANK);
    for (int seed = 1; seed <= SEEDS; seed++) {
      LogStudy study = studies.get(seed - 1);
      double together = requireNonNull(study.together()).chargeErrorShare();
      // this bank is seldom full, so that a meter that drifts is not set right: it hides the rest
      if (driftPerDayShare(seed) == 0.0) {
        assertTrue(together < 0.6 * study.chargeErrorShare(), "together " + together);
      }
    }
  }

  /** It stands with the generator, not with the inverter. */
  @Test
  void theGeneratorsOwnChargerIsTaken() throws IOException {
    assertEquals(0.89, requireNonNull(LogRun.charger(COMBE)).efficiency(), 1e-12);
    assertEquals(COMBE.inverter().charger(), LogRun.charger(COMBE.withGenerator(null)));
    for (String caution : study(LogChange.NONE, AUTUMN, 1).cautions()) {
      assertFalse(caution.contains("no charger"), caution);
    }
  }
}
