package greyspell.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Balance;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Houses;
import greyspell.balance.Ledger;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A year of level load in which five days in January and two in March have no sun. */
class OutcomeReaderTest {
  private static final int HOURS = 8760;

  private static Outcome outcome(double bankWh) {
    return outcome(bankWh, 0.0);
  }

  private static Outcome outcome(double bankWh, double otherW) {
    var sunWh = new double[HOURS];
    var loadWh = new double[HOURS];
    Arrays.fill(loadWh, 100.0);
    for (int h = 0; h < HOURS; h++) {
      int day = h / 24;
      boolean isGrey = (day >= 9 && day < 14) || day == 70 || day == 71;
      sunWh[h] = h % 24 == 12 && !isGrey ? 3000.0 : 0.0;
    }
    Forcing forcing = Houses.plain(sunWh, loadWh);
    if (otherW > 0.0) {
      var columns = forcing.columns();
      columns.otherBusWh = new double[HOURS];
      Arrays.fill(columns.otherBusWh, otherW);
      forcing = new Forcing(forcing.calendar(), columns);
    }
    var design = Houses.perfect(bankWh, 1, 1);
    var ledger = Ledger.of(forcing, design);
    Balance.run(forcing, design, bankWh, ledger);
    return OutcomeReader.read(ledger, design, true);
  }

  /**
   * A 7.2 kWh bank is full at 13:00 of 9 January (day 8) and gives 100 W from then on: empty after
   * 72 h, at 13:00 of 12 January. It stays so until 12:00 of 15 January: 71 hours, 7.1 kWh.
   */
  @Test
  void oneShortfallByHand() {
    Outcome outcome = outcome(7200);
    assertEquals(1, outcome.shortfalls().size());
    Shortfall shortfall = outcome.shortfalls().get(0);
    assertEquals(11 * 24 + 13, shortfall.fromHour());
    assertEquals(71, shortfall.hours());
    assertEquals(7100.0, shortfall.unmetWh(), 1e-6);
    assertEquals(71, outcome.total().unmetHours());
    assertEquals(4, outcome.total().unmetDays());
    assertEquals(71.0 / 8760.0, outcome.total().lossOfLoadProbabilityHours(), 1e-12);
    assertEquals(4.0 / 365.0, outcome.total().lossOfLoadProbabilityDays(), 1e-12);
    assertEquals(0.0, outcome.total().lowestChargeWh(), 0.0);
    assertEquals(11 * 24 + 12, outcome.total().lowestChargeHour());
  }

  /** Five sunless days are 12 kWh short, two are 4.8; the lights go out in the long one only. */
  @Test
  void greySpellsAreRankedByEnergy() {
    var spells = outcome(7200).greySpells();
    assertEquals(2, spells.size());
    assertEquals(new GreySpell(9, 5, 12_000.0, spells.get(0).unmetWh()), spells.get(0));
    assertEquals(5900.0, spells.get(0).unmetWh(), 1e-6);
    assertEquals(new GreySpell(70, 2, 4800.0, 0.0), spells.get(1));
  }

  /** 60 of 100 W from a stream: a sunless day is 0.96 kWh short and not 2.4; dark days stay. */
  @Test
  void aSecondSourceShortensGreySpellsAndNoDarkDays() {
    Outcome outcome = outcome(7200, 60.0);
    assertEquals(
        List.of(new GreySpell(9, 5, 4800.0, 0.0), new GreySpell(70, 2, 1920.0, 0.0)),
        outcome.greySpells());
    assertEquals(3.0, outcome.autonomy().darkDays().in(12), 1e-9);
  }

  @Test
  void darkAutonomyIsUsableEnergyOverADaysNeed() {
    assertEquals(3.0, outcome(7200).autonomy().darkDays().in(12), 1e-9);
  }

  /**
   * From midnight full: worst are the starts of the sunless days themselves, with no sun until the
   * bank is empty.
   */
  @Test
  void greyAutonomyFindsTheWorstStart() {
    Autonomy autonomy = outcome(7200).autonomy();
    assertEquals(3.0, autonomy.greyWorstDays(), 1e-9);
    assertEquals(9, autonomy.greyWorstFromDay());
    assertTrue(
        autonomy.greyP10Days() < autonomy.greyP50Days()
            && autonomy.greyP50Days() < autonomy.greyP90Days());
    assertEquals(365.0, outcome(60_000).autonomy().greyP50Days(), 0.0);
  }

  @Test
  void monthsAndWintersSumToTheWhole() {
    Outcome outcome = outcome(7200);
    assertEquals(12, outcome.months().size());
    double monthsWh = outcome.months().stream().mapToDouble(m -> m.figures().unmetWh()).sum();
    assertEquals(outcome.total().unmetWh(), monthsWh, 1e-6);
    assertEquals(1, outcome.winters().size());
    assertTrue(outcome.winters().get(0).winter().isWhole());
  }

  /**
   * One year alone goes round and round: two sunless days at its end and three at its beginning are
   * one grey spell of five, and what goes unserved in it one shortfall. By hand: full at 13:00 of
   * 29 December (day 362), a 2.4 kWh bank gives 100 W for 24 h, to 13:00 of 30 December. That is 35
   * hours before the year's end; the sun comes back at 12:00 of 4 January, 84 hours after it.
   */
  @Test
  void aSpellOverTheEndOfASingleYearIsOne() {
    var sunWh = new double[HOURS];
    var loadWh = new double[HOURS];
    Arrays.fill(loadWh, 100.0);
    for (int h = 12; h < HOURS; h += 24) {
      int day = h / 24;
      sunWh[h] = day < 3 || day >= 363 ? 0.0 : 3000.0;
    }
    var design = Houses.perfect(2400, 1, 1);
    Forcing forcing = Houses.plain(sunWh, loadWh);
    var ledger = new Ledger(forcing, 2400);
    HourLoop.run(forcing, design, 0.0, ledger);
    Outcome outcome = OutcomeReader.read(ledger, design, true);
    assertEquals(1, outcome.greySpells().size());
    assertEquals(363, outcome.greySpells().get(0).fromDay());
    assertEquals(5, outcome.greySpells().get(0).days());
    assertEquals(12_000.0, outcome.greySpells().get(0).shortWh(), 1e-6);
    assertEquals(1, outcome.shortfalls().size());
    Shortfall shortfall = outcome.shortfalls().get(0);
    assertEquals(363 * 24 + 13, shortfall.fromHour());
    assertEquals(35 + 84, shortfall.hours());
    assertEquals(outcome.total().unmetWh(), shortfall.unmetWh(), 1e-6);
  }
}
