package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.balance.NamedHours;

/** Conservation of energy over a whole run, from the light on the panels to the sockets. */
public final class Ledgers {
  private static final double ONE_MICRO_WH = 1e-6;

  private Ledgers() {}

  public static void assertEveryHourCloses(Ledger ledger) {
    Forcing f = ledger.forcing();
    double beforeWh = ledger.startChargeWh(), waitingWh = 0.0;
    for (int h = 0; h < ledger.hours(); h++) {
      double arrayWh = f.solarNominalWh()[h];
      for (NamedHours loss : f.arrayLosses()) {
        arrayWh -= loss.wh()[h];
      }
      String at = "hour " + h;
      assertEquals(arrayWh, f.solarAvailableWh()[h], ONE_MICRO_WH, at);
      double curtailedWh =
          at(ledger, LedgerColumn.CURTAILED_FULL, h)
              + at(ledger, LedgerColumn.CURTAILED_RATE, h)
              + at(ledger, LedgerColumn.CURTAILED_COLD, h)
              + at(ledger, LedgerColumn.CURTAILED_ABSORPTION, h);
      assertEquals(
          f.solarAvailableWh()[h],
          at(ledger, LedgerColumn.CLIPPED, h)
              + curtailedWh
              + at(ledger, LedgerColumn.CONTROLLER_LOSS, h)
              + at(ledger, LedgerColumn.SOLAR_USED, h),
          ONE_MICRO_WH,
          at);
      assertEquals(
          at(ledger, LedgerColumn.SOLAR_USED, h)
              + at(ledger, LedgerColumn.OTHER_AVAILABLE, h)
              - at(ledger, LedgerColumn.OTHER_CURTAILED, h)
              + at(ledger, LedgerColumn.GENERATOR, h)
              + at(ledger, LedgerColumn.BANK_OUT, h),
          at(ledger, LedgerColumn.BANK_IN, h)
              + at(ledger, LedgerColumn.STANDING, h)
              + at(ledger, LedgerColumn.SERVED, h)
              + at(ledger, LedgerColumn.INVERTER_LOSS, h)
              + at(ledger, LedgerColumn.INVERTER_WIRING, h)
              + at(ledger, LedgerColumn.CHARGER_LOSS, h),
          ONE_MICRO_WH,
          at);
      double chargeWh = ledger.chargeWh()[h];
      assertEquals(
          chargeWh - beforeWh,
          at(ledger, LedgerColumn.BANK_IN, h)
              - at(ledger, LedgerColumn.CHARGE_LOSS, h)
              - at(ledger, LedgerColumn.BANK_OUT, h)
              - at(ledger, LedgerColumn.DISCHARGE_LOSS, h)
              - at(ledger, LedgerColumn.SELF_DISCHARGE, h),
          ONE_MICRO_WH,
          at);
      assertEquals(
          ledger.askedWh(h) + waitingWh,
          at(ledger, LedgerColumn.SERVED, h)
              + ledger.unmetWh(h)
              + at(ledger, LedgerColumn.SHED, h)
              + at(ledger, LedgerColumn.WAITING, h),
          ONE_MICRO_WH,
          at);
      beforeWh = chargeWh;
      waitingWh = at(ledger, LedgerColumn.WAITING, h);
    }
  }

  private static double at(Ledger ledger, LedgerColumn column, int hour) {
    return column.of(ledger)[hour];
  }
}
