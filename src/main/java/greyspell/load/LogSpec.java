package greyspell.load;

import greyspell.quantity.Check;

/**
 * A measured log of consumption.
 *
 * @param file hourly or finer CSV
 * @param factor multiplies every value (1 as measured)
 */
public record LogSpec(String file, double factor) {
  public LogSpec {
    Check.notNegative("factor", factor);
  }
}
