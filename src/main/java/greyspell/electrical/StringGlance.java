package greyspell.electrical;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is plainly wrong with a string, in a sentence, for those who only read a scenario. {@link
 * StringJudge} finds the same and more; who shows its findings leaves these sentences out.
 */
public final class StringGlance {
  private static final double TEST_CELL_C = 25.0;

  private StringGlance() {}

  /**
   * Empty if nothing is.
   *
   * @param recordLowC null to look at test conditions only
   */
  public static List<String> of(
      List<ArraySpec> arrays, ControllerSpec controller, @Nullable Double recordLowC) {
    var told = new ArrayList<String>();
    arrays.forEach(array -> glance(array, controller, recordLowC, told));
    return List.copyOf(told);
  }

  private static void glance(
      ArraySpec array, ControllerSpec controller, @Nullable Double recordLowC, List<String> told) {
    ModuleSpec module = array.module();
    double coldC = recordLowC == null ? TEST_CELL_C : recordLowC;
    boolean isOne = array.inSeries() == 1;
    String string = array.name() + ": " + (isOne ? "one module" : array.inSeries() + " in series");
    double openV = array.inSeries() * StringVoltages.openV(module, coldC);
    Double mostV = controller.absoluteMaximumV();
    if (mostV != null && openV > mostV) {
      told.add(
          string
              + (isOne ? " reaches " : " reach ")
              + Show.voltage(openV)
              + " with nothing drawn at "
              + Show.temperature(coldC)
              + ", above the "
              + Show.voltage(mostV)
              + " that "
              + controller.name()
              + " bears: it would be destroyed. "
              + (isOne ? "This module does not suit it." : "Fewer in series."));
    }
    Double systemV = module.maxSystemV();
    if (systemV != null && openV > systemV) {
      told.add(
          array.name()
              + ": the string reaches "
              + Show.voltage(openV)
              + ", above the "
              + Show.voltage(systemV)
              + " that the panels are made for.");
    }
    Double leastV = controller.lowestTrackingV();
    double workV = array.inSeries() * module.maxPowerV();
    if (leastV != null && workV < leastV) {
      told.add(
          string
              + (isOne ? " works at " : " work at ")
              + Show.voltage(workV)
              + ", below the "
              + Show.voltage(leastV)
              + " from which "
              + controller.name()
              + " follows them. More in series.");
    }
  }
}
