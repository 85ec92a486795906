package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import greyspell.scenario.ScenarioEdit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** By hand from the prices of Alder Fold: 210 a panel, 1,450 a battery. */
final class BuyingCostTest {
  private static final ScenarioEdit FOLD = ScenarioEdit.of(Path.of("scenarios/alder-fold.yaml"));
  private static final ScenarioEdit COMBE = ScenarioEdit.of(Path.of("scenarios/harrow-combe.yaml"));

  private static BuyingCost cost(ScenarioEdit from, String... changes) {
    ScenarioEdit then = from;
    for (int k = 0; k < changes.length; k += 2) {
      then = then.set(changes[k], changes[k + 1]);
    }
    return BuyingCost.of(from.scenario(null), then.scenario(null));
  }

  private static void told(double sumCost, List<String> unpriced, BuyingCost cost) {
    assertEquals(sumCost, cost.sumCost(), 1e-9);
    assertEquals(unpriced, cost.unpriced());
  }

  @Test
  void whatIsDoneCostsNothing() {
    told(0.0, List.of(), cost(FOLD, "loads.growth", "-10 %"));
    told(0.0, List.of(), cost(COMBE, "generator.start_below", "60 %"));
  }

  @Test
  void packsAndPanelsByTheirPrice() {
    int packs = FOLD.scenario(null).bank().packs();
    told(2 * 1450.0, List.of(), cost(FOLD, "bank.in_parallel", Integer.toString(packs + 2)));
    var plane = FOLD.scenario(null).arrays().get(0);
    String more = Integer.toString(plane.inParallel() + 1);
    told(plane.inSeries() * 210.0, List.of(), cost(FOLD, "arrays[0].in_parallel", more));
  }

  @Test
  void whatHasNoPriceIsNamed() {
    int count = FOLD.scenario(null).controller().count();
    int packs = FOLD.scenario(null).bank().packs();
    told(
        1450.0,
        List.of("costs.per_controller"),
        cost(
            FOLD,
            "bank.in_parallel",
            Integer.toString(packs + 1),
            "controller.count",
            Integer.toString(count + 1)));
    told(0.0, List.of("costs.per_tilted_module"), cost(FOLD, "arrays[0].tilt", "80 deg"));
    ScenarioEdit manual = COMBE.remove("generator.home_hours");
    told(0.0, List.of("generator.policy"), cost(manual, "generator.policy", "auto"));
  }

  @Test
  void tiltingIsPaidForEachPanelThatIsTurned() {
    int modules = FOLD.scenario(null).arrays().get(0).modules();
    told(
        modules * 30.0,
        List.of(),
        cost(FOLD.set("costs.per_tilted_module", "30"), "arrays[0].tilt", "80 deg"));
  }

  @Test
  void aGeneratorIsOne() {
    String block =
        "{rated_power: 2 kW, fuel: petrol, fuel_use: [[100 %, 1.2 l/h]], start_below: 20 %,"
            + " charger: {power: 1 kW}}";
    told(900.0, List.of(), cost(FOLD.set("costs.generator", "900"), "generator", block));
  }
}
