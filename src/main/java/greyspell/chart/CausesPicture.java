package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Shares;
import greyspell.study.WinterCause;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * What was not served, shared among its causes: nobody's fault hatched, what can be mended full.
 */
final class CausesPicture extends Picture {
  private static final double ROW = 24.0;
  private static final double COLUMN_ROW = 28.0;
  private static final double BAR = 7.0;
  private static final double MOST_LABELS = 340.0;
  private static final double FIGURES = 120.0;
  private static final double LEAST_SHARE = 0.005;
  private static final double LEAST_COLUMN_SHARE = 0.02;

  private final List<Part> parts;
  private final Words words;
  private final double labels;

  private CausesPicture(
      String title, String note, String description, List<Part> parts, Words words, Span span) {
    super("causes", title, note, description, tall(words, parts.size(), span), span);
    this.parts = parts;
    this.words = words;
    double widest = 0.0;
    for (Part part : parts) {
      String label = words.say(part.cause().key());
      widest = Math.max(widest, TextWidth.of(label, Look.LABEL, false));
    }
    labels = Math.min(MOST_LABELS, Look.MARGIN + widest + 10.0);
  }

  private static List<String> key(Words words) {
    return List.of(words.say("picture.season"), words.say("picture.fixable"));
  }

  private static double tall(Words words, int rows, Span span) {
    return span.isColumn()
        ? WordedKey.height(span, key(words)) + COLUMN_ROW * rows
        : 34.0 + ROW * rows + Look.MARGIN;
  }

  static CausesPicture of(Shares shares, Words words, Span span) {
    double seasonShare = 0.0;
    var description = new StringBuilder();
    for (Part part : shares.parts()) {
      seasonShare += part.cause().isSeason() ? part.ofWholeShare() : 0.0;
    }
    List<Part> parts = fewer(shares.parts(), span.isColumn() ? LEAST_COLUMN_SHARE : LEAST_SHARE);
    for (Part part : parts) {
      if (Math.abs(part.ofWholeShare()) >= LEAST_SHARE) {
        description.append(
            words.say(
                "picture.causes.line",
                words.say(part.cause().key()),
                words.energy(part.wh()),
                words.percent(part.ofWholeShare())));
      }
    }
    return new CausesPicture(
        words.say("picture.causes.title", words.percent(seasonShare)),
        words.say("picture.causes.note"),
        description.toString(),
        parts,
        words,
        span);
  }

  /** What is small and can be changed goes in with the small ones, before any is left out. */
  private static List<Part> fewer(List<Part> parts, double leastShare) {
    var kept = new ArrayList<Part>();
    double wh = 0.0, share = 0.0;
    for (Part part : parts) {
      boolean isSmall =
          part.cause() == WinterCause.SMALLER_TOGETHER
              || (!part.cause().isSeason() && Math.abs(part.ofWholeShare()) < leastShare);
      wh += isSmall ? part.wh() : 0.0;
      share += isSmall ? part.ofWholeShare() : 0.0;
      if (!isSmall) {
        kept.add(part);
      }
    }
    if (wh != 0.0) {
      kept.add(new Part(WinterCause.SMALLER_TOGETHER, wh, 0.0, share, wh, List.of()));
    }
    kept.removeIf(part -> Math.abs(part.ofWholeShare()) < LEAST_SHARE);
    return List.copyOf(kept);
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    var key = new WordedKey(canvas, span(), top + 2.0);
    key.hatched(words.say("picture.season"), Look.PAPER, Look.HOUSE, false);
    key.filled(words.say("picture.fixable"), Look.SUN);
    double most = 0.0, least = 0.0;
    for (Part part : parts) {
      most = Math.max(most, part.wh());
      least = Math.min(least, part.wh());
    }
    if (span().isColumn()) {
      column(canvas, top + WordedKey.height(span(), key(words)), most, least);
      return;
    }
    double room = Look.WIDTH - Look.MARGIN - labels - FIGURES;
    double perWh = room / Math.max(1.0, most - least), zero = labels - least * perWh;
    for (int k = 0; k < parts.size(); k++) {
      row(canvas, parts.get(k), top + 30.0 + k * ROW, zero, perWh);
    }
    canvas.line(zero, top + 28.0, zero, top + 30.0 + ROW * parts.size(), Look.AXIS, 1.0, false);
  }

  /** Words and share on one line, the bar below them over the whole width. */
  private void column(Canvas canvas, double top, double most, double least) {
    double perWh = (span().width - 2 * span().margin) / Math.max(1.0, most - least);
    double zero = span().margin - least * perWh;
    for (int k = 0; k < parts.size(); k++) {
      Part part = parts.get(k);
      double y = top + k * COLUMN_ROW;
      String label = words.say(part.cause().key()), share = words.percent(part.ofWholeShare());
      canvas.text(span().margin, y + 11.0, label, Look.LABEL, false, Look.INK, Anchor.START);
      canvas.text(span().right(), y + 11.0, share, Look.LABEL, true, Look.INK, Anchor.END);
      bar(canvas, part, y + 15.0, BAR, zero, perWh);
      canvas.line(zero, y + 14.0, zero, y + 16.0 + BAR, Look.AXIS, 1.0, false);
    }
  }

  /** Where it ends on the left. */
  private static double bar(
      Canvas canvas, Part part, double y, double tall, double zero, double perWh) {
    double wide = Math.abs(part.wh()) * perWh;
    double left = part.wh() < 0.0 ? zero - wide : zero;
    if (part.cause().isSeason()) {
      canvas.rect(left, y, wide, tall, Look.PAPER);
      canvas.hatch(left, y, wide, tall, 5.0, Look.HOUSE, false);
    } else {
      canvas.rect(left, y, wide, tall, Look.SUN);
    }
    return left;
  }

  private void row(Canvas canvas, Part part, double y, double zero, double perWh) {
    String label = words.say(part.cause().key());
    canvas.text(labels - 10.0, y + 15.0, label, Look.LABEL, false, Look.INK, Anchor.END);
    double left = bar(canvas, part, y + 3.0, ROW - 8.0, zero, perWh);
    double wide = Math.abs(part.wh()) * perWh;
    String figure = words.energy(part.wh()) + ", " + words.percent(part.ofWholeShare());
    double end = Math.max(zero, left + wide) + 8.0;
    canvas.text(end, y + 15.0, figure, Look.LABEL, false, Look.INK, Anchor.START);
  }
}
