package greyspell.handover;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.electrical.Arrangement;
import greyspell.electrical.Finding;
import greyspell.electrical.Finding.Severity;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringRules;
import greyspell.handover.Block.Row;
import greyspell.outcome.Outcome.MonthBooks;
import greyspell.power.GeneratorRules;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.study.ElectricalCheck;
import greyspell.study.Records;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Panels and strings, bank, inverter, generator. */
final class EquipmentPages {
  private static final String NONE = "–";

  private final Told told;
  private final Sheet sheet;
  private final Words words;
  private final Scenario home;

  private EquipmentPages(Told told, Sheet sheet) {
    this.told = told;
    this.sheet = sheet;
    words = sheet.words();
    home = told.home();
  }

  static void add(Told told, Sheet sheet) {
    var pages = new EquipmentPages(told, sheet);
    pages.panels();
    pages.strings();
    pages.bank();
    pages.inverter();
    pages.generator();
  }

  // ---- panels and strings

  private void panels() {
    sheet.section("panels");
    var rows = new ArrayList<Row>();
    for (ArraySpec array : home.arrays()) {
      rows.add(
          Row.of(
              words.name(array.name()),
              words.name(array.module().name()),
              words.say(
                  "panels.arrangement",
                  words.number(array.inSeries(), 0),
                  words.number(array.inParallel(), 0)),
              words.power(array.ratedPowerW()),
              words.number(array.tiltDeg(), 0) + "°",
              words.number(array.azimuthDeg(), 0) + "°"));
    }
    sheet.table(
        "section.panels",
        List.of(
            "head.plane", "head.module", "head.strings", "head.rated", "head.tilt", "head.azimuth"),
        rows,
        false);
    sheet.small("panels.note");
    ControllerSpec c = home.controller();
    sheet.fact(
        "panels.controller",
        words.say("panels.controller.text", words.name(c.name()), words.number(c.count(), 0)));
    sheet.fact(
        "panels.controller.window",
        volts(c.lowestTrackingV()) + " – " + volts(c.highestTrackingV()));
    sheet.fact("panels.controller.most", volts(c.absoluteMaximumV()));
    sheet.fact("panels.controller.current", amperes(c.maxShortCircuitA()));
    sheet.fact("panels.controller.output", output(c));
  }

  private String output(ControllerSpec c) {
    Double watts = c.maxOutputW();
    return watts != null ? words.power(watts) : amperes(c.maxOutputA());
  }

  private String volts(@Nullable Double v) {
    return v == null ? words.say("not_stated") : words.voltage(v);
  }

  private String amperes(@Nullable Double a) {
    return a == null ? words.say("not_stated") : words.current(a);
  }

  private void strings() {
    sheet.part("strings.title");
    StringRules rules = ElectricalCheck.rules(home, Records.of(home));
    var built = StringJudge.asBuilt(home.arrays(), home.controller(), rules);
    if (!built.missing().isEmpty()) {
      sheet.text("strings.missing");
    }
    var rows = new ArrayList<Row>();
    for (int k = 0; k < built.arrays().size(); k++) {
      rows.add(row(words.name(home.arrays().get(k).name()), built.arrays().get(k)));
    }
    sheet.table(
        "strings.title",
        List.of(
            "head.plane",
            "head.cold_open",
            "head.limit",
            "head.margin",
            "head.cold_power",
            "head.hot_power",
            "head.needed",
            "head.short_circuit",
            "head.bright_current",
            "head.verdict"),
        rows,
        false);
    sheet.small("strings.note");
    findings();
  }

  private Row row(String name, Arrangement a) {
    Double margin = a.marginShare();
    return new Row(
        List.of(
            name,
            words.voltage(a.coldOpenV()),
            a.limitV() == null ? NONE : words.voltage(a.limitV()),
            margin == null ? NONE : words.percent(margin),
            words.voltage(a.coldPowerV()),
            words.voltage(a.hotPowerV()),
            words.voltage(a.neededV()),
            words.current(a.shortCircuitA()),
            words.current(a.circuitA()),
            verdict(a.verdict())),
        a.verdict().isRefused());
  }

  private String verdict(Severity severity) {
    return words.say("verdict." + severity.word());
  }

  private void findings() {
    sheet.part("strings.findings");
    sheet.text(
        "strings.counts",
        count(Severity.PASS),
        count(Severity.CAUTION),
        count(Severity.UNKNOWN),
        count(Severity.FAIL));
    var rows = new ArrayList<Row>();
    Severity[] all = Severity.values();
    for (int k = all.length - 1; k >= 0; k--) {
      for (Finding f : told.check().findings()) {
        if (f.severity() == all[k]) {
          rows.add(
              new Row(
                  List.of(
                      verdict(f.severity()),
                      sheet.translatedOrName(f.subject()),
                      sheet.translated(f.text()),
                      sheet.translated(f.reason())),
                  f.severity().isRefused()));
        }
      }
    }
    sheet.table(
        "strings.findings",
        List.of("head.verdict", "head.looked_at", "head.found", "head.why"),
        rows,
        true);
  }

  private String count(Severity severity) {
    long count = told.check().findings().stream().filter(f -> f.severity() == severity).count();
    return words.number((double) count, 0);
  }

  // ---- bank, inverter, generator

