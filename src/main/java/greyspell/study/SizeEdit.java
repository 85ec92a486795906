package greyspell.study;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.SizeResult.Point;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A pair of panels and bank, written into the scenario file that it was found for. */
public final class SizeEdit {
  private SizeEdit() {}

  /**
   * The file's text with the pair in it; comments and order stay.
   *
   * @param file as it stands
   * @param home what it says
   * @param isWithoutGenerator whether the generator is taken out
   * @throws BadInput if the bank is no whole number of packs
   */
  public static ScenarioEdit of(Path file, Scenario home, Point point, boolean isWithoutGenerator) {
    Integer packs = point.packs();
    if (packs == null) {
      throw BadInput.of(
          Place.of("--write"),
          "a bank that is no whole number of packs",
          "must be one that can be written as packs",
          "Leave out --any-size.");
    }
    ScenarioEdit edit = ScenarioEdit.of(file);
    for (int k = 0; k < home.arrays().size(); k++) {
      int strings = point.home().arrays().get(k).inParallel();
      if (strings != home.arrays().get(k).inParallel()) {
        edit = edit.set("arrays[" + k + "].in_parallel", Integer.toString(strings));
      }
    }
    if (packs != home.bank().packs()) {
      edit = edit.set("bank.in_parallel", packs.toString());
    }
    if (point.controllers() != home.controller().count()) {
      edit = controllers(edit, point.controllers());
    }
    return isWithoutGenerator && edit.written("generator") != null
        ? edit.remove("generator")
        : edit;
  }

  /** A controller may stand there by its name alone. */
  private static ScenarioEdit controllers(ScenarioEdit edit, int count) {
    @Nullable String written = edit.written("controller");
    boolean isName = written != null && !written.startsWith("{");
    return isName
        ? edit.set("controller", "{from: \"" + written + "\", count: " + count + "}")
        : edit.set("controller.count", Integer.toString(count));
  }
}
