package greyspell.balance;

import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankDetail;
import java.util.Arrays;

/**
 * The balance of a house with everything in it: a bank with voltage, two tanks and absorption, a
 * generator, a second source, loads that are let go or wait, an inverter that sleeps. Each hour, in
 * this order:
 *
 * <ol>
 *   <li>the bank rests ({@link BankState#rest}); the charge is then a share s of the window
 *   <li>what runs is settled by the rules ({@link Demand})
 *   <li>the generator is started or stopped ({@link GeneratorState})
 *   <li>the generator serves the sockets, the inverter what is beyond it, up to its limit
 *   <li>sun and second source serve the bus; the generator's charger, then the bank, give what is
 *       lacking; the bank takes what is left, from the sun first, and what the charger can add
 * </ol>
 *
 * <pre>
 * bus      solar used + other used + charger out + out
 *            = in + standing + DC served + AC through the inverter + inverter loss + wiring
 * charger  generator = AC past the inverter + charger out + charger loss
 * bank     charge' = charge - rest loss + (in - charge loss) - (out + discharge loss)
 * asked    asked + made up + waited too long
 *            = served + let go + put off + unmet (inverter, rate, cut-off, slow, empty, asleep)
 * waiting' = waiting + put off - made up - waited too long (which is part of what is let go)
 * </pre>
 *
 * The wires' loss goes by the open-circuit voltage at the start of the hour; where rules and
 * generator weigh what the house would ask, by the stated voltage. Sockets of an inverter that
 * sleeps stay dead while the generator runs, and what can wait does not run for its sake: both
 * would need a second look at the hour.
 *
 * <p>Where supply falls short within an hour everything on the bus runs for the same share of the
 * hour; what the generator serves directly runs on. What is not taken is the sun's first, then the
 * second source's. With none of this it gives the numbers of {@link HourLoop}: FullLoopLawTest.
 * Allocates a few objects a run, none an hour.
 */
public final class FullLoop {
  private static final int HOURS_OF_DAY = 24;

  private final Forcing forcing;
  private final Ledger books;
  private final InverterLimits inverter;
  private final BankState bank;
  private final Demand demand;
  private final GeneratorState generator;
  private final double nominalV;
  private final double quadraticLossPerWh;
  // the forcing's columns, which every hour asks for
  private final double[] solarBusWh;
  private final double[] otherBusWh;
  private final double[] standingWh;
  private final double[] resistanceFactor;
  private final double[] chargeShare;
  private final double[] lockedShare;

  private FullLoop(Forcing forcing, Design design, double startChargeWh, Ledger books) {
    this.forcing = forcing;
    this.books = books;
    inverter = design.inverter();
    bank = new BankState(design.bank(), design.detail().bank(), startChargeWh);
    demand = new Demand(forcing, inverter, design.detail().rules());
    generator = new GeneratorState(design.detail().generator());
    BankDetail detail = design.detail().bank();
    quadraticLossPerWh = inverter.quadraticLossShare() / inverter.continuousW();
    solarBusWh = forcing.solarBusWh();
    otherBusWh = forcing.otherBusWh();
    standingWh = forcing.standingWh();
    resistanceFactor = forcing.resistanceFactor();
    chargeShare = forcing.chargeShare();
    lockedShare = forcing.lockedShare();
    nominalV = detail == null || detail.cells() == null ? 0.0 : detail.nominalV();
  }

  /** True if {@link HourLoop} would leave something out. */
  public static boolean isNeeded(Forcing forcing, Design design) {
    return !design.detail().isNone()
        || forcing.otherBusWh().length > 0
        || forcing.asleep().length > 0;
  }

  /**
   * Runs all hours of the forcing.
   *
   * @param startChargeWh above the reserve, 0 to the window
   * @param books made with {@link Ledger#of}; overwritten
   * @return the charge after the last hour
   */
  public static double run(Forcing forcing, Design design, double startChargeWh, Ledger books) {
    if (!books.isFull) {
      throw new IllegalArgumentException("the books have no columns for generator and rules");
    }
    return run(forcing, design, startChargeWh, books, 0, forcing.hours());
  }

  /** How many numbers the marks of a {@link #lap} are. */
  static int marks(Forcing forcing, Design design) {
    return forcing.hours() / HOURS_OF_DAY * remembered(design);
  }

