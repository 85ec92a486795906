package greyspell.balance;

import greyspell.storage.step.BankDetail;
import greyspell.storage.step.BankLimits;
import greyspell.storage.step.CellStep;
import greyspell.storage.step.Taper;
import greyspell.storage.step.TwoTank;
import org.jspecify.annotations.Nullable;

/**
 * A bank within the hour: what it takes, what it gives, and what kept it from more. Each limit is
 * asked in turn; what it holds back is named after it. On the way in: full, charge limit, cold,
 * absorption (taper, charging voltage, tanks). On the way out: discharge limit, cut-off voltage,
 * tanks, charge. Where several bind, what is not taken or not given is split in proportion to what
 * each held back.
 *
 * <p>Voltage, and with it cut-off and charging voltage, is that of the charge at the start of the
 * hour: a bank near its cut-off gives for this hour what it could give at its beginning, and less
 * in the next. Without a stated cut-off the voltage may fall to half. Tanks start at rest;
 * self-discharge is a share of the charge above the reserve and falls on both tanks. The taper
 * takes the constant charge efficiency, also beside cells.
 */
final class BankState {
  static final int REMEMBERED = 2;

  double chargeWh;
  double inWh;
  double outWh;
  double chargeLossWh;
  double dischargeLossWh;
  double fullWh;
  double rateWh;
  double coldWh;
  double absorptionWh;
  double beyondRateWh;
  double beyondCutOffWh;
  double beyondTanksWh;
  double beyondChargeWh;

  private final BankLimits limits;
  private final @Nullable CellStep cells;
  private final @Nullable TwoTank tanks;
  private final @Nullable Taper taper;
  private final double reserveWh;
  private final double contentWh;
  private double availableWh;
  private double share;
  private double openV;
  private double ohm;

  BankState(BankLimits limits, @Nullable BankDetail detail, double startChargeWh) {
    this.limits = limits;
    cells = detail == null ? null : detail.cells();
    tanks = detail == null ? null : detail.tanks();
    taper = detail == null ? null : detail.taper();
    reserveWh = detail == null ? 0.0 : detail.reserveWh();
    contentWh = detail == null ? limits.windowWh() : detail.contentWh();
    chargeWh = startChargeWh;
    availableWh = tanks == null ? 0.0 : tanks.availableShare() * (reserveWh + chargeWh);
  }

  /**
   * An hour of self-discharge; clears what the last hour booked. Returns the loss.
   *
   * @param resistanceFactor by which the hour's temperature changes the resistance
   */
  double rest(double resistanceFactor) {
    inWh = outWh = chargeLossWh = dischargeLossWh = 0.0;
    fullWh = rateWh = coldWh = absorptionWh = 0.0;
    beyondRateWh = beyondCutOffWh = beyondTanksWh = beyondChargeWh = 0.0;
    double lossWh = chargeWh * (1.0 - limits.keptPerHourShare());
    // the part of the loss that falls on the available tank
    double storedWh = reserveWh + chargeWh;
    availableWh -= storedWh > 0.0 ? lossWh * (availableWh / storedWh) : 0.0;
    chargeWh -= lossWh;
    share = contentWh > 0.0 ? (reserveWh + chargeWh) / contentWh : 0.0;
    if (cells != null) {
      openV = cells.openV(share);
      ohm = cells.ohm(resistanceFactor);
    }
    return lossWh;
  }

  /** All that the next hour needs to know of this one. */
  void remember(double[] into, int at) {
    into[at] = chargeWh;
    into[at + 1] = availableWh;
  }

  double windowShare() {
    return limits.windowWh() > 0.0 ? chargeWh / limits.windowWh() : 0.0;
  }

  /** Most that can be given to the bus in this hour. */
  double mostOutWh(double lockedShare) {
    double mostWh = limits.mostOutWh();
    if (cells != null) {
      mostWh = Math.min(mostWh, cells.mostOutAtWh(openV, ohm));
    }
    double drawableWh = Math.max(0.0, chargeWh - limits.windowWh() * lockedShare);
    if (tanks != null) {
      drawableWh =
          Math.min(drawableWh, tanks.mostOutWh(availableWh, reserveWh + chargeWh - availableWh));
    }
    return Math.min(mostWh, busOfDrawWh(drawableWh));
  }

