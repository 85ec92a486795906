package greyspell.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.LedgerColumn;
import greyspell.calendar.HourCalendar;
import greyspell.study.StudyResult;
import org.junit.jupiter.api.Test;

/** The numbers behind the pictures are the ledger's. */
class ChartDataTest {
  private static final StudyResult GREY = new SampleStudy().run();

  @Test
  void averageMonthsAddUpToTheLedger() {
    HourCalendar calendar = GREY.ledger().forcing().calendar();
    var days = new int[13];
    for (int h = 0; h < calendar.hours(); h += 24) {
      days[calendar.month(h)]++;
    }
    double used = 0.0;
    double unmet = 0.0;
    double sun = 0.0;
    double need = 0.0;
    for (var m : MonthSums.of(GREY.ledger(), true)) {
      used += m.usedWh() * days[m.month()];
      unmet += m.unmetWh() * days[m.month()];
      sun += m.sunWh() * days[m.month()];
      need += m.needWh() * days[m.month()];
    }
    var total = GREY.outcome().total();
    assertEquals(total.solarUsedWh(), used, 1e-3);
    assertEquals(total.unmetWh(), unmet, 1e-3);
    double bus = 0.0;
    for (double wh : GREY.ledger().forcing().solarBusWh()) {
      bus += wh;
    }
    assertEquals(bus, sun, 1e-3);
    double stored = total.endChargeWh() - total.startChargeWh();
    assertEquals(total.solarUsedWh() + total.unmetWh() - stored, need, 1e-3);
  }

  @Test
  void monthsOfAFullHomeClose() {
    var full = FullHome.RESULT;
    double in = 0.0;
    double out = 0.0;
    for (var m : MonthSums.of(full.ledger(), true)) {
      int days = 0;
      for (var books : full.outcome().months()) {
        days += books.month() == m.month() ? books.figures().days() : 0;
      }
      in += m.suppliedWh() * days;
      out += (m.servedWh() + m.standingWh() + m.lossesWh()) * days;
    }
    var total = full.outcome().total();
    assertEquals(in, out + total.endChargeWh() - total.startChargeWh(), 1e-3);
    assertTrue(total.beyond().generatorWh() > 0.0 && total.beyond().otherUsedWh() > 0.0);
  }

  @Test
  void severalNorthernYearsBeginInJulySoThatWinterIsWhole() {
    assertEquals(7, MonthSums.of(GREY.ledger(), true).get(0).month());
    assertEquals(1, MonthSums.of(GREY.ledger(), false).get(0).month());
    var one = new SampleStudy();
    one.calendar = HourCalendar.of(2022, 1);
    assertEquals(1, MonthSums.of(one.run().ledger(), true).get(0).month());
  }

  @Test
  void chargeMapMarksEveryUnmetHourOfTheWorstWinter() {
    var worst = WinterShown.of(GREY);
    for (var w : GREY.outcome().winters()) {
      assertTrue(
          !w.winter().isWhole() || w.figures().unmetWh() <= worst.figures().unmetWh(),
          w.winter().name());
    }
    byte[] shade = YearChargePicture.of(GREY).shade();
    assertEquals(worst.winter().toHour() - worst.winter().fromHour(), shade.length);
    int unmet = 0;
    for (byte s : shade) {
      assertTrue(s >= 0 && s <= YearChargePicture.UNMET_SHADE);
      unmet += s == YearChargePicture.UNMET_SHADE ? 1 : 0;
    }
    assertEquals(worst.figures().unmetHours(), unmet);
    assertTrue(YearChargePicture.of(GREY).title().contains(Say.hours(unmet)));
    int days = shade.length / 24;
    int hour = worst.winter().fromHour() + 10 * 24 + 5;
    double charge = GREY.ledger().chargeWh()[hour] / GREY.ledger().windowWh();
    assertEquals(Math.min(9, (int) (charge * 10.0)), shade[(23 - 5) * days + 10], "5 h of day 10");
  }

  @Test
  void greySpellTitleCountsTheSpellsWithUnmetEnergy() {
    var spells = GREY.outcome().greySpells();
    long beat = spells.stream().filter(s -> s.unmetWh() > 0.0).count();
    assertTrue(beat > 1);
    assertTrue(
        GreySpellPicture.of(GREY)
            .title()
            .startsWith(beat + " of " + spells.size() + " grey spells beat the bank"));
    assertEquals(15_000.0 * 0.9 * 0.97, GreySpellPicture.givesWh(GREY), 1e-9);
  }

  @Test
  void noTwelveDaysHaveMoreUnservedThanThoseOfTheFortnight() {
    var fortnight = Fortnight.of(GREY);
    assertEquals(14, fortnight.days());
    double shown = unmetWh(fortnight.fromDay() + 2, 12);
    for (int day = 0; day + 12 <= GREY.ledger().hours() / 24; day++) {
      assertTrue(unmetWh(day, 12) <= shown + 1e-6, "day " + day);
    }
    assertEquals(unmetWh(fortnight.fromDay(), 14), fortnight.unmetWh(), 1e-9);
  }

  private static double unmetWh(int fromDay, int days) {
    double unmet = 0.0;
    for (int h = fromDay * 24; h < (fromDay + days) * 24; h++) {
      unmet += GREY.ledger().unmetWh(h);
    }
    return unmet;
  }

  @Test
  void withoutShortfallTheFortnightHoldsTheWorstGreySpell() {
    var sample = new SampleStudy();
    sample.panelsW = 30_000.0;
    sample.bankWh = 200_000.0;
    var result = sample.run();
    var fortnight = Fortnight.of(result);
    var spell = result.outcome().greySpells().get(0);
    assertTrue(fortnight.fromDay() < spell.fromDay());
    assertTrue(spell.fromDay() < fortnight.fromDay() + fortnight.days());
    assertEquals(0, fortnight.unmetHours());
  }

  @Test
  void sunInTheFortnightIsWhatTheControllerCouldGive() {
    var fortnight = Fortnight.of(GREY);
    double sun = 0.0;
    double used = 0.0;
    for (int h = fortnight.fromHour(); h < fortnight.toHour(); h++) {
      sun += GREY.ledger().forcing().solarBusWh()[h];
      used += LedgerColumn.SOLAR_USED.of(GREY.ledger())[h];
    }
    assertTrue(used <= sun + 1e-9);
    assertTrue(
        FortnightPicture.of(GREY).title().contains("could give " + Say.kwh(sun) + " "),
        FortnightPicture.of(GREY).title());
  }
}
