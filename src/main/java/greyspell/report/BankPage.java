package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Say;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import greyspell.storage.FullCharge;
import greyspell.study.Besides.ServiceYear;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/**
 * The page's part on the bank: voltage, full charges, and the years of its service.
 *
 * @param lines sentences
 * @param service no rows if the scenario asks for no service years
 * @param serviceNote when it is worn, and how far such figures can be trusted
 */
public record BankPage(List<String> lines, Table service, String serviceNote) {
  public BankPage {
    lines = List.copyOf(lines);
  }

  static BankPage of(StudyResult result) {
    var lines = new ArrayList<String>();
    int lowest = lowestVoltageHour(result);
    if (lowest >= 0) {
      lines.add(lowestVoltage(result, lowest));
    }
    lines.add(fullCharge(result));
    return new BankPage(lines, service(result), serviceNote(result));
  }

  /** Hour of the lowest voltage, -1 where the voltage is not followed. */
  static int lowestVoltageHour(StudyResult result) {
    double[] bankV = result.ledger().bankV();
    int lowest = -1;
    for (int h = 0; h < bankV.length; h++) {
      if (bankV[h] > 0.0 && (lowest < 0 || bankV[h] < bankV[lowest])) {
        lowest = h;
      }
    }
    return lowest;
  }

  private static String lowestVoltage(StudyResult result, int hour) {
    Double cutOffV = result.scenario().electrical().cutOffV();
    return "The lowest voltage at its terminals was "
        + Say.number(result.ledger().bankV()[hour], 1)
        + " V, as a mean of the hour, on "
        + Say.date(Facts.calendar(result), hour)
        + (cutOffV == null
            ? ""
            : "; the inverter switches off below " + Say.number(cutOffV, 1) + " V")
        + ". Within the hour a motor start pulls it lower.";
  }

  private static String fullCharge(StudyResult result) {
    FullCharge full = result.besides().fullCharge();
    HourCalendar calendar = Facts.calendar(result);
    if (full.timesFull() == 0) {
      return "It was at no time full.";
    }
    return "The longest time without a full charge was "
        + Say.days(full.longestDays())
        + ", from "
        + Say.date(calendar, full.fromHour())
        + "; it became full "
        + Say.count((int) Math.round(full.timesFull() / (double) calendar.years()), "time", "times")
        + " a year.";
  }

  private static Table service(StudyResult result) {
    boolean isRuled = !result.scenario().load().policy().isIdle();
    boolean hasGenerator = result.besides().fuel() != null;
    var head =
        new ArrayList<String>(
            List.of("Year of service", "Capacity, % of new", "Not served, kWh", "Hours"));
    if (isRuled) {
      head.add("Let go, kWh");
    }
    if (hasGenerator) {
      head.add("Generator, kWh");
    }
    var rows = new ArrayList<Row>();
    for (ServiceYear year : result.besides().service()) {
      var cells = new ArrayList<String>();
      cells.add(Integer.toString(year.number()));
      cells.add(Say.number(year.healthShare() * 100.0, 1));
      cells.add(Say.kwhCell(year.unmet().wh()));
      cells.add(Say.number(year.unmet().unmetHours(), 0));
      if (isRuled) {
        cells.add(Say.kwhCell(year.unmet().letGoWh()));
      }
      if (hasGenerator) {
        cells.add(Say.kwhCell(year.unmet().generatorWh()));
      }
      rows.add(new Row(cells, isWorn(result, year)));
    }
    return new Table(head, rows);
  }

  private static boolean isWorn(StudyResult result, ServiceYear year) {
    return year.healthShare() <= result.scenario().bank().life().endOfLifeShare();
  }

  private static String serviceNote(StudyResult result) {
    var service = result.besides().service();
    if (service.isEmpty()) {
      return "";
    }
    String end = Say.percent(result.scenario().bank().life().endOfLifeShare());
    Double years = result.besides().replacementYears();
    return (years == null
            ? "Within these "
                + Say.count(service.size(), "year", "years")
                + " it does not come down to "
                + end
                + " of its capacity"
            : Say.number(years, 1)
                + " years from now it is down to "
                + end
                + " of its capacity: plan its replacement for then")
        + ". Each line is an average year in the same weather with the capacity that is left at its"
        + " start. Cycle and calendar lives come from laboratories, at one steady temperature: take the"
        + " figures as a shape, not as a promise.";
  }
}
