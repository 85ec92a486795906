package greyspell.report;

import greyspell.quantity.Show;
import greyspell.sky.SkyChecks;
import greyspell.sky.SunClock;
import greyspell.study.WeatherInspection;
import greyspell.weather.WeatherFacts.DullSpell;
import greyspell.weather.WeatherFacts.TemperatureJump;
import greyspell.weather.WeatherSeries;
import greyspell.weather.WeatherSource;
import java.util.ArrayList;
import java.util.List;

/** A weather file in words: what it is, its months, its dull spells, and what looks wrong. */
public final class InspectionText {
  private static final int MOST_SPELLS = 6;
  private static final int FEW_HOURS = 10;

  private InspectionText() {}

  public static String of(WeatherInspection inspection) {
    var out = new StringBuilder();
    head(inspection.weather(), out);
    out.append('\n').append(WeatherTables.of(inspection.weather()).text());
    missing(inspection.weather(), out);
    dullSpells(inspection, out);
    clock(inspection, out);
    var findings = findings(inspection);
    if (findings.isEmpty()) {
      out.append("\nNothing looks wrong.\n");
    } else {
      out.append("\nLook at this before you trust the file:\n");
      findings.forEach(finding -> out.append("  ! ").append(finding).append('\n'));
    }
    if (inspection.sky() == null && inspection.weather().globalHorizontalWm2() != null) {
      out.append(
          "Light was not held against the sun: the file does not say where it was taken (--latitude, --longitude).\n");
    }
    return out.toString();
  }

  /** What looks wrong, a sentence each; empty if nothing does. */
  public static List<String> findings(WeatherInspection inspection) {
    var findings = new ArrayList<String>();
    SkyChecks sky = inspection.sky();
    if (sky != null) {
      if (sky.nightHours() > FEW_HOURS) {
        findings.add(
            sky.nightHours()
                + " hours with light while the sun is down: the clock of the file may be wrong.");
      }
      if (sky.tooBrightHours() > FEW_HOURS) {
        findings.add(
            sky.tooBrightHours()
                + " hours brighter than the sun above the air allows: the unit or the clock may be wrong.");
      }
      SunClock clock = sky.clock();
      if (clock != null && clock.isWrong()) {
        findings.add(
            "The clearest "
                + clock.days()
                + " days fit the sun when the file's times are moved by "
                + minutes(clock)
                + ": a wrong time zone, or stamps at the other end of the hour?");
      }
    }
    WeatherSeries weather = inspection.weather();
    List<TemperatureJump> jumps = inspection.temperatureJumps();
    if (!jumps.isEmpty()) {
      TemperatureJump first = jumps.get(0);
      findings.add(
          jumps.size()
              + (jumps.size() == 1 ? " jump" : " jumps")
              + " in temperature of more than "
              + Show.number(WeatherInspection.JUMP_K, 0)
              + " K within an hour, the first of "
              + Show.number(first.stepK(), 1)
              + " K on "
              + Show.date(weather.calendar().date(first.hour()))
              + ".");
    }
    if (!inspection.repeatedDays().isEmpty()) {
      findings.add(
          inspection.repeatedDays().size()
              + (inspection.repeatedDays().size() == 1 ? " day repeats" : " days repeat")
              + " the temperatures of the day before to the last digit, the first on "
              + Show.date(weather.calendar().date(inspection.repeatedDays().get(0)))
              + ": filled data.");
    }
    return findings;
  }

  private static String minutes(SunClock clock) {
    return (clock.shiftMin() >= 0.5 ? "+" : "")
        + Show.number(clock.shiftMin(), 0)
        + " minutes (± "
        + Show.number(clock.uncertaintyMin(), 0)
        + ")";
  }

  /** What the sun says of the clock, also where it is right. */
  private static void clock(WeatherInspection inspection, StringBuilder out) {
    SkyChecks sky = inspection.sky();
    if (sky == null) {
      return;
    }
    SunClock clock = sky.clock();
    out.append(
        clock == null
            ? "\nClock against the sun: too few clear days to tell.\n"
            : "\nClock against the sun: off by "
                + minutes(clock)
                + ", from the "
                + clock.days()
                + " clearest days.\n");
  }

  private static void head(WeatherSeries weather, StringBuilder out) {
    WeatherSource source = weather.source();
    out.append(source.file()).append(": ").append(source.format());
    if (!source.place().isEmpty()) {
      out.append(", ").append(source.place());
    }
    Double latitudeDeg = source.latitudeDeg(), longitudeDeg = source.longitudeDeg();
    if (latitudeDeg != null && longitudeDeg != null) {
      out.append(" at ")
          .append(Show.number(latitudeDeg, 2))
          .append(", ")
          .append(Show.number(longitudeDeg, 2));
    }
    Double elevationM = source.elevationM();
    if (elevationM != null) {
      out.append(", ").append(Show.number(elevationM, 0)).append(" m");
    }
    var calendar = weather.calendar();
    out.append("\nYears: ");
    if (calendar.isTypical()) {
      out.append("a typical year, months of different years; one middling draw, not a bad winter");
    } else {
      out.append(calendar.firstYear());
      if (calendar.years() > 1) {
        out.append(" to ").append(calendar.firstYear() + calendar.years() - 1);
      }
    }
    out.append("; standard time UTC").append(source.utcOffsetH() < 0 ? "" : "+");
    out.append(Show.trimmed(source.utcOffsetH(), 2))
        .append("\nHolds: ")
        .append(columns(weather))
        .append('\n');
  }

  private static String columns(WeatherSeries weather) {
    var columns = new ArrayList<String>();
    if (weather.globalHorizontalWm2() != null) {
      columns.add("global irradiance");
    }
    if (weather.directNormalWm2() != null) {
      columns.add("direct normal");
    }
    if (weather.diffuseHorizontalWm2() != null) {
      columns.add("diffuse");
    }
    columns.add("air temperature");
    if (weather.windMs() != null) {
      columns.add("wind");
    }
    if (weather.cloudShare() != null) {
      columns.add("cloud cover");
    }
    if (weather.snowDepthM() != null) {
      columns.add("snow depth");
    }
    return String.join(", ", columns);
  }

  private static void missing(WeatherSeries weather, StringBuilder out) {
    int missing = weather.gaps().missingHours();
    out.append("\nMissing hours: ").append(missing);
    if (missing > 0) {
      out.append(" of ")
          .append(weather.hours())
          .append(", longest run ")
          .append(weather.gaps().longestGapHours());
    }
    out.append('\n');
    weather.gaps().notes().forEach(note -> out.append("  - ").append(note).append('\n'));
  }

  private static void dullSpells(WeatherInspection inspection, StringBuilder out) {
    List<DullSpell> spells = inspection.dullSpells();
    if (inspection.weather().globalHorizontalWm2() == null) {
      return;
    }
    out.append("\nLongest runs of days under ");
    out.append(Show.number(WeatherInspection.DULL_WHM2 / 1000.0, 0)).append(" kWh/m²:");
    if (spells.isEmpty()) {
      out.append(" none\n");
      return;
    }
    out.append('\n');
    var calendar = inspection.weather().calendar();
    for (DullSpell spell : spells.subList(0, Math.min(MOST_SPELLS, spells.size()))) {
      String days = String.valueOf(spell.days());
      out.append("  ").append(" ".repeat(Math.max(0, 4 - days.length()))).append(days);
      out.append(spell.days() == 1 ? " day from " : " days from ");
      out.append(
          calendar.isTypical()
              ? Show.day(calendar.date(spell.firstHour()))
              : Show.date(calendar.date(spell.firstHour())));
      out.append('\n');
    }
  }
}
