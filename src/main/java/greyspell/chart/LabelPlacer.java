package greyspell.chart;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds room for labels beside their points so that none covers a point, a line or another label.
 */
final class LabelPlacer {
  /** A rectangle that is taken. */
  static final class Box {
    final double left;
    final double top;
    final double right;
    final double bottom;

    Box(double left, double top, double right, double bottom) {
      this.left = left;
      this.top = top;
      this.right = right;
      this.bottom = bottom;
    }

    boolean overlaps(Box other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean holds(Box other) {
      return left <= other.left
          && right >= other.right
          && top <= other.top
          && bottom >= other.bottom;
    }
  }

  private static final double[][] WAYS = {
    {1, 0}, {-1, 0}, {0, -1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}, {0, 1}
  };

  private final Box bounds;
  private final List<Box> taken = new ArrayList<>();

  LabelPlacer(Box bounds) {
    this.bounds = bounds;
  }

  void take(Box box) {
    taken.add(box);
  }

  boolean takeIfFree(Box box) {
    if (!bounds.holds(box) || !isFree(box)) {
      return false;
    }
    taken.add(box);
    return true;
  }

  boolean isFree(Box box) {
    for (Box other : taken) {
      if (box.overlaps(other)) {
        return false;
      }
    }
    return true;
  }

  /** The label's box, now taken, or null if no place around the point is free. */
  @Nullable Box place(double x, double y, double gap, double width, double height) {
    for (double[] way : WAYS) {
      double centreX = x + way[0] * (gap + width * 0.5);
      double centreY = y + way[1] * (gap + height * 0.5);
      var box =
          new Box(
              centreX - width * 0.5,
              centreY - height * 0.5,
              centreX + width * 0.5,
              centreY + height * 0.5);
      if (takeIfFree(box)) {
        return box;
      }
    }
    return null;
  }
}
