package greyspell.balance;

/** The columns of the ledger, in the order in which they are printed. */
public enum LedgerColumn {
  SOLAR_NOMINAL("solar_nominal_wh", "light on the panels times rated power"),
  SOLAR_AVAILABLE("solar_available_wh", "at the controller's input"),
  CLIPPED("clipped_wh", "above the controller's limits"),
  CURTAILED_FULL("curtailed_full_wh", "not taken because the bank was full"),
  CURTAILED_RATE("curtailed_rate_wh", "not taken because of the bank's charge limit"),
  CURTAILED_COLD("curtailed_cold_wh", "not taken because the bank was too cold"),
  CURTAILED_ABSORPTION(
      "curtailed_absorption_wh", "not taken because the bank takes less near full", true),
  CONTROLLER_LOSS("controller_loss_wh", "heat in the controller"),
  SOLAR_USED("solar_used_wh", "put on the bus"),
  OTHER_AVAILABLE("other_available_wh", "from the second source", true),
  OTHER_CURTAILED("other_curtailed_wh", "of it, not taken", true),
  GENERATOR("generator_wh", "from the generator, at its own terminals", true),
  CHARGER_LOSS("charger_loss_wh", "lost in the generator's charger", true),
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
  SERVED("served_wh", "served, what was made up for included"),
  SHED("shed_wh", "let go by rule", true),
  PUT_OFF("put_off_wh", "put off by rule", true),
  MADE_UP("made_up_wh", "served of what was put off before", true),
  UNMET_EMPTY("unmet_empty_wh", "not served because the bank was empty"),
  UNMET_RATE("unmet_rate_wh", "not served because of the bank's discharge limit"),
  UNMET_INVERTER("unmet_inverter_wh", "not served because the inverter was too small"),
  UNMET_CUT_OFF("unmet_cut_off_wh", "not served because the voltage fell to the cut-off", true),
  UNMET_SLOW("unmet_slow_wh", "not served because charge could not be reached in time", true),
  UNMET_ASLEEP("unmet_asleep_wh", "not served because it did not wake the inverter", true),
  WAITING("waiting_wh", "still put off at the end of the hour", true),
  CHARGE("charge_wh", "in the bank above the reserve at the end of the hour");

  private final String header;
  private final String meaning;

  private final boolean isFull;

  LedgerColumn(String header, String meaning) {
    this(header, meaning, false);
  }

  LedgerColumn(String header, String meaning, boolean isFull) {
    this.header = header;
    this.meaning = meaning;
    this.isFull = isFull;
  }

  /** True for what only {@link FullLoop} books; zeros elsewhere. */
  public boolean isFull() {
    return isFull;
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
      case CURTAILED_ABSORPTION -> ledger.curtailedAbsorptionWh;
      case OTHER_AVAILABLE -> ledger.otherAvailableWh();
      case OTHER_CURTAILED -> ledger.otherCurtailedWh;
      case GENERATOR -> ledger.generatorWh;
      case CHARGER_LOSS -> ledger.chargerLossWh;
      case SHED -> ledger.shedWh;
      case PUT_OFF -> ledger.putOffWh;
      case MADE_UP -> ledger.madeUpWh;
      case UNMET_CUT_OFF -> ledger.unmetCutOffWh;
      case UNMET_SLOW -> ledger.unmetSlowWh;
      case UNMET_ASLEEP -> ledger.unmetAsleepWh;
      case WAITING -> ledger.waitingWh;
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