  /**
   * Roughly, after this surplus or lack; decides no more than when a generator starts. Cold, tanks
   * and limits are left out; with no window at all any lack is below every level.
   */
  double windowShareAfter(double surplusWh) {
    if (limits.windowWh() <= 0.0) {
      return surplusWh < 0.0 ? Double.NEGATIVE_INFINITY : 0.0;
    }
    double changeWh =
        surplusWh < 0.0
            ? surplusWh / limits.dischargeEfficiency()
            : surplusWh * limits.chargeEfficiency();
    return (chargeWh + changeWh) / limits.windowWh();
  }

  double openCircuitV() {
    return openV;
  }

  double terminalV() {
    return cells == null ? 0.0 : cells.voltageAtV(outWh - inWh, openV, ohm);
  }

  void take(double offeredWh, double chargeShare) {
    double in = offeredWh;
    double roomWh = busOfStoredWh(limits.windowWh() - chargeWh);
    boolean fills = in >= roomWh;
    if (fills) {
      fullWh = in - roomWh;
      in = roomWh;
    }
    if (in > limits.mostInWh()) {
      rateWh = in - limits.mostInWh();
      in = limits.mostInWh();
      fills = false;
    }
    double warmWh = limits.mostInWh() * chargeShare;
    if (in > warmWh) {
      coldWh = in - warmWh;
      in = warmWh;
      fills = false;
    }
    double acceptedWh = acceptedWh(in);
    if (in > acceptedWh) {
      absorptionWh = in - acceptedWh;
      in = acceptedWh;
      fills = false;
    }
    double storedWh = storedWh(in);
    restTanks(-storedWh);
    inWh = in;
    chargeLossWh = in - storedWh;
    chargeWh = fills ? limits.windowWh() : chargeWh + storedWh;
  }

  void give(double lackWh, double lockedShare) {
    double out = lackWh;
    if (out > limits.mostOutWh()) {
      beyondRateWh = out - limits.mostOutWh();
      out = limits.mostOutWh();
    }
    if (cells != null) {
      double mostWh = cells.mostOutAtWh(openV, ohm);
      if (out > mostWh) {
        beyondCutOffWh = out - mostWh;
        out = mostWh;
      }
    }
    double drawWh = drawWh(out);
    if (tanks != null) {
      double mostWh = tanks.mostOutWh(availableWh, reserveWh + chargeWh - availableWh);
      if (drawWh > mostWh) {
        double reached = busOfDrawWh(mostWh);
        beyondTanksWh = out - reached;
        out = reached;
        drawWh = mostWh;
      }
    }
    double lockedWh = limits.windowWh() * lockedShare;
    double storedWh = chargeWh > lockedWh ? chargeWh - lockedWh : 0.0;
    if (drawWh > storedWh) {
      double reached = busOfDrawWh(storedWh);
      beyondChargeWh = out - reached;
      out = reached;
      drawWh = storedWh;
    }
    restTanks(drawWh);
    outWh = out;
    dischargeLossWh = drawWh - out;
    chargeWh -= drawWh;
  }

  private void restTanks(double drawWh) {
    if (tanks != null) {
      availableWh = tanks.availableAfterWh(availableWh, reserveWh + chargeWh - availableWh, drawWh);
    }
  }

  /** What of an even offer the cells accept as they fill. */
  private double acceptedWh(double offeredWh) {
    double mostWh = offeredWh;
    if (taper != null) {
      mostWh =
          taper.acceptedWh(
              offeredWh, share, contentWh, limits.mostInWh(), limits.chargeEfficiency());
    }
    if (cells != null) {
      mostWh = Math.min(mostWh, cells.mostInAtWh(openV, ohm));
    }
    if (tanks != null) {
      double tanksWh = tanks.mostInWh(availableWh, reserveWh + chargeWh - availableWh, contentWh);
      mostWh = Math.min(mostWh, busOfStoredWh(tanksWh));
    }
    return mostWh;
  }

  private double storedWh(double busWh) {
    return cells == null
        ? busWh * limits.chargeEfficiency()
        : busWh - cells.inLossAtWh(busWh, openV, ohm);
  }

  private double busOfStoredWh(double storedWh) {
    return cells == null
        ? storedWh / limits.chargeEfficiency()
        : cells.intoCellsAtWh(storedWh, openV, ohm);
  }

  private double drawWh(double busWh) {
    return cells == null
        ? busWh / limits.dischargeEfficiency()
        : busWh + cells.outLossAtWh(busWh, openV, ohm);
  }

  private double busOfDrawWh(double drawWh) {
    return cells == null
        ? drawWh * limits.dischargeEfficiency()
        : cells.outOfCellsAtWh(drawWh, openV, ohm);
  }
}
