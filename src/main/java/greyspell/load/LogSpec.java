package greyspell.load;

import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * A measured log of consumption.
 *
 * @param file hourly or finer CSV
 * @param factor multiplies every value (1 as measured)
 * @param priority of all of it
 * @param clock of its local times
 * @param zone of a local clock with daylight saving: a time zone's name, "eu" or "us"; null if it
 *     has none
 * @param extension how other days are made
 * @param isScattered whether fitted days get the scatter of the measured ones
 */
public record LogSpec(
    String file,
    double factor,
    Priority priority,
    LogClock clock,
    @Nullable String zone,
    LogExtension extension,
    boolean isScattered) {
  public LogSpec {
    Check.notNegative("factor", factor);
  }

  /** As measured, standard time, nearest day. */
  public LogSpec(String file, double factor) {
    this(file, factor, Priority.MUST_RUN, LogClock.STANDARD, null, LogExtension.NEAREST_DAY, false);
  }

  LogSpec times(double more) {
    return new LogSpec(file, factor * more, priority, clock, zone, extension, isScattered);
  }
}
