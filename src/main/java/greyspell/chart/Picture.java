package greyspell.chart;

import java.util.List;

/** One picture: what it says in words, and how it is drawn. It is drawn once for both formats. */
public abstract class Picture {
  private final String name;
  private final String title;
  private final String note;
  private final String description;
  private final double plotHeight;

  Picture(String name, String title, String note, String description, double plotHeight) {
    this.name = name;
    this.title = title;
    this.note = note;
    this.description = description;
    this.plotHeight = plotHeight;
  }

  /** File name without ending. */
  public final String name() {
    return name;
  }

  /** A sentence that states the finding, with numbers. */
  public final String title() {
    return title;
  }

  /** How the picture is to be read, in small print under the title. */
  public final String note() {
    return note;
  }

  /** What a reader who cannot see the picture needs to know. */
  public final String description() {
    return description;
  }

  private List<String> titleLines() {
    return TextWidth.wrap(title, Look.TITLE, true, Look.WIDTH - 2 * Look.MARGIN);
  }

  private List<String> noteLines() {
    return TextWidth.wrap(note, Look.SUBTITLE, false, Look.WIDTH - 2 * Look.MARGIN);
  }

  private double top() {
    return Look.MARGIN + 21.0 * titleLines().size() + 16.0 * noteLines().size() + 12.0;
  }

  /** In picture units. */
  public final double height() {
    return top() + plotHeight;
  }

  final void draw(Canvas canvas) {
    canvas.rect(0, 0, Look.WIDTH, height(), Look.PAPER);
    double y = Look.MARGIN;
    for (String line : titleLines()) {
      canvas.text(Look.MARGIN, y + 13.0, line, Look.TITLE, true, Look.INK, Canvas.Anchor.START);
      y += 21.0;
    }
    y += 4.0;
    for (String line : noteLines()) {
      canvas.text(
          Look.MARGIN, y + 10.0, line, Look.SUBTITLE, false, Look.FAINT_INK, Canvas.Anchor.START);
      y += 16.0;
    }
    plot(canvas, top(), plotHeight);
  }

  /** Draws what is below title and note. */
  abstract void plot(Canvas canvas, double top, double height);
}
