package greyspell.chart;

import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.calendar.HourCalendar;
import java.util.ArrayList;
import java.util.List;

/**
 * What came onto the bus and what left it, by calendar month, as mean Wh a day. Of several years it
 * is the average month, and the north's year begins in July so that no winter is cut in two.
 */
public final class MonthSums {
  /**
   * One calendar month, all Wh a day.
   *
   * @param usedWh solar energy put on the bus
   * @param curtailedWh solar energy that the controller could have put on the bus besides
   * @param servedWh of what the house asked for
   * @param unmetWh asked for and not served
   * @param standingWh always-on draw of the system itself
   * @param lossesWh inverter, wiring, charger and bank losses
   * @param otherWh from the second source, put on the bus
   * @param generatorWh from the generator, at its own terminals
   */
  public record Month(
      int month,
      double usedWh,
      double curtailedWh,
      double servedWh,
      double unmetWh,
      double standingWh,
      double lossesWh,
      double otherWh,
      double generatorWh) {
    public double needWh() {
      return servedWh + unmetWh + standingWh + lossesWh;
    }

    /** From all sources together. */
    public double suppliedWh() {
      return usedWh + otherWh + generatorWh;
    }

    public double sunWh() {
      return usedWh + curtailedWh;
    }
  }

  private MonthSums() {}

  public static List<Month> of(Ledger ledger, boolean isNorthern) {
    HourCalendar calendar = ledger.forcing().calendar();
    var used = new double[13];
    var curtailed = new double[13];
    var served = new double[13];
    var unmet = new double[13];
    var standing = new double[13];
    var losses = new double[13];
    var other = new double[13];
    var generator = new double[13];
    var hours = new int[13];
    double[][] columns = {
      LedgerColumn.SOLAR_USED.of(ledger),
      ledger.forcing().solarBusWh(),
      LedgerColumn.SERVED.of(ledger),
      LedgerColumn.STANDING.of(ledger),
      LedgerColumn.INVERTER_LOSS.of(ledger),
      LedgerColumn.CHARGE_LOSS.of(ledger),
      LedgerColumn.DISCHARGE_LOSS.of(ledger),
      LedgerColumn.SELF_DISCHARGE.of(ledger),
      LedgerColumn.INVERTER_WIRING.of(ledger),
      LedgerColumn.CHARGER_LOSS.of(ledger),
      LedgerColumn.OTHER_AVAILABLE.of(ledger),
      LedgerColumn.OTHER_CURTAILED.of(ledger)
    };
    for (int h = 0; h < ledger.hours(); h++) {
      int m = calendar.month(h);
      used[m] += columns[0][h];
      curtailed[m] += columns[1][h] - columns[0][h];
      served[m] += columns[2][h];
      unmet[m] += ledger.unmetWh(h);
      standing[m] += columns[3][h];
      for (int loss = 4; loss <= 9; loss++) {
        losses[m] += columns[loss][h];
      }
      other[m] += columns[10][h] - columns[11][h];
      generator[m] += ledger.generatorWh(h);
      hours[m]++;
    }
    var months = new ArrayList<Month>();
    int first = calendar.years() > 1 && isNorthern ? 7 : 1;
    for (int k = 0; k < 12; k++) {
      int m = (first - 1 + k) % 12 + 1;
      double days = hours[m] / 24.0;
      months.add(
          new Month(
              m,
              used[m] / days,
              curtailed[m] / days,
              served[m] / days,
              unmet[m] / days,
              standing[m] / days,
              losses[m] / days,
              other[m] / days,
              generator[m] / days));
    }
    return months;
  }
}
