package greyspell.load;

/**
 * A measured log of consumption.
 *
 * @param file hourly or finer CSV
 * @param factor multiplies every value (1 as measured)
 */
public record LogSpec(String file, double factor) {}
