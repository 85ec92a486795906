package greyspell.chart;

import greyspell.array.CurvePoint;
import greyspell.array.CurveTrace;
import greyspell.array.LitString;
import greyspell.array.PanelCurve;
import greyspell.array.PlanesTogether;
import greyspell.array.SingleDiode;
import greyspell.array.StringCurve;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Pictures of current and power against voltage: a module, a shaded string, two planes. */
public final class CurvePictures {
  private static final int STEPS = 160;

  private CurvePictures() {}

  /** Light and cell temperature of one line. */
  public record Condition(double irradianceWm2, double cellC) {
    String words() {
      return Say.number(irradianceWm2, 0) + " W/m², " + Say.number(cellC, 0) + " °C";
    }
  }

  /**
   * A module under several lights and temperatures, 1 to 5.
   *
   * @param moduleName as it stands in the title
   */
  public static Picture module(String moduleName, SingleDiode diode, List<Condition> conditions) {
    var lines = new ArrayList<CurveLine>();
    for (Condition c : conditions) {
      var string =
          new LitString(diode, 1, LitString.USUAL_BYPASS_GROUPS, c.irradianceWm2(), c.cellC());
      lines.add(new CurveLine(c.words(), PanelCurve.of(StringCurve.of(string)).trace(STEPS)));
    }
    CurveLine most = lines.get(0);
    CurveLine least = lines.get(0);
    for (CurveLine line : lines) {
      most = bestW(line) > bestW(most) ? line : most;
      least = bestW(line) < bestW(least) ? line : least;
    }
    String title =
        "The "
            + moduleName
            + " gives "
            + CurvePicture.say(most.trace().maxPower())
            + " under "
            + most.name()
            + (conditions.size() == 1
                ? ""
                : ", and " + CurvePicture.say(least.trace().maxPower()) + " under " + least.name());
    return new CurvePicture(
        "module-curve",
        title,
        "Current (left) and power (right) against voltage, from the data sheet. W/m² is the light that"
            + " reaches the cells, °C their temperature. A dot marks the most power.",
        lines);
  }

  /**
   * What shade takes from a string, or from parallel strings.
   *
   * @param shadeWords what is shaded, such as "one module of eight half in shade"
   */
  public static Picture shade(String shadeWords, PanelCurve unshaded, PanelCurve shaded) {
    return shade(shadeWords, "", unshaded, shaded, null);
  }

  /**
   * The same, told which string it is.
   *
   * @param stringWords whole sentences and a blank to begin the note with, or empty
   * @param heldV voltage at which a controller that does not track holds it, null for one that does
   */
  static Picture shade(
      String shadeWords,
      String stringWords,
      PanelCurve unshaded,
      PanelCurve shaded,
      @Nullable Double heldV) {
    CurveTrace full = unshaded.trace(STEPS);
    CurveTrace left = shaded.trace(STEPS);
    CurvePoint best = left.maxPower();
    double fullW = full.maxPower().powerW();
    String title =
        "With "
            + shadeWords
            + ", "
            + CurvePicture.watts(best.powerW())
            + " are left of "
            + CurvePicture.watts(fullW)
            + ": "
            + Say.percent(1.0 - best.powerW() / Math.max(fullW, 1e-9))
            + " less";
    var note =
        new StringBuilder(
            stringWords
                + "Filled dot: the most power. Bypass diodes carry the current past cells that are too dark.");
    CurvePoint second = secondBest(left);
    if (heldV != null) {
      note.append(" The controller does not track: the bank holds the panels near ")
          .append(Say.number(heldV, 0))
          .append(" V, where ")
          .append(CurvePicture.watts(left.powerW(heldV)))
          .append(" are left of ")
          .append(CurvePicture.watts(full.powerW(heldV)))
          .append(", and less as the bank's voltage rises.");
    } else if (second.powerW() > 0.0) {
      note.append(" The shaded line has ")
          .append(left.summits().size())
          .append(" summits (lower ones: open dots); a controller that settles on ")
          .append(CurvePicture.say(second))
          .append(" gets ")
          .append(Say.percent(1.0 - second.powerW() / best.powerW()))
          .append(" less than it could.");
    }
    return new CurvePicture(
        "shade-curve",
        title,
        note.toString(),
        List.of(new CurveLine("no shade", full), new CurveLine("shaded", left)));
  }

  /** Two strings that look different ways, apart, in parallel and in a row. */
  public static Picture planes(
      String firstName, LitString first, String secondName, LitString second) {
    return planes(firstName, first, secondName, second, "");
  }

  /**
   * The same at an hour that the note names.
   *
   * @param when such as "9 h on 21 June 2022", empty if it is no hour of any weather
   */
  public static Picture planes(
      String firstName, LitString first, String secondName, LitString second, String when) {
    PlanesTogether together = PlanesTogether.of(first, second);
    String title =
        "Together "
            + firstName
            + " and "
            + secondName
            + " give "
            + CurvePicture.watts(together.separateW())
            + " on inputs of their own, "
            + CurvePicture.watts(together.parallel().powerW())
            + " in parallel and "
            + CurvePicture.watts(together.series().powerW())
            + " in a row: "
            + (together.seriesLossShare() > together.parallelLossShare() + 0.01
                ? "never put these two in series"
                : together.parallelLossShare() > together.seriesLossShare() + 0.01
                    ? "never put these two in parallel"
                    : "joining them costs little at this hour");
    String note =
        "Shown"
            + (when.isEmpty() ? ": " : " at " + when + ": ")
            + firstName
            + ", "
            + first.inSeries()
            + " in series, "
            + words(first)
            + "; "
            + secondName
            + ", "
            + second.inSeries()
            + " in series, "
            + words(second)
            + ". Lost in parallel "
            + Say.percent(Math.max(0.0, together.parallelLossShare()))
            + ", in a row "
            + Say.percent(Math.max(0.0, together.seriesLossShare()))
            + ". Filled dots: the most power.";
    return new CurvePicture(
        "planes-curve",
        title,
        note,
        List.of(
            new CurveLine(firstName, PanelCurve.of(StringCurve.of(first)).trace(STEPS)),
            new CurveLine(secondName, PanelCurve.of(StringCurve.of(second)).trace(STEPS)),
            new CurveLine("in a row", PlanesTogether.inSeries(first, second).trace(STEPS)),
            new CurveLine("in parallel", PlanesTogether.inParallel(first, second).trace(STEPS))));
  }

  private static String words(LitString string) {
    return new Condition(string.irradianceWm2(), string.cellC()).words();
  }

  private static double bestW(CurveLine line) {
    return line.trace().maxPower().powerW();
  }

  private static CurvePoint secondBest(CurveTrace trace) {
    CurvePoint best = trace.maxPower();
    var second = new CurvePoint(0.0, 0.0);
    for (CurvePoint summit : trace.summits()) {
      second = !summit.equals(best) && summit.powerW() > second.powerW() ? summit : second;
    }
    return second;
  }
}
