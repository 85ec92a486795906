package greyspell.balance;

/**
 * Runs the same hours of one design from one charge after another, into the same books. A lap ends
 * where it runs into the one before it: once all that the loop remembers is the same to the last
 * bit, so is every hour from there on, and the books of those hours are written already. Most laps
 * meet at the first full bank. Held equal to {@link Balance#run} by RoundsLawTest.
 */
public final class Rounds {
  private static final int STRIDE_H = 240;

  private final Forcing forcing;
  private final Design design;
  private final Ledger books;
  private final double[] marks;
  private boolean hasRun;

  /**
   * Nothing is run yet.
   *
   * @param books made with {@link Ledger#of}; only these laps may write them
   */
  public Rounds(Forcing forcing, Design design, Ledger books) {
    this.forcing = forcing;
    this.design = design;
    this.books = books;
    marks =
        FullLoop.isNeeded(forcing, design)
            ? new double[FullLoop.marks(forcing, design)]
            : new double[0];
  }

  /**
   * All hours once more.
   *
   * @param startChargeWh above the reserve, 0 to the window
   * @return the charge after the last hour
   */
  public double run(double startChargeWh) {
    boolean isAgain = hasRun;
    hasRun = true;
    if (marks.length > 0) {
      return FullLoop.lap(forcing, design, startChargeWh, books, marks, isAgain);
    }
    return isAgain
        ? again(startChargeWh)
        : HourLoop.run(forcing, design, startChargeWh, books, 0, forcing.hours());
  }

  /** The charge is all that the fast loop remembers. */
  private double again(double startChargeWh) {
    int hours = forcing.hours();
    double chargeWh = startChargeWh;
    for (int h = 0; h < hours; h += STRIDE_H) {
      int to = Math.min(hours, h + STRIDE_H);
      double beforeWh = books.chargeWh[to - 1];
      chargeWh = HourLoop.run(forcing, design, chargeWh, books, h, to);
      if (chargeWh == beforeWh) {
        break;
      }
    }
    books.startChargeWh = startChargeWh;
    return books.chargeWh[hours - 1];
  }
}
