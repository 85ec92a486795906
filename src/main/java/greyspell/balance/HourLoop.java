package greyspell.balance;

import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;

/**
 * The ledger loop: one design, one weather series, every flow of every hour booked.
 *
 * <pre>
 * bus      solar used + out = in + standing + DC served + AC served + inverter loss + inverter wiring
 * solar    available = clipped + curtailed + controller loss + solar used
 * bank     charge' = charge kept + in etaIn - out / etaOut,   0 .. window
 * asked    = served + unmet (inverter, rate, empty)
 * </pre>
 *
 * The house is served first, the bank takes what is left and gives what is lacking. Charge counts
 * up from the reserve, so that "empty" is exactly 0. Where supply falls short within an hour,
 * everything on the bus runs for the same share of the hour and is off for the rest; what is off
 * draws no standby. Cold keeps {@code lockedShare} of the window, at its lower end, from being
 * drawn; it is not lost. Solar that cannot be taken is booked under the first of these reasons that
 * holds: bank full, charge limit, cold. Allocates nothing; arguments are checked by the caller,
 * once. Held by HourLoopLawTest against PlainBalance.
 */
public final class HourLoop {
  private HourLoop() {}

  /**
   * Runs all hours of the forcing.
   *
   * @param startChargeWh above the reserve, 0 to the window
   * @param books overwritten
   * @return the charge after the last hour, so that years can be chained
   */
  public static double run(Forcing forcing, Design design, double startChargeWh, Ledger books) {
    return run(forcing, design, startChargeWh, books, 0, forcing.hours());
  }

  /**
   * Runs some of the hours; the books of the others stay as they are.
   *
   * @param fromHour the first, at which the charge is as stated
   * @param toHour one past the last
   */
  static double run(
      Forcing forcing,
      Design design,
      double startChargeWh,
      Ledger books,
      int fromHour,
      int toHour) {
    BankLimits bank = design.bank();
    InverterLimits inverter = design.inverter();
    double[] solarBusWh = forcing.solarBusWh(), controllerWh = forcing.controllerLossWh();
    double[] acAskedWh = forcing.acAskedWh(), dcAskedWh = forcing.dcAskedWh();
    double[] standingWh = forcing.standingWh();
    double[] lockedShare = forcing.lockedShare(), chargeShare = forcing.chargeShare();
    double windowWh = bank.windowWh(), kept = bank.keptPerHourShare();
    double etaIn = bank.chargeEfficiency(), etaOut = bank.dischargeEfficiency();
    double mostInWh = bank.mostInWh(), mostOutWh = bank.mostOutWh();
    double mostAcWh = inverter.continuousW(), linear = inverter.linearLossShare();
    double quadraticPerWh = inverter.quadraticLossShare() / inverter.continuousW();
    double wirePerWh = inverter.wireLossSharePerW();
    books.startChargeWh = startChargeWh;
    double chargeWh = startChargeWh;
    for (int h = fromHour; h < toHour; h++) {
      double selfDischargeWh = chargeWh * (1.0 - kept);
      chargeWh -= selfDischargeWh;
      double acWh = acAskedWh[h], overloadWh = 0.0;
      if (acWh > mostAcWh) {
        overloadWh = acWh - mostAcWh;
        acWh = mostAcWh;
      }
      double inverterLossWh = acWh * linear + acWh * acWh * quadraticPerWh;
      double dcWh = dcAskedWh[h], standing = standingWh[h], solar = solarBusWh[h];
      double wireWh = (acWh + inverterLossWh) * (acWh + inverterLossWh) * wirePerWh;
      double needWh = standing + dcWh + acWh + inverterLossWh + wireWh;
      double surplusWh = solar - needWh;
      double inWh = 0.0, outWh = 0.0, fullWh = 0.0, rateWh = 0.0, coldWh = 0.0;
      double servedWh = dcWh + acWh, unmetRateWh = 0.0, unmetEmptyWh = 0.0;
      if (surplusWh >= 0.0) {
        inWh = surplusWh;
        double roomWh = (windowWh - chargeWh) / etaIn;
        boolean fills = inWh >= roomWh;
        if (fills) {
          fullWh = inWh - roomWh;
          inWh = roomWh;
        }
        if (inWh > mostInWh) {
          rateWh = inWh - mostInWh;
          inWh = mostInWh;
          fills = false;
        }
        double acceptedWh = mostInWh * chargeShare[h];
        if (inWh > acceptedWh) {
          coldWh = inWh - acceptedWh;
          inWh = acceptedWh;
          fills = false;
        }
        chargeWh = fills ? windowWh : chargeWh + inWh * etaIn;
      } else {
        double lackWh = -surplusWh;
        outWh = lackWh;
        double beyondRateWh = 0.0;
        if (outWh > mostOutWh) {
          beyondRateWh = outWh - mostOutWh;
          outWh = mostOutWh;
        }
        double lockedWh = windowWh * lockedShare[h];
        double storedWh = chargeWh > lockedWh ? chargeWh - lockedWh : 0.0;
        double drawWh = outWh / etaOut, beyondChargeWh = 0.0;
        if (drawWh < storedWh) {
          chargeWh -= drawWh;
        } else {
          beyondChargeWh = outWh - storedWh * etaOut;
          outWh = storedWh * etaOut;
          chargeWh -= storedWh;
        }
        if (outWh < lackWh) {
          double onShare = (solar + outWh) / needWh;
          double unmetWh = servedWh * (1.0 - onShare);
          double beyondWh = beyondRateWh + beyondChargeWh;
          unmetRateWh = beyondWh > 0.0 ? unmetWh * (beyondRateWh / beyondWh) : 0.0;
          unmetEmptyWh = unmetWh - unmetRateWh;
          servedWh -= unmetWh;
          inverterLossWh *= onShare;
          wireWh *= onShare;
          standing *= onShare;
        }
      }
      double curtailedWh = fullWh + rateWh + coldWh;
      // what is not used on the bus is not converted either
      double perBusWh = solar > 0.0 ? controllerWh[h] / solar : 0.0;
      books.solarUsedWh[h] = solar - curtailedWh;
      books.controllerLossWh[h] = (solar - curtailedWh) * perBusWh;
      books.curtailedFullWh[h] = fullWh * (1.0 + perBusWh);
      books.curtailedRateWh[h] = rateWh * (1.0 + perBusWh);
      books.curtailedColdWh[h] = coldWh * (1.0 + perBusWh);
      books.bankInWh[h] = inWh;
      books.bankOutWh[h] = outWh;
      books.chargeLossWh[h] = inWh * (1.0 - etaIn);
      books.dischargeLossWh[h] = outWh / etaOut - outWh;
      books.selfDischargeWh[h] = selfDischargeWh;
      books.chargeWh[h] = chargeWh;
      books.servedWh[h] = servedWh;
      books.standingServedWh[h] = standing;
      books.inverterLossWh[h] = inverterLossWh;
      books.inverterWiringWh[h] = wireWh;
      books.unmetInverterWh[h] = overloadWh;
      books.unmetRateWh[h] = unmetRateWh;
      books.unmetEmptyWh[h] = unmetEmptyWh;
    }
    return chargeWh;
  }
}
