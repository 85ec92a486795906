package greyspell.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/**
 * The pairs of panels and bank of which neither can be made smaller: for each number of panels the
 * smallest bank that meets the targets. It falls like a staircase, so the search goes along it from
 * few panels to many and looks for each bank near the last one. Several threads may ask; what one
 * has tried the others know.
 */
public final class Frontier {
  private final Grid grid;
  private final ConcurrentMap<Long, Boolean> known = new ConcurrentHashMap<>();

  /** Panels and banks by rising size. */
  public interface Grid {
    int panels();

    int banks();

    boolean isMet(int panel, int bank);

    /** By how much a pair that misses does so. */
    double missedBy(int panel, int bank);
  }

  /** A place on both axes. */
  public record Pair(int panel, int bank) {}

  public Frontier(Grid grid) {
    this.grid = grid;
  }

  /** Pairs that were tried so far. */
  public int tried() {
    return known.size();
  }

  public boolean isMet(int panel, int bank) {
    return known.computeIfAbsent(((long) panel << 32) + bank, k -> grid.isMet(panel, bank));
  }

  /** The smallest bank for these panels; the number of banks if there is none. */
  public int leastBank(int panel, int near) {
    return LeastSearch.least(
        grid.banks(),
        near,
        new LeastSearch.Axis() {
          @Override
          public boolean isMet(int bank) {
            return Frontier.this.isMet(panel, bank);
          }

          @Override
          public double missedBy(int bank) {
            return grid.missedBy(panel, bank);
          }
        });
  }

  /** The fewest panels for this bank; the number of panels if there are none. */
  public int fewestPanels(int bank, int near) {
    return LeastSearch.least(
        grid.panels(),
        near,
        new LeastSearch.Axis() {
          @Override
          public boolean isMet(int panel) {
            return Frontier.this.isMet(panel, bank);
          }

          @Override
          public double missedBy(int panel) {
            return grid.missedBy(panel, bank);
          }
        });
  }

  /**
   * The whole staircase, from few panels to many; a number of panels that needs as large a bank as
   * a smaller one is left out.
   */
  public List<Pair> corners() {
    int banks = grid.banks(), near = banks - 1, least = banks;
    var corners = new ArrayList<Pair>();
    for (int panel = firstWithBank(); panel < grid.panels() && least > 0; panel++) {
      int bank = leastBank(panel, near);
      if (bank < least) {
        corners.add(new Pair(panel, bank));
        least = bank;
        near = bank;
      }
    }
    return corners;
  }

  /** The fewest panels for which some bank meets; the number of panels if there are none. */
  private int firstWithBank() {
    return LeastSearch.least(
        grid.panels(),
        grid.panels() - 1,
        new LeastSearch.Axis() {
          @Override
          public boolean isMet(int panel) {
            return leastBank(panel, grid.banks() - 1) < grid.banks();
          }

          @Override
          public double missedBy(int panel) {
            return -panel;
          }
        });
  }
}
