package greyspell.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ContoursTest {
  private static final double ROUNDING = 1e-9;

  private static Contours plane() {
    double[] across = {0, 1, 3}, up = {0, 2, 4, 8};
    var values = new double[3][4];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 4; j++) {
        values[i][j] = across[i] + up[j];
      }
    }
    return new Contours(across, up, values);
  }

  @Test
  void betweenPointsValuesGoStraight() {
    assertEquals(2.5, plane().at(1.5, 1.0), ROUNDING);
    assertEquals(11.0, plane().at(9.0, 9.0), ROUNDING, "the edge outside");
  }

  @Test
  void aLineHasItsLevelEverywhere() {
    List<Contours.Path> lines = plane().lines(3.7);
    assertEquals(1, lines.size());
    Contours.Path line = lines.get(0);
    for (int k = 0; k < line.count(); k++) {
      assertEquals(3.7, line.xAcross()[k] + line.yUp()[k], ROUNDING);
    }
    assertTrue(plane().lines(20.0).isEmpty());
  }

  @Test
  void everyCutEdgeIsOnExactlyOneLine() {
    var random = new Random(5);
    int n = 14;
    var axis = new double[n];
    var values = new double[n][n];
    for (int i = 0; i < n; i++) {
      axis[i] = i;
      for (int j = 0; j < n; j++) {
        values[i][j] = random.nextDouble();
      }
    }
    int cuts = 0, points = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        cuts += i + 1 < n && (values[i][j] > 0.5) != (values[i + 1][j] > 0.5) ? 1 : 0;
        cuts += j + 1 < n && (values[i][j] > 0.5) != (values[i][j + 1] > 0.5) ? 1 : 0;
      }
    }
    for (Contours.Path path : new Contours(axis, axis, values).lines(0.5)) {
      int last = path.count() - 1;
      boolean isClosed =
          path.xAcross()[0] == path.xAcross()[last] && path.yUp()[0] == path.yUp()[last];
      points += path.count() - (isClosed ? 1 : 0);
    }
    assertEquals(cuts, points);
  }
}
