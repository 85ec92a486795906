package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.report.TradeoffText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.scenario.ScenarioReader;
import greyspell.study.WhatHelps.Zone;
import greyspell.weather.ensemble.ClimateSite;
import greyspell.weather.ensemble.EnsembleSource;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a map says at the home as it stands, held against runs of the homes it speaks of. */
class TradeoffTest {
  private static final double A_HUNDREDTH_OF_A_WH = 0.01;
  private static final Scenario ALDER = home("alder-fold");
  private static final Tradeoff FOLD = of(ALDER, TradeoffAsked.USUAL);

  private static Scenario home(String name) {
    return ScenarioReader.read(Path.of("scenarios", name + ".yaml"));
  }

  private static Tradeoff of(Scenario home, TradeoffAsked asked) {
    return Tradeoff.of(Trials.of(home, (what, done) -> {}), asked, (what, done) -> {});
  }

  private static double unmetWh(Scenario home) {
    return Unmet.of(Study.run(home, (what, done) -> {}).ledger()).wh();
  }

  @Test
  void aStringsWorthInBankLeavesAsMuchUnserved() {
    ExchangeRate r = FOLD.rate();
    TradeoffAxes axes = FOLD.map().axes();
    Scenario moreBank =
        ALDER.withBank(ALDER.bank().withCapacityWh(ALDER.bank().capacityWh() + r.stringWorthWh()));
    Scenario morePanels = axes.home(axes.presentPanels() + 1, axes.presentBank());
    double panelsWh = unmetWh(morePanels), bankWh = unmetWh(moreBank);
    // a straight line between two banks of the map is not quite the curve
    assertEquals(panelsWh, bankWh, 0.01 * panelsWh);
    assertEquals(FOLD.map().presentWh() - panelsWh, r.stringSavesWh(), A_HUNDREDTH_OF_A_WH);
    Scenario morePack = ALDER.withBank(ALDER.bank().withPacks(ALDER.bank().packs() + 1));
    assertEquals(FOLD.map().presentWh() - unmetWh(morePack), r.packSavesWh(), A_HUNDREDTH_OF_A_WH);
  }

  @Test
  void otherWaysAreWhatRunTells() {
    TradeoffMap map = FOLD.map();
    assertFalse(FOLD.others().isEmpty());
    for (OtherWay way : FOLD.others()) {
      assertEquals(map.presentWh() - way.unmetWh(), way.savesWh(), A_HUNDREDTH_OF_A_WH);
      assertEquals(way.savesWh() < 0.0, way.worthWh() < 0.0, way.name());
    }
    var steep = new java.util.ArrayList<>(ALDER.arrays());
    steep.replaceAll(
        a ->
            new greyspell.array.ArraySpec(
                a.name(),
                90.0,
                a.azimuthDeg(),
                a.module(),
                a.inSeries(),
                a.inParallel(),
                a.soilingFraction(),
                a.shadeFraction(),
                a.mismatchFraction(),
                a.wiringFraction(),
                a.ageingFraction(),
                a.choices(),
                a.snow()));
    OtherWay upright =
        FOLD.others().stream().filter(w -> w.name().contains("upright")).findFirst().orElseThrow();
    assertEquals(unmetWh(ALDER.withArrays(steep)), upright.unmetWh(), A_HUNDREDTH_OF_A_WH);
  }

  @Test
  void theFrontierKeepsToTheTargetAndNoSmallerPackDoes() {
    TradeoffMap map = FOLD.map();
    TradeoffAxes axes = map.axes();
    for (int i = 0; i < map.panels(); i++) {
      int bank = FOLD.frontier().get(i);
      if (bank < 0) {
        assertTrue(map.unmetHours(i, map.banks() - 1) > 24.0);
      } else {
        assertTrue(map.unmetHours(i, bank) <= 24.0);
        assertTrue(map.unmetHours(i, bank - axes.banksPerPack()) > 24.0);
      }
    }
  }

  @Test
  void limitsForbidWhatLiesBeyondThem() {
    var asked = new TradeoffAsked(null, 12, 60, 2, 10_000.0, 60_000.0, 10_240.0, 36, 5000.0, 100.0);
    Tradeoff t = of(ALDER, asked);
    TradeoffAxes axes = t.map().axes();
    for (int i = 0; i < t.map().panels(); i++) {
      for (int j = 0; j < t.map().banks(); j++) {
        boolean isBought =
            210.0 * (axes.modules(i) - 24) + 1450.0 * (axes.storageWh(j) - 30_720.0) / 5120.0
                <= 5000.0 + 1e-6;
        assertEquals(axes.modules(i) <= 36 && isBought, t.isAllowed(i, j), i + " " + j);
      }
    }
    assertEquals(12, axes.modules(1) - axes.modules(0));
    assertEquals(10_240.0, axes.storageWh(1) - axes.storageWh(0), 1e-6);
    assertTrue(axes.modules(t.map().panels() - 1) <= 60);
  }

