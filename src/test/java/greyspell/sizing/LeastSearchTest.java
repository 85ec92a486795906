package greyspell.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** The search along an axis and along the frontier, on made-up unmet hours. */
class LeastSearchTest {
  private static final class Counted implements LeastSearch.Axis {
    final int[] unmetHours;
    final int most;
    int asked;

    Counted(int[] unmetHours, int most) {
      this.unmetHours = unmetHours;
      this.most = most;
    }

    @Override
    public boolean isMet(int place) {
      asked++;
      return unmetHours[place] <= most;
    }

    @Override
    public double missedBy(int place) {
      return unmetHours[place] - most;
    }

    int first() {
      for (int k = 0; k < unmetHours.length; k++) {
        if (unmetHours[k] <= most) {
          return k;
        }
      }
      return unmetHours.length;
    }
  }

  @Property(tries = 500)
  void fallingHoursGiveTheFirstThatMeetsInFewSteps(@ForAll long seed) {
    var random = new Random(seed);
    int count = 1 + random.nextInt(200), hours = 5000;
    var unmet = new int[count];
    for (int k = 0; k < count; k++) {
      unmet[k] = hours;
      hours = Math.max(0, hours - random.nextInt(80));
    }
    var axis = new Counted(unmet, random.nextInt(5200) - 100);
    assertEquals(axis.first(), LeastSearch.least(count, random.nextInt(count), axis));
    assertTrue(axis.asked <= 40, axis.asked + " of " + count);
  }

  @Property(tries = 500)
  void hoursThatFallAndRiseAgainAreFoundInTheirDip(@ForAll long seed) {
    var random = new Random(seed);
    int count = 2 + random.nextInt(100), dip = random.nextInt(count);
    var unmet = new int[count];
    int depth = random.nextInt(50);
    for (int k = 0; k < count; k++) {
      unmet[k] = depth + (k < dip ? 30 * (dip - k) : 7 * (k - dip));
    }
    var axis = new Counted(unmet, random.nextInt(300));
    assertEquals(axis.first(), LeastSearch.least(count, random.nextInt(count), axis));
  }

  @Property(tries = 300)
  void ripplesOfTwoPlacesBelowTheAnswerAreSeen(@ForAll long seed) {
    var random = new Random(seed);
    int count = 20 + random.nextInt(50), edge = 5 + random.nextInt(10);
    var unmet = new int[count];
    for (int k = 0; k < count; k++) {
      unmet[k] = k >= edge || k == edge - 2 ? 0 : 100;
    }
    var axis = new Counted(unmet, 10);
    assertEquals(edge - 2, LeastSearch.least(count, random.nextInt(count), axis));
  }

  @Property(tries = 200)
  void theStaircaseIsThatOfTryingThemAll(@ForAll long seed) {
    var random = new Random(seed);
    int panels = 1 + random.nextInt(25), banks = 1 + random.nextInt(25);
    double perPanel = random.nextDouble(), perBank = random.nextDouble();
    double wanted = random.nextDouble() * 25.0, most = random.nextDouble() * 0.4;
    var grid =
        new Frontier.Grid() {
          @Override
          public int panels() {
            return panels;
          }

          @Override
          public int banks() {
            return banks;
          }

          @Override
          public boolean isMet(int panel, int bank) {
            return missedBy(panel, bank) <= 0.0;
          }

          @Override
          public double missedBy(int panel, int bank) {
            double product = (panel * perPanel + 0.3) * (bank * perBank + 0.3);
            return Math.exp(-product / (0.1 + wanted)) - most;
          }
        };
    var expected = new ArrayList<String>();
    int least = banks;
    for (int panel = 0; panel < panels; panel++) {
      for (int bank = 0; bank < least; bank++) {
        if (grid.isMet(panel, bank)) {
          expected.add(panel + " " + bank);
          least = bank;
        }
      }
    }
    var frontier = new Frontier(grid);
    assertEquals(
        expected, frontier.corners().stream().map(p -> p.panel() + " " + p.bank()).toList());
  }

  @Test
  void noPlacesNoAnswer() {
    assertEquals(0, LeastSearch.least(0, 0, new Counted(new int[0], 3)));
    assertEquals(1, LeastSearch.least(1, 0, new Counted(new int[] {5}, 3)));
    assertEquals(List.of(), new Frontier(none()).corners());
  }

  private static Frontier.Grid none() {
    return new Frontier.Grid() {
      @Override
      public int panels() {
        return 0;
      }

      @Override
      public int banks() {
        return 3;
      }

      @Override
      public boolean isMet(int panel, int bank) {
        throw new AssertionError();
      }

      @Override
      public double missedBy(int panel, int bank) {
        throw new AssertionError();
      }
    };
  }
}
