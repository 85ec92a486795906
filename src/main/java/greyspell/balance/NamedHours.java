package greyspell.balance;

/**
 * A named hourly flow, in Wh. May be negative only where its name ends in "delta" (cold cells
 * gain). The array is not written.
 */
public final class NamedHours {
  private final String name;
  private final double[] wh;

  public NamedHours(String name, double[] wh) {
    this.name = name;
    this.wh = wh;
  }

  /** As in ledger headers and {@code losses_kwh}: lower case, underscores. */
  public String name() {
    return name;
  }

  public double[] wh() {
    return wh;
  }
}