  @Test
  void aMapOfDrawnWintersIsThatOfRunningThem() {
    Scenario home = home("whin-cabin");
    var series = HomeWeather.read(home);
    var source = EnsembleSource.spliced(series, ClimateSite.of(series.source(), null, null), 5, 3L);
    Trials trials = Trials.of(home, source, 5, (what, done) -> {});
    Tradeoff t = Tradeoff.of(trials, TradeoffAsked.USUAL, (what, done) -> {});
    TradeoffAxes axes = t.map().axes();
    int i = t.map().panels() - 1, j = axes.presentBank() / 2;
    assertEquals(
        trials.run(axes.home(i, j)).unmet().wh(), t.map().unmetWh(i, j), A_HUNDREDTH_OF_A_WH);
    assertEquals(
        trials.run(home).unmet().unmetHours(),
        t.map().unmetHours(axes.presentPanels(), axes.presentBank()),
        1e-9);
  }

  /** What is weighed is what the sentence beside it tells: the next string, the next pack. */
  @Test
  void theNextStringIsWeighedAgainstTheNextPack() {
    TradeoffAxes axes = FOLD.map().axes();
    int p = axes.presentPanels(), c = axes.presentBank();
    double modulesPerPack = 6 * 210.0 / 1450.0;
    assertEquals(FOLD.rate().stringSavesWh() / modulesPerPack, FOLD.helps().panelsGain(p, c), 1e-6);
    assertEquals(FOLD.rate().packSavesWh(), FOLD.helps().packGain(p, c), 1e-6);
    Tradeoff mesa = of(home("tamarisk-mesa"), TradeoffAsked.USUAL);
    assertEquals(Zone.NEITHER, mesa.helps().afterMoreModules());
    assertEquals(mesa.rate().panelsHelpTo(), mesa.helps().flipsAtModules());
    assertEquals(Zone.NEITHER, mesa.helps().afterMoreStorage());
    assertEquals(mesa.rate().storageHelpsToWh(), mesa.helps().flipsAtStorageWh(), 1e-6);
    assertTrue(mesa.helps().isAlike(), "either leaves next to nothing unserved");
    assertFalse(FOLD.helps().isAlike());
  }

  /** A controller without a price: just below the one that is told panels are best, above not. */
  @Test
  void theAnswerHoldsUpToThePriceOfAControllerThatIsTold() {
    Double told = FOLD.controllerCostBelow();
    assertNotNull(told);
    ScenarioEdit text = ScenarioEdit.of(Path.of("scenarios/alder-fold.yaml"));
    for (double share : new double[] {0.99, 1.01}) {
      Scenario priced =
          text.set("costs.per_controller", Double.toString(share * told)).scenario(null);
      Tradeoff again = of(priced, TradeoffAsked.USUAL);
      assertEquals(share < 1.0 ? Zone.PANELS : Zone.STORAGE, again.helps().present());
      assertNull(again.controllerCostBelow());
    }
  }

  /** No advice to buy what the string rules refuse; small print of what counts as nothing. */
  @Test
  void theWordsKnowWhatCannotBeBuiltAndWhatCountsAsNothing() {
    Tradeoff kelp = of(home("kelp-point"), TradeoffAsked.USUAL);
    assertFalse(kelp.rate().isStringBuildable());
    String told = TradeoffText.of(kelp, List.of());
    assertTrue(told.contains("panels would help more, were the string not refused"), told);
    assertFalse(told.contains("panels help more here"), told);
    ScenarioEdit text =
        ScenarioEdit.of(Path.of("scenarios/alder-fold.yaml"))
            .add(
                "loads.appliances",
                "{name: Heater, power: 2 kW, hours: [00:00-24:00], duty: 100 %}");
    Tradeoff dark = of(text.scenario(null), TradeoffAsked.USUAL);
    assertTrue(dark.rate().leastThatCountsWh() > 50_000.0);
    String words = TradeoffText.of(dark, List.of()).replaceAll("\\s+", " ");
    assertTrue(words.contains("another pack saves less than 53 kWh a year"), words);
  }

  @Test
  void neitherHelpsWhereBothGainLessThanCounts() {
    assertEquals(Zone.NEITHER, WhatHelps.zone(0.5, 0.9, 1.0));
    assertEquals(Zone.PANELS, WhatHelps.zone(2.0, 0.9, 1.0));
    assertEquals(Zone.STORAGE, WhatHelps.zone(2.0, 3.0, 1.0));
  }
}
