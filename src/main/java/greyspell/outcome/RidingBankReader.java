package greyspell.outcome;

import greyspell.balance.BankAxis;
import greyspell.balance.BusHours;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.SequentPeak;
import greyspell.calendar.HourCalendar;
import greyspell.storage.step.BankLimits;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The least bank that would have ridden through a winter, by the running deficit of {@link
 * SequentPeak}. The hours are copied in the order of time, from the winter's first on, into arrays
 * that are used again. A second source counts, sockets that are asleep ask for nothing.
 */
final class RidingBankReader {
  private final Design design;
  private final int seamHour;
  private final Forcing.Columns inTime = new Forcing.Columns();
  private final Forcing forcing;
  private @Nullable BusHours hours;

  RidingBankReader(Design design, int seamHour) {
    this.design = design;
    this.seamHour = seamHour;
    inTime.solarBusWh = new double[WinterReader.HOURS];
    inTime.controllerLossWh = new double[WinterReader.HOURS];
    inTime.acAskedWh = new double[WinterReader.HOURS];
    inTime.dcAskedWh = new double[WinterReader.HOURS];
    inTime.standingWh = new double[WinterReader.HOURS];
    inTime.lockedShare = new double[WinterReader.HOURS];
    inTime.chargeShare = new double[WinterReader.HOURS];
    forcing = new Forcing(HourCalendar.typicalYear(), inTime);
  }

  RidingBank read(Forcing ring) {
    turn(ring.solarBusWh(), inTime.solarBusWh);
    turn(ring.acAskedWh(), inTime.acAskedWh);
    turn(ring.dcAskedWh(), inTime.dcAskedWh);
    turn(ring.standingWh(), inTime.standingWh);
    turn(ring.lockedShare(), inTime.lockedShare);
    turn(ring.chargeShare(), inTime.chargeShare);
    foldIn(ring);
    if (hours == null) {
      hours = BusHours.of(forcing, design.inverter());
    } else {
      hours.putBehind(design.inverter());
    }
    double leastWh = SequentPeak.leastWindowWh(hours, 1.0, design.bank());
    return leastWh < Double.POSITIVE_INFINITY
        ? new RidingBank(leastWh, false)
        : new RidingBank(withinLimitsWh(hours), true);
  }

  private void turn(double[] ring, double[] wh) {
    int first = ring.length - seamHour;
    System.arraycopy(ring, seamHour, wh, 0, first);
    System.arraycopy(ring, 0, wh, first, seamHour);
  }

  private void foldIn(Forcing ring) {
    double[] otherWh = ring.otherBusWh();
    boolean[] asleep = ring.asleep();
    for (int t = 0; t < inTime.solarBusWh.length; t++) {
      int h = (seamHour + t) % inTime.solarBusWh.length;
      inTime.solarBusWh[t] += otherWh.length > 0 ? otherWh[h] : 0.0;
      inTime.acAskedWh[t] *= asleep.length > 0 && asleep[h] ? 0.0 : 1.0;
    }
  }

  /** Where inverter or discharge limit leave something unserved with any bank: of the rest. */
  private double withinLimitsWh(BusHours hours) {
    double mostWh = 1.0;
    for (int h = 0; h < inTime.acAskedWh.length; h++) {
      mostWh +=
          design.inverter().busWh(inTime.acAskedWh[h]) + inTime.dcAskedWh[h] + inTime.standingWh[h];
    }
    mostWh /= design.bank().dischargeEfficiency();
    var axis = new BankAxis(List.of(withWindow(0.0), withWindow(mostWh)));
    axis.add(hours, 1.0);
    return axis.leastWindowWh();
  }

  private BankLimits withWindow(double windowWh) {
    BankLimits bank = design.bank();
    return new BankLimits(
        windowWh,
        bank.chargeEfficiency(),
        bank.dischargeEfficiency(),
        bank.mostInWh(),
        bank.mostOutWh(),
        bank.keptPerHourShare());
  }
}
