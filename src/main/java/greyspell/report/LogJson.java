package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.cause.log.BankFit;
import greyspell.cause.log.ClockFit;
import greyspell.cause.log.Estimate;
import greyspell.cause.log.Finding;
import greyspell.cause.log.HourOfDay;
import greyspell.cause.log.Shade;
import greyspell.cause.log.SunFit;
import greyspell.study.LogCoverage;
import greyspell.study.LogStudy;
import greyspell.study.LogStudy.Explained;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;

/** What a log says, for other programs; docs/compare.md says what every key means. */
public final class LogJson {
  private final LogStudy study;
  private final JsonGenerator json;

  private LogJson(LogStudy study, JsonGenerator json) {
    this.study = study;
    this.json = json;
  }

  public static String text(LogStudy study) throws IOException {
    var out = new StringWriter();
    try (var json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      new LogJson(study, json).write();
    }
    return out.append('\n').toString();
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", ResultsJson.FORMAT);
    json.writeStringField("name", study.home().name());
    coverage(study.coverage());
    json.writeBooleanField("same_weather", study.hasWeather());
    clock();
    findings();
    shade();
    sunHours();
    BankFit bank = study.diagnosis().bank();
    if (bank != null) {
      estimate("meter_drift_per_day", bank.driftPerDayShare());
    }
    explained();
    byHour();
    json.writeArrayFieldStart("scenario_lines");
    for (String line : new LogKeys(study).lines()) {
      json.writeString(line);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cautions");
    for (String caution : study.cautions()) {
      json.writeString(caution);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void number(String name, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumberField(name, ResultsJson.rounded(value));
    } else {
      json.writeNullField(name);
    }
  }

  private void coverage(LogCoverage c) throws IOException {
    json.writeObjectFieldStart("log");
    json.writeStringField("first_day", c.first().toString());
    json.writeStringField("last_day", c.last().toString());
    json.writeNumberField("hours", c.hours());
    json.writeNumberField("holes", c.gaps());
    json.writeNumberField("hole_hours", c.gapHours());
    json.writeNumberField("longest_hole_hours", c.longestGapHours());
    json.writeNumberField("charge_missing_hours", c.chargeMissingHours());
    json.writeNumberField("solar_missing_hours", c.solarMissingHours());
    json.writeNumberField("load_missing_hours", c.loadMissingHours());
    json.writeNumberField("lights_out_hours", study.diagnosis().lightsOut().hours());
    json.writeEndObject();
  }

  private void clock() throws IOException {
    ClockFit clock = study.clock();
    json.writeObjectFieldStart("clock");
    json.writeNumberField("corrected_minutes", study.shiftMinutes());
    if (clock != null) {
      estimate("shift_h", clock.shiftH());
      json.writeBooleanField("jumps", clock.jumps());
      number("match_correlation", clock.matchCorrelation());
    }
    json.writeEndObject();
  }

  private void estimate(String name, Estimate e) throws IOException {
    json.writeObjectFieldStart(name);
    fields(e);
    json.writeEndObject();
  }

  private void fields(Estimate e) throws IOException {
    number("value", e.value());
    number("low", e.low());
    number("high", e.high());
    json.writeNumberField("hours", e.hours());
    json.writeNumberField("days", e.days());
    if (!e.isKnown()) {
      json.writeStringField("why_not", e.whyNot());
    }
  }

  private void findings() throws IOException {
    json.writeArrayFieldStart("findings");
    for (Finding finding : study.diagnosis().findings()) {
      json.writeStartObject();
      json.writeStringField("about", finding.about().name().toLowerCase(Locale.ROOT));
      number("assumed", finding.about().assumed());
      fields(finding.estimate());
      json.writeBooleanField("differs", finding.isNamed());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void shade() throws IOException {
    SunFit sun = study.diagnosis().sun();
    Shade shade = sun == null ? null : sun.shade();
    if (shade == null) {
      return;
    }
    json.writeObjectFieldStart("shade");
    json.writeNumberField("from_hour", shade.fromHour());
    json.writeNumberField("to_hour", shade.toHour());
    number("clear_factor", shade.clearFactor());
    json.writeNumberField("clear_hours", shade.clearHours());
    LogStudy.SunStands stands = study.shadeSun();
    if (stands != null) {
      number("sun_from_azimuth_deg", stands.fromAzimuthDeg());
      number("sun_to_azimuth_deg", stands.toAzimuthDeg());
      number("sun_highest_deg", stands.highestDeg());
    }
    json.writeEndObject();
  }

  private void sunHours() throws IOException {
    SunFit sun = study.diagnosis().sun();
    if (sun == null) {
      return;
    }
    json.writeObjectFieldStart("sunlit_hours");
    json.writeNumberField("read", sun.left().read());
    json.writeNumberField("nearly_full", sun.left().full());
    json.writeNumberField("at_limit", sun.left().atLimit());
    json.writeNumberField("held_back", sun.left().heldBack());
    json.writeNumberField("not_in_log", sun.left().unknown());
    json.writeNumberField("covered_days", sun.left().coveredDays());
    json.writeEndObject();
  }

  private void explained() throws IOException {
    if (Double.isNaN(study.chargeErrorShare())) {
      return;
    }
    json.writeObjectFieldStart("charge_error_pct");
    number("as_the_scenario", 100.0 * study.chargeErrorShare());
    for (Explained one : study.alone()) {
      String name =
          one.about().isEmpty()
              ? "load_as_seen"
              : one.about().get(0).name().toLowerCase(Locale.ROOT);
      number(name, 100.0 * one.chargeErrorShare());
    }
    Explained all = study.together();
    if (all != null) {
      number("all_together", 100.0 * all.chargeErrorShare());
    }
    json.writeEndObject();
  }

  private void byHour() throws IOException {
    json.writeArrayFieldStart("by_hour");
    for (HourOfDay hour : study.diagnosis().byHour()) {
      json.writeStartObject();
      json.writeNumberField("hour", hour.hour());
      number("clear_solar_factor", hour.clearSolarFactor());
      json.writeNumberField("clear_hours", hour.clearHours());
      number("seen_load_w", hour.seenLoadW());
      number("expected_load_w", hour.expectedLoadW());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
