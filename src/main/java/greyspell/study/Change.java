package greyspell.study;

import greyspell.cause.Said;
import greyspell.quantity.BadInput;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.Explanation.Edit;
import greyspell.study.Explanation.Kind;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One change of a home, as the lines of its scenario that make it.
 *
 * @param isFree costs nothing but doing it
 * @param said the change, a sentence
 */
record Change(Kind kind, boolean isFree, Said said, List<Edit> edits) {
  Change {
    edits = List.copyOf(edits);
  }

  /** The home with it, null where the file cannot be changed so, or no such home may stand. */
  @Nullable Scenario of(ScenarioEdit file, @Nullable Path library) {
    try {
      ScenarioEdit changed = file;
      for (Edit edit : edits) {
        changed = edit.in(changed);
      }
      return changed.scenario(library);
    } catch (BadInput refused) {
      return null;
    }
  }

  /** Both changes together. */
  Change and(Change other, Said together) {
    var both = new java.util.ArrayList<>(edits);
    both.addAll(other.edits);
    return new Change(Kind.PAIR, isFree && other.isFree, together, both);
  }
}
