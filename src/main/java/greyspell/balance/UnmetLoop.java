package greyspell.balance;

import greyspell.storage.step.BankLimits;

/**
 * The balance of {@link HourLoop} for one design, with sums instead of books. Real branches,
 * because day and night can be foreseen and a comparison that is foreseen costs nothing; the only
 * chain from hour to hour is the charge itself.
 *
 * <p>An hour counts as unmet from {@value #LEAST_UNMET_WH} Wh on: less is rounding.
 */
public final class UnmetLoop {
  static final double LEAST_UNMET_WH = 1e-9;

  private UnmetLoop() {}

  /** One design of its own; {@link #run(BusHours, double, BankLimits, double)} for many banks. */
  public static RunSums run(Forcing forcing, Design design, double startChargeWh) {
    LaneLoop.check(forcing, design);
    return run(BusHours.of(forcing, design.inverter()), 1.0, design.bank(), startChargeWh);
  }

  /**
   * Runs all hours.
   *
   * @param solarFactor panels over those of the forcing
   * @param startChargeWh above the reserve, 0 to the window
   */
  public static RunSums run(
      BusHours hours, double solarFactor, BankLimits bank, double startChargeWh) {
    double[] solarWh = hours.solarWh, needWh = hours.needWh, servedShare = hours.servedShare;
    double[] overloadWh = hours.overloadWh, availablePerBus = hours.availablePerBus;
    double[] lockedShare = hours.lockedShare, chargeShare = hours.chargeShare;
    double windowWh = bank.windowWh(), kept = bank.keptPerHourShare();
    double etaIn = bank.chargeEfficiency(), perIn = 1.0 / etaIn;
    double etaOut = bank.dischargeEfficiency(), perOut = 1.0 / etaOut;
    double mostInWh = bank.mostInWh(), mostOutWh = bank.mostOutWh();
    double chargeWh = startChargeWh, lowestWh = Double.POSITIVE_INFINITY;
    double overloadSumWh = 0.0, rateSumWh = 0.0, emptySumWh = 0.0;
    double curtailedWh = 0.0, outSumWh = 0.0;
    int unmetHours = 0, run = 0, longest = 0;
    for (int h = 0; h < solarWh.length; h++) {
      double surplusWh = solarWh[h] * solarFactor - needWh[h], nextWh, unmetWh = overloadWh[h];
      if (surplusWh >= 0.0) {
        double inWh = surplusWh, mostWh = mostInWh * chargeShare[h], spareWh = 0.0;
        if (inWh > mostWh) {
          spareWh = inWh - mostWh;
          inWh = mostWh;
        }
        nextWh = Math.fma(chargeWh, kept, inWh * etaIn);
        if (nextWh > windowWh) {
          spareWh += (nextWh - windowWh) * perIn;
          nextWh = windowWh;
        }
        curtailedWh += spareWh * availablePerBus[h];
      } else {
        double outWh = -surplusWh, beyondWh = 0.0;
        if (outWh > mostOutWh) {
          beyondWh = outWh - mostOutWh;
          outWh = mostOutWh;
          rateSumWh += beyondWh * servedShare[h];
          unmetWh += beyondWh * servedShare[h];
        }
        double lockedWh = windowWh * lockedShare[h];
        nextWh = Math.fma(chargeWh, kept, -outWh * perOut);
        if (nextWh < lockedWh) {
          double restedWh = chargeWh * kept, floorWh = restedWh < lockedWh ? restedWh : lockedWh;
          double lackWh = (floorWh - nextWh) * etaOut;
          nextWh = floorWh;
          outWh -= lackWh;
          emptySumWh += lackWh * servedShare[h];
          unmetWh += lackWh * servedShare[h];
        }
        outSumWh += outWh;
      }
      chargeWh = nextWh;
      if (chargeWh < lowestWh) {
        lowestWh = chargeWh;
      }
      if (unmetWh > LEAST_UNMET_WH) {
        overloadSumWh += overloadWh[h];
        unmetHours++;
        if (++run > longest) {
          longest = run;
        }
      } else {
        run = 0;
      }
    }
    return new RunSums(
        overloadSumWh,
        rateSumWh,
        emptySumWh,
        curtailedWh,
        outSumWh,
        lowestWh,
        chargeWh,
        unmetHours,
        longest);
  }

  /**
   * Unmet hours of one design, given up as soon as they are more than {@code mostHours}: the answer
   * is then some number above it. For searches.
   */
  public static int unmetHours(
      BusHours hours, double solarFactor, BankLimits bank, double startChargeWh, int mostHours) {
    double[] solarWh = hours.solarWh, needWh = hours.needWh, servedShare = hours.servedShare;
    double[] overloadWh = hours.overloadWh;
    double[] lockedShare = hours.lockedShare, chargeShare = hours.chargeShare;
    double windowWh = bank.windowWh(), kept = bank.keptPerHourShare();
    double etaIn = bank.chargeEfficiency();
    double etaOut = bank.dischargeEfficiency(), perOut = 1.0 / etaOut;
    double mostInWh = bank.mostInWh(), mostOutWh = bank.mostOutWh();
    double chargeWh = startChargeWh;
    int unmetHours = 0;
    for (int h = 0; h < solarWh.length; h++) {
      double surplusWh = solarWh[h] * solarFactor - needWh[h], nextWh, shortWh = 0.0;
      if (surplusWh >= 0.0) {
        double inWh = surplusWh, mostWh = mostInWh * chargeShare[h];
        if (inWh > mostWh) {
          inWh = mostWh;
        }
        nextWh = Math.fma(chargeWh, kept, inWh * etaIn);
        if (nextWh > windowWh) {
          nextWh = windowWh;
        }
      } else {
        double outWh = -surplusWh;
        if (outWh > mostOutWh) {
          shortWh = outWh - mostOutWh;
          outWh = mostOutWh;
        }
        double lockedWh = windowWh * lockedShare[h];
        nextWh = Math.fma(chargeWh, kept, -outWh * perOut);
        if (nextWh < lockedWh) {
          double restedWh = chargeWh * kept, floorWh = restedWh < lockedWh ? restedWh : lockedWh;
          shortWh += (floorWh - nextWh) * etaOut;
          nextWh = floorWh;
        }
      }
      chargeWh = nextWh;
      if (shortWh * servedShare[h] + overloadWh[h] > LEAST_UNMET_WH && ++unmetHours > mostHours) {
        return unmetHours;
      }
    }
    return unmetHours;
  }
}
