package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.load.AlwaysOn;
import greyspell.load.LoadBook;
import greyspell.load.LogFit;
import greyspell.study.LoadAudit;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;

/** The audit of loads for other programs; docs/loads.md says what every key means. */
public final class LoadJson {
  private static final double WH_PER_KWH = 1000.0;

  private LoadJson() {}

  public static String text(LoadAudit audit) throws IOException {
    var out = new StringWriter();
    try (var json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeNumberField("format", ResultsJson.FORMAT);
      json.writeStringField("name", audit.home().name());
      kwh(json, "load_kwh_per_year", audit.yearlyWh());
      kwh(json, "low_kwh_per_year", audit.lowYearlyWh());
      kwh(json, "high_kwh_per_year", audit.highYearlyWh());
      LoadBook least = audit.leastKnown();
      json.writeStringField("least_known", least == null ? "" : least.name());
      loads(json, audit);
      profile(json, "winter_day", audit, audit.winterMonth());
      profile(json, "summer_day", audit, audit.summerMonth());
      json.writeNumberField("peak_w", ResultsJson.rounded(audit.peakW()));
      json.writeStringField("peak_at", audit.calendar().start(audit.peakHour()).toString());
      json.writeNumberField("most_hour_w", ResultsJson.rounded(audit.mostHourW()));
      json.writeObjectFieldStart("always_on");
      json.writeNumberField("mean_w", ResultsJson.rounded(audit.alwaysOnW()));
      json.writeNumberField(
          "winter_day_pct", ResultsJson.rounded(100.0 * audit.alwaysOnShare(audit.winterMonth())));
      json.writeArrayFieldStart("parts");
      parts(json, audit.system());
      parts(json, audit.alwaysOn());
      json.writeEndArray();
      json.writeEndObject();
      LogFit fit = audit.logFit();
      if (fit != null && fit.isUsable()) {
        fit(json, fit);
      }
      json.writeEndObject();
    }
    return out.append('\n').toString();
  }

  private static void loads(JsonGenerator json, LoadAudit audit) throws IOException {
    json.writeArrayFieldStart("loads");
    for (LoadBook book : audit.books()) {
      json.writeStartObject();
      json.writeStringField("name", book.name());
      json.writeStringField("priority", book.priority().name().toLowerCase(Locale.ROOT));
      json.writeStringField("evidence", book.evidence().name().toLowerCase(Locale.ROOT));
      json.writeStringField("supply", book.isDirectCurrent() ? "dc" : "ac");
      json.writeBooleanField("medical", book.isMedical());
      kwh(json, "load_kwh_per_year", book.yearlyWh());
      kwh(json, "low_kwh_per_year", book.lowYearlyWh());
      kwh(json, "high_kwh_per_year", book.highYearlyWh());
      kwh(json, "standby_kwh_per_year", book.standbyYearlyWh());
      json.writeArrayFieldStart("wh_per_day");
      for (int m = 1; m <= 12; m++) {
        json.writeNumber(ResultsJson.rounded(audit.dayWh(book, m)));
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void profile(JsonGenerator json, String name, LoadAudit audit, int month)
      throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("month", month);
    json.writeArrayFieldStart("wh");
    for (double wh : audit.profileWh(month)) {
      json.writeNumber(ResultsJson.rounded(wh));
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void parts(JsonGenerator json, AlwaysOn alwaysOn) throws IOException {
    for (AlwaysOn.Part part : alwaysOn.parts()) {
      json.writeStartObject();
      json.writeStringField("name", part.name());
      json.writeNumberField("mean_w", ResultsJson.rounded(part.meanW()));
      json.writeEndObject();
    }
  }

  private static void fit(JsonGenerator json, LogFit fit) throws IOException {
    json.writeObjectFieldStart("log_fit");
    json.writeNumberField("days", fit.days());
    json.writeNumberField("r_squared", ResultsJson.rounded(fit.rSquaredShare()));
    kwh(json, "standard_error_kwh", fit.standardErrorWh());
    json.writeArrayFieldStart("terms");
    for (LogFit.Coefficient c : fit.coefficients()) {
      json.writeStartObject();
      json.writeStringField("term", c.term().name().toLowerCase(Locale.ROOT));
      kwh(json, "value_kwh", c.valueWh());
      kwh(json, "standard_error_kwh", c.standardErrorWh());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void kwh(JsonGenerator json, String name, double wh) throws IOException {
    json.writeNumberField(name, ResultsJson.rounded(wh / WH_PER_KWH));
  }
}
