package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Shares;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * What was not served, shared among its causes: nobody's fault hatched, what can be mended full.
 */
final class CausesPicture extends Picture {
  private static final double ROW = 24.0;
  private static final double MOST_LABELS = 340.0;
  private static final double FIGURES = 120.0;
  private static final double LEAST_SHARE = 0.005;

  private final List<Part> parts;
  private final Words words;
  private final double labels;

  private CausesPicture(
      String title, String note, String description, List<Part> parts, Words words) {
    super("causes", title, note, description, 34.0 + ROW * parts.size() + Look.MARGIN);
    this.parts = parts;
    this.words = words;
    double widest = 0.0;
    for (Part part : parts) {
      String label = words.say(part.cause().key());
      widest = Math.max(widest, TextWidth.of(label, Look.LABEL, false));
    }
    labels = Math.min(MOST_LABELS, Look.MARGIN + widest + 10.0);
  }

  static CausesPicture of(Shares shares, Words words) {
    var parts = new ArrayList<Part>();
    double seasonShare = 0.0;
    var description = new StringBuilder();
    for (Part part : shares.parts()) {
      seasonShare += part.cause().isSeason() ? part.ofWholeShare() : 0.0;
      if (Math.abs(part.ofWholeShare()) >= LEAST_SHARE) {
        parts.add(part);
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
        List.copyOf(parts),
        words);
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    var key = new WordedKey(canvas, top + 2.0);
    key.hatched(words.say("picture.season"), Look.PAPER, Look.HOUSE, false);
    key.filled(words.say("picture.fixable"), Look.SUN);
    double most = 0.0, least = 0.0;
    for (Part part : parts) {
      most = Math.max(most, part.wh());
      least = Math.min(least, part.wh());
    }
    double room = Look.WIDTH - Look.MARGIN - labels - FIGURES;
    double perWh = room / Math.max(1.0, most - least), zero = labels - least * perWh;
    for (int k = 0; k < parts.size(); k++) {
      row(canvas, parts.get(k), top + 30.0 + k * ROW, zero, perWh);
    }
    canvas.line(zero, top + 28.0, zero, top + 30.0 + ROW * parts.size(), Look.AXIS, 1.0, false);
  }

  private void row(Canvas canvas, Part part, double y, double zero, double perWh) {
    String label = words.say(part.cause().key());
    canvas.text(labels - 10.0, y + 15.0, label, Look.LABEL, false, Look.INK, Anchor.END);
    double wide = Math.abs(part.wh()) * perWh;
    double left = part.wh() < 0.0 ? zero - wide : zero;
    if (part.cause().isSeason()) {
      canvas.rect(left, y + 3.0, wide, ROW - 8.0, Look.PAPER);
      canvas.hatch(left, y + 3.0, wide, ROW - 8.0, 5.0, Look.HOUSE, false);
    } else {
      canvas.rect(left, y + 3.0, wide, ROW - 8.0, Look.SUN);
    }
    String figure = words.energy(part.wh()) + ", " + words.percent(part.ofWholeShare());
    double end = Math.max(zero, left + wide) + 8.0;
    canvas.text(end, y + 15.0, figure, Look.LABEL, false, Look.INK, Anchor.START);
  }
}
