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

  private static final double LOAD = 0.15, GROWN = 0.25, DIRT = 0.05, PRICE = 0.3;

  private final ScenarioEdit text;
  private final @Nullable Path library;
  private final Trials trials;
  private final Function<Scenario, Trials> weather;
  private final @Nullable Double bankLifeYears;
  private final String generator;
  private final Scenario home;
  private final List<Bar> bars = new ArrayList<>();

  Bars(
      ScenarioEdit text,
      @Nullable Path library,
      Trials trials,
      Function<Scenario, Trials> weather,
      @Nullable Double bankLifeYears,
      String generator) {
    this.text = text;
    this.library = library;
    this.trials = trials;
    this.weather = weather;
    this.bankLifeYears = bankLifeYears;
    this.generator = generator;
    home = trials.home();
  }

  List<Bar> all() {
    double growth = 1.0 + home.load().growthFraction();
    bar(
        "what the house uses",
        "15 % less",
        "15 % more",
        load(growth * (1.0 - LOAD)),
        load(growth * (1.0 + LOAD)));
    bar("growth of the load", "as now", "a quarter more", e -> e, load(growth * (1.0 + GROWN)));
    bar("dirt on the glass", "as stated", "5 points more", e -> e, this::dirtier);
    double health = home.bank().healthShare();
    bar(
        "the bank's age",
        "as stated",
        "at 80 % of that",
        e -> e,
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
    price("costs.fuel_per_litre", "price of fuel", home.costs().fuelPerLitreCost());
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
      Trying atLow = at(low), atHigh = at(high);
      bars.add(
          new Bar(
              what,
              lowWords,
              highWords,
              atLow.now().unmet(),
              atHigh.now().unmet(),
              first(atLow),
              first(atHigh)));
    } catch (BadInput outOfRange) {
      // this end of the range is no home that can be: the bar says nothing, so there is none
      return;
    }
  }

  private Trying at(UnaryOperator<ScenarioEdit> change) {
    ScenarioEdit changed = change.apply(text);
    return new Trying(changed, library, trials, changed.scenario(library), weather);
  }

  private String first(Trying trying) {
    return trials.years() > FEW_YEARS
        ? ""
        : Climb.first(trying, bankLifeYears, generator, Climb.Wanted.USUAL);
  }

  private void price(String path, String what, @Nullable Double cost) {
    if (cost != null && trials.years() <= FEW_YEARS) {
      bar(
          what,
          "30 % less",
          "30 % more",
          set(path, Show.number(cost * (1.0 - PRICE), 4)),
          set(path, Show.number(cost * (1.0 + PRICE), 4)));
    }
  }

  /** No assumption, but what people ask first. */
  private void whichWinter() {
    Trial now = trials.run(home);
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
