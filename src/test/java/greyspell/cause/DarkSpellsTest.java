package greyspell.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Balance;
import greyspell.balance.BusNeed;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.calendar.HourCalendar;
import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A house of 100 W with 2.4 kWh, under suns that are written by hand. */
final class DarkSpellsTest {
  private static final double WINDOW_WH = 2400.0;
  private static final Design DESIGN =
      new Design(
          new BankLimits(WINDOW_WH, 1.0, 1.0, 1e6, 1e6, 1.0),
          new InverterLimits(1000.0, 0.0, 0.0, 0.0));

  private static final HourCalendar YEAR = HourCalendar.typicalYear();

  /** One sunny hour at noon of every day, but for those that are named. */
  private static double[] sunnyBut(int... darkDays) {
    var sunWh = new double[YEAR.hours()];
    for (int day = 0; day < YEAR.days(); day++) {
      sunWh[day * 24 + 12] = 4800.0;
    }
    for (int day : darkDays) {
      sunWh[day * 24 + 12] = 0.0;
    }
    return sunWh;
  }

  private static List<DarkSpell> spells(double[] sunWh) {
    var columns = new Forcing.Columns();
    int hours = sunWh.length;
    columns.solarNominalWh = sunWh;
    columns.solarAvailableWh = sunWh;
    columns.solarBusWh = sunWh;
    columns.clippedWh = new double[hours];
    columns.controllerLossWh = new double[hours];
    columns.acAskedWh = new double[hours];
    columns.dcAskedWh = new double[hours];
    Arrays.fill(columns.dcAskedWh, 100.0);
    columns.standingWh = new double[hours];
    columns.bankTemperatureC = new double[hours];
    columns.lockedShare = new double[hours];
    columns.chargeShare = new double[hours];
    Arrays.fill(columns.chargeShare, 1.0);
    var forcing = new Forcing(YEAR, columns);
    Ledger ledger = Ledger.of(forcing, DESIGN);
    double startWh = WINDOW_WH;
    for (int lap = 0; lap < 3; lap++) {
      startWh = Balance.run(forcing, DESIGN, startWh, ledger);
    }
    return DarkSpells.of(ledger, BusNeed.wh(forcing, DESIGN.inverter()));
  }

  @Test
  void aSpellReachesFromTheLastFullHourToHalf() {
    List<DarkSpell> spells = spells(sunnyBut(50, 51));
    assertEquals(1, spells.size());
    DarkSpell spell = spells.get(0);
    // full at noon of day 49, empty after 24 h at 100 W
    assertEquals(49 * 24 + 13, spell.fromHour());
    assertTrue(spell.isFullAtStart());
    assertEquals(50 * 24 + 13, spell.firstUnmetHour());
    assertEquals(52 * 24 + 11, spell.lastUnmetHour());
    assertEquals(52 * 24 + 13, spell.toHour());
    assertTrue(spell.isRecovered());
    assertEquals(47, spell.unmetHours());
    assertEquals(4700.0, spell.unmetWh(), 1e-6);
    assertEquals(
        List.of(49, 50, 51, 52), spell.days().stream().map(d -> d.fromHour() / 24).toList());
    assertEquals(0.0, spell.days().get(1).solarBusWh(), 0.0);
    assertEquals(2400.0, spell.days().get(1).needWh(), 1e-9);
    assertTrue(spell.holds(50 * 24, YEAR.hours()));
    assertFalse(spell.holds(52 * 24 + 13, YEAR.hours()));
  }

  /** The first ends at noon of day 52, the second begins an hour later. */
  @Test
  void whatTwoSpellsOfOneDayLackIsNotCountedTwice() {
    List<DarkSpell> spells = spells(sunnyBut(50, 51, 53, 54));
    assertEquals(2, spells.size());
    assertEquals(52, spells.get(0).days().get(3).fromHour() / 24);
    assertEquals(12, spells.get(0).days().get(3).unmetHours());
    assertEquals(52, spells.get(1).days().get(0).fromHour() / 24);
    assertEquals(0, spells.get(1).days().get(0).unmetHours());
    for (DarkSpell spell : spells) {
      assertEquals(
          spell.unmetWh(), spell.days().stream().mapToDouble(SpellDay::unmetWh).sum(), 1e-6);
      assertEquals(spell.unmetHours(), spell.days().stream().mapToInt(SpellDay::unmetHours).sum());
    }
  }

  @Test
  void spellsPartWhereTheBankComesBackAndADayPasses() {
    assertEquals(2, spells(sunnyBut(50, 51, 60, 61)).size());
    // one bright noon fills the bank, but the night after is dark again within a day
    double[] sunWh = sunnyBut(50, 51, 53, 54);
    sunWh[52 * 24 + 12] = 1100.0;
    List<DarkSpell> one = spells(sunWh);
    assertEquals(1, one.size());
    assertEquals(50 * 24 + 13, one.get(0).firstUnmetHour());
    assertEquals(55 * 24 + 13, one.get(0).toHour());
  }

  @Test
  void aYearIsTakenRound() {
    List<DarkSpell> spells = spells(sunnyBut(364, 0));
    assertEquals(1, spells.size());
    DarkSpell spell = spells.get(0);
    assertEquals(363 * 24 + 13, spell.fromHour());
    assertEquals((365 + 1) * 24 + 13, spell.toHour());
    assertEquals(47, spell.unmetHours());
    assertTrue(spell.holds(5, YEAR.hours()));
    assertEquals(
        List.of(363, 364, 0, 1), spell.days().stream().map(d -> d.fromHour() / 24).toList());
  }

  @Test
  void whereAllIsServedThereIsNone() {
    assertEquals(List.of(), spells(sunnyBut()));
  }
}
