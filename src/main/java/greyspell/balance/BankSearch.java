package greyspell.balance;

import greyspell.storage.step.BankLimits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The smallest bank of a list that keeps the unmet hours of many winters, each begun full, within a
 * target. {@link BankAxis} answers where it is exact; elsewhere it proposes, and {@link UnmetLoop}
 * confirms: from the proposal the search walks down while the next smaller bank meets the target, or
 * up until one does, and gives up on each as soon as the target is broken, worst winter first.
 *
 * <p>Unmet hours can rise a little with size, by self-discharge or cold (HourLoopLawTest): one bank
 * below the first that fails is looked at as well. BankAxisTest holds the answer against trying them
 * all.
 */
public final class BankSearch {
  private final List<BankLimits> banks;
  private final BankAxis axis;
  private int simulated;

  public BankSearch(List<BankLimits> banks) {
    this.banks = List.copyOf(banks);
    axis = new BankAxis(banks);
  }

  /** Bank-winters that were run hour by hour in all searches so far. */
  public int simulatedWinters() {
    return simulated;
  }

  /**
   * Index of the smallest bank whose unmet hours, all winters together, are at most {@code
   * mostHours}; the number of banks if there is none.
   */
  public int leastBank(List<BusHours> winters, double solarFactor, int mostHours) {
    boolean isExact = true;
    axis.restart();
    for (BusHours winter : winters) {
      isExact &= BankAxis.isExactFor(winter, solarFactor, banks);
      axis.fillUp();
      axis.add(winter, solarFactor);
    }
    int[] proposed = axis.unmetHours();
    int bank = 0;
    while (bank < proposed.length && proposed[bank] > mostHours) {
      bank++;
    }
    return isExact ? bank : confirmed(bank, worstFirst(winters, solarFactor), solarFactor, mostHours);
  }

  private int confirmed(int proposed, List<BusHours> winters, double solarFactor, int mostHours) {
    int bank = Math.min(proposed, banks.size() - 1);
    if (!meets(bank, winters, solarFactor, mostHours)) {
      int below = bank;
      do {
        bank++;
      } while (bank < banks.size() && !meets(bank, winters, solarFactor, mostHours));
      return below > 0 && meets(below - 1, winters, solarFactor, mostHours)
          ? walkDown(below - 1, winters, solarFactor, mostHours)
          : bank;
    }
    return walkDown(bank, winters, solarFactor, mostHours);
  }

  private int walkDown(int from, List<BusHours> winters, double solarFactor, int mostHours) {
    int bank = from;
    while (true) {
      if (bank > 0 && meets(bank - 1, winters, solarFactor, mostHours)) {
        bank -= 1;
      } else if (bank > 1 && meets(bank - 2, winters, solarFactor, mostHours)) {
        bank -= 2;
      } else {
        return bank;
      }
    }
  }

  private boolean meets(int bank, List<BusHours> winters, double solarFactor, int mostHours) {
    BankLimits limits = banks.get(bank);
    int leftHours = mostHours;
    for (BusHours winter : winters) {
      simulated++;
      leftHours -=
          UnmetLoop.unmetHours(winter, solarFactor, limits, limits.windowWh(), leftHours);
      if (leftHours < 0) {
        return false;
      }
    }
    return true;
  }

  private List<BusHours> worstFirst(List<BusHours> winters, double solarFactor) {
    BankLimits middle = banks.get(banks.size() / 2);
    var ranked = new ArrayList<Ranked>();
    for (BusHours winter : winters) {
      ranked.add(new Ranked(winter, SequentPeak.leastWindowWh(winter, solarFactor, middle)));
    }
    ranked.sort(Comparator.comparingDouble(Ranked::depthWh).reversed());
    var sorted = new ArrayList<BusHours>();
    for (Ranked one : ranked) {
      sorted.add(one.winter());
    }
    return sorted;
  }

  private record Ranked(BusHours winter, double depthWh) {}
}
