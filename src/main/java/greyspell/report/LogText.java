package greyspell.report;

import greyspell.cause.log.ClockFit;
import greyspell.cause.log.Estimate;
import greyspell.cause.log.Finding;
import greyspell.cause.log.LightsOut;
import greyspell.cause.log.SunFit;
import greyspell.chart.Say;
import greyspell.quantity.Show;
import greyspell.sky.SunClock;
import greyspell.study.LogCoverage;
import greyspell.study.LogStudy;
import greyspell.study.LogStudy.Explained;
import java.util.List;

/**
 * What a log says, in the order in which an owner reads: what fits, what differs, how much of the
 * charge that explains, what to look at, and which lines of the scenario to try.
 */
public final class LogText {
  private final LogStudy study;
  private final LogWords words;
  private final StringBuilder out = new StringBuilder();

  private LogText(LogStudy study) {
    this.study = study;
    words = new LogWords(study);
  }

  public static String of(LogStudy study) {
    var text = new LogText(study);
    text.head();
    text.fits();
    text.differs();
    text.explains();
    text.check();
    text.lines();
    text.cautions();
    return text.out.toString();
  }

  private void head() {
    LogCoverage c = study.coverage();
    Columns.wrap(
        out,
        "",
        study.home().name()
            + " beside its log: "
            + Show.date(c.first())
            + " to "
            + Show.date(c.last())
            + ", "
            + Show.days(c.hours() / 24.0)
            + ". "
            + sentence(study.log().notes())
            + holes(c));
    Columns.wrap(out, "", clock());
    if (!study.hasWeather()) {
      out.append('\n');
      Columns.wrap(out, "! ", noWeather());
    }
    out.append('\n');
  }

  private static String sentence(List<String> notes) {
    String all = String.join("; ", notes);
    return all.isEmpty() ? "" : Character.toUpperCase(all.charAt(0)) + all.substring(1) + ". ";
  }

  private static String holes(LogCoverage c) {
    return c.gaps() == 0
        ? "No holes."
        : Say.count(c.gaps(), "hole", "holes")
            + ", together "
            + Say.hours(c.gapHours())
            + ", the longest "
            + Say.hours(c.longestGapHours())
            + "; they are left out, not filled.";
  }

  private String clock() {
    ClockFit clock = study.clock();
    SunClock sun = study.sunClock();
    if (clock != null) {
      Estimate e = clock.shiftH();
      String by = Show.number(Math.abs(e.value()), 1) + " h ± " + Show.number(e.plusMinus(), 1);
      return clock.isWrong()
          ? "! Clock: the log is "
              + by
              + " h "
              + (e.value() > 0.0 ? "behind" : "ahead of")
              + " the weather's. "
              + Show.number(Math.abs(study.shiftMinutes() / 60.0), 1)
              + " h were "
              + (study.shiftMinutes() > 0 ? "added to" : "taken from")
              + " its times before anything else was read. Daylight saving, or UTC?"
          : "Clock: fits the sun of the weather file (" + by + " h off).";
    }
    if (sun != null) {
      return sun.isWrong()
          ? "! Clock: by the symmetry of clear days the log is about "
              + Show.number(Math.abs(sun.shiftH()), 1)
              + " h off; "
              + study.shiftMinutes()
              + " minutes were added to its times."
          : "Clock: fits the sun by the symmetry of " + sun.days() + " clear days.";
    }
    return "Clock: not enough sun in this log to test it.";
  }

  private String noWeather() {
    return "The scenario's weather file ("
        + study.home().weather().file()
        + ") does not hold a week or more of this log, so the panels cannot be judged: only load, the system's own"
        + " draw and the bank are. Give the scenario weather that holds them: a station or a"
        + " service near you for these dates, turned by \"greyspell weather convert\" if need be;"
        + " a whole calendar year is needed.";
  }

  private void fits() {
    List<Finding> fit =
        study.diagnosis().findings().stream()
            .filter(f -> !f.isNamed() && f.estimate().isKnown())
            .toList();
    List<Finding> unknown =
        study.diagnosis().findings().stream().filter(f -> !f.estimate().isKnown()).toList();
    if (!fit.isEmpty()) {
      out.append("What fits, or differs by no more than chance brings\n");
      fit.forEach(this::finding);
      out.append('\n');
    }
    if (!unknown.isEmpty()) {
      out.append("Not enough in this log to tell\n");
      unknown.forEach(this::finding);
      out.append('\n');
    }
  }

  private void finding(Finding finding) {
    String name = LogWords.name(finding.about());
    String first = "  " + name + " ".repeat(Math.max(1, 19 - name.length()));
    Columns.wrap(out, first, words.sentence(finding));
  }

