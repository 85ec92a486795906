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

  /**
   * Runs so many hours from one of them on; after the last hour of the forcing comes its first. The
   * books of all other hours stay as they are.
   *
   * @param fromHour at whose beginning the charge is as stated
   * @param count of hours, at most those of the forcing
   */
  public static double runFrom(
      Forcing forcing, Design design, double startChargeWh, Ledger books, int fromHour, int count) {
    int hours = forcing.hours();
    if (fromHour < 0 || fromHour >= hours || count < 1 || count > hours) {
      throw new IllegalArgumentException(count + " hours from " + fromHour + " of " + hours);
    }
    if (FullLoop.isNeeded(forcing, design)) {
      return FullLoop.run(forcing, design, startChargeWh, books, fromHour, count);
    }
    int toHour = Math.min(hours, fromHour + count);
    double chargeWh = HourLoop.run(forcing, design, startChargeWh, books, fromHour, toHour);
    int rest = count - (toHour - fromHour);
    return rest == 0 ? chargeWh : HourLoop.run(forcing, design, chargeWh, books, 0, rest);
  }
}
