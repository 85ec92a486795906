package greyspell.report;

import greyspell.array.PlanesTogether;
import greyspell.chart.StringPictures;
import greyspell.quantity.Show;
import greyspell.study.PlanesCompared;

/** What joining two planes costs, for a terminal. */
public final class PlanesText {
  private PlanesText() {}

  public static String of(PlanesCompared compared) {
    var out = new StringBuilder();
    PlanesTogether now = PlanesTogether.of(compared.firstString(), compared.secondString());
    Columns.wrap(
        out,
        "",
        "Two planes on one input: "
            + compared.first().name()
            + " and "
            + compared.second().name()
            + ", one string of each, before wires and controller.");
    var table = new Columns();
    table.row("", StringPictures.when(compared), "an average year", "lost in it");
    PlanesTogether.Energy year = compared.year();
    table.row(
        "on inputs of their own", Show.power(now.separateW()), Show.energy(year.separateWh()), "-");
    table.row(
        "in parallel",
        Show.power(now.parallel().powerW()),
        Show.energy(year.parallelWh()),
        Show.percent(Math.max(0.0, year.parallelLossShare())));
    table.row(
        "in a row",
        Show.power(now.series().powerW()),
        Show.energy(year.seriesWh()),
        Show.percent(Math.max(0.0, year.seriesLossShare())));
    table.write(out, false);
    return out.toString();
  }
}
