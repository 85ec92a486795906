package greyspell.balance;

/** A random house with everything in it, for whoever measures from outside this package. */
public final class FullHouses {
  private final Forcing forcing;
  private final Design design;
  private final Ledger books;

  public FullHouses(long seed, int days) {
    forcing = Houses.randomFull(seed, days);
    design = Houses.randomFullDesign(seed, forcing.hours());
    books = new Ledger(forcing, design.bank().windowWh(), true);
  }

  /** One run; the charge after the last hour. */
  public double run() {
    return FullLoop.run(forcing, design, 0.0, books);
  }
}
