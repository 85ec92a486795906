package greyspell.balance;

import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;

/**
 * The slow, obvious form of the hourly balance that every fast loop must equal: one hour at a time,
 * named steps, min and max.
 */
final class PlainBalance {
  double chargeWh;
  double usedWh;
  double inWh;
  double outWh;
  double curtailedBusWh;
  double servedWh;
  double unmetWh;
  double overloadWh;

  PlainBalance(double chargeWh) {
    this.chargeWh = chargeWh;
  }

  void hour(Forcing forcing, int h, Design design) {
    BankLimits bank = design.bank();
    InverterLimits inverter = design.inverter();
    chargeWh = chargeWh * bank.keptPerHourShare();
    double acWh = Math.min(forcing.acAskedWh()[h], inverter.continuousW());
    overloadWh = forcing.acAskedWh()[h] - acWh;
    double loadWh = acWh + forcing.dcAskedWh()[h];
    double needWh = forcing.standingWh()[h] + forcing.dcAskedWh()[h] + inverter.busWh(acWh);
    double solarWh = forcing.solarBusWh()[h];
    double directWh = Math.min(solarWh, needWh);

    double lackWh = needWh - directWh;
    double drawableWh = Math.max(0.0, chargeWh - bank.windowWh() * forcing.lockedShare()[h]);
    outWh = Math.min(lackWh, Math.min(bank.mostOutWh(), drawableWh * bank.dischargeEfficiency()));
    chargeWh -= outWh / bank.dischargeEfficiency();

    double spareWh = solarWh - directWh;
    double roomWh = Math.max(0.0, bank.windowWh() - chargeWh) / bank.chargeEfficiency();
    inWh = Math.min(spareWh, Math.min(roomWh, bank.mostInWh() * forcing.chargeShare()[h]));
    chargeWh += inWh * bank.chargeEfficiency();

    curtailedBusWh = spareWh - inWh;
    usedWh = solarWh - curtailedBusWh;
    double onShare = needWh > 0.0 ? (directWh + outWh) / needWh : 1.0;
    servedWh = loadWh * onShare;
    unmetWh = loadWh - servedWh;
  }
}
