package greyspell.outcome;

import greyspell.balance.BankAxis;
import greyspell.balance.BusHours;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.FullLoop;
import greyspell.balance.SequentPeak;
import greyspell.balance.UnmetLoop;
import greyspell.calendar.HourCalendar;
import greyspell.storage.step.BankLimits;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The least bank that would have ridden through a winter: the running deficit of {@link
 * SequentPeak}, and where the bank loses charge at rest or cold locks some of it, the least bank
 * from there on that {@link UnmetLoop} carries through. The hours are copied in the order of time,
 * from the winter's first on, into arrays that are used again. A second source counts; sockets that
 * are asleep ask for nothing. Charge and discharge limits are those of the design, whatever the
 * bank.
 *
 * <p>The electronics of a larger bank of the same packs draw more, in proportion. The least bank w
 * is then the least with D(w) at most w, where D is the running deficit with that draw. D is convex
 * in w (each hour adds a convex function of the draw, and the greatest is taken), so that steps
 * along its chord from below come up to it, and a chord that rises as fast as w tells that there is
 * none: such a bank eats more than it carries over.
 */
final class RidingBankReader {
  private static final double RISE = 1.05;
  private static final double MOST_RISE = 64.0;
  private static final double LEAST_WH = 1e-6;
  private static final double NEAR_SHARE = 1e-3;

  private static final int MOST_STEPS = 100;

  private final Design design;
  private final int seamHour;
  private final double drawPerHour;
  private final Forcing.Columns inTime = new Forcing.Columns();
  private final Forcing forcing;
  private @Nullable BusHours hours;
  private boolean isEverLocked;

  RidingBankReader(Design design, int seamHour, double bankDrawWh) {
    this.design = design;
    this.seamHour = seamHour;
    double windowWh = design.bank().windowWh();
    drawPerHour = windowWh > 0.0 ? bankDrawWh / windowWh : 0.0;
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
    BusHours bus = put();
    boolean isLimited = deficitWh(bus, 0.0, false) == Double.POSITIVE_INFINITY;
    double leastWh = leastByDeficitWh(bus, isLimited);
    return new RidingBank(
        isAtRest() || leastWh == Double.POSITIVE_INFINITY
            ? leastWh
            : confirmedWh(bus, leastWh, isLimited),
        isLimited,
        !FullLoop.isNeeded(ring, design));
  }

  /** Up to the least bank whose running deficit it holds itself, to a thousandth. */
  private double leastByDeficitWh(BusHours bus, boolean isLimited) {
    double windowWh = deficitWh(bus, 0.0, isLimited);
    if (drawPerHour == 0.0) {
      return windowWh;
    }
    for (int i = 0; i < MOST_STEPS; i++) {
      double lackWh = deficitWh(bus, windowWh, isLimited) - windowWh;
      if (lackWh <= LEAST_WH) {
        return windowWh;
      }
      double stepWh = NEAR_SHARE * windowWh;
      double laterWh = deficitWh(bus, windowWh + stepWh, isLimited) - windowWh - stepWh;
      if (laterWh <= 0.0) {
        return windowWh + stepWh;
      }
      if (!(laterWh < lackWh)) {
        return Double.POSITIVE_INFINITY;
      }
      windowWh += stepWh * lackWh / (lackWh - laterWh);
    }
    return Double.POSITIVE_INFINITY;
  }

  private double deficitWh(BusHours bus, double windowWh, boolean isLimited) {
    draw(bus, windowWh);
    return isLimited
        ? withinLimitsWh(bus, windowWh)
        : SequentPeak.leastWindowWh(bus, 1.0, design.bank());
  }

  private void draw(BusHours bus, double windowWh) {
    bus.draw(drawPerHour * (windowWh - design.bank().windowWh()));
  }

  private BusHours put() {
    BusHours bus = hours;
    if (bus == null) {
      bus = BusHours.of(forcing, design.inverter());
      hours = bus;
    } else {
      bus.putBehind(design.inverter());
    }
    return bus;
  }

  private void turn(double[] ring, double[] wh) {
    int first = ring.length - seamHour;
    System.arraycopy(ring, seamHour, wh, 0, first);
    System.arraycopy(ring, 0, wh, first, seamHour);
  }

  private void foldIn(Forcing ring) {
    double[] otherWh = ring.otherBusWh();
    boolean[] asleep = ring.asleep();
    double locked = 0.0;
    for (double share : inTime.lockedShare) {
      locked += share;
    }
    isEverLocked = locked > 0.0;
    if (otherWh.length == 0 && asleep.length == 0) {
      return;
    }
    for (int t = 0; t < WinterReader.HOURS; t++) {
      int h = (seamHour + t) % WinterReader.HOURS;
      inTime.solarBusWh[t] += ring.otherWh(h);
      inTime.acAskedWh[t] *= asleep.length > 0 && asleep[h] ? 0.0 : 1.0;
    }
  }

  /** Where inverter or discharge limit leave something unserved with any bank: of the rest. */
  private double withinLimitsWh(BusHours bus, double windowWh) {
    double mostWh = 1.0 + drawPerHour * windowWh * WinterReader.HOURS;
    for (int h = 0; h < WinterReader.HOURS; h++) {
      mostWh +=
          design.inverter().busWh(inTime.acAskedWh[h]) + inTime.dcAskedWh[h] + inTime.standingWh[h];
    }
    mostWh /= design.bank().dischargeEfficiency();
    var axis = new BankAxis(List.of(withWindow(0.0), withWindow(mostWh)));
    axis.add(bus, 1.0);
    return axis.leastWindowWh();
  }

  private boolean isAtRest() {
    return design.bank().keptPerHourShare() >= 1.0 && !isEverLocked;
  }

  /** From the running deficit up to the least that is carried through, to a thousandth. */
  private double confirmedWh(BusHours bus, double deficitWh, boolean isLimited) {
    if (deficitWh <= 0.0) {
      return deficitWh;
    }
    double lowWh = deficitWh, highWh = deficitWh;
    while (!carries(bus, highWh, isLimited)) {
      lowWh = highWh;
      highWh *= RISE;
      if (highWh > MOST_RISE * deficitWh || isTooHungry(bus, highWh, isLimited)) {
        return Double.POSITIVE_INFINITY;
      }
    }
    while (highWh - lowWh > NEAR_SHARE * lowWh) {
      double middleWh = 0.5 * (lowWh + highWh);
      if (carries(bus, middleWh, isLimited)) {
        highWh = middleWh;
      } else {
        lowWh = middleWh;
      }
    }
    return highWh;
  }

  /** From such a bank on its electronics eat more than it carries over, even without loss. */
  private boolean isTooHungry(BusHours bus, double windowWh, boolean isLimited) {
    return drawPerHour > 0.0 && deficitWh(bus, windowWh, isLimited) > windowWh;
  }

  private boolean carries(BusHours bus, double windowWh, boolean isLimited) {
    BankLimits bank = withWindow(windowWh);
    draw(bus, windowWh);
    // what inverter or discharge limit withhold is not the bank's fault
    return isLimited
        ? UnmetLoop.run(bus, 1.0, bank, windowWh).unmetEmptyWh() <= LEAST_WH
        : UnmetLoop.unmetHours(bus, 1.0, bank, windowWh, 0) == 0;
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
