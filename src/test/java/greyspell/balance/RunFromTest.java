package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Trials;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Some hours of a run are those of the whole run that comes by with the same charge. */
final class RunFromTest {
  @ParameterizedTest
  @ValueSource(strings = {"scenarios/alder-fold.yaml", "scenarios/whin-cabin.yaml"})
  void aPartIsThatPartOfTheWhole(String file) {
    Scenario home = ScenarioReader.read(Path.of(file));
    Trials trials = Trials.of(home, (what, done) -> {});
    Forcing forcing = trials.forcing(0, home, Set.of());
    Design design = trials.design(0, home, Set.of());
    Ledger whole = Ledger.of(forcing, design), part = Ledger.of(forcing, design);
    double startWh = 0.4 * design.bank().windowWh();
    double endWh = Balance.run(forcing, design, startWh, whole);
    int from = 7000, count = 800;
    double atWh = Balance.runFrom(forcing, design, whole.chargeWh()[from - 1], part, from, count);
    assertEquals(whole.chargeWh()[from + count - 1], atWh, 1e-9);
    for (int h = from; h < from + count; h++) {
      assertEquals(whole.chargeWh()[h], part.chargeWh()[h], 1e-9);
      assertEquals(whole.unmetWh(h), part.unmetWh(h), 1e-9);
    }
    // over the end the hours go on at the first one
    int last = forcing.hours() - 5;
    Balance.run(forcing, design, endWh, whole);
    double overWh = Balance.runFrom(forcing, design, 0.0, part, last, 30);
    double toEndWh = Balance.runFrom(forcing, design, 0.0, part, last, 5);
    assertEquals(Balance.runFrom(forcing, design, toEndWh, part, 0, 25), overWh, 1e-9);
    assertThrows(
        IllegalArgumentException.class,
        () -> Balance.runFrom(forcing, design, 0.0, part, 0, forcing.hours() + 1));
  }
}
