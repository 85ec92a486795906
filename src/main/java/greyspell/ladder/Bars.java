package greyspell.ladder;

import greyspell.array.ArraySpec;
import greyspell.outcome.Figures;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.quantity.BadInput;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.Trial;
import greyspell.study.Trials;
import greyspell.study.Unmet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Moves one assumption at a time to both ends of a range. The ranges are own choices: 15 % on what
 * the house uses, a quarter more of it one day, five points of dirt, a bank at 80 % of its health,
 * five points of reserve, 30 % on prices.
 */
final class Bars {
  /** The first buy is looked for again only where that does not take long. */
  private static final int FEW_YEARS = 12;

  /** The US gallon, by its definition of 231 cubic inches. */
  private static final double LITRES_A_GALLON = 3.785411784;

  private static final UnaryOperator<ScenarioEdit> AS_IT_IS = UnaryOperator.identity();
  private static final double LOAD = 0.15, GROWN = 0.25, DIRT = 0.05, PRICE = 0.3;

  private final ScenarioEdit text;
  private final @Nullable Path library;
  private final Trials trials;
  private final Trying afterFree;
  private final Function<Trying, String> buying;
  private final Scenario home;
  private final Trial now;
  private final List<Bar> bars = new ArrayList<>();

  /**
   * Around a home as it stands.
   *
   * @param now what it comes to
   * @param afterFree with all done that costs nothing: from there the first buy is looked for
   * @param buying what a home would buy first
   */
  Bars(
      ScenarioEdit text,
      @Nullable Path library,
      Trials trials,
      Trial now,
      Trying afterFree,
      Function<Trying, String> buying) {
    this.text = text;
    this.library = library;
    this.trials = trials;
    this.afterFree = afterFree;
    this.buying = buying;
    home = trials.home();
    this.now = now;
  }

  List<Bar> all() {
    double growth = 1.0 + home.load().growthFraction();
    bar(
        "what the house uses",
        "15 % less",
        "15 % more",
        load(growth * (1.0 - LOAD)),
        load(growth * (1.0 + LOAD)));
    bar("growth of the load", "as now", "a quarter more", AS_IT_IS, load(growth * (1.0 + GROWN)));
    bar("dirt on the glass", "as stated", "5 points more", AS_IT_IS, this::dirtier);
    double health = home.bank().healthShare();
    bar(
        "the bank's health",
        "as stated, " + Show.percent(health),
        Show.percent(0.8 * health),
        AS_IT_IS,
        set("bank.health", percent(0.8 * health)));
    double reserve = home.bank().reserveFraction();
    if (reserve > 0.05 && reserve < 0.9) {
      bar(
          "the reserve",
          Show.percent(reserve - 0.05),
          Show.percent(reserve + 0.05),
          set("reserve", percent(reserve - 0.05)),
          set("reserve", percent(reserve + 0.05)));
    }
    whichWinter();
    price("costs.per_pack", "price of storage", home.costs().perPackCost());
    price("costs.per_module", "price of panels", home.costs().perModuleCost());
    fuel();
    bars.sort(Comparator.comparingDouble(Bar::widthWh).reversed());
    return bars;
  }

  private UnaryOperator<ScenarioEdit> load(double factor) {
    return set("loads.growth", percent(factor - 1.0));
  }

  private static UnaryOperator<ScenarioEdit> set(String path, String value) {
    return edit -> edit.set(path, value);
  }

  private static String percent(double share) {
    return Show.number(share * 100.0, 2) + " %";
  }

  private ScenarioEdit dirtier(ScenarioEdit edit) {
    ScenarioEdit changed = edit;
    for (int k = 0; k < home.arrays().size(); k++) {
      ArraySpec plane = home.arrays().get(k);
      var months = new ArrayList<String>();
      for (int m = 1; m <= 12; m++) {
        months.add(percent(Math.min(1.0, plane.soilingFraction().in(m) + DIRT)));
      }
      changed = changed.set("arrays[" + k + "].soiling", "[" + String.join(", ", months) + "]");
    }
    return changed;
  }

  private void bar(
      String what,
      String lowWords,
      String highWords,
      UnaryOperator<ScenarioEdit> low,
      UnaryOperator<ScenarioEdit> high) {
    try {
      bars.add(
          new Bar(
              what,
              lowWords,
              highWords,
              unmet(low),
              unmet(high),
              firstAfter(low),
              firstAfter(high)));
    } catch (BadInput outOfRange) {
      // this end of the range is no home that can be: the bar says nothing, so there is none
      return;
    }
  }

  private Unmet unmet(UnaryOperator<ScenarioEdit> change) {
    return change == AS_IT_IS
        ? now.unmet()
        : trials.run(change.apply(text).scenario(library)).unmet();
  }

  private String firstAfter(UnaryOperator<ScenarioEdit> change) {
    if (trials.years() > FEW_YEARS) {
      return "";
    }
    return buying.apply(
        change == AS_IT_IS ? afterFree : afterFree.in(change.apply(afterFree.text())));
  }

  /** A price moves no hour: what goes unserved is that of the home as it stands. */
  private void price(String path, String what, @Nullable Double cost) {
    if (cost != null && trials.years() <= FEW_YEARS) {
      bars.add(
          new Bar(
              what,
              "30 % less",
              "30 % more",
              now.unmet(),
              now.unmet(),
              firstAtPrice(path, cost * (1.0 - PRICE)),
              firstAtPrice(path, cost * (1.0 + PRICE))));
    }
  }

  /** In the unit in which it is written. */
  private void fuel() {
    Double litre = home.costs().fuelPerLitreCost();
    boolean isGallon = text.written("costs.fuel_per_gallon") != null;
    price(
        isGallon ? "costs.fuel_per_gallon" : "costs.fuel_per_litre",
        "price of fuel",
        litre == null || !isGallon ? litre : Double.valueOf(litre * LITRES_A_GALLON));
  }

  private String firstAtPrice(String path, double cost) {
    return buying.apply(afterFree.atPrice(path, Show.number(cost, 4)));
  }

  /** No assumption, but what people ask first. */
  private void whichWinter() {
    if (now.winters().size() < 2) {
      return;
    }
    var by =
        Comparator.comparingDouble(
            (WinterBooks w) -> w.figures().unmetWh() + w.figures().beyond().generatorWh());
    WinterBooks best = now.winters().stream().min(by).orElseThrow();
    WinterBooks worst = now.winters().stream().max(by).orElseThrow();
    bars.add(
        new Bar(
            "which winter comes",
            best.winter().name(),
            worst.winter().name(),
            unmet(best.figures()),
            unmet(worst.figures()),
            "",
            ""));
  }

  private static Unmet unmet(Figures f) {
    return new Unmet(f.unmetWh(), f.unmetHours(), f.beyond().shedWh(), f.beyond().generatorWh());
  }
}
