package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.electrical.Finding;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringRules;
import greyspell.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The numbers of panels that can really be built in a home: whole strings, as long as each plane
 * has them now, on the home's own controllers, one string more from step to step. With several
 * planes the next string goes where their present proportion asks for it, and every plane keeps one
 * at least; so the present panels are one of the steps, unless the rules refuse them.
 *
 * <pre>
 * next string to the plane with the largest   s / (2 n + 1)      s strings now, n strings in the step
 * </pre>
 *
 * The division rule is that of Sainte-Laguë, from memory. Each step is judged as {@code check}
 * judges what stands; what cannot be judged is not passed.
 *
 * @param steps by rising number of modules; empty if even the fewest are refused
 * @param end why there are no more, a sentence
 * @param present place of the home's own panels among the steps, -1 if they are not among them
 * @param wouldMoreControllersDo whether what ends them would be lifted by more controllers, which
 *     were not allowed
 */
public record PanelSteps(
    List<Step> steps, String end, int present, boolean wouldMoreControllersDo) {
  /** Steps end at so many times the strings that are there, unless something ends them before. */
  private static final int MOST_TIMES = 4;

  private static final int FEW_STRINGS = 12;

  public PanelSteps {
    steps = List.copyOf(steps);
  }

  /**
   * Panels that can be built.
   *
   * @param home its variant with these panels
   */
  public record Step(int modules, Scenario home) {
    /** Controllers that this takes. */
    public int controllers() {
      return home.controller().count();
    }
  }

  /**
   * How far the panels may grow.
   *
   * @param plane only strings of the plane of this name are added or taken away; null for all
   * @param mostModules room on the roof, all planes together, null if not stated
   * @param mayControllersGrow whether more controllers like the home's own may be added where one's
   *     input is exceeded
   */
  public record Room(
      @Nullable String plane, @Nullable Integer mostModules, boolean mayControllersGrow) {
    public static final Room FREE = new Room(null, null, false);
  }

  /** Steps of this home. */
  public static PanelSteps of(Scenario home, Room room) {
    return new Maker(home, room).make();
  }

  public int count() {
    return steps.size();
  }

  /** Walks from the fewest strings up. */
  private static final class Maker {
    private final Scenario home;
    private final Room room;
    private final StringRules rules;
    private final int[] strings;
    private ControllerSpec controller;
    private boolean wouldMoreControllersDo;

    Maker(Scenario home, Room room) {
      this.home = home;
      this.room = room;
      rules = ElectricalCheck.rules(home, Records.of(home));
      controller = home.controller();
      strings = new int[home.arrays().size()];
      for (int k = 0; k < strings.length; k++) {
        strings[k] = isVaried(k) ? 1 : home.arrays().get(k).inParallel();
      }
    }

    private boolean isVaried(int k) {
      return room.plane() == null || home.arrays().get(k).name().equals(room.plane());
    }

    PanelSteps make() {
      var steps = new ArrayList<Step>();
      int varied = 0, present = -1;
      for (int k = 0; k < strings.length; k++) {
        varied += isVaried(k) ? home.arrays().get(k).inParallel() : 0;
      }
      int most = Math.max(FEW_STRINGS, MOST_TIMES * varied);
      String end = "";
      for (int count = 0; end.isEmpty(); count++, addString()) {
        List<ArraySpec> arrays = arrays();
        int modules = arrays.stream().mapToInt(ArraySpec::modules).sum();
        Integer roof = room.mostModules();
        if (roof != null && modules > roof) {
          end =
              "There is room for "
                  + roof
                  + (roof == 1 ? " module" : " modules")
                  + "; the next step has "
                  + modules
                  + ".";
        } else if (count >= most) {
          end = "Not looked at beyond " + MOST_TIMES + " times the strings that are there.";
        } else {
          end = judged(arrays, modules);
          if (end.isEmpty()) {
            present = isPresent() ? steps.size() : present;
            steps.add(new Step(modules, variant(arrays)));
          }
        }
      }
      return new PanelSteps(steps, end, present, wouldMoreControllersDo);
    }

    private Scenario variant(List<ArraySpec> arrays) {
      return isPresent() ? home : home.withArrays(arrays).withController(controller);
    }

    private boolean isPresent() {
      for (int k = 0; k < strings.length; k++) {
        if (strings[k] != home.arrays().get(k).inParallel()) {
          return false;
        }
      }
      return controller.count() == home.controller().count();
    }

    private List<ArraySpec> arrays() {
      var arrays = new ArrayList<ArraySpec>();
      for (int k = 0; k < strings.length; k++) {
        ArraySpec plane = home.arrays().get(k);
        arrays.add(plane.withStrings(plane.module(), plane.inSeries(), strings[k]));
      }
      return arrays;
    }

    private void addString() {
      int next = -1;
      double largest = 0.0;
      for (int k = 0; k < strings.length; k++) {
        double claim = home.arrays().get(k).inParallel() / (2.0 * strings[k] + 1.0);
        if (isVaried(k) && claim > largest) {
          largest = claim;
          next = k;
        }
      }
      strings[next]++;
    }

    /** Empty if it can be built, with more controllers if need be and allowed. */
    private String judged(List<ArraySpec> arrays, int modules) {
      int before = controller.count(), all = 0;
      for (int count : strings) {
        all += count;
      }
      String refused = refusal(arrays, controller);
      if (refused.isEmpty()) {
        return "";
      }
      ControllerSpec more = isBuiltIn() ? null : more(arrays, before, all);
      if (more != null && room.mayControllersGrow()) {
        controller = more;
        return "";
      }
      wouldMoreControllersDo = more != null;
      return modules
          + (modules == 1 ? " module on " : " modules on ")
          + before
          + (before == 1 ? " controller" : " controllers")
          + " cannot be built: "
          + refused
          + "."
          + (room.mayControllersGrow() && isBuiltIn()
              ? " The controller sits inside the inverter, so there is no second one to add."
              : "");
    }

    /** As few more as the rules allow; null if none. */
    private @Nullable ControllerSpec more(List<ArraySpec> arrays, int before, int most) {
      for (int count = before + 1; count <= most; count++) {
        ControllerSpec more = home.controller().withCount(count);
        if (refusal(arrays, more).isEmpty()) {
          return more;
        }
      }
      return null;
    }

    private boolean isBuiltIn() {
      return home.controller().name().startsWith(home.inverter().name() + ",");
    }

    /** What fails or cannot be judged, in words; empty if nothing. */
    private String refusal(List<ArraySpec> arrays, ControllerSpec with) {
      StringJudge.Built built =
          StringJudge.asBuilt(arrays, with, ElectricalCheck.rulesFor(with, rules));
      if (!built.missing().isEmpty()) {
        String first = built.missing().get(0);
        return "not judged. " + first.substring(0, first.length() - 1);
      }
      for (Finding.Severity severity : List.of(Finding.Severity.FAIL, Finding.Severity.UNKNOWN)) {
        for (Finding finding : built.findings()) {
          if (finding.severity() == severity) {
            return finding.subject() + ", " + finding.text();
          }
        }
      }
      return "";
    }
  }
}
