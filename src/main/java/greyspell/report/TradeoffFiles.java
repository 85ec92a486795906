package greyspell.report;

import greyspell.chart.Pictures;
import greyspell.chart.TradeoffPicture;
import greyspell.study.Tradeoff;
import greyspell.study.TradeoffAxes;
import greyspell.study.TradeoffMap;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Writes the map of panels against storage as a picture and as a tidy table. */
public final class TradeoffFiles {
  private TradeoffFiles() {}

  /** The picture as SVG, as PNG where this machine has a font, and {@code map.csv}. */
  public static List<Path> write(Tradeoff tradeoff, Path dir) {
    var picture = TradeoffPicture.of(tradeoff);
    try (var deliver = new Deliver(dir)) {
      deliver.write("tradeoff.svg", Pictures.svg(picture).getBytes(StandardCharsets.UTF_8));
      deliver.supersede("tradeoff.png");
      try {
        deliver.write("tradeoff.png", Pictures.png(picture));
      } catch (Pictures.NoFonts none) {
        // the SVG holds the same
      }
      deliver.write("map.csv", csv(tradeoff).getBytes(StandardCharsets.UTF_8));
      return deliver.done();
    }
  }

  /** One line for each pair. */
  static String csv(Tradeoff t) {
    TradeoffMap map = t.map();
    TradeoffAxes axes = map.axes();
    boolean isPriced = t.costs().isKnown();
    var out =
        new StringBuilder(
            "modules,panels_kw,controllers,bank_kwh,packs,unmet_hours_per_year,unmet_kwh_per_year,"
                + "generator_hours_per_year,fuel_l_per_year,extra_cost,is_allowed,helps_more\n");
    for (int i = 0; i < map.panels(); i++) {
      for (int j = 0; j < map.banks(); j++) {
        out.append(
            String.format(
                Locale.ROOT,
                "%d,%.3f,%d,%.3f,%.3f,%.3f,%.4f,%.2f,%.2f,%s,%s,%s\n",
                axes.modules(i),
                axes.ratedW(i) / 1000.0,
                axes.panels().get(i).controllers(),
                axes.storageWh(j) / 1000.0,
                axes.storageWh(j) / axes.packWh(),
                map.unmetHours(i, j),
                map.unmetWh(i, j) / 1000.0,
                map.generatorHours(i, j),
                map.fuelL(i, j),
                isPriced ? String.format(Locale.ROOT, "%.2f", t.costs().extraCost(i, j)) : "",
                t.isAllowed(i, j) ? "yes" : "no",
                t.helps().zone(i, j).name().toLowerCase(Locale.ROOT)));
      }
    }
    return out.toString();
  }
}
