package greyspell.study;

import greyspell.cause.CutLoads;
import greyspell.cause.DarkSpell;
import greyspell.cause.Said;
import greyspell.cause.SaidValue.Energy;
import greyspell.cause.SaidValue.Word;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why the lights went out in a home, and what would have kept them on: everything that {@code
 * explain} tells, as numbers and as sentences that are not yet in any language.
 *
 * @param home as it stands
 * @param weather where the winters come from, a sentence: file and years, or drawn winters
 * @param verdict the count of winters
 * @param winters whole winters in order
 * @param months what the sun brings against what the house needs, January first, mean of all years
 * @param spells most energy unserved first
 * @param shares of all spells together; null where nothing was unserved
 * @param remedies the smallest of each kind that prevents all spells, free ones first
 * @param free what costs nothing, each run
 * @param uncertainties what the figures do not carry
 * @param cautions what must be said first: loads on which a life or a health depends
 */
public record Explanation(
    Scenario home,
    Said weather,
    Verdict verdict,
    List<WinterLine> winters,
    List<MonthLine> months,
    List<Spell> spells,
    @Nullable Shares shares,
    List<Remedy> remedies,
    List<Remedy> free,
    List<Said> uncertainties,
    List<Said> cautions) {
  public Explanation {
    winters = List.copyOf(winters);
    months = List.copyOf(months);
    spells = List.copyOf(spells);
    remedies = List.copyOf(remedies);
    free = List.copyOf(free);
    uncertainties = List.copyOf(uncertainties);
    cautions = List.copyOf(cautions);
  }

  private static final double LEAST_HELP = 0.005;

  /** Whether a spell lies in a winter that is counted; the half winters at the ends are not. */
  public boolean isInWholeWinter(Spell spell) {
    return winters.stream().anyMatch(w -> w.name().equals(spell.winter()));
  }

  /**
   * The count.
   *
   * @param said the sentence
   * @param winters whole winters
   * @param darkWinters of them with something unserved
   * @param meanUnmetWh a year, over all hours
   * @param meanUnmetHours a year, over all hours
   * @param meanGeneratorHours a year, over all hours; 0 without a generator
   * @param meanFuelL a year, over all hours
   * @param mayStillFailShare where nothing at all was unserved: up to this share of winters may be,
   *     with 95 % confidence; null where something was
   */
  public record Verdict(
      Said said,
      int winters,
      int darkWinters,
      double meanUnmetWh,
      double meanUnmetHours,
      double meanGeneratorHours,
      double meanFuelL,
      @Nullable Double mayStillFailShare) {}

  /**
   * One winter.
   *
   * @param part of the weather in {@link Trials}
   * @param letGoWh let go by rule
   * @param shares of what was not served in it; null where nothing was
   */
  public record WinterLine(
      String name,
      int part,
      double askedWh,
      double unmetWh,
      int unmetHours,
      int unmetDays,
      double letGoWh,
      double lowestChargeShare,
      double generatorHours,
      int spells,
      @Nullable Shares shares) {}

  /**
   * An average day of one month, on the bus.
   *
   * @param solarWh what the panels can bring a day
   * @param needWh what the house needs a day
   * @param curtailedWh sun that found no room a day: a bank holds days, not seasons
   * @param unmetWh a day
   */
  public record MonthLine(
      int month,
      double solarWh,
      double otherWh,
      double needWh,
      double curtailedWh,
      double unmetWh) {}

  /**
   * One dark spell.
   *
   * @param winter in which it began
   * @param part of the weather in {@link Trials}; its hours are those of this part's books
   * @param spell dates, days and sums
   * @param shares of its unserved energy
   * @param story sentences in order of time
   * @param dayLines one sentence for each of its days
   * @param cut which loads went without
   * @param remedies the smallest of each kind that prevents this spell, free ones first
   */
  public record Spell(
      String winter,
      int part,
      DarkSpell spell,
      Shares shares,
      List<Said> story,
      List<Said> dayLines,
      CutLoads.Cut cut,
      List<Remedy> remedies) {
    public Spell {
      story = List.copyOf(story);
      dayLines = List.copyOf(dayLines);
      remedies = List.copyOf(remedies);
    }
  }

  /**
   * How what was not served is shared among its causes. The parts and the rest sum to the whole.
   *
   * @param wholeWh not served
   * @param parts largest first; negative where the house would have had less without it
   * @param restWh what stays unserved without any of the causes
   * @param isExact over all sets of causes; else over drawn orders, with an error
   * @param runs of the home that were made
   */
  public record Shares(double wholeWh, List<Part> parts, double restWh, boolean isExact, int runs) {
    public Shares {
      parts = List.copyOf(parts);
    }

    /** The largest standard error of a part, 0 where exact. */
    public double errorWh() {
      return parts.stream().mapToDouble(Part::standardErrorWh).max().orElse(0.0);
    }

    /** Of the sky and the sun, of 1. */
    public double seasonShare() {
      return parts.stream().filter(p -> p.cause.isSeason()).mapToDouble(Part::ofWholeShare).sum();
    }

    /** Of what can be changed, of 1. */
    public double fixableShare() {
      return parts.stream().filter(p -> !p.cause.isSeason()).mapToDouble(Part::ofWholeShare).sum();
    }

    /** What a share below zero means, a sentence each; most help first. */
    public List<Said> helped() {
      var said = new ArrayList<Said>();
      for (int i = parts.size() - 1; i >= 0 && parts.get(i).ofWholeShare <= -LEAST_HELP; i--) {
        Part part = parts.get(i);
        boolean isBright = part.cause == WinterCause.MORE_CLOUD && part.aloneWh < 0.0;
        boolean isSure = -part.wh > part.standardErrorWh;
        var name = new Word(part.cause.key());
        said.add(
            isBright
                ? Said.of("helped.bright_days", new Energy(-part.aloneWh), name)
                : Said.of(isSure ? "helped" : "helped.unsure", name));
      }
      return said;
    }
  }

  /**
   * One cause's part.
   *
   * @param wh of what was not served
   * @param standardErrorWh of drawing orders, 0 where exact
   * @param ofWholeShare wh over the whole
   * @param aloneWh what leaving out this cause alone saves
   * @param members the causes within {@link WinterCause#SMALLER_TOGETHER}, else empty
   */
  public record Part(
      WinterCause cause,
      double wh,
      double standardErrorWh,
      double ofWholeShare,
      double aloneWh,
      List<WinterCause> members) {
    public Part {
      members = List.copyOf(members);
    }
  }

  /**
   * One change and what it comes to, from a run with it.
   *
   * @param said the change, a sentence
   * @param effect what it comes to, a sentence
   * @param cost by the scenario's prices
   * @param wires names of those that no longer bear what then flows, and did before
   * @param edits what to write in the scenario to have it run; empty where nothing was found
   * @param isFound whether it prevents what it was asked to prevent
   * @param isFree costs nothing but doing it
   * @param afterUnmetWh unserved then, within the spell's dates, or a year of all hours
   * @param afterUnmetHours hours of it
   * @param afterDarkWinters whole winters with something unserved then
   */
  public record Remedy(
      Kind kind,
      Said said,
      Said effect,
      Cost cost,
      List<String> wires,
      List<Edit> edits,
      boolean isFound,
      boolean isFree,
      double afterUnmetWh,
      double afterUnmetHours,
      int afterDarkWinters) {
    public Remedy {
      wires = List.copyOf(wires);
      edits = List.copyOf(edits);
    }
  }

  /**
   * What a change costs, in the user's own money.
   *
   * @param onceCost all that has to be bought and has a price
   * @param unpriced keys of what has to be bought and has none
   * @param moreYearlyCost fuel and wear of a generator beyond what they are now, below 0 for less;
   *     null where fuel has no price
   */
  public record Cost(double onceCost, List<String> unpriced, @Nullable Double moreYearlyCost) {
    public Cost {
      unpriced = List.copyOf(unpriced);
    }
  }

  /** What kind of change. */
  public enum Kind {
    SWITCH_OFF_STANDBY,
    CLEAR_SNOW,
    CLEAN,
    USE_LESS,
    MOVE_LOAD,
    TILT,
    PANELS,
    STORAGE,
    GENERATOR,
    PAIR
  }

  /**
   * One line of a scenario: {@code bank.in_parallel} and {@code 3}.
   *
   * @param value what to write; null to leave the key out
   */
  public record Edit(String path, @Nullable String value) {
    /** The file with it. */
    ScenarioEdit in(ScenarioEdit file) {
      return value == null ? file.remove(path) : file.set(path, value);
    }
  }
}
