package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.cause.Said;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Shares;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The cold takes twice: a cold bank holds and gives less, and may not be charged. Each is held
 * against the same home with other sheets, where the cold does not do the one or the other.
 */
final class ColdCausesLawTest {
  private static final Set<Effect> BANK = WinterCause.COLD_BANK.effects();
  private static final Set<Effect> CHARGING = WinterCause.COLD_CHARGING.effects();

  /** Plain, in a lean-to; and in detail, in a box that is held above -5 °C where it is colder. */
  private static final ScenarioEdit LEAN_TO = ScenarioEdit.of(Path.of("scenarios/whin-cabin.yaml"));

  private static final ScenarioEdit HEATED =
      LEAN_TO
          .set("weather", "../weather-samples/cold-continental.csv")
          .set("site.utc_offset", "-6 h")
          .set("site.longitude", "-94")
          .set("site.record_low", "-40 °C")
          .set("bank.model", "detailed")
          .set("bank.battery", cells(""))
          .set("bank.enclosure", "{place: heated, at_least: -5 °C, lag: 12 h, heat_loss: 0.4 W/K}");

  private static String cells(String more) {
    return "{from: Pinnock PK-25100, full_charge_from: 10 °C" + more + "}";
  }

  private static Ledger books(ScenarioEdit home, Set<Effect> leftOut) {
    var scenario = home.scenario(null);
    return Trials.of(scenario, (what, done) -> {}).books(0, scenario, leftOut);
  }

  private static Set<Effect> both() {
    var both = EnumSet.copyOf(BANK);
    both.addAll(CHARGING);
    return both;
  }

  private static double[] unmetWh(Ledger ledger) {
    var wh = new double[ledger.hours()];
    Arrays.setAll(wh, ledger::unmetWh);
    return wh;
  }

  private static void same(Ledger expected, Ledger got) {
    assertArrayEquals(unmetWh(expected), unmetWh(got), 1e-6);
    assertArrayEquals(expected.chargeWh(), got.chargeWh(), 1e-6);
  }

  /** No cause is left out twice: else its share would be split between two names. */
  @Test
  void noEffectIsInTwoCauses() {
    var seen = EnumSet.noneOf(Effect.class);
    for (WinterCause cause : WinterCause.values()) {
      for (Effect effect : cause.effects()) {
        assertTrue(seen.add(effect), effect.key());
      }
    }
  }

  @Test
  void bothLeftOutAreABankInAWarmRoom() {
    for (ScenarioEdit home : List.of(LEAN_TO, HEATED)) {
      ScenarioEdit warm = home.set("bank.enclosure", "{place: indoors, temperature: 25 °C}");
      same(books(warm, Set.of()), books(home, both()));
    }
  }

  @Test
  void noLockOutIsASheetThatAllowsAnyCold() {
    same(
        books(
            LEAN_TO.set("bank.battery", "{from: Pinnock PK-25100, coldest_charge: -60 °C}"),
            Set.of()),
        books(LEAN_TO, CHARGING));
  }

  @Test
  void noColdBankIsASheetOnWhichColdTakesNothing() {
    String even = "[[-60 °C, 100 %], [60 °C, 100 %]]";
    String sheet =
        cells(", capacity_by_temperature: " + even + ", resistance_by_temperature: " + even);
    ScenarioEdit unheated = HEATED.set("bank.enclosure", "{place: outdoors, lag: 12 h}");
    same(books(unheated.set("bank.battery", sheet), Set.of()), books(unheated, BANK));
  }

  /** One moves what is charged, the other all else: nothing is in both. */
  @Test
  void eachLeavesTheOthersHoursAlone() {
    Forcing whole = books(HEATED, Set.of()).forcing();
    Forcing noBank = books(HEATED, BANK).forcing(), noLock = books(HEATED, CHARGING).forcing();
    Forcing.Columns all = whole.columns(), bank = noBank.columns(), lock = noLock.columns();
    assertArrayEquals(all.chargeShare, bank.chargeShare);
    assertArrayEquals(all.lockedShare, lock.lockedShare);
    assertArrayEquals(all.resistanceFactor, lock.resistanceFactor);
    assertArrayEquals(all.standingWh, lock.standingWh);
    assertFalse(Arrays.equals(all.chargeShare, lock.chargeShare));
    assertFalse(Arrays.equals(all.lockedShare, bank.lockedShare));
    assertFalse(Arrays.equals(all.resistanceFactor, bank.resistanceFactor));
    assertFalse(Arrays.equals(all.standingWh, bank.standingWh));
  }

  @Test
  void eachTakesAShareOfItsOwnAndAllAreTheWhole() {
    Explanation told =
        ExplainStudy.of(
            Trials.of(LEAN_TO.scenario(null), (what, done) -> {}),
            Said.of("unsure.not_told"),
            LEAN_TO,
            null,
            (what, done) -> {});
    Shares shares = told.shares();
    assertNotNull(shares);
    double sumWh = shares.restWh();
    var apart = EnumSet.noneOf(WinterCause.class);
    for (Part part : shares.parts()) {
      sumWh += part.wh();
      if (part.wh() > 0.01 * shares.wholeWh() && part.aloneWh() > 0.01 * shares.wholeWh()) {
        apart.add(part.cause());
      }
    }
    assertEquals(shares.wholeWh(), sumWh, 1e-6);
    assertTrue(
        apart.containsAll(Set.of(WinterCause.COLD_BANK, WinterCause.COLD_CHARGING)),
        apart.toString());
  }
}
