package greyspell.study;

import greyspell.quantity.Check;
import java.util.List;

/**
 * What a home comes to with more or fewer panels, more or less storage, and more or less use:
 * worked out beforehand, so that a page can answer without the program.
 *
 * @param panels by rising number; controllers are taken to grow and shrink with them
 * @param banks by rising size
 * @param uses by rising share of the present use; the system's own draw is not in it
 * @param presentPanels place of the home as it stands among {@code panels}
 * @param years of weather behind each answer
 * @param answers panels outermost, then banks, then uses
 */
public record PlayGrid(
    List<Panels> panels,
    List<Bank> banks,
    List<Use> uses,
    int presentPanels,
    int presentBank,
    int presentUse,
    int years,
    List<Answer> answers) {
  public PlayGrid {
    panels = List.copyOf(panels);
    banks = List.copyOf(banks);
    uses = List.copyOf(uses);
    answers = List.copyOf(answers);
    Check.within(
        "answers", answers.size(), panels.size() * banks.size() * uses.size(), answers.size());
  }

  /**
   * One number of panels.
   *
   * @param factor on the sun that reaches the bus
   */
  public record Panels(int modules, double ratedW, double factor) {}

  /** One size of bank. */
  public record Bank(int packs, double capacityWh, double usableWh) {}

  /**
   * One use.
   *
   * @param ofNowShare of the present use
   * @param dayWh what the house asks for on an average day of the year
   */
  public record Use(double ofNowShare, double dayWh) {}

  /**
   * What one home comes to.
   *
   * @param unmetHours a year in which something was not served
   * @param unmetWh a year
   * @param darkDays that a full bank lasts with no sun in the month of the shortest days
   * @param beatingSpells grey spells in all years that lack more than a full bank can give
   * @param generatorHours a year
   */
  public record Answer(
      double unmetHours,
      double unmetWh,
      double darkDays,
      int beatingSpells,
      double generatorHours) {}

  public Answer at(int panel, int bank, int use) {
    return answers.get((panel * banks.size() + bank) * uses.size() + use);
  }

  /** The home as it stands. */
  public Answer present() {
    return at(presentPanels, presentBank, presentUse);
  }
}
