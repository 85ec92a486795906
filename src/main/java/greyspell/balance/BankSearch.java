package greyspell.balance;

import greyspell.storage.step.BankLimits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The smallest bank of a list that keeps the unmet hours of many winters, each begun full, within a
 * target. {@link BankAxis} answers where it is exact; elsewhere it proposes, and {@link UnmetLoop}
 * confirms: from the proposal the search walks down while the next smaller bank meets the target,
 * or up until one does, and gives up on each as soon as the target is broken, worst winter first.
 *
 * <p>Unmet hours can rise a little with size, by self-discharge or cold (HourLoopLawTest): where a
 * bank misses the target by little, the one below is looked at as well. BankAxisTest holds the
 * answer against trying them all.
 */
public final class BankSearch {
  /** A miss by more than this and a fiftieth is no miss by little. */
  private static final int FEW_HOURS = 10;

  private static final int PARTS = 50;

  private final List<BankLimits> banks;
  private final BankAxis axis;
  private int simulated;
  private int last;

  public BankSearch(List<BankLimits> banks) {
    this(banks, banks.size() / 2);
  }

  /**
   * With a hint, which makes the search shorter and never changes its answer.
   *
   * @param near index of a bank that may be near the answer: the one for a panel fewer
   */
  public BankSearch(List<BankLimits> banks, int near) {
    this.banks = List.copyOf(banks);
    axis = new BankAxis(banks);
    last = near;
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
    // the answer is often near the one before
    axis.setLimits(banks.get(Math.min(last, banks.size() - 1)));
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
    last =
        isExact ? bank : confirmed(bank, worstFirst(winters, solarFactor), solarFactor, mostHours);
    return last;
  }

  private int confirmed(int proposed, List<BusHours> winters, double solarFactor, int mostHours) {
    int bank = Math.min(proposed, banks.size() - 1);
    int missedBy = missedBy(bank, winters, solarFactor, mostHours);
    if (missedBy <= 0) {
      return walkDown(bank, winters, solarFactor, mostHours);
    }
    int below =
        missedBy > little(mostHours) ? bank : walkDown(bank, winters, solarFactor, mostHours);
    if (below < bank) {
      return below;
    }
    do {
      bank++;
    } while (bank < banks.size() && missedBy(bank, winters, solarFactor, mostHours) > 0);
    return bank;
  }

  private int walkDown(int from, List<BusHours> winters, double solarFactor, int mostHours) {
    int bank = from;
    for (int next = from - 1; next >= 0; next--) {
      int missedBy = missedBy(next, winters, solarFactor, mostHours);
      if (missedBy <= 0) {
        bank = next;
      } else if (missedBy > little(mostHours)) {
        break;
      }
    }
    return bank;
  }

  private static int little(int mostHours) {
    return FEW_HOURS + mostHours / PARTS;
  }

  /** By how many hours a bank misses the target; once that is not little, some number above it. */
  private int missedBy(int bank, List<BusHours> winters, double solarFactor, int mostHours) {
    BankLimits limits = banks.get(bank);
    int missedBy = -mostHours, little = little(mostHours);
    for (BusHours winter : winters) {
      simulated++;
      missedBy +=
          UnmetLoop.unmetHours(winter, solarFactor, limits, limits.windowWh(), little - missedBy);
      if (missedBy > little) {
        return missedBy;
      }
    }
    return missedBy;
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
