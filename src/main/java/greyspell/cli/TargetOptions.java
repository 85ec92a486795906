package greyspell.cli;

import greyspell.sizing.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What a home is to be sized for, as options. */
final class TargetOptions {
  static final int MOST_DAYS = 365;
  private static final double USUAL_HOURS = 10.0;
  private static final double MOST_HOURS = 8760.0;
  private static final Pattern ONE_IN =
      Pattern.compile("\\s*(\\d{1,4})\\s*(?:in|of|/)\\s*(\\d{1,4})\\s*");

  @Option(
      names = "--unmet-hours",
      paramLabel = "HOURS",
      description =
          "At most so many hours in an average year with something not served. Without any target: 10.")
  private @Nullable Double unmetHours;

  @Option(
      names = "--loss-days",
      paramLabel = "DAYS",
      description = "At most so many days of loss in every whole winter.")
  private @Nullable Integer lossDays;

  @Option(
      names = "--dark-winters",
      paramLabel = "\"1 in 10\"",
      description = "At most so many winters of so many with anything not served.")
  private @Nullable String darkWinters;

  @Option(
      names = "--autonomy-days",
      paramLabel = "DAYS",
      description = "A full bank lasts so many days without any sun: the standards' rule.")
  private @Nullable Double autonomyDays;

  /** As stated, null if not. */
  @Nullable Double autonomyDays() {
    return autonomyDays;
  }

  /** All that are stated; without any, few unmet hours. */
  List<Target> read(OptionReader reader) {
    var targets = new ArrayList<Target>();
    Double hours = unmetHours;
    if (hours != null) {
      if (hours >= 0.0 && hours <= MOST_HOURS) {
        targets.add(new Target.UnmetHours(hours));
      } else {
        reader.fault("--unmet-hours", "found " + hours, "must be 0 to 8760", "Hours in a year.");
      }
    }
    Integer loss = lossDays;
    if (loss != null) {
      if (loss >= 0 && loss <= MOST_DAYS) {
        targets.add(new Target.LossDays(loss));
      } else {
        reader.fault("--loss-days", "found " + loss, "must be 0 to 365", "Days in a winter.");
      }
    }
    if (darkWinters != null) {
      dark(reader, darkWinters, targets);
    }
    Double days = autonomyDays;
    if (days != null) {
      within(reader, "--autonomy-days", days, MOST_DAYS);
      targets.add(new Target.AutonomyDays(days));
    }
    if (targets.isEmpty()) {
      targets.add(new Target.UnmetHours(USUAL_HOURS));
    }
    return targets;
  }

  private static void dark(OptionReader reader, String text, List<Target> targets) {
    Matcher read = ONE_IN.matcher(text);
    if (read.matches()) {
      int most = Integer.parseInt(read.group(1)), of = Integer.parseInt(read.group(2));
      if (of > most) {
        targets.add(new Target.DarkWinters(most, of));
        return;
      }
    }
    reader.fault(
        "--dark-winters",
        "found \"" + text + "\"",
        "must be a number of winters in a larger number",
        "Write for instance --dark-winters \"1 in 10\".");
  }

  static void within(OptionReader reader, String option, @Nullable Double value, double most) {
    if (value != null && !(value > 0.0 && value <= most)) {
      reader.fault(option, "found " + value, "must be above 0, at most " + (int) most, "A number.");
    }
  }
}
