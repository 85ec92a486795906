package greyspell.sizing;

import greyspell.storage.step.BankLimits;

/**
 * A bank that is tried.
 *
 * @param ownDrawWh what its electronics draw every hour beyond those in the forcing; negative for a
 *     smaller bank
 */
public record Store(BankLimits limits, double ownDrawWh) {}
