package greyspell.sky;

import java.util.List;

/**
 * How high the land, trees and roofs stand around the panels. Between points the height is drawn as
 * a straight line around the compass, so three points (south-east, south, south-west) are enough.
 */
public record Horizon(List<Point> points) {
  public static final Horizon OPEN = new Horizon(List.of());

  /** Compass azimuth clockwise from true north, and height above the level. */
  public record Point(double azimuthDeg, double heightDeg) {}
}
