package greyspell.balance;

import java.util.function.Function;

/** The columns of the ledger, in the order in which they are printed. */
public enum LedgerColumn {
  SOLAR_NOMINAL(
      "solar_nominal_wh",
      "light on the panels times rated power",
      l -> l.forcing().solarNominalWh()),
  SOLAR_AVAILABLE(
      "solar_available_wh", "at the controller's input", l -> l.forcing().solarAvailableWh()),
  CLIPPED("clipped_wh", "above the controller's limits", l -> l.forcing().clippedWh()),
  CURTAILED_FULL(
      "curtailed_full_wh", "not taken because the bank was full", l -> l.curtailedFullWh),
  CURTAILED_RATE(
      "curtailed_rate_wh", "not taken because of the bank's charge limit", l -> l.curtailedRateWh),
  CURTAILED_COLD(
      "curtailed_cold_wh", "not taken because the bank was too cold", l -> l.curtailedColdWh),
  CONTROLLER_LOSS("controller_loss_wh", "heat in the controller", l -> l.controllerLossWh),
  SOLAR_USED("solar_used_wh", "put on the bus", l -> l.solarUsedWh),
  BANK_IN("bank_in_wh", "from the bus into the bank", l -> l.bankInWh),
  BANK_OUT("bank_out_wh", "from the bank to the bus", l -> l.bankOutWh),
  CHARGE_LOSS("charge_loss_wh", "lost on the way into the cells", l -> l.chargeLossWh),
  DISCHARGE_LOSS("discharge_loss_wh", "lost on the way out of the cells", l -> l.dischargeLossWh),
  SELF_DISCHARGE("self_discharge_wh", "lost at rest", l -> l.selfDischargeWh),
  STANDING("standing_wh", "always-on draw of the system itself", l -> l.standingServedWh),
  INVERTER_LOSS(
      "inverter_loss_wh", "lost in the inverter besides its standby", l -> l.inverterLossWh),
  AC_ASKED("ac_asked_wh", "asked for at the sockets", l -> l.forcing().acAskedWh()),
  DC_ASKED("dc_asked_wh", "asked for on the bus", l -> l.forcing().dcAskedWh()),
  SERVED("served_wh", "served of what was asked for", l -> l.servedWh),
  UNMET_EMPTY("unmet_empty_wh", "not served because the bank was empty", l -> l.unmetEmptyWh),
  UNMET_RATE(
      "unmet_rate_wh", "not served because of the bank's discharge limit", l -> l.unmetRateWh),
  UNMET_INVERTER(
      "unmet_inverter_wh", "not served because the inverter was too small", l -> l.unmetInverterWh),
  CHARGE("charge_wh", "in the bank above the reserve at the end of the hour", l -> l.chargeWh);

  private final String header;
  private final String meaning;
  private final Function<Ledger, double[]> reader;

  LedgerColumn(String header, String meaning, Function<Ledger, double[]> reader) {
    this.header = header;
    this.meaning = meaning;
    this.reader = reader;
  }

  /** Name with unit, as in file headers. */
  public String header() {
    return header;
  }

  public String meaning() {
    return meaning;
  }

  /** The hourly values; not to be written. */
  public double[] of(Ledger ledger) {
    return reader.apply(ledger);
  }
}
