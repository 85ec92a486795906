package greyspell.ladder;

import greyspell.array.ArraySpec;
import greyspell.ladder.Step.Change;
import greyspell.ladder.Step.Kind;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Costs;
import greyspell.scenario.Scenario.Measure;
import greyspell.scenario.ScenarioEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What could be bought: whole strings, one pack, another tilt, a generator, the user's measures.
 */
final class PaidSteps {
  private static final String PER_CONTROLLER = "costs.per_controller";
  private static final double SAME_TILT_DEG = 5.0;

  /** An own choice. */
  private static final String CHARGER = "2 kW";

  private static final int[] TILTS_DEG = {60, 75, 90};
  private static final int[] STRINGS = {1, 2};

  private final Scenario home;
  private final Costs costs;
  private final ScenarioEdit text;
  private final @Nullable Double bankLifeYears;
  private final List<Step> steps = new ArrayList<>();

  private PaidSteps(Scenario home, ScenarioEdit text, @Nullable Double bankLifeYears) {
    this.home = home;
    this.text = text;
    this.bankLifeYears = bankLifeYears;
    costs = home.costs();
  }

  /**
   * For the home as it now stands.
   *
   * @param bankLifeYears after which its bank is replaced, null for not within the years
   * @param generator a name of the equipment library, or a block
   * @param done measures that have been taken
   */
  static List<Step> of(
      Scenario home,
      ScenarioEdit text,
      @Nullable Double bankLifeYears,
      String generator,
      List<String> done) {
    var paid = new PaidSteps(home, text, bankLifeYears);
    for (int k = 0; k < home.arrays().size(); k++) {
      paid.strings(k);
      paid.tilts(k);
    }
    paid.pack();
    if (home.generator() == null) {
      paid.generator(generator);
    }
    home.costs().measures().stream().filter(m -> !done.contains(m.name())).forEach(paid::measure);
    return paid.steps;
  }

  private void strings(int k) {
    ArraySpec plane = home.arrays().get(k);
    for (int more : STRINGS) {
      int modules = more * plane.inSeries();
      var change =
          new Change("arrays[" + k + "].in_parallel", Integer.toString(plane.inParallel() + more));
      String words =
          modules
              + " panels more on \""
              + plane.name()
              + "\" ("
              + more
              + (more == 1 ? " string of " : " strings of ")
              + plane.inSeries()
              + ")";
      Double cost = times(costs.perModuleCost(), modules);
      add(Kind.PANELS, words, List.of(change), cost, List.of("costs.per_module"), modules, null);
      if (text.written("controller") == null) {
        continue;
      }
      int count = home.controller().count() + 1;
      Double controller = costs.perControllerCost();
      add(
          Kind.PANELS,
          words + " with one more " + home.controller().name(),
          List.of(change, new Change("controller.count", Integer.toString(count))),
          cost == null || controller == null ? null : Double.valueOf(cost + controller),
          List.of("costs.per_module", PER_CONTROLLER),
          modules,
          null);
    }
  }

  private void tilts(int k) {
    ArraySpec plane = home.arrays().get(k);
    for (int tiltDeg : TILTS_DEG) {
      if (Math.abs(plane.tiltDeg() - tiltDeg) > SAME_TILT_DEG) {
        add(
            Kind.TILT,
            "\""
                + plane.name()
                + "\" at "
                + tiltDeg
                + " degrees, now "
                + Show.angle(plane.tiltDeg()),
            List.of(new Change("arrays[" + k + "].tilt", tiltDeg + " deg")),
            times(costs.perTiltedModuleCost(), plane.modules()),
            List.of("costs.per_tilted_module"),
            plane.modules(),
            null);
      }
    }
  }

  private void pack() {
    String written = text.written("bank.in_parallel");
    int packs = written == null ? 1 : Integer.parseInt(written.strip());
    double packWh = home.bank().capacityWh() / packs;
    add(
        Kind.PACK,
        "Storage: "
            + Show.energy(packWh)
            + " more ("
            + (packs + 1)
            + " in parallel, now "
            + packs
            + ")",
        List.of(new Change("bank.in_parallel", Integer.toString(packs + 1))),
        costs.perPackCost(),
        List.of("costs.per_pack"),
        1,
        bankLifeYears);
  }

  private void generator(String generator) {
    add(
        Kind.GENERATOR,
        "A generator ("
            + generator.lines().findFirst().orElse("")
            + ")"
            + (hasCharger()
                ? ""
                : " with a charger of " + CHARGER + ", assumed: the inverter has none"),
        List.of(new Change("generator", block(generator))),
        costs.generatorCost(),
        List.of("costs.generator", "costs.fuel_per_litre"),
        1,
        null);
  }

  private boolean hasCharger() {
    return home.inverter().charger() != null;
  }

  /** With an assumed charger where the inverter has none; the step's words tell it. */
  private String block(String generator) {
    if (hasCharger()) {
      return String.format(Locale.ROOT, "{from: %s}", generator);
    }
    return String.format(Locale.ROOT, "{from: %s, charger: {power: %s}}", generator, CHARGER);
  }

  private void measure(Measure m) {
    add(
        Kind.MEASURE,
        m.name(),
        List.of(new Change(m.path(), m.value())),
        m.onceCost(),
        List.of(),
        1,
        null);
  }

  private void add(
      Kind kind,
      String words,
      List<Change> changes,
      @Nullable Double onceCost,
      List<String> priceKeys,
      int pieces,
      @Nullable Double lifeYears) {
    steps.add(new Step(kind, words, changes, onceCost, priceKeys, pieces, lifeYears));
  }

  private static @Nullable Double times(@Nullable Double cost, int pieces) {
    return cost == null ? null : Double.valueOf(cost * pieces);
  }
}
