package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.study.Effects;
import greyspell.study.Effects.LeftOut;
import greyspell.study.Unmet;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;

/** What each effect is worth, for other programs. */
public final class EffectsJson {
  private EffectsJson() {}

  public static String text(List<Effects> homes) throws IOException {
    var out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartArray();
      for (Effects effects : homes) {
        json.writeStartObject();
        json.writeStringField("home", effects.home());
        unmet(json, "with_everything", effects.whole());
        json.writeObjectFieldStart("without");
        for (LeftOut l : effects.left()) {
          unmet(json, l.effect().key(), l.unmet());
        }
        json.writeEndObject();
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    return out.append('\n').toString();
  }

  private static void unmet(JsonGenerator json, String name, Unmet unmet) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("unmet_kwh_per_year", unmet.wh() / 1000.0);
    json.writeNumberField("unmet_hours_per_year", unmet.unmetHours());
    json.writeNumberField("shed_kwh_per_year", unmet.letGoWh() / 1000.0);
    json.writeNumberField("generator_kwh_per_year", unmet.generatorWh() / 1000.0);
    json.writeEndObject();
  }
}
