package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Set;

/** The rows of a sweep for other programs: the columns of the table as keys. */
public final class SweepJson {
  private static final int FORMAT = 1;

  private static final Set<String> WORDS =
      Set.of("worst_winter", "strings", "checks", SweepTable.FAULT);

  private SweepJson() {}

  /**
   * The table for other programs.
   *
   * @param rows as they stand in the table
   */
  public static String text(List<String> columns, List<List<String>> rows) throws IOException {
    var out = new StringWriter();
    int firstFigure = columns.size() - SweepTable.FIGURES.size();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeNumberField("format", FORMAT);
      json.writeArrayFieldStart("rows");
      for (List<String> row : rows) {
        json.writeStartObject();
        for (int k = 0; k < row.size(); k++) {
          if (!row.get(k).isEmpty()) {
            field(json, columns.get(k), row.get(k), k >= firstFigure);
          }
        }
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return out.append('\n').toString();
  }

  private static void field(JsonGenerator json, String name, String cell, boolean isFigure)
      throws IOException {
    json.writeFieldName(name);
    if (isFigure && !WORDS.contains(name)) {
      json.writeNumber(cell);
    } else {
      json.writeString(cell);
    }
  }
}
