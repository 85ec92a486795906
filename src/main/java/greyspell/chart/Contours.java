package greyspell.chart;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Values on a grid of two axes, and the lines along which they are the same. Between neighbours on
 * the grid values go straight; a cell whose corners cross is cut by its middle.
 */
final class Contours {
  private final double[] across;
  private final double[] up;
  private final double[][] values;

  /**
   * Values by place across, then place up.
   *
   * @param across rising
   * @param up rising
   */
  Contours(double[] across, double[] up, double[][] values) {
    this.across = across.clone();
    this.up = up.clone();
    this.values = values;
  }

  /** An open or closed line, x and y by turns. */
  static final class Path {
    private final double[] across;
    private final double[] up;

    Path(double[] xAcross, double[] yUp) {
      across = xAcross;
      up = yUp;
    }

    double[] xAcross() {
      return across;
    }

    double[] yUp() {
      return up;
    }

    int count() {
      return across.length;
    }
  }

  /** Between the grid's points; at its edge outside. */
  double at(double x, double y) {
    int i = place(across, x), j = place(up, y);
    double u = share(across, i, x), v = share(up, j, y);
    int i1 = Math.min(i + 1, across.length - 1), j1 = Math.min(j + 1, up.length - 1);
    double low = values[i][j] + u * (values[i1][j] - values[i][j]);
    double high = values[i][j1] + u * (values[i1][j1] - values[i][j1]);
    return low + v * (high - low);
  }

  private static int place(double[] axis, double value) {
    int k = 0;
    while (k < axis.length - 2 && axis[k + 1] <= value) {
      k++;
    }
    return k;
  }

  private static double share(double[] axis, int k, double value) {
    if (k + 1 >= axis.length) {
      return 0.0;
    }
    return Math.max(0.0, Math.min(1.0, (value - axis[k]) / (axis[k + 1] - axis[k])));
  }

  /** All lines of one level, the longest first. */
  List<Path> lines(double level) {
    var ends = new HashMap<Long, List<long[]>>();
    for (int i = 0; i + 1 < across.length; i++) {
      for (int j = 0; j + 1 < up.length; j++) {
        cell(i, j, level, ends);
      }
    }
    var paths = new ArrayList<Path>();
    while (!ends.isEmpty()) {
      paths.add(path(follow(ends), level));
    }
    paths.sort((a, b) -> Integer.compare(b.count(), a.count()));
    return paths;
  }

  // an edge of the grid: its lower left point and whether it goes up
  private static long edge(int i, int j, boolean isUpward) {
    return ((long) i << 32) | ((long) j << 1) | (isUpward ? 1L : 0L);
  }

  private void cell(int i, int j, double level, Map<Long, List<long[]>> ends) {
    boolean a = values[i][j] > level, b = values[i + 1][j] > level;
    boolean c = values[i + 1][j + 1] > level, d = values[i][j + 1] > level;
    var cut = new ArrayList<Long>();
    if (a != b) {
      cut.add(edge(i, j, false));
    }
    if (b != c) {
      cut.add(edge(i + 1, j, true));
    }
    if (c != d) {
      cut.add(edge(i, j + 1, false));
    }
    if (d != a) {
      cut.add(edge(i, j, true));
    }
    if (cut.size() == 2) {
      join(cut.get(0), cut.get(1), ends);
    } else if (cut.size() == 4) {
      boolean isMiddleAbove =
          values[i][j] + values[i + 1][j] + values[i + 1][j + 1] + values[i][j + 1] > 4.0 * level;
      boolean isFirstWithSecond = isMiddleAbove == a;
      join(cut.get(0), cut.get(isFirstWithSecond ? 1 : 3), ends);
      join(cut.get(2), cut.get(isFirstWithSecond ? 3 : 1), ends);
    }
  }

  private static void join(long from, long to, Map<Long, List<long[]>> ends) {
    long[] segment = {from, to};
    ends.computeIfAbsent(from, k -> new ArrayList<>()).add(segment);
    ends.computeIfAbsent(to, k -> new ArrayList<>()).add(segment);
  }

  private static ArrayDeque<Long> follow(Map<Long, List<long[]>> ends) {
    long start = ends.keySet().iterator().next();
    var edges = new ArrayDeque<Long>(List.of(start));
    for (boolean isForward : new boolean[] {true, false}) {
      long at = start;
      while (ends.containsKey(at)) {
        long[] segment = ends.get(at).get(0);
        long next = segment[0] == at ? segment[1] : segment[0];
        drop(ends, at, segment);
        drop(ends, next, segment);
        if (isForward) {
          edges.addLast(next);
        } else {
          edges.addFirst(next);
        }
        at = next;
      }
    }
    return edges;
  }

  private static void drop(Map<Long, List<long[]>> ends, long edge, long[] segment) {
    List<long[]> list = ends.get(edge);
    if (list != null) {
      list.remove(segment);
      if (list.isEmpty()) {
        ends.remove(edge);
      }
    }
  }

  private Path path(ArrayDeque<Long> edges, double level) {
    var x = new double[edges.size()];
    var y = new double[edges.size()];
    int n = 0;
    for (long edge : edges) {
      int i = (int) (edge >> 32), j = (int) ((edge & 0xFFFFFFFFL) >> 1);
      boolean isUpward = (edge & 1L) == 1L;
      double from = values[i][j], to = isUpward ? values[i][j + 1] : values[i + 1][j];
      double share = (level - from) / (to - from);
      x[n] = isUpward ? across[i] : across[i] + share * (across[i + 1] - across[i]);
      y[n] = isUpward ? up[j] + share * (up[j + 1] - up[j]) : up[j];
      n++;
    }
    return new Path(x, y);
  }
}
