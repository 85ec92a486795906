package greyspell.chart;

/** Writes SVG: real text, no scripts, no outside references. */
final class SvgCanvas implements Canvas {
  private final StringBuilder out = new StringBuilder(32_000);

  private SvgCanvas() {}

  static String write(Picture picture) {
    var canvas = new SvgCanvas();
    String height = number(picture.height());
    String id = picture.name();
    canvas
        .out
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
        .append(number(picture.width()) + " " + height)
        .append("\" width=\"" + number(picture.width()) + "\" height=\"" + height)
        .append("\" role=\"img\" aria-labelledby=\"" + id + "-title " + id + "-desc\"")
        .append(" font-family=\"" + Look.FACE + "\">\n<title id=\"" + id + "-title\">")
        .append(escape(picture.title()))
        .append("</title>\n<desc id=\"" + id + "-desc\">")
        .append(escape(picture.description()))
        .append("</desc>\n");
    picture.draw(canvas);
    return canvas.out.append("</svg>\n").toString();
  }

  @Override
  public void rect(double x, double y, double width, double height, int fill) {
    out.append("<rect x=\"");
    add(x).append("\" y=\"");
    add(y).append("\" width=\"");
    add(width).append("\" height=\"");
    add(height).append("\" fill=\"");
    colour(fill).append("\"/>\n");
  }

  @Override
  public void line(
      double x1, double y1, double x2, double y2, int colour, double width, boolean isDashed) {
    out.append("<path d=\"M");
    add(x1).append(' ');
    add(y1).append('L');
    add(x2).append(' ');
    add(y2).append('"');
    stroke(colour, width);
    out.append(isDashed ? " stroke-dasharray=\"5 3\"/>\n" : "/>\n");
  }

  @Override
  public void segments(double[] ends, int count, int colour, double width) {
    out.append("<path d=\"");
    for (int k = 0; k < 4 * count; k += 4) {
      out.append('M');
      add(ends[k]).append(' ');
      add(ends[k + 1]).append('L');
      add(ends[k + 2]).append(' ');
      add(ends[k + 3]);
    }
    out.append('"');
    stroke(colour, width);
    out.append("/>\n");
  }

  @Override
  public void path(double[] x, double[] y, int n, int colour, double width) {
    out.append("<path d=\"");
    points(x, y, n);
    out.append('"');
    stroke(colour, width);
    out.append(" stroke-linejoin=\"round\"/>\n");
  }

  @Override
  public void polygon(double[] x, double[] y, int n, int fill) {
    out.append("<path d=\"");
    points(x, y, n);
    out.append("Z\" fill=\"");
    colour(fill).append("\"/>\n");
  }

  @Override
  public void circle(double x, double y, double radius, int fill, int edge, double width) {
    out.append("<circle cx=\"");
    add(x).append("\" cy=\"");
    add(y).append("\" r=\"");
    add(radius).append("\" fill=\"");
    colour(fill).append("\" stroke=\"");
    colour(edge).append("\" stroke-width=\"");
    add(width).append("\"/>\n");
  }

  @Override
  public void text(
      double x, double y, String words, double size, boolean isBold, int colour, Anchor to) {
    out.append("<text x=\"");
    add(x).append("\" y=\"");
    add(y).append("\" font-size=\"");
    add(size).append("\" fill=\"");
    colour(colour).append('"');
    if (isBold) {
      out.append(" font-weight=\"700\"");
    }
    if (to != Anchor.START) {
      out.append(" text-anchor=\"").append(to == Anchor.END ? "end" : "middle").append('"');
    }
    out.append('>').append(escape(words)).append("</text>\n");
  }

  /**
   * One path a shade: a run of equal cells is a thick line; the commonest shade is one rectangle.
   */
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
    int ground = commonest(shade, palette.length);
    rect(x, y, columns * cellWidth, rows * cellHeight, palette[ground]);
    boolean byRow = changes(shade, columns, rows, true) <= changes(shade, columns, rows, false);
    out.append("<g shape-rendering=\"crispEdges\" fill=\"none\" stroke-width=\"1.04\" transform=\"")
        .append("translate(" + number(x) + " " + number(y) + ") scale(")
        .append(number3(cellWidth) + " " + number3(cellHeight) + ")\">\n");
    int outer = byRow ? rows : columns;
    int inner = byRow ? columns : rows;
    for (int s = 0; s < palette.length; s++) {
      if (s == ground) {
        continue;
      }
      int before = out.length();
      out.append("<path stroke=\"");
      colour(palette[s]).append("\" d=\"");
      int empty = out.length();
      for (int o = 0; o < outer; o++) {
        for (int i = 0; i < inner; i++) {
          int from = i;
          while (i < inner && shade[byRow ? o * columns + i : i * columns + o] == s) {
            i++;
          }
          if (i > from && byRow) {
            out.append('M').append(from).append(' ').append(o).append(".5h").append(i - from);
          } else if (i > from) {
            out.append('M').append(o).append(".5 ").append(from).append('v').append(i - from);
          }
        }
      }
      if (out.length() == empty) {
        out.setLength(before);
      } else {
        out.append("\"/>\n");
      }
    }
    out.append("</g>\n");
  }

  private static int commonest(byte[] shade, int shades) {
    var count = new int[shades];
    int best = 0;
    for (byte s : shade) {
      if (++count[s] > count[best]) {
        best = s;
      }
    }
    return best;
  }

  private static int changes(byte[] shade, int columns, int rows, boolean byRow) {
    int changes = 0;
    for (int r = byRow ? 0 : 1; r < rows; r++) {
      for (int c = byRow ? 1 : 0; c < columns; c++) {
        int before = byRow ? r * columns + c - 1 : (r - 1) * columns + c;
        changes += shade[r * columns + c] == shade[before] ? 0 : 1;
      }
    }
    return changes;
  }

  private void points(double[] x, double[] y, int n) {
    for (int k = 0; k < n; k++) {
      if (k > 0 && y[k] == y[k - 1]) {
        out.append('H');
        add(x[k]);
      } else if (k > 0 && x[k] == x[k - 1]) {
        out.append('V');
        add(y[k]);
      } else {
        out.append(k == 0 ? 'M' : 'L');
        add(x[k]).append(' ');
        add(y[k]);
      }
    }
  }

  private void stroke(int colour, double width) {
    out.append(" fill=\"none\" stroke=\"");
    colour(colour).append("\" stroke-width=\"");
    add(width).append('"');
  }

  private StringBuilder colour(int rgb) {
    out.append('#');
    for (int shift = 20; shift >= 0; shift -= 4) {
      out.append(Character.forDigit(rgb >> shift & 15, 16));
    }
    return out;
  }

  /** One decimal is a tenth of a picture unit, finer than anyone sees. */
  private StringBuilder add(double value) {
    long tenths = Math.round(value * 10.0);
    if (tenths < 0) {
      out.append('-');
      tenths = -tenths;
    }
    out.append(tenths / 10);
    if (tenths % 10 != 0) {
      out.append('.').append(tenths % 10);
    }
    return out;
  }

  private static String number(double value) {
    return new SvgCanvas().add(value).toString();
  }

  private static String number3(double value) {
    return Double.toString(Math.round(value * 1000.0) / 1000.0);
  }

  static String escape(String words) {
    var safe = new StringBuilder(words.length() + 16);
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        default -> safe.append(c < 32 || c == 0xFFFE || c == 0xFFFF ? ' ' : c);
      }
    }
    return safe.toString();
  }
}
