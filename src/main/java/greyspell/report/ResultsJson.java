package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.calendar.HourCalendar;
import greyspell.outcome.Autonomy;
import greyspell.outcome.Figures;
import greyspell.outcome.Figures.Beyond;
import greyspell.outcome.Figures.Named;
import greyspell.outcome.GreySpell;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.outcome.Shortfall;
import greyspell.power.FuelUse;
import greyspell.scenario.Scenario.Assumption;
import greyspell.study.ElectricalCheck;
import greyspell.study.Fuel;
import greyspell.study.StudyResult;
import java.io.IOException;
import java.io.OutputStream;

/** The results for other programs; docs/results.md says what every key means. */
final class ResultsJson {
  static final int FORMAT = 1;

  private final StudyResult result;
  private final HourCalendar calendar;
  private final ElectricalCheck check;
  private final JsonGenerator json;

  private ResultsJson(StudyResult result, ElectricalCheck check, JsonGenerator json) {
    this.result = result;
    this.check = check;
    this.json = json;
    calendar = Facts.calendar(result);
  }

  static void write(StudyResult result, ElectricalCheck check, OutputStream to) throws IOException {
    try (var json = new JsonFactory().createGenerator(to)) {
      json.useDefaultPrettyPrinter();
      new ResultsJson(result, check, json).write();
    }
    to.close();
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", FORMAT);
    json.writeStringField("verdict", Verdict.of(result).text());
    scenario();
    weather();
    kwh("usable_bank_kwh", result.outcome().usableBankWh());
    json.writeArrayFieldStart("per_winter");
    for (WinterBooks w : result.outcome().winters()) {
      json.writeStartObject();
      json.writeStringField("winter", w.winter().name());
      json.writeBooleanField("is_whole", w.winter().isWhole());
      figures(w.figures(), w.winter().fromHour(), w.winter().toHour());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("total");
    figures(result.outcome().total(), 0, calendar.hours());
    json.writeEndObject();
    autonomy(result.outcome().autonomy());
    new BesidesJson(result, json).write();
    CheckJson.write(json, check);
    words();
    json.writeEndObject();
  }

  private void scenario() throws IOException {
    json.writeObjectFieldStart("scenario");
    json.writeStringField("name", result.scenario().name());
    json.writeStringField("file", result.scenario().file());
    json.writeNumberField("seed", result.scenario().seed());
    json.writeEndObject();
  }

  private void weather() throws IOException {
    json.writeObjectFieldStart("weather");
    json.writeStringField("source", result.scenario().weather().file());
    json.writeStringField("source_format", result.weather().source().format());
    json.writeStringField("place", result.weather().source().place());
    json.writeStringField("years", Facts.years(calendar));
    json.writeNumberField("missing_hours", result.weather().gaps().missingHours());
    json.writeEndObject();
  }

  private void figures(Figures f, int fromHour, int toHour) throws IOException {
    json.writeNumberField("hours", f.hours());
    kwh("load_kwh", f.loadWh());
    kwh("served_kwh", f.servedWh());
    kwh("unmet_kwh", f.unmetWh());
    kwh("unmet_empty_kwh", f.unmetEmptyWh());
    kwh("unmet_rate_kwh", f.unmetRateWh());
    kwh("unmet_inverter_kwh", f.unmetInverterWh());
    json.writeNumberField("unmet_hours", f.unmetHours());
    json.writeNumberField("unmet_days", f.unmetDays());
    number("loss_of_load_probability_hours", f.lossOfLoadProbabilityHours());
    number("loss_of_load_probability_days", f.lossOfLoadProbabilityDays());
    kwh("solar_nominal_kwh", f.solarNominalWh());
    kwh("solar_available_kwh", f.solarAvailableWh());
    kwh("clipped_kwh", f.clippedWh());
    kwh("curtailed_kwh", f.curtailedWh());
    kwh("solar_used_kwh", f.solarUsedWh());
    kwh("bank_in_kwh", f.bankInWh());
    kwh("bank_out_kwh", f.bankOutWh());
    kwh("standing_kwh", f.standingWh());
    json.writeObjectFieldStart("losses_kwh");
    for (Named loss : f.lossesWh()) {
      kwh(loss.name(), loss.wh());
    }
    json.writeEndObject();
    kwh("start_charge_kwh", f.startChargeWh());
    kwh("end_charge_kwh", f.endChargeWh());
    double usableWh = result.outcome().usableBankWh();
    number("lowest_charge_pct", usableWh > 0.0 ? f.lowestChargeWh() / usableWh * 100.0 : 0.0);
    json.writeStringField("lowest_charge_at", time(f.lowestChargeHour()));
    number("equivalent_full_cycles", f.equivalentFullCycles());
    spells(fromHour, toHour);
    beyond(f.beyond());
    Fuel fuel = result.fuelBetween(fromHour, toHour);
    json.writeNumberField("generator_hours", f.beyond().generatorHours());
    number("generator_fuel_l", fuel.fuelL());
    number("generator_fuel_gal", FuelUse.usGallons(fuel.fuelL()));
    number("generator_co2_kg", fuel.co2Kg());
    if (fuel.fuelCost() != null) {
      number("generator_fuel_cost", fuel.fuelCost());
    }
  }

  private void beyond(Beyond b) throws IOException {
    kwh("unmet_cut_off_kwh", b.unmetCutOffWh());
    kwh("unmet_slow_kwh", b.unmetSlowWh());
    kwh("unmet_asleep_kwh", b.unmetAsleepWh());
    kwh("shed_kwh", b.shedWh());
    kwh("put_off_kwh", b.putOffWh());
    kwh("made_up_kwh", b.madeUpWh());
    kwh("curtailed_absorption_kwh", b.curtailedAbsorptionWh());
    kwh("other_used_kwh", b.otherUsedWh());
    kwh("other_curtailed_kwh", b.otherCurtailedWh());
    kwh("generator_kwh", b.generatorWh());
    json.writeNumberField("generator_starts", b.generatorStarts());
  }

  private void spells(int fromHour, int toHour) throws IOException {
    json.writeArrayFieldStart("shortfalls");
    for (Shortfall s : Facts.shortfallsIn(result, fromHour, toHour)) {
      json.writeStartObject();
      json.writeStringField("start", time(s.fromHour()));
      json.writeNumberField("hours", s.hours());
      kwh("kwh", s.unmetWh());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("grey_spells");
    for (GreySpell s : result.outcome().greySpells()) {
      if (s.fromDay() * 24 >= fromHour && s.fromDay() * 24 < toHour) {
        json.writeStartObject();
        json.writeStringField("start", calendar.date(s.fromDay() * 24).toString());
        json.writeNumberField("days", s.days());
        kwh("short_kwh", s.shortWh());
        kwh("unmet_kwh", s.unmetWh());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }

  private void autonomy(Autonomy a) throws IOException {
    json.writeArrayFieldStart("dark_autonomy_days");
    for (double days : a.darkDays().list()) {
      json.writeNumber(rounded(days));
    }
    json.writeEndArray();
    json.writeObjectFieldStart("grey_autonomy_days");
    number("p10", a.greyP10Days());
    number("p50", a.greyP50Days());
    number("p90", a.greyP90Days());
    number("worst", a.greyWorstDays());
    json.writeStringField("worst_start", calendar.date(a.greyWorstFromDay() * 24).toString());
    number("longest_counted", a.longestD());
    json.writeEndObject();
  }

  private void words() throws IOException {
    json.writeArrayFieldStart("assumptions");
    for (Assumption a : result.assumptions()) {
      json.writeStartObject();
      json.writeStringField("key", a.key());
      json.writeStringField("value", a.value());
      json.writeStringField("why", a.why());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("start_note", result.startNote());
    json.writeArrayFieldStart("cautions");
    for (String caution : Cautions.all(result)) {
      json.writeString(caution);
    }
    json.writeEndArray();
  }

  private String time(int hour) {
    return calendar.start(hour).toString();
  }

  private void kwh(String key, double wh) throws IOException {
    number(key, wh / 1000.0);
  }

  private void number(String key, double value) throws IOException {
    json.writeNumberField(key, rounded(value));
  }

  /** To a millionth: a thousandth of a Wh. */
  static double rounded(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }
}
