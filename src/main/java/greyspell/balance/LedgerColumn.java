package greyspell.balance;

/** The columns of the ledger, in the order in which they are printed. */
public enum LedgerColumn {
  SOLAR_NOMINAL("solar_nominal_wh", "light on the panels times rated power"),
  SOLAR_AVAILABLE("solar_available_wh", "at the controller's input"),
  CLIPPED("clipped_wh", "above the controller's limits"),
  CURTAILED_FULL("curtailed_full_wh", "not taken because the bank was full"),
  CURTAILED_RATE("curtailed_rate_wh", "not taken because of the bank's charge limit"),
  CURTAILED_COLD("curtailed_cold_wh", "not taken because the bank was too cold"),
  CONTROLLER_LOSS("controller_loss_wh", "heat in the controller"),
  SOLAR_USED("solar_used_wh", "put on the bus"),
  BANK_IN("bank_in_wh", "from the bus into the bank"),
  BANK_OUT("bank_out_wh", "from the bank to the bus"),
  CHARGE_LOSS("charge_loss_wh", "lost on the way into the cells"),
  DISCHARGE_LOSS("discharge_loss_wh", "lost on the way out of the cells"),
  SELF_DISCHARGE("self_discharge_wh", "lost at rest"),
  STANDING("standing_wh", "always-on draw of the system itself"),
  INVERTER_LOSS("inverter_loss_wh", "lost in the inverter besides its standby"),
  INVERTER_WIRING("inverter_wiring_wh", "lost in the wires between bank and inverter"),
  AC_ASKED("ac_asked_wh", "asked for at the sockets"),
  DC_ASKED("dc_asked_wh", "asked for on the bus"),
  SERVED("served_wh", "served of what was asked for"),
  UNMET_EMPTY("unmet_empty_wh", "not served because the bank was empty"),
  UNMET_RATE("unmet_rate_wh", "not served because of the bank's discharge limit"),
  UNMET_INVERTER("unmet_inverter_wh", "not served because the inverter was too small"),
  CHARGE("charge_wh", "in the bank above the reserve at the end of the hour");

  private final String header;
  private final String meaning;

  LedgerColumn(String header, String meaning) {
    this.header = header;
    this.meaning = meaning;
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
    return switch (this) {
      case SOLAR_NOMINAL -> ledger.forcing().solarNominalWh();
      case SOLAR_AVAILABLE -> ledger.forcing().solarAvailableWh();
      case CLIPPED -> ledger.forcing().clippedWh();
      case CURTAILED_FULL -> ledger.curtailedFullWh;
      case CURTAILED_RATE -> ledger.curtailedRateWh;
      case CURTAILED_COLD -> ledger.curtailedColdWh;
      case CONTROLLER_LOSS -> ledger.controllerLossWh;
      case SOLAR_USED -> ledger.solarUsedWh;
      case BANK_IN -> ledger.bankInWh;
      case BANK_OUT -> ledger.bankOutWh;
      case CHARGE_LOSS -> ledger.chargeLossWh;
      case DISCHARGE_LOSS -> ledger.dischargeLossWh;
      case SELF_DISCHARGE -> ledger.selfDischargeWh;
      case STANDING -> ledger.standingServedWh;
      case INVERTER_LOSS -> ledger.inverterLossWh;
      case INVERTER_WIRING -> ledger.inverterWiringWh;
      case AC_ASKED -> ledger.forcing().acAskedWh();
      case DC_ASKED -> ledger.forcing().dcAskedWh();
      case SERVED -> ledger.servedWh;
      case UNMET_EMPTY -> ledger.unmetEmptyWh;
      case UNMET_RATE -> ledger.unmetRateWh;
      case UNMET_INVERTER -> ledger.unmetInverterWh;
      case CHARGE -> ledger.chargeWh;
    };
  }
}
