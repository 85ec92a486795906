package greyspell.outcome;

import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.balance.NamedHours;
import greyspell.outcome.Figures.Beyond;
import greyspell.outcome.Figures.Named;
import java.util.ArrayList;
import java.util.List;

/** Sums the ledger over a stretch of hours. */
final class FiguresReader {
  private final Ledger ledger;

  FiguresReader(Ledger ledger) {
    this.ledger = ledger;
  }

  Figures of(int from, int to) {
    double[] chargeWh = ledger.chargeWh();
    int unmetHours = 0, unmetDays = 0, lowestHour = from;
    boolean isDayUnmet = false;
    double loadWh = 0.0;
    for (int h = from; h < to; h++) {
      loadWh += ledger.askedWh(h);
      if (ledger.isUnmet(h)) {
        unmetHours++;
        isDayUnmet = true;
      }
      if (h % 24 == 23) {
        unmetDays += isDayUnmet ? 1 : 0;
        isDayUnmet = false;
      }
      if (chargeWh[h] < chargeWh[lowestHour]) {
        lowestHour = h;
      }
    }
    double unmetEmptyWh = sum(LedgerColumn.UNMET_EMPTY, from, to);
    double unmetRateWh = sum(LedgerColumn.UNMET_RATE, from, to);
    double unmetInverterWh = sum(LedgerColumn.UNMET_INVERTER, from, to);
    double bankOutWh = sum(LedgerColumn.BANK_OUT, from, to);
    double dischargeLossWh = sum(LedgerColumn.DISCHARGE_LOSS, from, to);
    double windowWh = ledger.windowWh();
    Beyond beyond = ledger.isFull() ? beyond(from, to) : Beyond.NONE;
    return new Figures(
        to - from,
        (to - from) / 24,
        loadWh,
        sum(LedgerColumn.SERVED, from, to),
        unmetEmptyWh
            + unmetRateWh
            + unmetInverterWh
            + beyond.unmetCutOffWh()
            + beyond.unmetSlowWh()
            + beyond.unmetAsleepWh(),
        unmetEmptyWh,
        unmetRateWh,
        unmetInverterWh,
        unmetHours,
        unmetDays,
        sum(LedgerColumn.SOLAR_NOMINAL, from, to),
        sum(LedgerColumn.SOLAR_AVAILABLE, from, to),
        sum(LedgerColumn.SOLAR_USED, from, to),
        sum(LedgerColumn.CLIPPED, from, to),
        sum(LedgerColumn.CURTAILED_FULL, from, to),
        sum(LedgerColumn.CURTAILED_RATE, from, to),
        sum(LedgerColumn.CURTAILED_COLD, from, to),
        sum(LedgerColumn.BANK_IN, from, to),
        bankOutWh,
        sum(LedgerColumn.STANDING, from, to),
        losses(from, to),
        from == 0 ? ledger.startChargeWh() : chargeWh[from - 1],
        chargeWh[to - 1],
        chargeWh[lowestHour],
        lowestHour,
        windowWh > 0.0 ? (bankOutWh + dischargeLossWh) / windowWh : 0.0,
        beyond);
  }

  private Beyond beyond(int from, int to) {
    int hours = 0, starts = 0;
    for (int h = from; h < to; h++) {
      if (ledger.isGeneratorOn(h)) {
        hours++;
        starts += h == 0 || !ledger.isGeneratorOn(h - 1) ? 1 : 0;
      }
    }
    double otherCurtailedWh = sum(LedgerColumn.OTHER_CURTAILED, from, to);
    return new Beyond(
        sum(LedgerColumn.GENERATOR, from, to),
        hours,
        starts,
        sum(LedgerColumn.OTHER_AVAILABLE, from, to) - otherCurtailedWh,
        otherCurtailedWh,
        sum(LedgerColumn.CURTAILED_ABSORPTION, from, to),
        sum(LedgerColumn.UNMET_CUT_OFF, from, to),
        sum(LedgerColumn.UNMET_SLOW, from, to),
        sum(LedgerColumn.UNMET_ASLEEP, from, to),
        sum(LedgerColumn.SHED, from, to),
        sum(LedgerColumn.PUT_OFF, from, to),
        sum(LedgerColumn.MADE_UP, from, to));
  }

  private List<Named> losses(int from, int to) {
    var losses = new ArrayList<Named>();
    for (NamedHours loss : ledger.forcing().arrayLosses()) {
      losses.add(new Named(loss.name(), sum(loss.wh(), from, to)));
    }
    parts(
        controllerParts(),
        LedgerColumn.CONTROLLER_LOSS.of(ledger),
        ledger.forcing().controllerLossWh(),
        from,
        to,
        losses);
    losses.add(new Named("charging", sum(LedgerColumn.CHARGE_LOSS, from, to)));
    losses.add(new Named("discharging", sum(LedgerColumn.DISCHARGE_LOSS, from, to)));
    losses.add(new Named("self_discharge", sum(LedgerColumn.SELF_DISCHARGE, from, to)));
    losses.add(new Named("inverter", sum(LedgerColumn.INVERTER_LOSS, from, to)));
    losses.add(new Named("inverter_wiring", sum(LedgerColumn.INVERTER_WIRING, from, to)));
    if (ledger.isFull()) {
      losses.add(new Named("generator_charger", sum(LedgerColumn.CHARGER_LOSS, from, to)));
    }
    parts(
        ledger.forcing().standingParts(),
        LedgerColumn.STANDING.of(ledger),
        ledger.forcing().standingWh(),
        from,
        to,
        losses);
    return List.copyOf(losses);
  }

  private List<NamedHours> controllerParts() {
    List<NamedHours> parts = ledger.forcing().controllerParts();
    return parts.isEmpty()
        ? List.of(new NamedHours("controller", ledger.forcing().controllerLossWh()))
        : parts;
  }

  /** Each part by name, for the share of each hour's possible flow that really was. */
  private static void parts(
      List<NamedHours> parts,
      double[] bookedWh,
      double[] possibleWh,
      int from,
      int to,
      List<Named> losses) {
    for (NamedHours part : parts) {
      double wh = 0.0;
      for (int h = from; h < to; h++) {
        wh += possibleWh[h] > 0.0 ? part.wh()[h] * (bookedWh[h] / possibleWh[h]) : 0.0;
      }
      losses.add(new Named(part.name(), wh));
    }
  }

  private double sum(LedgerColumn column, int from, int to) {
    return sum(column.of(ledger), from, to);
  }

  private static double sum(double[] wh, int from, int to) {
    double sum = 0.0;
    for (int h = from; h < to; h++) {
      sum += wh[h];
    }
    return sum;
  }
}
