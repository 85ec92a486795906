package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.electrical.Finding;
import greyspell.electrical.LocalCode;
import greyspell.study.ElectricalCheck;
import java.io.IOException;
import java.io.StringWriter;

/** The electrical check for other programs; docs/results.md says what every key means. */
public final class CheckJson {
  private CheckJson() {}

  /** By itself, without a simulated year. */
  public static String text(String home, ElectricalCheck check) throws IOException {
    var out = new StringWriter();
    try (var json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeNumberField("format", ResultsJson.FORMAT);
      json.writeStringField("name", home);
      write(json, check);
      json.writeEndObject();
    }
    return out.append('\n').toString();
  }

  /** The field {@code electrical}. */
  static void write(JsonGenerator json, ElectricalCheck check) throws IOException {
    json.writeObjectFieldStart("electrical");
    json.writeStringField("verdict", check.worst().word());
    json.writeArrayFieldStart("findings");
    for (ElectricalCheck.Group group : check.groups()) {
      for (Finding f : group.findings()) {
        json.writeStartObject();
        json.writeStringField("group", group.title());
        json.writeStringField("verdict", f.severity().word());
        json.writeStringField("subject", f.subject());
        json.writeStringField("text", f.text());
        json.writeStringField("reason", f.reason());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
    json.writeArrayFieldStart("conductors");
    for (ElectricalCheck.Run run : check.runs()) {
      json.writeStartObject();
      json.writeStringField("run", run.judged().run().name());
      json.writeStringField("verdict", run.judged().verdict().word());
      json.writeNumberField(
          "drop_pct", ResultsJson.rounded(run.judged().stated().dropShare() * 100.0));
      if (run.judged().load().isSimulated()) {
        json.writeNumberField("lost_kwh_per_year", ResultsJson.rounded(run.yearLossWh() / 1000.0));
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("governs", LocalCode.GOVERNS);
    json.writeEndObject();
  }
}
