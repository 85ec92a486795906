package greyspell.electrical;

import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every arrangement of the wanted modules, judged; or what must be stated first.
 *
 * @param missing what the user must state before anything is judged, a sentence each; empty if it
 *     was judged
 * @param perModule voltages of one module, null if something is missing
 * @param arrangements by number of modules, then from long strings to short ones
 * @param best null if none is allowed
 * @param why why it is the best, or why there is none
 * @param notes what else there is to know, a sentence each
 */
public record StringJudgement(
    ModuleSpec module,
    ControllerSpec controller,
    StringRules rules,
    List<String> missing,
    @Nullable StringVoltages perModule,
    List<Arrangement> arrangements,
    @Nullable Arrangement best,
    String why,
    List<String> notes) {
  public StringJudgement {
    missing = List.copyOf(missing);
    arrangements = List.copyOf(arrangements);
    notes = List.copyOf(notes);
  }

  public boolean isJudged() {
    return missing.isEmpty();
  }

  public boolean isBest(Arrangement arrangement) {
    return arrangement.equals(best);
  }
}
