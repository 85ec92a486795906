package greyspell.ladder;

import greyspell.array.ArraySpec;
import greyspell.ladder.Step.Change;
import greyspell.ladder.Step.Kind;
import greyspell.ladder.Step.Price;
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
  /** Below it a bank is one that has served. */
  private static final double AS_NEW_SHARE = 0.995;

  private static final double SAME_TILT_DEG = 5.0;

  /** An own choice. */
  private static final String CHARGER = "2 kW";

  private static final int[] TILTS_DEG = {60, 75, 90};
  private static final int[] STRINGS = {1, 2};

  private final Scenario home;
  private final Costs costs;
  private final ScenarioEdit text;
  private final @Nullable Double packLifeYears;
  private final List<Step> steps = new ArrayList<>();

  private PaidSteps(Scenario home, ScenarioEdit text, @Nullable Double packLifeYears) {
    this.home = home;
    this.text = text;
    this.packLifeYears = packLifeYears;
    costs = home.costs();
  }

  /**
   * For the home as it now stands.
   *
   * @param packLifeYears after which a new bank is worn, null for not within the years
   * @param generator a name of the equipment library, or a block
   * @param done measures that have been taken
   */
  static List<Step> of(
      Scenario home,
      ScenarioEdit text,
      @Nullable Double packLifeYears,
      String generator,
      List<String> done) {
    var paid = new PaidSteps(home, text, packLifeYears);
    for (int k = 0; k < home.arrays().size(); k++) {
      paid.strings(k);
      paid.tilts(k);
    }
    paid.pack();
    paid.newBank();
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
          (modules == 1 ? "1 panel" : modules + " panels")
              + " more on \""
              + plane.name()
              + "\" ("
              + more
              + (more == 1 ? " string of " : " strings of ")
              + plane.inSeries()
              + ")";
      var panels = new Price("costs.per_module", "a panel", modules, costs.perModuleCost());
      add(Kind.PANELS, words, List.of(change), List.of(panels), null);
      if (text.written("controller") == null) {
        continue;
      }
      int count = home.controller().count() + 1;
      add(
          Kind.PANELS,
          words + " with one more " + home.controller().name(),
          List.of(change, new Change("controller.count", Integer.toString(count))),
          List.of(
              panels,
              new Price("costs.per_controller", "a controller", 1, costs.perControllerCost())),
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
            List.of(
                new Price(
                    "costs.per_tilted_module",
                    "tilting a panel",
                    plane.modules(),
                    costs.perTiltedModuleCost())),
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
        List.of(packs(1)),
        packLifeYears);
  }

  /** As large as the one that stands, where that has served for years. */
  private void newBank() {
    double healthShare = home.bank().healthShare();
    if (healthShare < AS_NEW_SHARE) {
      add(
          Kind.PACK,
          "Storage: a new bank of the same size, now at " + Show.percent(healthShare),
          List.of(new Change("bank.health", "100 %")),
          List.of(packs(home.bank().packs())),
          packLifeYears);
    }
  }

  private Price packs(int count) {
    return new Price("costs.per_pack", "a pack", count, costs.perPackCost());
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
        List.of(new Price("costs.generator", "the generator", 1, costs.generatorCost())),
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
        List.of(new Price("costs.measures[" + m.name() + "].price", m.name(), 1, m.onceCost())),
        null);
  }

  private void add(
      Kind kind,
      String words,
      List<Change> changes,
      List<Price> prices,
      @Nullable Double lifeYears) {
    steps.add(new Step(kind, words, changes, prices, lifeYears));
  }
}
