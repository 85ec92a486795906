package greyspell.study;

import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * The banks that a home may have: so many of its own batteries, or any size made of the same cells.
 *
 * @param banks by rising size
 * @param areWholePacks whether each can be bought
 */
public record BankSteps(List<BankSpec> banks, boolean areWholePacks) {
  public BankSteps {
    banks = List.copyOf(banks);
  }

  /** 1 to {@code most} of the home's own packs. */
  public static BankSteps packs(Scenario home, int most) {
    var banks = new ArrayList<BankSpec>();
    for (int packs = 1; packs <= most; packs++) {
      banks.add(home.bank().withPacks(packs));
    }
    return new BankSteps(banks, true);
  }

  /**
   * Even steps of any size: {@code stepWh}, twice that, and so on.
   *
   * @param stepWh nominal energy
   * @param most how many
   */
  public static BankSteps sizes(Scenario home, double stepWh, int most) {
    var banks = new ArrayList<BankSpec>();
    for (int k = 1; k <= most; k++) {
      banks.add(home.bank().withCapacityWh(k * stepWh));
    }
    return new BankSteps(banks, false);
  }

  public int count() {
    return banks.size();
  }

  /** A home with the bank in this place. */
  public Scenario on(Scenario home, int place) {
    return home.withBank(banks.get(place));
  }
}
