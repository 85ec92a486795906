package greyspell.balance;

import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;

/** What is tried against a forcing: a bank and an inverter, as plain per-hour parameters. */
public record Design(BankLimits bank, InverterLimits inverter) {}
