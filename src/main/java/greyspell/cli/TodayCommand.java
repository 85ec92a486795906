package greyspell.cli;

import greyspell.operate.Today;
import greyspell.quantity.BadInput;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.report.TodayJson;
import greyspell.report.TodayText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Through a grey spell, from now on. */
@Command(
    name = "today",
    description = {
      "Tells how long the charge lasts from now on.",
      "For each class of loads; what switching off buys, and whether to run the generator.",
      "The days ahead are those of other years around this date: no forecast."
    },
    footer = {
      "",
      "Example: greyspell today scenarios/harrow-combe.yaml --charge 62%% --sky grey --at 2026-12-04T17:00"
    },
    mixinStandardHelpOptions = true)
final class TodayCommand implements Callable<Integer> {
  private static final List<String> SKIES = List.of("grey", "mixed", "clear", "any");

  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2200;
  private static final double SECONDS_PER_HOUR = 3600.0;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file.")
  private Path scenario = Path.of("");

  @Option(
      names = "--charge",
      required = true,
      paramLabel = "PERCENT",
      description =
          "What the monitor shows now: 62%% (of the whole bank, not of what lies above the reserve).")
  private String charge = "";

  @Option(
      names = "--sky",
      defaultValue = "any",
      paramLabel = "SKY",
      description = "What the days ahead look like: grey, mixed, clear, or any (if not said).")
  private String sky = "any";

  @Option(
      names = "--days",
      defaultValue = "5",
      paramLabel = "N",
      description = "How far to look, 1 to 14 (5 if not said).")
  private int days;

  @Option(
      names = "--at",
      paramLabel = "DATE",
      description =
          "Instead of now: 2026-12-04T17:00, or 2026-12-04 for noon; the site's standard time.")
  private @Nullable String at;

  @Option(names = "--json", description = "Print the figures for other programs.")
  private boolean json;

  @Mixin private WintersOption weather = new WintersOption();
  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    double share = share();
    int daysAhead = checkedDays();
    String skyAhead = checkedSky();
    LocalDateTime stated = at == null ? null : stated(at);
    Today today;
    try (var progress = Progress.onTerminal()) {
      progress.step("reading the scenario", 0.0);
      Scenario home = ScenarioReader.read(scenario, library.folder());
      LocalDateTime when = stated == null ? now(home) : stated;
      var asked = new Today.Asked(when, share, daysAhead, skyAhead);
      today = Today.of(weather.trials(home, progress::step), asked);
    }
    screen.print(json ? TodayJson.text(today) : TodayText.of(today));
    screen.flush();
    return 0;
  }

  private double share() {
    String number = charge.strip().replace(',', '.');
    boolean isPercent = number.endsWith("%");
    try {
      double percent =
          Double.parseDouble(isPercent ? number.substring(0, number.length() - 1) : number);
      boolean isShare = !isPercent && percent > 0.0 && percent <= 1.0;
      if (percent >= 0.0 && percent <= 100.0 && !isShare) {
        return percent / 100.0;
      }
    } catch (NumberFormatException e) {
      // told below, like a number out of range
    }
    throw refused(
        "--charge", charge, "must be 0% to 100%, in percent", "Write what the monitor shows: 62%.");
  }

  private int checkedDays() {
    if (days < 1 || days > 14) {
      throw refused("--days", Integer.toString(days), "must be 1 to 14", "Nobody sees further.");
    }
    return days;
  }

  private String checkedSky() {
    if (SKIES.contains(sky)) {
      return sky;
    }
    String near = Nearest.of(sky, SKIES);
    throw refused(
        "--sky",
        sky,
        "must be grey, mixed, clear or any",
        near == null ? "Leave it out if you do not know." : "Did you mean " + near + "?");
  }

  /** The clock of the site, wherever this computer stands and whatever its clock is set to. */
  private static LocalDateTime now(Scenario home) {
    long seconds = Math.round(home.site().utcOffsetH() * SECONDS_PER_HOUR);
    return LocalDateTime.now(ZoneOffset.UTC).plusSeconds(seconds);
  }

  private static LocalDateTime stated(String at) {
    String text = at.strip().replace(' ', 'T');
    try {
      LocalDateTime when = LocalDateTime.parse(text.contains("T") ? text : text + "T12:00");
      if (when.getYear() >= FIRST_YEAR && when.getYear() <= LAST_YEAR) {
        return when;
      }
    } catch (DateTimeParseException e) {
      // told below, like a year out of range
    }
    throw refused(
        "--at",
        at,
        "must be a date from "
            + FIRST_YEAR
            + " to "
            + LAST_YEAR
            + ", with or without a time of day",
        "Such as 2026-12-04T17:00.");
  }

  private static BadInput refused(String option, String found, String expected, String mend) {
    return BadInput.of(Place.of(option), "found \"" + found + '"', expected, mend);
  }
}
