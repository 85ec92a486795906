package greyspell.report;

import greyspell.chart.Say;
import greyspell.study.SizeResult;
import greyspell.study.SizeResult.Point;
import java.util.ArrayList;
import java.util.List;

/** The pairs of which neither can be smaller, as a table for the terminal. */
final class SizeTable {
  private final SizeResult result;

  SizeTable(SizeResult result) {
    this.result = result;
  }

  /** Nothing where there is no frontier. */
  void write(StringBuilder out) {
    if (result.frontier().isEmpty()) {
      return;
    }
    out.append("\nPairs of which neither can be smaller, hours in an average year:\n");
    var table = new Columns();
    boolean hasWinters = result.wholeWinters() > 0;
    boolean hasGenerator = result.frontier().stream().anyMatch(p -> p.tally().generatorHours() > 0);
    boolean hasControllers =
        result.frontier().stream().anyMatch(p -> p.controllers() != result.present().controllers());
    boolean hasCost = result.frontier().stream().anyMatch(p -> p.cost() != null);
    var head = new ArrayList<>(List.of("modules", "kW"));
    if (hasControllers) {
      head.add("controllers");
    }
    if (result.banks().areWholePacks()) {
      head.add("packs");
    }
    head.addAll(List.of("kWh", "unmet h"));
    if (hasWinters) {
      head.addAll(List.of("dark winters", "most days of loss"));
    }
    if (hasGenerator) {
      head.add("generator h");
    }
    if (hasCost) {
      String currency = result.home().costs().currency();
      head.add(currency.isEmpty() ? "cost" : currency);
    }
    head.add("");
    table.row(head.toArray(String[]::new));
    for (Point p : result.frontier()) {
      var row = new ArrayList<String>();
      row.add(Say.number(p.modules(), 0));
      row.add(Say.number(p.ratedW() / 1000.0, 1));
      if (hasControllers) {
        row.add(Say.number(p.controllers(), 0));
      }
      Integer packs = p.packs();
      if (result.banks().areWholePacks()) {
        row.add(packs == null ? "" : Say.number(packs, 0));
      }
      row.add(Say.kwhCell(p.capacityWh()));
      row.add(SizeText.hours(p.tally().unmetHoursPerYear()));
      if (hasWinters) {
        row.add(p.tally().darkWinters() + " of " + p.tally().wholeWinters());
        row.add(Say.number(p.tally().mostLossDays(), 0));
      }
      if (hasGenerator) {
        row.add(SizeText.hours(p.tally().generatorHoursPerYear()));
      }
      Double cost = p.cost();
      if (hasCost) {
        row.add(cost == null ? "" : Say.number(cost, 0));
      }
      row.add(mark(p));
      table.row(row.toArray(String[]::new));
    }
    table.write(out, true);
  }

  private String mark(Point p) {
    Point cheapest = result.cheapest();
    var marks = new ArrayList<String>();
    if (p.modules() == result.present().modules()) {
      marks.add("panels as they are");
    }
    if (p.packs() != null && p.packs().equals(result.present().packs())) {
      marks.add("bank as it is");
    }
    if (p.equals(cheapest)) {
      marks.add("cheapest");
    }
    return String.join(", ", marks);
  }
}