  private void bank() {
    sheet.section("bank");
    BankSpec b = home.bank();
    sheet.fact(
        "bank.name", words.say("bank.name.text", words.name(b.name()), words.number(b.packs(), 0)));
    sheet.fact(
        "bank.chemistry", words.say("chemistry." + b.chemistry().name().toLowerCase(Locale.ROOT)));
    sheet.fact("bank.nominal", words.energy(b.capacityWh()) + ", " + words.voltage(b.nominalV()));
    sheet.fact("bank.usable", words.energy(told.result().outcome().usableBankWh()));
    sheet.fact("bank.reserve", words.percent(b.reserveFraction()));
    sheet.fact("bank.health", words.percent(b.healthShare()));
    sheet.fact(
        "bank.efficiency",
        words.percent(b.chargeEfficiency()) + " / " + words.percent(b.dischargeEfficiency()));
    sheet.fact("bank.power", words.power(b.maxChargeW()) + " / " + words.power(b.maxDischargeW()));
    sheet.fact("bank.coldest", words.temperature(b.coldestChargeC()));
    double[] cells = told.forcing().bankTemperatureC();
    double lowC = Double.MAX_VALUE, highC = -Double.MAX_VALUE;
    int blocked = 0;
    for (int h = 0; h < cells.length; h++) {
      lowC = Math.min(lowC, cells[h]);
      highC = Math.max(highC, cells[h]);
      blocked += told.forcing().chargeShare()[h] <= 0.0 ? 1 : 0;
    }
    sheet.fact(
        "bank.temperature",
        range(words.temperature(rounded(lowC)), words.temperature(rounded(highC))));
    sheet.fact("bank.blocked", words.hours(blocked / told.years()));
    double cycles = told.result().outcome().total().equivalentFullCycles() / told.years();
    sheet.fact("bank.cycles", words.number(cycles, 0));
  }

  private String range(String low, String high) {
    return low.equals(high) ? low : words.say("range", low, high);
  }

  private static double rounded(double temperatureC) {
    return Math.round(temperatureC * 10.0) / 10.0;
  }

  private void inverter() {
    sheet.section("inverter");
    var i = home.inverter();
    Double surgeW = i.surgeW();
    sheet.fact(
        "inverter.name",
        words.say("bank.name.text", words.name(i.name()), words.number(i.count(), 0)));
    sheet.fact("load.peaks.continuous", words.power(i.continuousW()));
    sheet.fact("load.peaks.surge", surgeW == null ? words.say("not_stated") : words.power(surgeW));
    sheet.fact(
        "inverter.standby", words.power(i.standbyDayW()) + " / " + words.power(i.standbyNightW()));
    var total = told.result().outcome().total();
    sheet.fact("inverter.unmet", words.energy(total.unmetInverterWh() / told.years()));
  }

  private void generator() {
    sheet.section("generator");
    Scenario.Generator generator = home.generator();
    var other = home.otherSource();
    if (generator == null) {
      sheet.text("generator.none");
    } else {
      GeneratorRules rules = generator.rules();
      var books = told.result().outcome().total().beyond();
      double fuelL = told.result().fuelBetween(0, told.calendar().hours()).fuelL();
      sheet.fact("generator.name", words.name(generator.spec().name()));
      sheet.fact("generator.rated", words.power(generator.spec().ratedPowerW()));
      sheet.fact(
          "generator.rules",
          words.say(
              "generator.rules.text",
              words.percent(rules.startBelowShare()),
              words.percent(rules.stopAboveShare())));
      sheet.fact("generator.hours", words.hours(books.generatorHours() / told.years()));
      sheet.fact("generator.starts", words.number(books.generatorStarts() / told.years(), 0));
      sheet.fact("generator.energy", words.energy(books.generatorWh() / told.years()));
      sheet.fact("generator.fuel", words.fuel(fuelL / told.years()));
      generatorMonths();
    }
    if (other != null) {
      var books = told.result().outcome().total().beyond();
      sheet.fact("generator.other", words.name(other.name()));
      sheet.fact("generator.other.used", words.energy(books.otherUsedWh() / told.years()));
      sheet.fact("generator.other.left", words.energy(books.otherCurtailedWh() / told.years()));
    }
  }

  /** When it runs: an average year, month by month. */
  private void generatorMonths() {
    var hours = new int[13];
    var starts = new int[13];
    var wh = new double[13];
    for (MonthBooks m : told.result().outcome().months()) {
      var books = m.figures().beyond();
      hours[m.month()] += books.generatorHours();
      starts[m.month()] += books.generatorStarts();
      wh[m.month()] += books.generatorWh();
    }
    double[] fuelL = fuelByMonthL();
    var rows = new ArrayList<Row>();
    for (int month = 1; month <= 12; month++) {
      rows.add(
          new Row(
              List.of(
                  words.month(month),
                  words.number(hours[month] / told.years(), 1),
                  words.number(starts[month] / told.years(), 1),
                  sheet.kwh(wh[month] / told.years()),
                  words.fuel(fuelL[month] / told.years())),
              hours[month] > 0));
    }
    sheet.part("generator.months");
    sheet.table(
        "generator.months",
        List.of("head.month", "head.generator_hours", "head.starts", "head.kwh", "head.fuel"),
        rows,
        false);
  }

  private double[] fuelByMonthL() {
    var fuelL = new double[13];
    int from = 0, hours = told.calendar().hours();
    for (int h = 1; h <= hours; h++) {
      if (h == hours || told.calendar().month(h) != told.calendar().month(from)) {
        fuelL[told.calendar().month(from)] += told.result().fuelBetween(from, h).fuelL();
        from = h;
      }
    }
    return fuelL;
  }
}
