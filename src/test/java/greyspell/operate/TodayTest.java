package greyspell.operate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.operate.Today.Asked;
import greyspell.report.TodayJson;
import greyspell.report.TodayText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Trials;
import java.nio.file.Path;
import java.time.LocalDateTime;
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

  @Test
  void theGeneratorRunsJustLongEnough() {
    Today today = at(Once.HARROW_COMBE, 0.9, "clear");
    Today.Engine engine = today.generator();
    assertNotNull(engine);
    assertTrue(engine.byRule().reached() <= today.all().reached());
    Integer runH = engine.runH();
    if (runH != null && runH > 0) {
      assertTrue(engine.after().reachedShare() <= 0.1);
      assertTrue(today.all().reachedShare() > 0.1);
      assertTrue(engine.runFuelL() > 0.0);
    }
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
