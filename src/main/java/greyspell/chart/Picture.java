package greyspell.chart;

import java.util.List;

/** One picture: what it says in words, and how it is drawn. It is drawn once for both formats. */
public abstract class Picture {
  private final String name;
  private final String title;
  private final String note;
  private final String description;
  private final double plotHeight;
  private final Span span;

  Picture(String name, String title, String note, String description, double plotHeight) {
    this(name, title, note, description, plotHeight, Span.PAGE);
  }

  /** In a column. */
  Picture(
      String name, String title, String note, String description, double plotHeight, Span span) {
    this.span = span;
    this.name = span.name(name);
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

  /** In a column the words above it state the finding, so that it needs neither title nor note. */
  boolean isTitled() {
    return !span.isColumn();
  }

  private List<String> titleLines() {
    return !isTitled()
        ? List.of()
        : TextWidth.wrap(title, span.titleSize, true, span.width - 2 * span.margin);
  }

  private List<String> noteLines() {
    return span.isColumn()
        ? List.of()
        : TextWidth.wrap(note, Look.SUBTITLE, false, span.width - 2 * span.margin);
  }

  private double top() {
    double gap = !isTitled() ? 0.0 : span.isColumn() ? 6.0 : 12.0;
    return span.margin + span.titleLine * titleLines().size() + 16.0 * noteLines().size() + gap;
  }

  final Span span() {
    return span;
  }

  /** In picture units. */
  public final double width() {
    return span.width;
  }

  /** In picture units. */
  public final double height() {
    return top() + plotHeight;
  }

  final void draw(Canvas canvas) {
    canvas.rect(0, 0, span.width, height(), Look.PAPER);
    double y = span.margin;
    for (String line : titleLines()) {
      canvas.text(
          span.margin,
          y + span.titleSize - 2.0,
          line,
          span.titleSize,
          true,
          Look.INK,
          Canvas.Anchor.START);
      y += span.titleLine;
    }
    y += 4.0;
    for (String line : noteLines()) {
      canvas.text(
          span.margin, y + 10.0, line, Look.SUBTITLE, false, Look.FAINT_INK, Canvas.Anchor.START);
      y += 16.0;
    }
    plot(canvas, top(), plotHeight);
  }

  /** Draws what is below title and note. */
  abstract void plot(Canvas canvas, double top, double height);
}