  private static int remembered(Design design) {
    return BankState.REMEMBERED
        + GeneratorState.REMEMBERED
        + Demand.remembered(design.detail().rules());
  }

  /**
   * All hours, as one of several laps; ends where it runs into the one before.
   *
   * @param marks what the loop remembered at the end of each day of the lap before; overwritten
   * @param isAgain whether there was a lap before, with the same books
   */
  static double lap(
      Forcing forcing,
      Design design,
      double startChargeWh,
      Ledger books,
      double[] marks,
      boolean isAgain) {
    books.startChargeWh = startChargeWh;
    var loop = new FullLoop(forcing, design, startChargeWh, books);
    var now = new double[remembered(design)];
    int hours = forcing.hours();
    for (int h = 0, day = 0; h < hours; day++) {
      for (int end = h + HOURS_OF_DAY; h < end; h++) {
        loop.hour(h);
      }
      loop.remember(now);
      int at = day * now.length;
      if (isAgain && Arrays.equals(now, 0, now.length, marks, at, at + now.length)) {
        break;
      }
      System.arraycopy(now, 0, marks, at, now.length);
    }
    return books.chargeWh[hours - 1];
  }

  private void remember(double[] into) {
    bank.remember(into, 0);
    generator.remember(into, BankState.REMEMBERED);
    demand.remember(into, BankState.REMEMBERED + GeneratorState.REMEMBERED);
  }

  /** Runs so many hours from one of them on, over the end to the first one again. */
  static double run(
      Forcing forcing, Design design, double startChargeWh, Ledger books, int fromHour, int count) {
    books.startChargeWh = startChargeWh;
    var loop = new FullLoop(forcing, design, startChargeWh, books);
    for (int h = fromHour, k = 0; k < count; k++) {
      loop.hour(h);
      h = h + 1 == forcing.hours() ? 0 : h + 1;
    }
    return loop.bank.chargeWh;
  }

  private void hour(int h) {
    double selfDischargeWh = bank.rest(resistanceFactor.length == 0 ? 1.0 : resistanceFactor[h]);
    double solar = solarBusWh[h], other = Forcing.at(otherBusWh, h);
    double supplyWh = solar + other, standing = standingWh[h];
    demand.settle(h, bank.windowShare(), supplyWh);
    double acWh = demand.acWh, dcWh = demand.dcWh;

    boolean runs = generator.mayRun(h) && generatorRuns(h, supplyWh, acWh, dcWh);
    double generatorMostWh = runs ? generator.limits().mostW()[h] : 0.0;
    double directWh = acWh < generatorMostWh ? acWh : generatorMostWh;
    double throughWh = acWh - directWh, overloadWh = 0.0;
    if (throughWh > inverter.continuousW()) {
      overloadWh = throughWh - inverter.continuousW();
      throughWh = inverter.continuousW();
    }
    double inverterLossWh =
        throughWh * inverter.linearLossShare() + throughWh * throughWh * quadraticLossPerWh;
    double intoInverterWh = throughWh + inverterLossWh;
    double wireWh = intoInverterWh * intoInverterWh * wirePerWh();
    double needWh = standing + dcWh + intoInverterWh + wireWh;
    double chargerMostWh = runs ? chargerMostWh(generatorMostWh - directWh) : 0.0;

    double surplusWh = supplyWh - needWh, chargerWh, curtailedWh = 0.0, onShare = 1.0;
    double offeredWh = surplusWh + chargerMostWh;
    if (offeredWh >= 0.0) {
      bank.take(offeredWh, chargeShare[h]);
      double spareWh = offeredWh - bank.inWh;
      // the charger gives way first; what it must give the house was not offered
      double chargerSpareWh = spareWh < chargerMostWh ? spareWh : chargerMostWh;
      chargerWh = chargerMostWh - chargerSpareWh;
      curtailedWh = spareWh - chargerSpareWh;
    } else {
      chargerWh = chargerMostWh;
      bank.give(-offeredWh, lockedShare[h]);
      if (bank.outWh < -offeredWh) {
        onShare = (supplyWh + chargerWh + bank.outWh) / needWh;
      }
    }
    double busServedWh = (dcWh + throughWh) * onShare;
    books.chargeWh[h] = bank.chargeWh;
    books.bankV[h] = bank.terminalV();
    books.generatorWh[h] = runs ? directWh + chargerAcWh(chargerWh) : 0.0;
    books.generatorOn[h] = runs;
    books.unmetInverterWh[h] = overloadWh;
    books.unmetAsleepWh[h] = demand.asleepWh;
    bookUnmet(h, dcWh + throughWh - busServedWh);
    if (books.isBrief) {
      return;
    }
    bookSources(h, solar, curtailedWh);
    books.chargerLossWh[h] = runs ? chargerAcWh(chargerWh) - chargerWh : 0.0;
    books.selfDischargeWh[h] = selfDischargeWh;
    books.bankInWh[h] = bank.inWh;
    books.bankOutWh[h] = bank.outWh;
    books.chargeLossWh[h] = bank.chargeLossWh;
    books.dischargeLossWh[h] = bank.dischargeLossWh;
    books.servedWh[h] = directWh + busServedWh;
    books.standingServedWh[h] = standing * onShare;
    books.inverterLossWh[h] = inverterLossWh * onShare;
    books.inverterWiringWh[h] = wireWh * onShare;
    books.shedWh[h] = demand.shedWh;
    books.putOffWh[h] = demand.putOffWh;
    books.madeUpWh[h] = demand.madeUpWh;
    books.waitingWh[h] = demand.waitingWh();
  }

