package greyspell.chart;

import greyspell.array.ArraySpec;
import greyspell.array.CellGroup;
import greyspell.array.ControllerKind;
import greyspell.array.DataSheetFit;
import greyspell.array.LitString;
import greyspell.array.ModuleSpec;
import greyspell.array.PanelCurve;
import greyspell.array.SingleDiode;
import greyspell.array.StringCurve;
import greyspell.chart.CurvePictures.Condition;
import greyspell.electrical.Arrangement;
import greyspell.electrical.StringJudgement;
import greyspell.study.PlanesCompared;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The pictures that go with a choice of strings, each under the name of its file. */
public final class StringPictures {
  private static final double FULL_SUN_WM2 = 1000.0;
  private static final double CELL_C = 25.0;
  private static final double SHADED_WM2 = 200.0;

  private StringPictures() {}

  /** A picture and what its file is called, without ending. */
  public record Named(String file, Picture picture) {}

  /** Full sun, half of it, a grey sky; warm cells in strong light, cool ones in weak. */
  public static List<Condition> usualConditions() {
    return List.of(
        new Condition(FULL_SUN_WM2, CELL_C),
        new Condition(FULL_SUN_WM2, 60.0),
        new Condition(200.0, 10.0));
  }

  /**
   * Arrangements, module and shade.
   *
   * @param built the plane as it stands on the roof, null if there is none; its string is shown in
   *     shade if it is one of the arrangements, else the best
   * @param after behind the files' names: empty, or "-2" for the second plane
   * @return fewer where nothing was judged or no curve fits the module
   */
  public static List<Named> of(
      StringJudgement judged, List<Condition> conditions, @Nullable ArraySpec built, String after) {
    var pictures = new ArrayList<Named>();
    Picture strings = StringsPicture.of(judged);
    if (strings != null) {
      pictures.add(new Named("strings" + after, strings));
    }
    ModuleSpec module = judged.module();
    SingleDiode diode = DataSheetFit.of(module).diode();
    if (diode == null) {
      return pictures;
    }
    pictures.add(
        new Named("module-curves" + after, CurvePictures.module(module.name(), diode, conditions)));
    Arrangement best = judged.best();
    Double heldV = judged.controller().kind() == ControllerKind.PWM ? judged.rules().bankV() : null;
    if (built != null && isOneOf(judged, built)) {
      pictures.add(new Named("shade" + after, shade(diode, built.inSeries(), "as built", heldV)));
    } else if (best != null) {
      pictures.add(
          new Named(
              "shade" + after, shade(diode, best.inSeries(), "as in the best arrangement", heldV)));
    }
    return pictures;
  }

  private static boolean isOneOf(StringJudgement judged, ArraySpec built) {
    return judged.module().equals(built.module())
        && judged.arrangements().stream()
            .anyMatch(
                a -> a.inSeries() == built.inSeries() && a.inParallel() == built.inParallel());
  }

  /** The two planes in the hour that was looked at. */
  public static Named planes(PlanesCompared compared) {
    return new Named(
        "planes",
        CurvePictures.planes(
            compared.first().name(),
            compared.firstString(),
            compared.second().name(),
            compared.secondString(),
            when(compared)));
  }

  /** "9 h on 21 June 2022". */
  public static String when(PlanesCompared compared) {
    return compared.calendar().hourOfDay(compared.hour())
        + " h on "
        + Say.date(compared.calendar(), compared.hour());
  }

  /** One string at test conditions, and with the cells of one bypass diode in shade. */
  private static Picture shade(
      SingleDiode diode, int inSeries, String which, @Nullable Double heldV) {
    var full = new LitString(diode, inSeries, LitString.USUAL_BYPASS_GROUPS, FULL_SUN_WM2, CELL_C);
    CellGroup all = full.cells();
    var groups = new ArrayList<CellGroup>();
    groups.add(
        new CellGroup(diode, all.moduleShare(), all.count() - 1, all.irradianceWm2(), all.cellC()));
    groups.add(new CellGroup(diode, all.moduleShare(), 1, SHADED_WM2, all.cellC()));
    return CurvePictures.shade(
        "a third of "
            + (inSeries == 1 ? "the module" : "one module of " + inSeries)
            + " shaded to "
            + Say.number(SHADED_WM2, 0)
            + " W/m²",
        "One string "
            + which
            + (inSeries == 1 ? ", one module" : ", " + inSeries + " in series")
            + ", in full sun with cells at "
            + Say.number(CELL_C, 0)
            + " °C. ",
        PanelCurve.of(StringCurve.of(full)),
        PanelCurve.of(StringCurve.of(groups, StringCurve.USUAL_BYPASS_DROP_V)),
        heldV);
  }
}
