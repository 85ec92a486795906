package greyspell.sky;

import greyspell.quantity.Check;
import java.util.Comparator;
import java.util.List;

/**
 * How high the land, trees and roofs stand around the panels. Between points the height is drawn as
 * a straight line around the compass, so three points (south-east, south, south-west) are enough;
 * one point is a wall of one height all around. Points are kept in compass order; 0 and 360 are the
 * same direction.
 */
public record Horizon(List<Point> points) {
  public static final Horizon OPEN = new Horizon(List.of());

  /**
   * Compass azimuth clockwise from true north, and height above the level.
   *
   * @param azimuthDeg 0 to 360
   * @param heightDeg 0 to 90
   */
  public record Point(double azimuthDeg, double heightDeg) {
    public Point {
      Check.within("azimuthDeg", azimuthDeg, 0.0, 360.0);
      Check.within("heightDeg", heightDeg, 0.0, 90.0);
    }
  }

  public Horizon {
    points = points.stream().sorted(Comparator.comparingDouble(Point::azimuthDeg)).toList();
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).azimuthDeg() == points.get(i - 1).azimuthDeg()) {
        throw new IllegalArgumentException(
            "two horizon heights at azimuth " + points.get(i).azimuthDeg());
      }
    }
  }

  /** Nothing stands above the level. */
  public boolean isOpen() {
    return highestDeg() == 0.0;
  }

  public double highestDeg() {
    double highest = 0.0;
    for (int i = 0; i < points.size(); i++) {
      highest = Math.max(highest, points.get(i).heightDeg());
    }
    return highest;
  }

  /** Height in a direction; any azimuth, also below 0 or above 360. */
  public double heightDeg(double azimuthDeg) {
    int count = points.size();
    if (count == 0) {
      return 0.0;
    }
    double azimuth = azimuthDeg - 360.0 * Math.floor(azimuthDeg / 360.0);
    int next = 0;
    while (next < count && points.get(next).azimuthDeg() <= azimuth) {
      next++;
    }
    Point left = points.get(next == 0 ? count - 1 : next - 1);
    Point right = points.get(next == count ? 0 : next);
    double from = left.azimuthDeg() - (next == 0 ? 360.0 : 0.0);
    double to = right.azimuthDeg() + (next == count ? 360.0 : 0.0);
    if (to <= from) {
      return left.heightDeg();
    }
    return left.heightDeg()
        + (right.heightDeg() - left.heightDeg()) * (azimuth - from) / (to - from);
  }
}
