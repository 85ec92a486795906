package greyspell.report;

import greyspell.cause.log.BankFit;
import greyspell.cause.log.Estimate;
import greyspell.cause.log.Finding;
import greyspell.cause.log.Finding.About;
import greyspell.cause.log.HourOfDay;
import greyspell.cause.log.LoadCompared;
import greyspell.cause.log.Shade;
import greyspell.cause.log.SunFit;
import greyspell.chart.Say;
import greyspell.quantity.Show;
import greyspell.study.LogStudy;
import greyspell.study.LogStudy.SunStands;
import java.util.List;

/** The words for what a log says: each finding, and what to look at. */
final class LogWords {
  private static final List<String> WINDS =
      List.of(
          "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");

  private final LogStudy study;

  LogWords(LogStudy study) {
    this.study = study;
  }

  /** In two or three words. */
  static String name(About about) {
    return switch (about) {
      case ARRAY -> "panels";
      case SHADE -> "shade";
      case LOAD -> "load";
      case ALWAYS_ON_LOAD -> "load always on";
      case STANDBY -> "system's own draw";
      case DRAW -> "house and system";
      case BANK -> "bank";
      case CHARGING -> "charging";
    };
  }

  static String range(Estimate e) {
    int decimals = e.plusMinus() < 0.0995 ? 1 : 0;
    return Show.number(100.0 * e.value(), decimals)
        + " % ± "
        + Show.number(100.0 * e.plusMinus(), decimals);
  }

  static String watts(Estimate e) {
    return (Show.number(e.value(), 0).startsWith("-") ? "" : "+")
        + Show.number(e.value(), 0)
        + " W ± "
        + Show.number(e.plusMinus(), 0);
  }

  private static String hours(Estimate e) {
    return e.hours() + " hours on " + e.days() + " days";
  }

  /** What was found, with its figure and what it rests on. */
  String sentence(Finding finding) {
    Estimate e = finding.estimate();
    if (!e.isKnown()) {
      return e.whyNot() + ".";
    }
    return switch (finding.about()) {
      case ARRAY ->
          "gave "
              + range(e)
              + " of the sun that was expected, in "
              + hours(e)
              + " in which nothing held it back.";
      case SHADE -> shade();
      case LOAD -> load(e);
      case ALWAYS_ON_LOAD -> alwaysOn(e);
      case STANDBY ->
          "takes "
              + watts(e)
              + " beside what the scenario states and the load meter sees ("
              + hours(e)
              + ").";
      case DRAW ->
          "take "
              + range(e)
              + " of what was expected ("
              + hours(e)
              + "); the log has no load, so that which of them is not known.";
      case BANK ->
          "holds "
              + range(e)
              + " of the "
              + Show.energy(study.home().bank().monitorWh())
              + " that were expected, from "
              + nights()
              + " and the days between.";
      case CHARGING ->
          "brought "
              + range(e)
              + " of what was expected to come of it; 94 to 106 % was taken for likely beforehand.";
    };
  }

  private String nights() {
    BankFit bank = study.diagnosis().bank();
    return (bank == null ? 0 : bank.nights()) + " stretches of falling charge";
  }

  private String shade() {
    SunFit sun = study.diagnosis().sun();
    Shade shade = sun == null ? null : sun.shade();
    if (shade == null) {
      return "";
    }
    return "from "
        + shade.fromHour()
        + " to "
        + shade.toHour()
        + " h the panels gave "
        + Show.percent(shade.clearFactor())
        + " of the expected when the sun shone ("
        + shade.clearHours()
        + " hours): "
        + range(shade.lostShare())
        + " of the direct sun is lost then.";
  }

  /** How what is lost in some hours becomes what the file says. */
  String shadeInTheFile() {
    return "(shade: the file knows it by month, not by the hour. Stated is what is lost in these"
        + " hours as a share of all the sun of this log's weeks, grey hours and the rest of the day"
        + " included; at another season it is another.)";
  }

  private String load(Estimate e) {
    LoadCompared load = study.diagnosis().load();
    return range(e)
        + " of what was expected ("
        + hours(e)
        + ")"
        + (load == null || !load.alwaysOnW().isKnown() || load.isNightAsExpected()
            ? "."
            : ", with what is always on told apart; all of it together "
                + Show.percent(load.wholeFactor())
                + ".");
  }

