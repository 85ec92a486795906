package greyspell.study;

import greyspell.load.LoadHours;
import greyspell.load.LoadLog;
import greyspell.load.LoadLogReader;
import greyspell.load.LogClock;
import greyspell.load.LogExtension;
import greyspell.load.LogFit;
import greyspell.load.LogSpec;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the home's log, once where it is kept, and says what was assumed to make a year of it. */
final class LoadNotes {
  private LoadNotes() {}

  /** Null if the home has no log. */
  static @Nullable LoadLog log(Scenario home, Kept kept, List<Assumption> assumptions) {
    LogSpec log = home.load().log();
    if (log == null) {
      return null;
    }
    LoadLog read =
        kept.get(new LogKey(log), () -> LoadLogReader.read(log, home.site().utcOffsetH()));
    String others =
        log.extension() == LogExtension.FIT
            ? "days outside the log follow its fit; "
            : "days outside the log are taken from the nearest day of the year with the same weekday; ";
    assumptions.add(
        new Assumption(
            "loads.log",
            read.days() + " days from " + read.firstDate(),
            others
                + read.filledHours()
                + " missing hours filled from the same hour of other days"));
    if (log.clock() == LogClock.LOCAL) {
      assumptions.add(
          new Assumption(
              "loads.log.clock",
              "daylight saving by " + log.zone(),
              "turned into standard time; the doubled hour told apart by the order of the rows"));
    }
    return read;
  }

  private record LogKey(LogSpec log) {}

  /** What a fit of the log says of itself; nothing where there is none. */
  static void fit(LoadHours load, List<Assumption> assumptions) {
    LogFit fit = load.logFit();
    if (fit == null) {
      return;
    }
    String why = fit.notes().isEmpty() ? "" : "; " + String.join("; ", fit.notes());
    assumptions.add(
        new Assumption(
            "loads.log.other_days",
            fit.isUsable()
                ? "fit of "
                    + fit.days()
                    + " days, explains "
                    + Show.percent(fit.rSquaredShare())
                    + " of their variance"
                : "no fit",
            fit.isUsable()
                ? "a single day lies about " + Show.energy(fit.standardErrorWh()) + " off" + why
                : String.join("; ", fit.notes())));
  }
}
