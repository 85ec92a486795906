package greyspell.balance;

/** The loop that a design needs: {@link HourLoop} where it says all, else {@link FullLoop}. */
public final class Balance {
  private Balance() {}

  /**
   * Runs all hours of the forcing.
   *
   * @param startChargeWh above the reserve, 0 to the window
   * @param books made with {@link Ledger#of}; overwritten
   * @return the charge after the last hour, so that years can be chained
   */
  public static double run(Forcing forcing, Design design, double startChargeWh, Ledger books) {
    return FullLoop.isNeeded(forcing, design)
        ? FullLoop.run(forcing, design, startChargeWh, books)
        : HourLoop.run(forcing, design, startChargeWh, books);
  }
}
