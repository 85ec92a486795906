package greyspell.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** Draws into a bitmap of twice the picture's size, so that it is crisp on fine screens. */
final class RasterCanvas implements Canvas {
  private static final int SCALE = 2;
  private static final float[] DASHES = {5f, 3f};

  private final Graphics2D graphics;
  private final Font plain;
  private final Font bold;

  private RasterCanvas(Graphics2D graphics) {
    this.graphics = graphics;
    plain = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    bold = new Font(Font.SANS_SERIF, Font.BOLD, 12);
  }

  /** With faces that what is drawn on knows by these names. */
  RasterCanvas(Graphics2D graphics, String face, String boldFace) {
    this.graphics = graphics;
    plain = new Font(face, Font.PLAIN, 12);
    bold = new Font(boldFace, Font.PLAIN, 12);
  }

  static byte[] write(Picture picture) {
    int width = (int) Math.round(picture.width() * SCALE);
    int height = (int) Math.round(picture.height() * SCALE);
    var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    var graphics = image.createGraphics();
    try {
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      graphics.scale(SCALE, SCALE);
      picture.draw(new RasterCanvas(graphics));
    } finally {
      graphics.dispose();
    }
    return Png.encode(width, height, ((DataBufferInt) image.getRaster().getDataBuffer()).getData());
  }

  @Override
  public void rect(double x, double y, double width, double height, int fill) {
    graphics.setColor(new Color(fill));
    graphics.fill(new Rectangle2D.Double(x, y, width, height));
  }

  @Override
  public void line(
      double x1, double y1, double x2, double y2, int colour, double width, boolean isDashed) {
    graphics.setColor(new Color(colour));
    graphics.setStroke(
        isDashed
            ? new BasicStroke(
                (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, DASHES, 0f)
            : butt(width));
    graphics.draw(new Line2D.Double(x1, y1, x2, y2));
  }

  @Override
  public void segments(double[] ends, int count, int colour, double width) {
    var lines = new Path2D.Double();
    for (int k = 0; k < 4 * count; k += 4) {
      lines.moveTo(ends[k], ends[k + 1]);
      lines.lineTo(ends[k + 2], ends[k + 3]);
    }
    graphics.setColor(new Color(colour));
    graphics.setStroke(butt(width));
    graphics.draw(lines);
  }

  @Override
  public void path(double[] x, double[] y, int n, int colour, double width) {
    graphics.setColor(new Color(colour));
    graphics.setStroke(
        new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    graphics.draw(through(x, y, n));
  }

  @Override
  public void polygon(double[] x, double[] y, int n, int fill) {
    var shape = through(x, y, n);
    shape.closePath();
    graphics.setColor(new Color(fill));
    graphics.fill(shape);
  }

  @Override
  public void circle(double x, double y, double radius, int fill, int edge, double width) {
    var shape = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    graphics.setColor(new Color(fill));
    graphics.fill(shape);
    graphics.setColor(new Color(edge));
    graphics.setStroke(butt(width));
    graphics.draw(shape);
  }

  @Override
  public void text(
      double x, double y, String words, double size, boolean isBold, int colour, Anchor to) {
    var font = (isBold ? bold : plain).deriveFont((float) size);
    graphics.setFont(font);
    graphics.setColor(new Color(colour));
    double shift =
        to == Anchor.START
            ? 0.0
            : graphics.getFontMetrics().getStringBounds(words, graphics).getWidth()
                * (to == Anchor.END ? 1.0 : 0.5);
    graphics.drawString(words, (float) (x - shift), (float) y);
  }

  @Override
  public void cells(
      double x,
      double y,
      double cellWidth,
      double cellHeight,
      int columns,
      int rows,
      byte[] shade,
      int[] palette) {
    var small = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        small.setRGB(c, r, palette[shade[r * columns + c]]);
      }
    }
    var before = graphics.getTransform();
    graphics.translate(x, y);
    graphics.scale(cellWidth, cellHeight);
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
    graphics.drawImage(small, 0, 0, null);
    graphics.setTransform(before);
  }

  private static BasicStroke butt(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
  }

  private static Path2D.Double through(double[] x, double[] y, int n) {
    var path = new Path2D.Double(Path2D.WIND_NON_ZERO, n + 1);
    for (int k = 0; k < n; k++) {
      if (k == 0) {
        path.moveTo(x[k], y[k]);
      } else {
        path.lineTo(x[k], y[k]);
      }
    }
    return path;
  }
}
