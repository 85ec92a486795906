package greyspell.storage;

import greyspell.quantity.Check;

/**
 * The two tanks of a lead-acid bank, see {@link greyspell.storage.step.TwoTank}.
 *
 * @param availableShare of the charge that is at hand at once
 * @param exchangePerH constant of the flow between the tanks
 * @param tanksWh both, of the whole bank when new: what a very slow draw gives
 */
public record KineticSheet(double availableShare, double exchangePerH, double tanksWh) {
  public KineticSheet {
    Check.within("availableShare", availableShare, 0.01, 1.0);
    Check.within("exchangePerH", exchangePerH, 1e-4, 100.0);
    Check.positive("tanksWh", tanksWh);
  }
}