  private String alwaysOn(Estimate e) {
    LoadCompared load = study.diagnosis().load();
    return load == null
        ? ""
        : watts(e)
            + (load.isNightAsExpected() ? "; from " : " beside that; from ")
            + load.nightFromHour()
            + " to "
            + (load.nightFromHour() + 3) % 24
            + " h the log shows "
            + Show.power(load.seenNightW())
            + ", the scenario "
            + Show.power(load.expectedNightW())
            + ".";
  }

  /** What to look at, for a finding that is named. */
  String advice(Finding finding) {
    boolean isLess = finding.estimate().value() < finding.about().assumed();
    return switch (finding.about()) {
      case ARRAY ->
          isLess
              ? "Panels: look from the ground for dirt, leaves, moss and a plane that is not as the"
                  + " scenario says; have the strings compared with one another by a licensed person:"
                  + " one that is dead takes a whole share of the sun."
              : "Panels: more came than the scenario allows for. Is its dirt, shade or wire loss too"
                  + " high, or the weather file from a darker place?";
      case SHADE -> "Shade: " + whereToLook();
      case LOAD ->
          (isLess ? "Load: less is used than planned" : "Load: what has been added since the plan?")
              + hourOfMost()
              + " Set the appliances anew from what you measure.";
      case ALWAYS_ON_LOAD ->
          isLess
              ? "Always on: the night draws less than planned; take it out of the plan."
              : "Always on: at night switch off one circuit after the other and watch the meter fall:"
                  + " what falls most is the one.";
      case STANDBY ->
          isLess
              ? "The system's own draw is less than stated: read it once more with nothing on."
              : "The system's own draw: with nothing on, read what leaves the bank. Inverter, loads"
                  + " on the bus that the load meter does not see, bank electronics, a heater.";
      case DRAW ->
          "House and system: put a meter on the load; a log with it tells which of the two it is.";
      case BANK ->
          isLess
              ? "Bank: charge it full once, then note the kWh that it gives down to the reserve; look"
                  + " for a pack that does not take part. Never open it: the maker or the installer"
                  + " can test it."
              : "Bank: it holds more than stated. Is the capacity in the scenario, or that in the"
                  + " meter, the right one?";
      case CHARGING ->
          "Charging: compare the meters of sun and load with another meter, and the charging"
              + " efficiency that is set in the bank's meter.";
    };
  }

  private String whereToLook() {
    SunStands sun = study.shadeSun();
    SunFit fit = study.diagnosis().sun();
    Shade shade = fit == null ? null : fit.shade();
    if (sun == null || shade == null) {
      return "look for it.";
    }
    return "on a clear day between "
        + shade.fromHour()
        + " and "
        + shade.toHour()
        + " h (standard time) look from the panels' foot towards "
        + wind(sun.fromAzimuthDeg())
        + " to "
        + wind(sun.toAzimuthDeg())
        + " ("
        + Show.number(sun.fromAzimuthDeg(), 0)
        + " to "
        + Show.number(sun.toAzimuthDeg(), 0)
        + "°), up to "
        + Show.number(sun.highestDeg(), 0)
        + "° high: a tree, a chimney, a pole, a ridge.";
  }

  private static String wind(double azimuthDeg) {
    return WINDS.get((int) Math.rint(azimuthDeg / 45.0) % WINDS.size());
  }

  private String hourOfMost() {
    HourOfDay most = null;
    double mostW = 0.0;
    for (HourOfDay hour : study.diagnosis().byHour()) {
      double by = Math.abs(hour.seenLoadW() - hour.expectedLoadW());
      if (by > mostW) {
        mostW = by;
        most = hour;
      }
    }
    return most == null
        ? "."
        : " It differs most at "
            + most.hour()
            + " h: "
            + Show.power(most.seenLoadW())
            + " seen, "
            + Show.power(most.expectedLoadW())
            + " expected.";
  }

  /** What an entry of the list of errors stands for. */
  static String explained(LogStudy.Explained one, int named) {
    if (one.about().isEmpty()) {
      return "with the load as the log has it, hour by hour";
    }
    String words =
        Say.list(one.about().stream().map(LogWords::name).toList())
            + (one.about().size() == named && (named > 1 || one.isLoadAsSeen())
                ? " as found"
                : " alone as found");
    return one.isLoadAsSeen() ? words + ", and the load as the log has it" : words;
  }
}
