package greyspell.operate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Forcing;
import greyspell.operate.Today.Asked;
import greyspell.power.GeneratorRules;
import greyspell.power.InverterSpec;
import greyspell.report.TodayJson;
import greyspell.report.TodayText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Trials;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

final class TodayTest {
  private static final LocalDateTime DECEMBER = LocalDateTime.of(2026, 12, 10, 17, 0);

  private static final class Once {
    static final Trials ALDER_FOLD = trials("alder-fold");
    static final Trials HARROW_COMBE = trials("harrow-combe");
  }

  private static Trials trials(String name) {
    Scenario home = ScenarioReader.read(Path.of("scenarios", name + ".yaml"));
    return Trials.of(home, (what, done) -> {});
  }

  private static Today at(Trials trials, double share, String sky) {
    return Today.of(trials, new Asked(DECEMBER, share, 5, sky));
  }

  @Test
  void moreChargeAndFewerLoadsLastLonger() {
    Today low = at(Once.ALDER_FOLD, 0.4, "any"), high = at(Once.ALDER_FOLD, 0.8, "any");
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      assertTrue(low.all().lastsH().at(share) <= high.all().lastsH().at(share));
      assertTrue(low.all().lastsH().at(share) <= low.withoutWaiting().lastsH().at(share));
      assertTrue(low.withoutWaiting().lastsH().at(share) <= low.mustRun().lastsH().at(share));
    }
    assertTrue(high.all().reached() <= low.all().reached());
    assertTrue(low.mustRun().reached() < low.all().reached());
  }

  @Test
  void greySkiesAreWorseThanClearOnes() {
    Today grey = at(Once.ALDER_FOLD, 0.5, "grey"), clear = at(Once.ALDER_FOLD, 0.5, "clear");
    Today any = at(Once.ALDER_FOLD, 0.5, "any");
    assertTrue(grey.all().reachedShare() > clear.all().reachedShare());
    // 25 dates around this one in 3 years; the skies are thirds of them
    assertEquals(75, any.all().stretches());
    assertEquals(25, grey.all().stretches());
    assertEquals(25, clear.all().stretches());
  }

  /** The monitor shows the share of all that the cells hold: 15 % is the reserve here. */
  @Test
  void atTheReserveNothingIsLeftAndInJuneItLasts() {
    Today empty = at(Once.ALDER_FOLD, 0.15, "any");
    assertEquals(0.0, empty.aboveReserveWh(), 1.0);
    assertEquals(0, empty.all().lastsH().at(0.5));
    assertTrue(TodayText.of(empty).contains("below the reserve"));
    assertTrue(TodayText.of(empty).contains("which begins at "));
    Today june =
        Today.of(Once.ALDER_FOLD, new Asked(LocalDateTime.of(2026, 6, 20, 12, 0), 0.8, 5, "any"));
    assertEquals(0, june.all().reached());
    assertNull(june.generator());
  }

  @Test
  void eachThingSwitchedOffHelpsOrAtLeastDoesNotHarm() {
    Today today = at(Once.ALDER_FOLD, 0.5, "any");
    assertTrue(today.offs().size() >= 3);
    int reached = today.all().reached();
    for (Today.Off off : today.offs()) {
      assertTrue(off.with().reached() <= reached, off.name());
      assertTrue(off.dayWh() >= 20.0);
      reached = off.with().reached();
    }
    assertTrue(reached < today.all().reached());
  }

  /**
   * A full bank takes nothing from a generator that runs now: what counts is when it is started.
   */
  @Test
  void theGeneratorIsStartedInTimeAlsoFromAFullBank() {
    Today today = at(Once.HARROW_COMBE, 1.0, "any");
    Today.Engine engine = today.generator();
    assertNotNull(engine);
    EnginePlan plan = engine.plan();
    assertNotNull(plan);
    assertTrue(today.all().reachedShare() > 0.1);
    assertTrue(plan.isEnough());
    assertTrue(plan.with().reached() < engine.byRule().reached());
    assertEquals(today.all().stretches(), plan.with().engine().fromH().count());
    assertTrue(plan.with().engine().firstRunH().at(0.5) >= 2, "the shortest run of the scenario");
    String text = TodayText.of(today).replaceAll("\\s+", " ");
    assertTrue(text.contains("Start it when the monitor falls to "), text);
    assertTrue(
        text.contains(
            "dark in "
                + plan.with().reached()
                + " of 75 instead of "
                + today.all().reached()
                + "."),
        text);
  }

  /** Of the plans that are enough none with much less fuel was passed over. */
  @Test
  void thePlanIsTheScenariosOwnGeneratorAtOtherCharges() {
    Trials trials = Once.HARROW_COMBE;
    Today today = at(trials, 0.8, "any");
    Today.Engine engine = today.generator();
    assertNotNull(engine);
    EnginePlan plan = engine.plan();
    assertNotNull(plan);
    var generator = trials.home().generator();
    assertNotNull(generator);
    var r = generator.rules();
    List<Forcing> lived = LookAhead.lived(trials);
    var look = new LookAhead(trials, lived, Stretch.of(lived, DECEMBER, 120, Stretch.Sky.ANY), 120);
    double[][] others = {{plan.startBelowShare(), plan.stopAboveShare()}, {0.3, 0.8}, {0.5, 0.95}};
    for (int k = 0; k < others.length; k++) {
      var rules =
          new GeneratorRules(
              r.policy(),
              others[k][0],
              others[k][1],
              r.minimumRunH(),
              r.permitted(),
              r.home(),
              r.charger());
      Outlook with =
          look.of(
              trials.home().withGenerator(new Scenario.Generator(generator.spec(), rules)),
              today.aboveReserveWh(),
              true);
      if (k == 0) {
        assertEquals(plan.with().reached(), with.reached());
        assertEquals(plan.with().engine().fuelL(), with.engine().fuelL(), 1e-9);
      } else {
        assertTrue(
            with.reachedShare() > 0.1
                || with.engine().fuelL() * 1.05 >= plan.with().engine().fuelL());
      }
    }
  }

  /** By hand: manual, at home 16 to 22 h, permitted 8 to 21 h. */
  @Test
  void itMayRunOnlyWhenSomeoneIsAtHome() {
    for (int h = 0; h < 24; h++) {
      Today today =
          Today.of(
              Once.HARROW_COMBE, new Asked(LocalDateTime.of(2024, 2, 29, h, 0), 0.7, 1, "grey"));
      Today.Engine engine = today.generator();
      assertNotNull(engine);
      assertEquals(h >= 16 && h < 21, engine.mayNow(), h + " h");
    }
  }

  /** The scenario says 50 %: that is what its reserve shows as, also with two tanks. */
  @Test
  void theReserveShowsAsTheScenarioStatesIt() {
    assertEquals(0.0, at(Once.HARROW_COMBE, 0.5, "any").aboveReserveWh(), 1e-9);
    // 8 batteries of 6 V and 390 Ah hold 18.72 kWh
    assertEquals(1872.0, at(Once.HARROW_COMBE, 0.6, "any").aboveReserveWh(), 1e-6);
    assertEquals(9360.0, at(Once.HARROW_COMBE, 1.0, "any").aboveReserveWh(), 1e-6);
  }

  /** Outdoors in December part of it is out of reach, and the page says so. */
  @Test
  void whatTheColdHoldsBackIsTold() {
    Today today = at(Once.HARROW_COMBE, 0.6, "any");
    assertTrue(today.heldByColdWh() > 500.0 && today.heldByColdWh() <= today.aboveReserveWh());
    String text = TodayText.of(today).replaceAll("\\s+", " ");
    assertTrue(text.contains("the cold of these days holds back"), text);
  }

  @Test
  void nothingIsSwitchedOffForAChargeThatLasts() {
    Today june =
        Today.of(Once.ALDER_FOLD, new Asked(LocalDateTime.of(2026, 6, 20, 12, 0), 0.8, 5, "any"));
    assertTrue(june.offs().isEmpty());
    assertTrue(TodayText.of(june).contains("Nothing need be switched off"));
  }

  /** An inverter too small for the kettle is no empty bank. */
  @Test
  void anOverloadIsNoEmptyBank() {
    Scenario home = Once.ALDER_FOLD.home();
    InverterSpec i = home.inverter();
    var small =
        home.withInverter(
            new InverterSpec(
                i.name(),
                1,
                400.0,
                null,
                i.standbyDayW(),
                i.standbyNightW(),
                i.efficiencies(),
                null,
                null));
    Trials trials = Trials.of(small, (what, done) -> {});
    Today june = Today.of(trials, new Asked(LocalDateTime.of(2026, 6, 20, 12, 0), 0.9, 5, "clear"));
    assertTrue(june.all().overloadH() > 1.0);
    assertEquals(0, june.all().reached());
    assertTrue(TodayText.of(june).contains("more is asked for at once"));
  }

  @Test
  void theJsonHoldsWhatTheTextTells() throws Exception {
    Today today = at(Once.ALDER_FOLD, 0.6, "grey");
    String json = TodayJson.text(today), text = TodayText.of(today);
    assertTrue(json.contains("\"reached\" : " + today.all().reached()), json);
    assertTrue(
        text.replaceAll("\\s+", " ")
            .contains(today.all().reached() + " of " + today.all().stretches() + " stretches"),
        text);
    assertTrue(text.contains("No forecast"));
  }
}
