package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.electrical.Finding;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringJudgement;
import greyspell.electrical.StringRules;
import greyspell.electrical.Wanted;
import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The strings that a controller accepts: of a home's planes, with what each arrangement brings in
 * its weather, or of a module and a controller on their own.
 */
public final class StringStudy {
  /** The highest of the usual ones, that of lead-acid; common practice, no source. */
  private static final double HIGHEST_CHARGING_FACTOR = 1.2;

  private final @Nullable Scenario home;
  private final List<Asked> asked;
  private final List<StringJudgement> judgements = new ArrayList<>();
  private final List<Finding> notes = new ArrayList<>();
  private StringYears.@Nullable Weather weather;

  /**
   * Modules to arrange.
   *
   * @param plane where they stand, null if nowhere yet
   * @param module the plane's own, or another in its place
   */
  public record Asked(@Nullable ArraySpec plane, ModuleSpec module, Wanted wanted) {}

  /**
   * What is stated in place of the home's own; null where nothing is.
   *
   * @param recordLowC the home's own, if nothing is stated in its place
   * @param recordHighC the home's own, if nothing is stated in its place
   * @param isDwelling false lifts the limit that holds in dwellings
   */
  public record Stated(
      @Nullable Double bankV,
      @Nullable Double chargingV,
      @Nullable Double recordLowC,
      @Nullable Double recordHighC,
      boolean isDwelling) {
    private StringRules over(StringRules rules) {
      double nominalV = bankV == null ? rules.bankV() : bankV;
      return new StringRules(
          rules.recordLowC(),
          rules.recordHighC(),
          isDwelling ? rules.dwellingLimitV() : null,
          nominalV,
          chargingV == null ? rules.chargingV() * nominalV / rules.bankV() : chargingV,
          rules.headroomV(),
          rules.marginShare());
    }
  }

  /**
   * What the arrangements of a plane bring.
   *
   * @param years null if not known
   * @param whyNot a sentence for that case
   */
  public record Energy(@Nullable StringYears years, String whyNot) {
    /** Without a home there is no weather, so no energy. */
    public static final Energy NO_WEATHER =
        new Energy(null, "kWh a year are left out: they need a scenario with its weather.");
  }

  private StringStudy(@Nullable Scenario home, List<Asked> asked) {
    this.home = home;
    this.asked = List.copyOf(asked);
  }

  /** Each plane that is asked for, on one controller. */
  public static StringStudy of(
      Scenario home, ControllerSpec controller, List<Asked> asked, Stated stated) {
    var study = new StringStudy(home, asked);
    Records records = Records.of(home, stated.recordLowC(), stated.recordHighC());
    study.notes.addAll(records.findings());
    study.judge(controller, stated.over(ElectricalCheck.rules(home, records)));
    return study;
  }

  /** Without a home. */
  public static StringStudy alone(
      ControllerSpec controller, Asked asked, double bankV, Stated stated) {
    var study = new StringStudy(null, List.of(asked));
    double chargingV = HIGHEST_CHARGING_FACTOR * bankV;
    if (stated.chargingV() == null) {
      study.notes.add(
          Finding.caution(
              "charging voltage",
              "not stated: " + Show.voltage(chargingV) + " is taken, 1.2 times the bank's",
              "as high as lead-acid banks are charged, higher than most others (common practice, no"
                  + " source): state --charging-voltage"));
    }
    study.judge(
        controller,
        stated.over(
            new StringRules(
                stated.recordLowC(),
                stated.recordHighC(),
                StringRules.DWELLING_LIMIT_V,
                bankV,
                chargingV,
                StringRules.USUAL_HEADROOM_V,
                StringRules.USUAL_MARGIN_SHARE)));
    return study;
  }

  private void judge(ControllerSpec controller, StringRules rules) {
    StringRules own = ElectricalCheck.rulesFor(controller, rules);
    for (Asked one : asked) {
      noteSheet(one.module());
      judgements.add(StringJudge.judge(one.module(), controller, own, one.wanted()));
    }
  }

  /** A misread sticker makes every verdict below it doubtful. */
  private void noteSheet(ModuleSpec module) {
    for (Finding finding : ElectricalCheck.sheet(module)) {
      if (!notes.contains(finding)) {
        notes.add(finding);
      }
    }
  }

  /** What has to be said before all judgements. */
  public List<Finding> notes() {
    return List.copyOf(notes);
  }

  /** One for each that was asked for, in the same order. */
  public List<StringJudgement> judgements() {
    return List.copyOf(judgements);
  }

  /** Whether something can be built of each. */
  public boolean isSomethingAllowedOfEach() {
    return judgements.stream().allMatch(judged -> judged.best() != null);
  }

  /**
   * Of the judgement in this place. Weather that cannot be read hides the energy, not what is safe.
   */
  public Energy energy(int place) {
    ArraySpec plane = asked.get(place).plane();
    if (home == null || plane == null) {
      return Energy.NO_WEATHER;
    }
    if (!judgements.get(place).isJudged()) {
      return new Energy(null, "kWh a year are left out: no arrangement is judged.");
    }
    try {
      return new Energy(
          weather(home).of(plane, judgements.get(place)),
          "kWh a year are left out: no curve fits this module, and the controller does not track.");
    } catch (BadInput e) {
      Fault first = e.faults().get(0);
      return new Energy(
          null,
          "kWh a year are left out, because the weather cannot be read: "
              + first.place()
              + ", "
              + first.found()
              + ".");
    }
  }

  /** The home's first two planes with the same module; null if there are none. */
  public @Nullable PlanesCompared compared(int hourOfDay) {
    if (home == null) {
      return null;
    }
    List<ArraySpec> planes = home.arrays();
    for (int a = 0; a < planes.size(); a++) {
      for (int b = a + 1; b < planes.size(); b++) {
        if (planes.get(a).module().equals(planes.get(b).module())) {
          return PlanesCompared.of(weather(home).light(), planes.get(a), planes.get(b), hourOfDay);
        }
      }
    }
    return null;
  }

  private StringYears.Weather weather(Scenario home) {
    StringYears.Weather known = weather;
    if (known == null) {
      known = StringYears.Weather.read(home);
      weather = known;
    }
    return known;
  }
}
