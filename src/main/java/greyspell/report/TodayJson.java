package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.operate.EnginePlan;
import greyspell.operate.Outlook;
import greyspell.operate.Today;
import greyspell.storage.BankSpec;
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
      json.writeNumberField("held_by_cold_kwh", today.heldByColdWh() / 1000.0);
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
    json.writeBooleanField("may_run_now", engine.mayNow());
    EnginePlan plan = engine.plan();
    if (plan == null) {
      json.writeNullField("plan");
    } else {
      BankSpec bank = today.home().bank();
      double usableWh = bank.usableWh();
      json.writeObjectFieldStart("plan");
      json.writeNumberField(
          "start_below_pct", bank.monitorShare(plan.startBelowShare() * usableWh) * 100.0);
      json.writeNumberField(
          "stop_above_pct", bank.monitorShare(plan.stopAboveShare() * usableWh) * 100.0);
      json.writeBooleanField("is_enough", plan.isEnough());
      outlook(json, "then", plan.with());
      json.writeEndObject();
    }
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
    json.writeNumberField("overload_hours", o.overloadH());
    json.writeNumberField("generator_hours", o.engine().engineH());
    json.writeNumberField("generator_starts_a_day", o.engine().startsPerDay());
    json.writeNumberField("generator_fuel_l", o.engine().fuelL());
    if (o.engine().firstRunH().count() > 0) {
      json.writeNumberField("generator_first_start_hours_p50", o.engine().fromH().at(0.5));
      json.writeNumberField("generator_first_run_hours_p50", o.engine().firstRunH().at(0.5));
    }
    json.writeEndObject();
  }
}
