package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.operate.RuleCard;
import greyspell.operate.RuleCard.Price;
import greyspell.operate.RuleCard.Told;
import java.io.IOException;
import java.io.StringWriter;

/** Rules for other programs; docs/living.md defines the keys. */
public final class RulesJson {
  private RulesJson() {}

  public static String text(RuleCard card) throws IOException {
    var out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeNumberField("format", 1);
      json.writeStringField("home", card.home().name());
      json.writeNumberField("winters_learnt", card.learnt().size());
      json.writeNumberField("winters_tried", card.tried().size());
      json.writeArrayFieldStart("rules");
      for (Told told : card.rules()) {
        json.writeStartObject();
        json.writeStringField("rule", told.rule().words());
        json.writeNumberField("below_pct", told.rule().belowShare() * 100.0);
        json.writeBooleanField("if_grey", told.rule().ifGrey());
        price(json, "learnt", told.learnt(), card.hasGenerator());
        price(json, "tried", told.tried(), card.hasGenerator());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return out.append('\n').toString();
  }

  private static void price(JsonGenerator json, String name, Price p, boolean hasGenerator)
      throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("unmet_kwh", p.unmetWh() / 1000.0);
    json.writeNumberField("unmet_kwh_with", p.unmetWithWh() / 1000.0);
    json.writeNumberField("unmet_hours", p.unmetHours());
    json.writeNumberField("unmet_hours_with", p.withUnmetHours());
    json.writeNumberField("given_up_kwh", p.givenUpWh() / 1000.0);
    json.writeNumberField("days", p.rulesDays());
    if (hasGenerator) {
      json.writeNumberField("fuel_l", p.fuelL());
      json.writeNumberField("fuel_l_with", p.fuelWithL());
    }
    json.writeEndObject();
  }
}
