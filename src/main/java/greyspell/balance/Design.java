package greyspell.balance;

import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;

/**
 * What is tried against a forcing: a bank and an inverter, as plain per-hour parameters, and what
 * goes beyond them.
 */
public record Design(BankLimits bank, InverterLimits inverter, Detail detail) {
  /** With nothing beyond. */
  public Design(BankLimits bank, InverterLimits inverter) {
    this(bank, inverter, Detail.NONE);
  }
}
