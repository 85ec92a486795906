package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Small days with books worked by hand. */
class HourLoopTest {
  private static final double ONE_MICRO_WH = 1e-6;

  private static Ledger run(Forcing forcing, Design design, double startWh) {
    var books = new Ledger(forcing, design.bank().windowWh());
    HourLoop.run(forcing, design, startWh, books);
    return books;
  }

  /**
   * 10 kWh bank, floor 20 %, half full (5 kWh, so 3 kWh above the floor), 95 % each way. Own
   * construction, worked by hand: out 1000/0.95 in the first hour; room runs out in the fourth, and
   * what is left of 5000 is curtailed; the last hour finds 0.6 kWh too little.
   */
  @Test
  void eightHoursByHand() {
    double[] solarWh = {0, 2000, 6000, 5000, 1000, 0, 0, 0};
    double[] loadWh = {1000, 1000, 1000, 1000, 2000, 3000, 3000, 3000};
    Ledger l = run(Houses.plain(solarWh, loadWh), Houses.perfect(8000, 0.95, 0.95), 3000);
    double[] shareOfNominal = {.394737, .489737, .964737, 1, .894737, .578947, .263158, .2};
    for (int h = 0; h < 8; h++) {
      assertEquals(shareOfNominal[h], (l.chargeWh[h] + 2000.0) / 10_000.0, 5e-7);
    }
    assertEquals(6371.191, HourLoopLawTest.sum(l.bankInWh), 1e-3);
    assertEquals(8600.0, HourLoopLawTest.sum(l.bankOutWh), ONE_MICRO_WH);
    assertEquals(3628.809, HourLoopLawTest.sum(l.curtailedFullWh), 1e-3);
    assertEquals(2400.0, l.unmetEmptyWh[7], ONE_MICRO_WH);
    assertEquals(2400.0, HourLoopLawTest.sum(l.unmetEmptyWh), ONE_MICRO_WH);
  }

  /** 8 kWh usable, 95 % out, 312.5 W: 24.32 h. */
  @Test
  void fullBankLastsItsUsableEnergyOverTheLoad() {
    var loadWh = new double[48];
    Arrays.fill(loadWh, 312.5);
    Ledger l = run(Houses.plain(new double[48], loadWh), Houses.perfect(8000, 1.0, 0.95), 8000);
    assertEquals(0.0, l.unmetWh(23), 0.0);
    assertEquals(212.5, l.unmetWh(24), ONE_MICRO_WH);
    assertEquals(312.5, l.unmetWh(25), ONE_MICRO_WH);
  }

  /** Load above the inverter's limit is lost to the inverter although the bank is full. */
  @Test
  void demandAboveTheInverterIsBookedApart() {
    var design = new Design(Houses.bank(50_000, 1, 1), new InverterLimits(3000, 0, 0));
    Ledger l = run(Houses.plain(new double[2], new double[] {5000, 1000}), design, 50_000);
    assertArrayEquals(new double[] {2000, 0}, l.unmetInverterWh, ONE_MICRO_WH);
    assertArrayEquals(new double[] {3000, 1000}, l.servedWh, ONE_MICRO_WH);
    assertEquals(0.0, l.unmetEmptyWh[0], 0.0);
  }

  /**
   * A bank that may give 1000 Wh an hour serves half of 2000 Wh; the other half is the limit's
   * fault, not the charge's.
   */
  @Test
  void demandAboveTheDischargeLimitIsBookedApart() {
    var bank = new BankLimits(50_000, 1, 1, 1e9, 1000, 1);
    Ledger l =
        run(
            Houses.plain(new double[1], new double[] {2000}),
            new Design(bank, Houses.perfectInverter()),
            50_000);
    assertEquals(1000.0, l.unmetRateWh[0], ONE_MICRO_WH);
    assertEquals(0.0, l.unmetEmptyWh[0], ONE_MICRO_WH);
  }

  /** No charging while the cells are too cold: the sun above the load is refused and named so. */
  @Test
  void coldCellsRefuseCharge() {
    var columns = Houses.columns(2);
    columns.solarBusWh = new double[] {1000, 1000};
    columns.solarAvailableWh = columns.solarBusWh;
    columns.acAskedWh = new double[] {200, 200};
    columns.chargeShare = new double[] {0, 1};
    var forcing = new Forcing(Houses.plain(new double[24], new double[24]).calendar(), columns);
    Ledger l = run(forcing, Houses.perfect(5000, 1, 1), 0);
    assertArrayEquals(new double[] {800, 0}, l.curtailedColdWh, ONE_MICRO_WH);
    assertArrayEquals(new double[] {0, 800}, l.chargeWh, ONE_MICRO_WH);
  }

  /** Cold keeps 40 % of the window from being drawn; it comes back with warmth. */
  @Test
  void coldLocksChargeWithoutLosingIt() {
    var columns = Houses.columns(2);
    columns.solarBusWh = new double[2];
    columns.solarAvailableWh = columns.solarBusWh;
    columns.acAskedWh = new double[] {1000, 1000};
    columns.lockedShare = new double[] {0.4, 0.0};
    var forcing = new Forcing(Houses.plain(new double[24], new double[24]).calendar(), columns);
    Ledger l = run(forcing, Houses.perfect(1000, 1, 1), 1000);
    assertArrayEquals(new double[] {400, 600}, l.unmetEmptyWh, ONE_MICRO_WH);
    assertArrayEquals(new double[] {400, 0}, l.chargeWh, ONE_MICRO_WH);
  }

  /**
   * 50 W standby and a 10 % inverter loss: 1000 W at the sockets need 1150 on the bus. With 575
   * left, everything runs for half the hour.
   */
  @Test
  void aBankThatEndsWithinTheHourServesItsShareOfTheHour() {
    var columns = Houses.columns(1);
    columns.solarBusWh = new double[1];
    columns.solarAvailableWh = columns.solarBusWh;
    columns.acAskedWh = new double[] {1000};
    columns.standingWh = new double[] {50};
    var forcing = new Forcing(Houses.plain(new double[24], new double[24]).calendar(), columns);
    Ledger l =
        run(forcing, new Design(Houses.bank(5000, 1, 1), new InverterLimits(5000, 0.1, 0)), 575);
    assertEquals(500.0, l.servedWh[0], ONE_MICRO_WH);
    assertEquals(500.0, l.unmetEmptyWh[0], ONE_MICRO_WH);
    assertEquals(25.0, l.standingServedWh[0], ONE_MICRO_WH);
    assertEquals(50.0, l.inverterLossWh[0], ONE_MICRO_WH);
  }

  /**
   * 97 % controller: of 1000 W on its output only 300 are used, so only 300/0.97 come off the
   * array.
   */
  @Test
  void whatIsNotUsedIsNotConverted() {
    var columns = Houses.columns(1);
    columns.solarBusWh = new double[] {970};
    columns.controllerLossWh = new double[] {30};
    columns.solarAvailableWh = new double[] {1000};
    columns.acAskedWh = new double[] {291};
    var forcing = new Forcing(Houses.plain(new double[24], new double[24]).calendar(), columns);
    Ledger l = run(forcing, Houses.perfect(1000, 1, 1), 1000);
    assertEquals(9.0, l.controllerLossWh[0], ONE_MICRO_WH);
    assertEquals(700.0, l.curtailedFullWh[0], ONE_MICRO_WH);
  }
}
