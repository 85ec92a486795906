package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.power.GeneratorSpec;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Generator;
import greyspell.sizing.PanelStorageMap;
import java.util.ArrayList;
import java.util.List;

/** Other ways than more panels or a larger bank, on the same scale: tilt, bearing, generator. */
final class OtherWays {
  private static final double WINTER_TILT_MORE_DEG = 15.0;
  private static final double SPLIT_TILT_DEG = 30.0;
  private static final double SAME_DEG = 4.0;

  private OtherWays() {}

  /** A way and the home that goes it. */
  record Named(String name, Scenario home) {}

  static List<OtherWay> of(Trials trials, TradeoffMap map) {
    List<Named> ways = ways(trials.home());
    var answers = new ArrayList<OtherWay>();
    if (map.way() == TradeoffMap.Way.FULL) {
      for (Named way : ways) {
        Trial trial = trials.run(way.home());
        answers.add(answer(map, way, trial.unmet().wh(), trial.generatorHours(), trial.fuelL()));
      }
      return answers;
    }
    if (ways.isEmpty()) {
      return answers;
    }
    PanelStorageMap sums =
        TradeoffMap.unlike(
            trials, ways.stream().map(Named::home).toList(), List.of(trials.home().bank()));
    for (int k = 0; k < ways.size(); k++) {
      answers.add(answer(map, ways.get(k), sums.unmetWh(k, 0) / trials.years(), 0.0, 0.0));
    }
    return answers;
  }

  private static OtherWay answer(
      TradeoffMap map, Named way, double unmetWh, double generatorHours, double fuelL) {
    TradeoffAxes axes = map.axes();
    int p = axes.presentPanels(), c = axes.presentBank();
    double worthWh = map.storageWhFor(p, unmetWh) - axes.storageWh(c);
    return new OtherWay(
        way.name(),
        unmetWh,
        map.presentWh() - unmetWh,
        worthWh,
        map.generatorHours(p, c) - generatorHours,
        map.fuelL(p, c) - fuelL);
  }

  private static List<Named> ways(Scenario home) {
    var ways = new ArrayList<Named>();
    double steepDeg =
        Math.min(
            90.0,
            5.0 * Math.rint((Math.abs(home.site().latitudeDeg()) + WINTER_TILT_MORE_DEG) / 5.0));
    tilted(
        home,
        steepDeg,
        "every plane at " + Math.round(steepDeg) + "°, winter tilt (latitude + 15°)",
        ways);
    if (steepDeg < 90.0 - SAME_DEG) {
      tilted(home, 90.0, "every plane upright, 90°", ways);
    }
    split(home, ways);
    Generator generator = home.generator();
    if (generator != null) {
      ways.add(new Named("without the generator", home.withGenerator(null)));
      ways.add(
          new Named(
              "a second generator like it, on the same charger",
              home.withGenerator(new Generator(twice(generator.spec()), generator.rules()))));
    }
    return ways;
  }

  private static void tilted(Scenario home, double tiltDeg, String name, List<Named> ways) {
    var arrays = new ArrayList<ArraySpec>();
    boolean isOther = false;
    for (ArraySpec array : home.arrays()) {
      isOther |= Math.abs(array.tiltDeg() - tiltDeg) > SAME_DEG;
      arrays.add(turned(array, tiltDeg, array.azimuthDeg(), array.inParallel()));
    }
    if (isOther) {
      ways.add(new Named(name, home.withArrays(arrays)));
    }
  }

  /** Half of each plane's strings to the east, half to the west; planes of one string stay. */
  private static void split(Scenario home, List<Named> ways) {
    var arrays = new ArrayList<ArraySpec>();
    boolean isSplit = false;
    for (ArraySpec array : home.arrays()) {
      int east = array.inParallel() / 2;
      if (east == 0) {
        arrays.add(array);
        continue;
      }
      isSplit = true;
      arrays.add(turned(array, SPLIT_TILT_DEG, 90.0, east));
      arrays.add(turned(array, SPLIT_TILT_DEG, 270.0, array.inParallel() - east));
    }
    if (isSplit) {
      ways.add(new Named("strings split between east and west at 30°", home.withArrays(arrays)));
    }
  }

  private static ArraySpec turned(ArraySpec a, double tiltDeg, double azimuthDeg, int strings) {
    return new ArraySpec(
        a.name(),
        tiltDeg,
        azimuthDeg,
        a.module(),
        a.inSeries(),
        strings,
        a.soilingFraction(),
        a.shadeFraction(),
        a.mismatchFraction(),
        a.wiringFraction(),
        a.ageingFraction(),
        a.choices(),
        a.snow());
  }

  private static GeneratorSpec twice(GeneratorSpec one) {
    var fuel = new ArrayList<GeneratorSpec.FuelAt>();
    one.fuelUse()
        .forEach(at -> fuel.add(new GeneratorSpec.FuelAt(at.loadShare(), 2.0 * at.fuelLPerH())));
    return new GeneratorSpec(
        one.name(), 2 * one.count(), 2.0 * one.ratedPowerW(), one.fuel(), fuel, one.derating());
  }
}
