package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.outcome.Outcome.WinterBooks;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.weather.ensemble.ClimateSite;
import greyspell.weather.ensemble.EnsembleSource;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class TrialsTest {
  static Stream<Path> homes() throws Exception {
    try (var files = Files.list(Path.of("scenarios"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("homes")
  void aTrialIsWhatRunTells(Path file) {
    Scenario home = ScenarioReader.read(file);
    StudyResult run = Study.run(home, (what, done) -> {});
    Trials trials = Trials.of(home, (what, done) -> {});
    // the second time from what was kept
    for (int k = 0; k < 2; k++) {
      Trial trial = trials.run(home);
      List<WinterBooks> whole =
          run.outcome().winters().stream().filter(w -> w.winter().isWhole()).toList();
      assertEquals(Unmet.of(run.ledger()), trial.unmet());
      assertEquals(whole, trial.winters());
      assertEquals(
          run.fuelBetween(0, run.ledger().hours()).fuelL() / trials.years(), trial.fuelL(), 1e-9);
      assertEquals(run.outcome().total().curtailedWh() / trials.years(), trial.curtailedWh(), 1e-6);
      assertEquals(whole.stream().map(w -> w.winter().name()).toList(), trials.winters());
    }
  }

  @Test
  void aVariantIsWhatRunTellsOfIt() {
    Scenario home = ScenarioReader.read(Path.of("scenarios/alder-fold.yaml"));
    Trials trials = Trials.of(home, (what, done) -> {});
    trials.run(home);
    var arrays = new ArrayList<>(home.arrays());
    arrays.set(1, arrays.get(1).withStrings(arrays.get(1).module(), 6, 2));
    Scenario more = home.withArrays(arrays);
    assertEquals(Unmet.of(Study.run(more, (what, done) -> {}).ledger()), trials.run(more).unmet());
    assertTrue(trials.run(more).unmet().wh() < trials.run(home).unmet().wh());
    Scenario elsewhere = ScenarioReader.read(Path.of("scenarios/peat-hut.yaml"));
    assertThrows(IllegalArgumentException.class, () -> trials.run(elsewhere));
  }

  @Test
  void drawnWintersAreRunOneByOne() {
    Scenario home = ScenarioReader.read(Path.of("scenarios/alder-fold.yaml"));
    var series = Study.read(home);
    var source = EnsembleSource.spliced(series, ClimateSite.of(series.source(), null, null), 6, 7L);
    Trials trials = Trials.of(home, source, 6, (what, done) -> {});
    Trial all = trials.run(home);
    assertEquals(6, all.winters().size());
    double sumWh = 0.0;
    for (int w = 0; w < 6; w++) {
      Unmet alone = Unmet.of(trials.books(w, home, Set.of()));
      sumWh += alone.wh();
      assertEquals(source.name(w), all.winters().get(w).winter().name());
      assertEquals(alone.wh(), all.winters().get(w).figures().unmetWh(), 1e-6);
    }
    assertEquals(sumWh / 6.0, all.unmet().wh(), 1e-6);
  }
}
