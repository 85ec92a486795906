package greyspell.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** The lowest of some lines, against looking at all of them. */
class LowestLineLawTest {
  @Property(tries = 300)
  void noLineIsLowerAnywhereInItsRange(@ForAll long seed) {
    var random = new Random(seed);
    int count = 1 + random.nextInt(8);
    var at0 = new double[count];
    var slope = new double[count];
    for (int i = 0; i < count; i++) {
      at0[i] = random.nextInt(20); // whole numbers: ties are met
      slope[i] = random.nextInt(6);
    }
    List<LowestLine> ranges = LowestLine.of(at0, slope);
    double from = 0.0;
    for (LowestLine range : ranges) {
      double to = Double.isInfinite(range.upToCost()) ? from + 100.0 : range.upToCost();
      assertTrue(to > from || ranges.size() == 1 || to == 0.0, from + " to " + to);
      for (int k = 0; k <= 10; k++) {
        double x = from + (to - from) * k / 10.0;
        double cost = at0[range.line()] + slope[range.line()] * x;
        for (int i = 0; i < count; i++) {
          assertTrue(cost <= at0[i] + slope[i] * x + 1e-9, i + " at " + x);
        }
      }
      from = to;
    }
    assertTrue(Double.isInfinite(ranges.get(ranges.size() - 1).upToCost()));
  }

  @Test
  void theRangesOfFourPairs() {
    // 10 modules and 8 packs, 12 and 4, 14 and 3, 20 and 2: 2/4, 2/1 and 6/1 modules a pack
    List<LowestLine> ranges =
        LowestLine.of(new double[] {10, 12, 14, 20}, new double[] {8, 4, 3, 2});
    assertEquals(List.of(0, 1, 2, 3), ranges.stream().map(LowestLine::line).toList());
    assertEquals(
        List.of(0.5, 2.0, 6.0, Double.POSITIVE_INFINITY),
        ranges.stream().map(LowestLine::upToCost).toList());
  }
}
