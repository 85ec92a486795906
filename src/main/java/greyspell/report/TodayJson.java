package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.operate.Outlook;
import greyspell.operate.Today;
import java.io.IOException;
import java.io.StringWriter;

/** The days ahead for other programs; docs/living.md defines the keys. */
public final class TodayJson {
  private TodayJson() {}

  public static String text(Today today) throws IOException {
    var out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeNumberField("format", 1);
      json.writeStringField("home", today.home().name());
      json.writeStringField("at", today.at().withMinute(0).withSecond(0).withNano(0).toString());
      json.writeNumberField("charge_pct", today.chargeShare() * 100.0);
      json.writeNumberField("above_reserve_kwh", today.aboveReserveWh() / 1000.0);
      json.writeNumberField("days", today.days());
      json.writeStringField("sky", today.sky());
      json.writeNumberField("years", today.years());
      outlook(json, "everything", today.all());
      outlook(json, "without_what_can_wait", today.withoutWaiting());
      outlook(json, "only_what_must_run", today.mustRun());
      json.writeArrayFieldStart("switched_off");
      for (Today.Off off : today.offs()) {
        json.writeStartObject();
        json.writeStringField("name", off.name());
        json.writeNumberField("kwh_a_day", off.dayWh() / 1000.0);
        outlook(json, "then", off.with());
        json.writeEndObject();
      }
      json.writeEndArray();
      engine(json, today);
      json.writeEndObject();
    }
    return out.append('\n').toString();
  }

  private static void engine(JsonGenerator json, Today today) throws IOException {
    Today.Engine engine = today.generator();
    if (engine == null) {
      json.writeNullField("generator");
      return;
    }
    json.writeObjectFieldStart("generator");
    outlook(json, "by_rule", engine.byRule());
    Integer runH = engine.runH();
    if (runH == null) {
      json.writeNullField("run_hours");
    } else {
      json.writeNumberField("run_hours", runH);
    }
    json.writeNumberField("run_fuel_l", engine.runFuelL());
    json.writeBooleanField("may_run_now", engine.mayNow());
    outlook(json, "after_run", engine.after());
    json.writeEndObject();
  }

  private static void outlook(JsonGenerator json, String name, Outlook o) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("stretches", o.stretches());
    json.writeNumberField("reached", o.reached());
    json.writeNumberField("lasts_hours_p10", o.lastsH().at(0.1));
    json.writeNumberField("lasts_hours_p50", o.lastsH().at(0.5));
    json.writeNumberField("lasts_hours_p90", o.lastsH().at(0.9));
    json.writeNumberField("unmet_kwh", o.unmetWh() / 1000.0);
    json.writeNumberField("generator_hours", o.engineH());
    json.writeNumberField("generator_fuel_l", o.fuelL());
    json.writeEndObject();
  }
}