  private void differs() {
    List<Finding> named = study.namedByWeight();
    if (named.isEmpty()) {
      out.append("What differs: nothing that this log can tell.\n\n");
      return;
    }
    out.append("What differs\n");
    named.forEach(this::finding);
    out.append('\n');
  }

  private void explains() {
    if (Double.isNaN(study.chargeErrorShare())) {
      return;
    }
    Columns.wrap(
        out,
        "",
        "How far the simulated charge is from the one seen (root mean square, points of 100)");
    line(study.chargeErrorShare(), "as the scenario has it");
    for (Explained one : study.alone()) {
      line(one.chargeErrorShare(), LogWords.explained(one, study.named().size()));
    }
    Explained all = study.together();
    if (all != null) {
      line(all.chargeErrorShare(), LogWords.explained(all, study.named().size()));
      out.append('\n');
      Columns.wrap(out, "", most());
    }
    out.append('\n');
  }

  private void line(double errorShare, String what) {
    String number = Show.number(100.0 * errorShare, 1);
    Columns.wrap(out, "  " + " ".repeat(5 - Math.min(5, number.length())) + number + "  ", what);
  }

  private String most() {
    for (Explained one : study.alone()) {
      if (!one.about().isEmpty()) {
        return one.chargeErrorShare() < 0.95 * study.chargeErrorShare()
            ? "Of what differs, "
                + LogWords.name(one.about().get(0))
                + " explains most of the charge."
            : "No difference alone brings the simulated charge nearer: days on which the house used"
                + " more or less than planned weigh more, or the differences offset one another.";
      }
    }
    return "";
  }

  private void check() {
    List<Finding> named = study.namedByWeight();
    if (named.isEmpty()) {
      return;
    }
    out.append("What to look at this week\n");
    int n = 1;
    for (Finding finding : named) {
      Columns.wrap(out, "  " + n++ + ". ", words.advice(finding));
    }
    out.append('\n');
  }

  private void lines() {
    List<String> lines = new LogKeys(study).lines();
    if (lines.isEmpty()) {
      return;
    }
    out.append("Lines of the scenario to try, once you have looked (nothing was changed)\n");
    lines.forEach(l -> out.append("  ").append(l).append('\n'));
    if (study.named().stream().anyMatch(f -> f.about() == Finding.About.SHADE)) {
      Columns.wrap(out, "  ", words.shadeInTheFile());
    }
    out.append('\n');
  }

  private void cautions() {
    out.append("Before you believe it\n");
    study.cautions().forEach(c -> Columns.wrap(out, "  - ", c));
    SunFit sun = study.diagnosis().sun();
    if (sun != null) {
      Columns.wrap(out, "  - ", left(sun.left()));
    }
    LightsOut lights = study.diagnosis().lightsOut();
    if (lights.hours() > 0) {
      Columns.wrap(
          out,
          "  - ",
          "The house got nothing in "
              + Say.hours(lights.hours())
              + ", with a charge of up to "
              + Show.percent(lights.highestChargeShare())
              + " shown. If that is well above the reserve, the meter has drifted or the bank is tired.");
    }
    if (study.diagnosis().bank() != null) {
      Columns.wrap(
          out,
          "  - ",
          "A charge meter that counts down from a capacity that was typed in shows nothing of a tired"
              + " bank: the bank's figure is then that of the meter's setting. It drifts where the bank"
              + " is not full for weeks; up to 0.4 points a day are allowed for.");
    }
    Columns.wrap(
        out,
        "  - ",
        "± is the range that holds the truth in 95 of 100 logs like this, if weather and meters are"
            + " those of this house: 1 % (one standard deviation) is allowed for each meter, nothing for"
            + " weather from elsewhere. A difference is named if it is worth a word and more than one and"
            + " a half times that.");
    Columns.wrap(
        out,
        "  - ",
        "A diagnosis to look by, not a measurement. Roofs, direct current and batteries can hurt: what"
            + " has to be opened or climbed is for a licensed person.");
  }

  private static String left(SunFit.Left left) {
    return "Of the sunlit hours "
        + left.read()
        + " were read. Left out: "
        + left.full()
        + " with the bank nearly full, "
        + left.atLimit()
        + " at a limit, "
        + left.heldBack()
        + " in which nothing went into a bank that was not shown as full, "
        + left.unknown()
        + " not in the log or with a generator on"
        + (left.coveredDays() > 0
            ? "; and "
                + Say.days(left.coveredDays())
                + " on which the panels gave next to nothing (snow?)."
            : ".");
  }
}
