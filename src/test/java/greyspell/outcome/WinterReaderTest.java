package greyspell.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Houses;
import greyspell.balance.Ledger;
import greyspell.balance.RunSums;
import greyspell.balance.UnmetLoop;
import greyspell.calendar.HourCalendar;
import greyspell.storage.step.BankLimits;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WinterReaderTest {
  private static final int SEAM = 181 * 24;
  private static final int HOURS = 8760;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void agreesWithTheBooksOfTheYear(long seed) {
    Forcing forcing = Houses.random(seed, 365);
    Design design = Houses.randomDesign(seed);
    Ledger ledger = run(forcing, design, 0.4);
    Figures f = OutcomeReader.read(ledger, design, true).total();
    WinterRecord w = new WinterReader(design, SEAM).read(ledger, 3, "2017/18");
    assertEquals(f.loadWh(), w.wh(WinterSum.LOAD), 1e-6);
    assertEquals(f.servedWh(), w.wh(WinterSum.SERVED), 1e-6);
    assertEquals(f.unmetWh(), w.wh(WinterSum.UNMET), 1e-6);
    assertEquals(f.unmetEmptyWh(), w.wh(WinterSum.UNMET_EMPTY), 1e-6);
    assertEquals(f.solarAvailableWh(), w.wh(WinterSum.SOLAR_AVAILABLE), 1e-6);
    assertEquals(f.solarUsedWh(), w.wh(WinterSum.SOLAR_USED), 1e-6);
    assertEquals(f.standingWh(), w.wh(WinterSum.STANDING), 1e-6);
    assertEquals(f.unmetHours(), w.unmetHours());
    assertEquals(f.unmetDays(), w.months().unmetDays());
    assertEquals(f.unmetHours() == 0, w.isDarkFree());
    assertEquals(f.lowestChargeWh(), w.lowestChargeWh());
    assertEquals("2017/18", w.name());
    assertEquals(3, w.number());
  }

  /** A year that lies as a ring and the same hours in the order of time tell the same. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void theRingIsReadInTheOrderOfTime(long seed) {
    Forcing inTime = Houses.random(seed, 365);
    Design design = Houses.randomDesign(seed);
    Ledger straight = run(inTime, design, 1.0);
    WinterRecord expected = new WinterReader(design, 0).read(straight, 0, "a");
    Ledger ring = ringOf(inTime, design, straight);
    WinterRecord read = new WinterReader(design, SEAM).read(ring, 0, "a");
    assertEquals(expected.longestShortfall().hours(), read.longestShortfall().hours());
    assertEquals(expected.ridingBank(), read.ridingBank());
    assertEquals(expected.spells().size(), read.spells().size());
    for (int i = 0; i < read.spells().size(); i++) {
      GreySpell a = expected.spells().get(i), b = read.spells().get(i);
      assertEquals((a.fromDay() + 181) % 365, b.fromDay());
      assertEquals(a.days(), b.days());
      assertEquals(a.shortWh(), b.shortWh(), 1e-9);
    }
    for (int day = 0; day < 365; day++) {
      assertEquals(expected.lowestShare(day), read.lowestShare(read.dayInTime(day)), 1e-7);
    }
  }

  /** The bank rides through when the hours are run with it, and one a little smaller does not. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void theRidingBankIsTheLeast(long seed) {
    Forcing forcing = enoughSun(Houses.random(seed, 365));
    Design design = openDesign(seed);
    Ledger ledger = run(forcing, design, 1.0);
    RidingBank riding = new WinterReader(design, 0).read(ledger, 0, "a").ridingBank();
    double leastWh = riding.leastWh();
    int withheld = sums(unlocked(forcing), with(design, 1e12, 1.0)).unmetHours();
    assertEquals(withheld > 0, riding.isLimited());
    assertEquals(0.0, sums(forcing, with(design, leastWh * 1.00001)).unmetEmptyWh(), 1e-6);
    assertTrue(sums(forcing, with(design, leastWh * 0.998)).unmetEmptyWh() > 1e-3);
  }

  /** Exactly, and not to a thousandth, where nothing is lost at rest or locked. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theRidingBankIsExactlyTheLeast(long seed) {
    Forcing forcing = unlocked(enoughSun(Houses.random(seed, 365)));
    Design design = with(openDesign(seed), 5000.0, 1.0);
    RidingBank riding =
        new WinterReader(design, 0).read(run(forcing, design, 1.0), 0, "a").ridingBank();
    double leastWh = riding.leastWh();
    assertEquals(0.0, sums(forcing, with(design, leastWh + 1e-5)).unmetEmptyWh(), 1e-6);
    assertTrue(sums(forcing, with(design, leastWh - 0.1)).unmetEmptyWh() > 1e-4);
  }

  /** A larger bank of the same kind draws more for itself: the least that carries that too. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void theElectronicsOfTheRidingBankGrowWithIt(long seed) {
    Design design = with(openDesign(seed), 5000.0);
    double drawWh = 0.2 * seed;
    Forcing forcing = drawing(enoughSun(Houses.random(seed, 365)), drawWh);
    Ledger ledger = run(forcing, design, 1.0);
    double leastWh =
        new WinterReader(design, 0, drawWh).read(ledger, 0, "a").ridingBank().leastWh();
    double without = new WinterReader(design, 0).read(ledger, 0, "a").ridingBank().leastWh();
    assertEquals(without > 5000.0, leastWh > without, leastWh + " Wh, else " + without);
    if (leastWh == Double.POSITIVE_INFINITY) {
      assertNoneCarries(forcing, design, drawWh);
      return;
    }
    assertEquals(0.0, emptyWh(forcing, design, leastWh * 1.00001, drawWh), 1e-6);
    assertTrue(emptyWh(forcing, design, leastWh * 0.998, drawWh) > 1e-3);
  }

  @Test
  void aBankThatEatsMoreThanItCarriesNeverRidesThrough() {
    Design design = with(openDesign(2), 5000.0, 1.0);
    Forcing forcing = drawing(unlocked(enoughSun(Houses.random(2, 365))), 300.0);
    Ledger ledger = run(forcing, design, 1.0);
    assertEquals(
        Double.POSITIVE_INFINITY,
        new WinterReader(design, 0, 300.0).read(ledger, 0, "a").ridingBank().leastWh());
    assertNoneCarries(forcing, design, 300.0);
  }

  private static void assertNoneCarries(Forcing forcing, Design design, double presentDrawWh) {
    for (double windowWh = 100.0; windowWh < 1e7; windowWh *= 1.02) {
      assertTrue(emptyWh(forcing, design, windowWh, presentDrawWh) > 1e-3, windowWh + " Wh");
    }
  }

  private static double emptyWh(
      Forcing forcing, Design design, double windowWh, double presentDrawWh) {
    double share = windowWh / design.bank().windowWh() - 1.0;
    return sums(drawing(forcing, presentDrawWh * share), with(design, windowWh)).unmetEmptyWh();
  }

  /** The system itself takes so much more in each hour. */
  private static Forcing drawing(Forcing forcing, double moreWh) {
    Forcing.Columns columns = forcing.columns();
    columns.standingWh = Arrays.stream(forcing.standingWh()).map(wh -> wh + moreWh).toArray();
    return new Forcing(forcing.calendar(), columns);
  }

  @Test
  void aBankThatIsWhollyLockedNeverRidesThrough() {
    Forcing.Columns columns = Houses.random(1, 365).columns();
    columns.lockedShare = new double[HOURS];
    Arrays.fill(columns.lockedShare, 0, 48, 1.0);
    var forcing = new Forcing(HourCalendar.of(2001, 1), columns);
    Design design = openDesign(1);
    RidingBank riding =
        new WinterReader(design, 0).read(run(forcing, design, 1.0), 0, "a").ridingBank();
    assertEquals(Double.POSITIVE_INFINITY, riding.leastWh());
  }

  @Test
  void aBatteryFreeDayOfHandWrittenHours() {
    var solarWh = new double[HOURS];
    var loadWh = new double[HOURS];
    Arrays.fill(loadWh, 10.0);
    Arrays.fill(solarWh, 20.0);
    Arrays.fill(solarWh, 30 * 24, 33 * 24, 4.0); // 31 January to 2 February: 6 Wh short an hour
    Design design = Houses.perfect(200.0, 1.0, 1.0);
    Ledger ledger = run(Houses.plain(solarWh, loadWh), design, 1.0);
    WinterRecord w = new WinterReader(design, SEAM).read(ledger, 0, "winter 1");
    assertEquals(3 * 24 * 6.0 - 200.0, w.wh(WinterSum.UNMET), 1e-9);
    assertEquals(0.0, w.months().wh(WinterSum.UNMET, 1), 1e-9);
    assertEquals(3 * 24 * 6.0 - 200.0, w.months().wh(WinterSum.UNMET, 2), 1e-9);
    assertEquals(3 * 24 - 33, w.unmetHours()); // the 34th hour takes the last 2 Wh
    assertEquals(2, w.months().unmetDays());
    assertEquals(new GreySpell(30, 3, 432.0, 232.0), w.spells().get(0));
    assertEquals(1, w.spells().size());
    assertEquals(30 * 24 + 33, w.longestShortfall().fromHour());
    assertEquals(39, w.longestShortfall().hours());
    assertEquals(new RidingBank(432.0, false, true), w.ridingBank());
    assertEquals(31, w.lowestDay());
    assertEquals(0.0, w.lowestChargeWh());
    assertEquals(1.0, w.lowestShare(29));
    assertEquals(56.0 / 200.0, w.lowestShare(30), 1e-7);
    assertEquals(0.0, w.lowestShare(32));
  }

  @Test
  void otherThanACommonYearIsRefused() {
    Design design = Houses.perfect(200.0, 1.0, 1.0);
    Forcing leap = Houses.random(1, 366);
    assertThrows(
        IllegalArgumentException.class,
        () -> new WinterReader(design, 0).read(new Ledger(leap, 200.0), 0, "a"));
    assertThrows(IllegalArgumentException.class, () -> new WinterReader(design, 5));
  }

  private static Ledger run(Forcing forcing, Design design, double startShare) {
    var ledger = new Ledger(forcing, design.bank().windowWh());
    HourLoop.run(forcing, design, startShare * design.bank().windowWh(), ledger);
    return ledger;
  }

  /** The same hours, the last of them first: begun with the charge that lies there in time. */
  private static Ledger ringOf(Forcing inTime, Design design, Ledger straight) {
    Forcing.Columns columns = inTime.columns();
    columns.solarBusWh = turned(inTime.solarBusWh());
    columns.solarAvailableWh = turned(inTime.solarAvailableWh());
    columns.controllerLossWh = turned(inTime.controllerLossWh());
    columns.acAskedWh = turned(inTime.acAskedWh());
    columns.dcAskedWh = turned(inTime.dcAskedWh());
    columns.standingWh = turned(inTime.standingWh());
    columns.lockedShare = turned(inTime.lockedShare());
    columns.chargeShare = turned(inTime.chargeShare());
    var forcing = new Forcing(HourCalendar.of(2001, 1), columns);
    var ledger = new Ledger(forcing, design.bank().windowWh());
    double startWh = straight.chargeWh()[HOURS - SEAM - 1];
    HourLoop.run(forcing, design, startWh, ledger);
    // from the seam on the ring was not begun full: copy what the straight run had there
    System.arraycopy(straight.chargeWh(), 0, ledger.chargeWh(), SEAM, HOURS - SEAM);
    return ledger;
  }

  private static double[] turned(double[] inTime) {
    var ring = new double[HOURS];
    System.arraycopy(inTime, 0, ring, SEAM, HOURS - SEAM);
    System.arraycopy(inTime, HOURS - SEAM, ring, 0, SEAM);
    return ring;
  }

  /** With so much sun that a bank can be enough. */
  private static Forcing enoughSun(Forcing forcing) {
    Forcing.Columns columns = forcing.columns();
    columns.solarBusWh = forcing.solarBusWh().clone();
    for (int h = 0; h < HOURS; h++) {
      columns.solarBusWh[h] += h % 24 == 12 ? 24_000.0 : 0.0;
    }
    return new Forcing(forcing.calendar(), columns);
  }

  private static Forcing unlocked(Forcing forcing) {
    Forcing.Columns columns = forcing.columns();
    columns.lockedShare = new double[HOURS];
    return new Forcing(forcing.calendar(), columns);
  }

  /** Without a charge limit, half of them with a discharge limit that binds. */
  private static Design openDesign(long seed) {
    Design design = Houses.randomDesign(seed);
    BankLimits b = design.bank();
    return new Design(
        new BankLimits(
            b.windowWh(),
            b.chargeEfficiency(),
            b.dischargeEfficiency(),
            1e9,
            seed % 2 == 0 ? 1e9 : 700.0,
            b.keptPerHourShare()),
        design.inverter());
  }

  private static Design with(Design design, double windowWh) {
    return with(design, windowWh, design.bank().keptPerHourShare());
  }

  private static Design with(Design design, double windowWh, double keptPerHourShare) {
    BankLimits b = design.bank();
    return new Design(
        new BankLimits(
            windowWh,
            b.chargeEfficiency(),
            b.dischargeEfficiency(),
            b.mostInWh(),
            b.mostOutWh(),
            keptPerHourShare),
        design.inverter());
  }

  private static RunSums sums(Forcing forcing, Design design) {
    return UnmetLoop.run(forcing, design, design.bank().windowWh());
  }
}
