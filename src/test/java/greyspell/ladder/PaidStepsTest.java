package greyspell.ladder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PaidStepsTest {
  /** What is added beside the engine stands in the words of the step. */
  @Test
  void aChargerThatIsAssumedIsTold() {
    ScenarioEdit text = ScenarioEdit.of(Path.of("scenarios/alder-fold.yaml"));
    Scenario home = text.scenario(null);
    Step engine =
        PaidSteps.of(home, text, null, "Ember Hollow EH-4P", List.of()).stream()
            .filter(step -> step.kind() == Step.Kind.GENERATOR)
            .findFirst()
            .orElseThrow();
    boolean isAdded = engine.changes().get(0).value().contains("charger");
    assertEquals(home.inverter().charger() == null, isAdded);
    assertEquals(isAdded, engine.words().contains("charger of 2 kW, assumed"), engine.words());
    assertTrue(engine.words().contains("Ember Hollow EH-4P"), engine.words());
  }
}
