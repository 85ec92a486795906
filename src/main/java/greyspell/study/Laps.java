package greyspell.study;

import greyspell.balance.Balance;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.balance.Rounds;
import greyspell.balance.SteadyState;
import greyspell.quantity.Show;
import org.jspecify.annotations.Nullable;

/**
 * Runs a design from its stated charge, or round and round until the first hour starts as the last
 * one ends.
 *
 * @param ledger the books of the last lap
 * @param note how the first hour's charge was found, a sentence
 */
record Laps(Ledger ledger, String note) {
  /**
   * All hours of the forcing.
   *
   * @param statedShare of the usable window at the first hour, null for the steady state
   */
  static Laps run(Forcing forcing, Design design, @Nullable Double statedShare) {
    return run(forcing, design, statedShare, design.bank().windowWh());
  }

  /**
   * The same with a guess at the charge to which it settles: a good one saves laps.
   *
   * @param guessWh above the reserve
   */
  static Laps run(Forcing forcing, Design design, @Nullable Double statedShare, double guessWh) {
    return run(forcing, design, statedShare, guessWh, Ledger.of(forcing, design));
  }

  /** The same with {@link Ledger#brief} books. */
  static Laps brief(Forcing forcing, Design design, @Nullable Double statedShare, double guessWh) {
    return run(forcing, design, statedShare, guessWh, Ledger.brief(forcing, design));
  }

  private static Laps run(
      Forcing forcing, Design design, @Nullable Double statedShare, double guessWh, Ledger ledger) {
    double firstWh = Math.min(guessWh, design.bank().windowWh());
    return new Laps(ledger, note(forcing, design, statedShare, firstWh, ledger));
  }

  /** The same from full into books that were made for this forcing; they are overwritten. */
  static Laps into(Forcing forcing, Design design, Ledger ledger) {
    return new Laps(ledger, note(forcing, design, null, design.bank().windowWh(), ledger));
  }

  private static String note(
      Forcing forcing, Design design, @Nullable Double statedShare, double guessWh, Ledger ledger) {
    double windowWh = design.bank().windowWh();
    if (statedShare != null) {
      Balance.run(forcing, design, statedShare * windowWh, ledger);
      return "The first hour starts at "
          + Show.percent(statedShare)
          + " of the usable bank, as the scenario says.";
    }
    var rounds = new Rounds(forcing, design, ledger);
    double startWh = guessWh;
    for (int lap = 1; lap <= SteadyState.MOST_LAPS; lap++) {
      double endWh = rounds.run(startWh);
      if (Math.abs(endWh - startWh) <= SteadyState.SAME_CHARGE_WH) {
        return "The first hour starts at the charge at which the last one ends ("
            + (windowWh > 0.0 ? Show.percent(endWh / windowWh) : "0 %")
            + " of the usable bank): the weather was run "
            + lap
            + (lap == 1 ? " time." : " times.");
      }
      startWh = endWh;
    }
    return "The first hour starts at "
        + Show.energy(startWh)
        + "; after "
        + SteadyState.MOST_LAPS
        + " laps the charge still drifts.";
  }
}
