package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.ladder.Ladder;
import greyspell.ladder.Rung;
import greyspell.ladder.Step;
import greyspell.quantity.Show;
import greyspell.study.Trial;
import java.util.ArrayList;
import java.util.List;

/** What is left unserved after each step, from the home as it stands to the top of the ladder. */
final class LadderPicture extends Picture {
  private static final double ROW = 46.0, BAR = 13.0, LEFT = 320.0, FIGURES = 158.0;

  private record Row(String words, String price, Trial after) {}

  private final List<Row> rows;
  private final double mostWh;

  private LadderPicture(String title, String note, String description, List<Row> rows) {
    super("ladder", title, note, description, 34.0 + ROW * rows.size());
    this.rows = List.copyOf(rows);
    double most = 1.0;
    for (Row row : rows) {
      most = Math.max(most, wh(row.after));
    }
    mostWh = most;
  }

  static LadderPicture of(Ladder ladder) {
    Trial now = ladder.present(), top = ladder.top();
    String currency = now.scenario().costs().currency();
    var rows = new ArrayList<Row>();
    rows.add(new Row("The home as it stands", "", now));
    var told = new StringBuilder();
    for (Rung rung : ladder.rungs()) {
      Step step = rung.tried().step();
      Double once = step.onceCost();
      String price = step.kind().isFree() ? "free" : once == null ? "" : Show.money(currency, once);
      Trial after = rung.tried().after();
      rows.add(new Row(step.words(), price, after));
      told.append(step.words()).append(": ").append(Say.kwh(wh(after))).append(" left. ");
    }
    int steps = ladder.rungs().size();
    String title =
        steps == 0
            ? now.scenario().name() + ": no step of the list helps, or none has a price"
            : now.scenario().name()
                + ": "
                + Say.count(steps, "step takes", "steps take")
                + " what the sun does not bring from "
                + Say.kwh(wh(now))
                + " to "
                + Say.kwh(wh(top))
                + " a year";
    return new LadderPicture(
        title,
        "Left after each step in an average year: dark hours (hatched), and what a generator gives instead (plain). "
            + "Steps are taken one after another."
            + Look.ESTIMATE_ONLY,
        title + ". " + told,
        rows);
  }

  private static double wh(Trial trial) {
    return trial.unmet().wh() + trial.unmet().generatorWh();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double right = Look.WIDTH - Look.MARGIN - FIGURES;
    double perWh = (right - LEFT) / mostWh;
    canvas.line(LEFT, top, LEFT, top + ROW * rows.size(), Look.AXIS, 1.0, false);
    for (int k = 0; k < rows.size(); k++) {
      Row row = rows.get(k);
      double y = top + ROW * k + 8.0;
      words(canvas, row, k, y);
      double unmet = row.after.unmet().wh() * perWh;
      double engine = row.after.unmet().generatorWh() * perWh;
      if (unmet > 0.0) {
        double shown = Math.max(2.0, unmet);
        canvas.rect(LEFT, y, shown, BAR, Look.UNMET_PALE);
        canvas.hatch(LEFT, y, shown, BAR, 4.0, Look.UNMET, true);
      }
      if (engine > 0.0) {
        canvas.rect(LEFT + unmet, y, Math.max(2.0, engine), BAR, Look.HOUSE);
      }
      canvas.text(
          LEFT + unmet + engine + 8.0,
          y + 11.0,
          figures(row.after),
          Look.LABEL,
          true,
          Look.INK,
          Anchor.START);
    }
  }

  private static String figures(Trial after) {
    return Say.kwh(wh(after)) + ", " + Show.number(after.unmet().unmetHours(), 0) + " dark h";
  }

  private static void words(Canvas canvas, Row row, int number, double y) {
    String shown = number == 0 ? row.words : number + ". " + row.words;
    if (!row.price.isEmpty()) {
      shown += " (" + row.price + ")";
    }
    List<String> lines = TextWidth.wrap(shown, Look.LABEL, number == 0, LEFT - Look.MARGIN - 14.0);
    double at = y + 11.0 - (lines.size() > 1 ? 6.0 : 0.0);
    for (int line = 0; line < Math.min(3, lines.size()); line++) {
      canvas.text(
          Look.MARGIN,
          at + 14.0 * line,
          lines.get(line),
          Look.LABEL,
          number == 0,
          Look.INK,
          Anchor.START);
    }
  }
}