  private boolean generatorRuns(int h, double supplyWh, double acWh, double dcWh) {
    double balanceWh = supplyWh - need(acWh, dcWh, standingWh[h]);
    return generator.runs(
        bank.windowShare(),
        bank.windowShareAfter(balanceWh),
        balanceWh < 0.0 && -balanceWh > bank.mostOutWh(lockedShare[h]));
  }

  /** What the house would ask of the bus without a generator. */
  private double need(double acWh, double dcWh, double standing) {
    double most = inverter.continuousW();
    return standing + dcWh + inverter.busWh(acWh < most ? acWh : most);
  }

  /** The wires' loss goes with the square of the current, which the bank's voltage decides. */
  private double wirePerWh() {
    double perWh = inverter.wireLossSharePerW();
    if (nominalV <= 0.0) {
      return perWh;
    }
    double ratio = nominalV / bank.openCircuitV();
    return perWh * ratio * ratio;
  }

  private double chargerMostWh(double leftWh) {
    double most = generator.limits().chargerMostAcW();
    return (leftWh < most ? leftWh : most) * generator.limits().chargerEfficiency();
  }

  private double chargerAcWh(double chargerWh) {
    return chargerWh / generator.limits().chargerEfficiency();
  }

  private void bookSources(int h, double solar, double curtailedWh) {
    double solarCurtailedWh = curtailedWh < solar ? curtailedWh : solar;
    double solarUsedWh = solar - solarCurtailedWh;
    // what is not used on the bus is not converted either
    double perBusWh = solar > 0.0 ? forcing.controllerLossWh()[h] / solar : 0.0;
    double sum = bank.fullWh + bank.rateWh + bank.coldWh + bank.absorptionWh;
    double each = sum > 0.0 ? solarCurtailedWh * (1.0 + perBusWh) / sum : 0.0;
    books.solarUsedWh[h] = solarUsedWh;
    books.controllerLossWh[h] = solarUsedWh * perBusWh;
    books.curtailedFullWh[h] = bank.fullWh * each;
    books.curtailedRateWh[h] = bank.rateWh * each;
    books.curtailedColdWh[h] = bank.coldWh * each;
    books.curtailedAbsorptionWh[h] = bank.absorptionWh * each;
    books.otherCurtailedWh[h] = curtailedWh - solarCurtailedWh;
  }

  private void bookUnmet(int h, double unmetWh) {
    double sum = bank.beyondRateWh + bank.beyondCutOffWh + bank.beyondTanksWh + bank.beyondChargeWh;
    double each = sum > 0.0 ? unmetWh / sum : 0.0;
    books.unmetRateWh[h] = bank.beyondRateWh * each;
    books.unmetCutOffWh[h] = bank.beyondCutOffWh * each;
    books.unmetSlowWh[h] = bank.beyondTanksWh * each;
    books.unmetEmptyWh[h] =
        unmetWh - books.unmetRateWh[h] - books.unmetCutOffWh[h] - books.unmetSlowWh[h];
  }
}
