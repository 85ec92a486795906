package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Say;
import greyspell.outcome.Figures;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.power.FuelUse;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import greyspell.study.Fuel;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The page's part on a generator: how long it ran, what it burnt, and what kills beside it.
 *
 * @param lines sentences
 * @param winters hours, starts, energy and fuel by winter, and of all
 */
public record GeneratorPage(List<String> lines, Table winters, List<Checklist.Item> checklist) {
  private static final int WEEK = 7 * 24;

  public GeneratorPage {
    lines = List.copyOf(lines);
    checklist = List.copyOf(checklist);
  }

  /** Null for a home without one. */
  static @Nullable GeneratorPage of(StudyResult result) {
    FuelUse fuel = result.besides().fuel();
    if (fuel == null) {
      return null;
    }
    var lines = new ArrayList<String>();
    Figures total = result.outcome().total();
    if (total.beyond().generatorHours() == 0) {
      lines.add("It did not run once: in the weather looked at the house did without it.");
    } else {
      lines.add(
          "What is said on this page of hours served and not served counts the generator in: the house is"
              + " served with its help.");
      lines.add("In the average year it ran " + aYear(result) + ".");
      lines.add(busiestWeek(Facts.calendar(result), fuel));
    }
    lines.add(
        "Dark and grey autonomy and the grey spells are counted without it: they tell what panels and"
            + " bank can do alone. That an engine may fail to start in the cold is not counted; test"
            + " it before winter.");
    return new GeneratorPage(lines, winters(result), Checklist.generator());
  }

  /** "85 hours in 36 starts and gave 122 kWh, for 75 litres (20 US gallons), 134 EUR". */
  private static String aYear(StudyResult result) {
    double years = Facts.calendar(result).years();
    var b = result.outcome().total().beyond();
    Fuel fuel = result.fuelBetween(0, result.ledger().hours());
    return Say.number(b.generatorHours() / years, 0)
        + " hours in "
        + Say.number(b.generatorStarts() / years, 0)
        + " starts and gave "
        + Say.kwh(b.generatorWh() / years)
        + ", for "
        + fuelWords(fuel.fuelL() / years)
        + (fuel.fuelCost() == null
            ? ""
            : ", " + money(fuel.fuelCost() / years, result.scenario().costs().currency()))
        + " and "
        + Say.number(fuel.co2Kg() / years, 0)
        + " kg of carbon dioxide";
  }

  /** "61 litres (16 US gallons)". */
  static String fuelWords(double litresL) {
    double gallons = FuelUse.usGallons(litresL);
    return Say.number(litresL, decimals(litresL))
        + " litres ("
        + Say.number(gallons, decimals(gallons))
        + " US gallons)";
  }

  private static int decimals(double volume) {
    return volume > 0.0 && volume < 9.95 ? 1 : 0;
  }

  static String money(double cost, String currency) {
    return Say.number(cost, 0) + (currency.isEmpty() ? " for fuel" : " " + currency);
  }

  private static String busiestWeek(HourCalendar calendar, FuelUse fuel) {
    double[] litresL = fuel.litresL();
    double sum = 0.0;
    double most = 0.0;
    int from = 0;
    for (int h = 0; h < litresL.length; h++) {
      sum += litresL[h] - (h >= WEEK ? litresL[h - WEEK] : 0.0);
      if (sum > most + 1e-9) {
        most = sum;
        from = Math.max(0, h - WEEK + 1);
      }
    }
    return "In its busiest week, from "
        + Say.date(calendar, from)
        + ", it burnt "
        + fuelWords(most)
        + ": what has to be there when the roads are not.";
  }

  private static Table winters(StudyResult result) {
    boolean isPriced = result.scenario().costs().fuelPerLitreCost() != null;
    String currency = result.scenario().costs().currency();
    var head =
        new ArrayList<String>(
            List.of(
                Facts.calendar(result).years() > 1 ? "Winter" : "Year",
                "Hours",
                "Starts",
                "kWh",
                "Litres",
                "US gallons"));
    if (isPriced) {
      head.add("Cost" + (currency.isEmpty() ? "" : ", " + currency));
    }
    head.add("CO2, kg");
    var rows = new ArrayList<Row>();
    for (WinterBooks w : result.outcome().winters()) {
      String name = w.winter().name() + (w.winter().isWhole() ? "" : " (part)");
      Fuel fuel = result.fuelBetween(w.winter().fromHour(), w.winter().toHour());
      rows.add(row(name, w.figures(), fuel, isPriced, false));
    }
    Fuel all = result.fuelBetween(0, result.ledger().hours());
    rows.add(row("All", result.outcome().total(), all, isPriced, true));
    return new Table(head, rows);
  }

  private static Row row(String name, Figures f, Fuel fuel, boolean isPriced, boolean isMarked) {
    var cells = new ArrayList<String>();
    cells.add(name);
    cells.add(Say.number(f.beyond().generatorHours(), 0));
    cells.add(Say.number(f.beyond().generatorStarts(), 0));
    cells.add(Say.kwhCell(f.beyond().generatorWh()));
    cells.add(Say.number(fuel.fuelL(), 1));
    cells.add(Say.number(FuelUse.usGallons(fuel.fuelL()), 1));
    if (isPriced) {
      Double cost = fuel.fuelCost();
      cells.add(cost == null ? "–" : Say.number(cost, 0));
    }
    cells.add(Say.number(fuel.co2Kg(), 0));
    return new Row(cells, isMarked);
  }
}
