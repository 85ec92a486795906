package greyspell.scenario;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import greyspell.quantity.Dimension;
import greyspell.quantity.Unit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Writes the reference page and the JSON Schema from the declarations of the keys. */
final class ScenarioDocs {
  private static final String NUMBER = "[-+\u2212]?[0-9]*[.,]?[0-9]+([eE][-+]?[0-9]+)?";
  private static final String SPAN = "[0-9]{1,2}:[0-9]{2}\\s*-\\s*[0-9]{1,2}:[0-9]{2}";
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final Set<Key.Kind> MAY_BE =
      EnumSet.of(
          Key.Kind.BLOCK,
          Key.Kind.LIST,
          Key.Kind.TEXT,
          Key.Kind.PATH,
          Key.Kind.PATHS,
          Key.Kind.WHOLE);

  private ScenarioDocs() {}

  // ---- schema -----------------------------------------------------------------------------------

  static ObjectNode schemaTree() {
    ObjectNode root = JSON.createObjectNode();
    root.put("$schema", "http://json-schema.org/draft-07/schema#");
    root.put("title", "A greyspell scenario");
    root.put(
        "description",
        "Generated from the declarations that the reader uses; see scenario-reference.md.");
    root.setAll(object(Vocabulary.SCENARIO));
    ObjectNode definitions = root.putObject("definitions");
    for (Shape shape : Vocabulary.shapes()) {
      if (!shape.equals(Vocabulary.SCENARIO)) {
        definitions.set(shape.name(), definition(shape));
      }
    }
    return root;
  }

  static String schema() {
    var printer = new DefaultPrettyPrinter();
    var indenter = new DefaultIndenter("  ", "\n");
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    try {
      return JSON.writer(printer).writeValueAsString(schemaTree()) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static ObjectNode definition(Shape shape) {
    Key shortKey = shape.shortKey();
    if (shortKey == null) {
      return object(shape);
    }
    ObjectNode either = JSON.createObjectNode();
    either.put("description", shape.meaning());
    either.putArray("anyOf").add(value(shortKey)).add(object(shape));
    return either;
  }

  private static ObjectNode object(Shape shape) {
    ObjectNode node = JSON.createObjectNode();
    node.put("description", shape.meaning());
    node.put("type", "object");
    ObjectNode properties = node.putObject("properties");
    ArrayNode required = JSON.createArrayNode();
    for (Key key : shape.keys()) {
      properties.set(key.name, described(key));
      if (key.need == Key.Need.REQUIRED) {
        required.add(key.name);
      }
    }
    if (shape.isEquipment()) {
      ArrayNode either = node.putArray("anyOf");
      either.addObject().putArray("required").add(ArrayKeys.FROM.name);
      either.addObject().set("required", required);
    } else if (!required.isEmpty()) {
      node.set("required", required);
    }
    node.put("additionalProperties", false);
    return node;
  }

  private static ObjectNode described(Key key) {
    ObjectNode node = value(key);
    if (!node.has("$ref")) {
      node.put("description", key.meaning + defaultWords(key));
    }
    return node;
  }

  private static String defaultWords(Key key) {
    return key.need == Key.Need.DEFAULT && !key.usual.isEmpty()
        ? " Left out: " + key.usual + "."
        : "";
  }

  private static ObjectNode value(Key key) {
    ObjectNode node = JSON.createObjectNode();
    switch (key.kind) {
      case MEASURE -> measure(node, key.dimensions, key);
      case MONTHLY -> {
        ArrayNode either = node.putArray("anyOf");
        either.add(measure(JSON.createObjectNode(), key.dimensions, key));
        list(either.addObject(), 12, 12)
            .set("items", measure(JSON.createObjectNode(), key.dimensions, key));
      }
      case WHOLE -> {
        node.put("type", "integer");
        node.put("minimum", (long) key.low);
        node.put("maximum", (long) key.high);
      }
      case TEXT -> node.putArray("type").add("string").add("number");
      case PATH -> node.put("type", "string");
      case PATHS -> {
        ArrayNode either = node.putArray("anyOf");
        either.addObject().put("type", "string");
        list(either.addObject(), 1, 0).putObject("items").put("type", "string");
      }
      case WORD -> {
        ArrayNode words = node.putArray("enum");
        key.words.forEach(words::add);
      }
      case FLAG -> node.putArray("enum").add(true).add(false).add("yes").add("no");
      case AZIMUTH -> {
        ArrayNode either = node.putArray("anyOf");
        ArrayNode words = either.addObject().putArray("enum");
        Compass.WORDS.forEach(words::add);
        either.add(pattern(JSON.createObjectNode(), NUMBER + "\\s*" + units(Dimension.ANGLE)));
        pattern(either.addObject(), "(north|south)(-(east|west))?|east|west");
      }
      case HORIZON -> {
        ArrayNode either = node.putArray("anyOf");
        either.addObject().putArray("enum").add(key.usual);
        ObjectNode height = measure(JSON.createObjectNode(), bareAngle(), key);
        ObjectNode map = either.addObject();
        map.put("type", "object");
        map.set("additionalProperties", height);
        list(list(either.addObject(), 0, 0).putObject("items"), 2, 2);
      }
      case CURVE -> {
        ArrayNode either = node.putArray("anyOf");
        ArrayNode pair = JSON.createArrayNode();
        pair.add(measure(JSON.createObjectNode(), key.dimensions.subList(0, 1), null));
        pair.add(measure(JSON.createObjectNode(), key.dimensions.subList(1, 2), null));
        list(list(either.addObject(), 1, 0).putObject("items"), 2, 2).set("items", pair);
        if (key.dimensions.get(0) == Dimension.SHARE) {
          either.add(measure(JSON.createObjectNode(), key.dimensions.subList(1, 2), null));
        }
      }
      case HOURS -> words(node, SPAN);
      case DAYS, MONTHS, MONTH_SPANS -> {
        words(node, "[A-Za-z]{3,9}(\\s*-\\s*[A-Za-z]{3,9})?");
        if (key.kind == Key.Kind.MONTHS) {
          list(((ArrayNode) node.get("anyOf")).addObject(), 12, 12)
              .set(
                  "items",
                  measure(
                      JSON.createObjectNode(),
                      ApplianceKeys.MONTH_FACTOR.dimensions,
                      ApplianceKeys.MONTH_FACTOR));
        }
      }
      case WHEN -> pattern(node, WHEN);
      case START -> {
        ArrayNode either = node.putArray("anyOf");
        either.addObject().putArray("enum").add(key.usual);
        either.add(measure(JSON.createObjectNode(), List.of(Dimension.SHARE), null));
      }
      case BLOCK -> node.put("$ref", "#/definitions/" + Block.shapeOf(key).name());
      case LIST ->
          list(node, key.need == Key.Need.REQUIRED ? 1 : 0, 0)
              .putObject("items")
              .put("$ref", "#/definitions/" + Block.shapeOf(key).name());
    }
    return node;
  }

  private static List<Dimension> bareAngle() {
    return List.of(Dimension.ANGLE, Dimension.NUMBER);
  }

  /** A text with a unit; where a plain number is understood, that too, within its range. */
  private static ObjectNode measure(
      ObjectNode node, List<Dimension> dimensions, @org.jspecify.annotations.Nullable Key key) {
    var alternatives = new ArrayList<String>();
    for (Dimension dimension : dimensions) {
      if (dimension != Dimension.NUMBER) {
        alternatives.add(units(dimension));
      }
    }
    String text = NUMBER + "\\s*(" + String.join("|", alternatives) + ")";
    if (!dimensions.contains(Dimension.NUMBER)) {
      return pattern(node, text);
    }
    ArrayNode either = node.putArray("anyOf");
    ObjectNode number = either.addObject().put("type", "number");
    if (key != null && key.isRanged()) {
      number.put("minimum", key.low).put("maximum", key.high);
    }
    if (!alternatives.isEmpty()) {
      pattern(either.addObject(), text);
    }
    return node;
  }

  private static final String WHEN =
      "(below|above)\\s+"
          + NUMBER
          + "\\s*"
          + units(Dimension.TEMPERATURE)
          + "|days\\s+(shorter|longer)\\s+than\\s+"
          + NUMBER
          + "\\s*"
          + units(Dimension.DURATION);

  private static String units(Dimension dimension) {
    var spellings = new ArrayList<String>();
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == dimension) {
        for (String spelling : unit.spellings()) {
          spellings.add(spelling.replaceAll("([()./*+?^$|\\[\\]])", "\\\\$1"));
        }
      }
    }
    return "(" + String.join("|", spellings) + ")";
  }

  private static ObjectNode pattern(ObjectNode node, String pattern) {
    return node.put("type", "string").put("pattern", "^\\s*(" + pattern + ")\\s*$");
  }

  private static void words(ObjectNode node, String word) {
    ArrayNode either = node.putArray("anyOf");
    pattern(either.addObject(), word + "(\\s*,\\s*" + word + ")*");
    pattern(list(either.addObject(), 1, 0).putObject("items"), word);
  }

  private static ObjectNode list(ObjectNode node, int least, int most) {
    node.put("type", "array");
    if (least > 0) {
      node.put("minItems", least);
    }
    if (most > 0) {
      node.put("maxItems", most);
    }
    return node;
  }

  // ---- reference page ---------------------------------------------------------------------------

  static String reference() {
    var out = new StringBuilder();
    out.append(TestFolder.resource("reference-head.md"));
    for (Shape shape : Vocabulary.shapes()) {
      out.append("\n## ").append(shape.name()).append("\n\n").append(shape.meaning());
      Key shortKey = shape.shortKey();
      if (shape.isEquipment()) {
        out.append(" A bare name stands for `from:`, an entry of `shared/")
            .append(shape.library())
            .append("`.");
      } else if (shortKey != null) {
        out.append(" A bare value stands for `").append(shortKey.name).append(":`.");
      }
      out.append("\n\n| key | holds | range | left out | meaning |\n|---|---|---|---|---|\n");
      for (Key key : shape.keys()) {
        out.append("| `")
            .append(key.name)
            .append("` | ")
            .append(holds(key))
            .append(" | ")
            .append(range(key))
            .append(" | ")
            .append(leftOut(key))
            .append(" | ")
            .append(key.meaning)
            .append(" |\n");
      }
    }
    out.append("\n## Units\n\n| quantity | units that are read |\n|---|---|\n");
    for (Dimension dimension : Dimension.values()) {
      var symbols = new ArrayList<String>();
      for (Unit unit : Unit.values()) {
        if (unit.dimension() == dimension && !unit.symbol().isEmpty()) {
          if (!unit.symbol().startsWith("of 1")) {
            symbols.add("`" + unit.symbol() + "`");
          }
        }
      }
      if (!symbols.isEmpty()) {
        out.append("| ")
            .append(dimension.words())
            .append(" | ")
            .append(String.join(", ", symbols))
            .append(" |\n");
      }
    }
    return out.toString();
  }

  private static String holds(Key key) {
    return switch (key.kind) {
      case MEASURE -> dimensions(key);
      case MONTHLY -> dimensions(key) + ", or twelve";
      case WHOLE -> "a whole number";
      case TEXT -> "words";
      case PATH -> "the path of a file";
      case PATHS -> "the path of a file, or a list of them";
      case WORD -> "`" + String.join("`, `", key.words) + "`";
      case FLAG -> "`yes` or `no`";
      case AZIMUTH -> "an angle or a compass word";
      case HORIZON -> "directions with heights";
      case CURVE ->
          "pairs of " + key.dimensions.get(0).words() + " and " + key.dimensions.get(1).words();
      case HOURS -> "spans of the day";
      case DAYS -> "days";
      case MONTHS -> "months, or twelve factors";
      case MONTH_SPANS -> "months";
      case WHEN -> "a temperature or a day length";
      case START -> "`steady` or a share";
      case BLOCK ->
          "a block: [" + Block.shapeOf(key).name() + "](#" + Block.shapeOf(key).name() + ")";
      case LIST ->
          "a list of [" + Block.shapeOf(key).name() + "](#" + Block.shapeOf(key).name() + ")";
    };
  }

  private static String dimensions(Key key) {
    var words = new ArrayList<String>();
    for (Dimension dimension : key.dimensions) {
      words.add(dimension.words() + " (`" + dimension.example() + "`)");
    }
    return String.join(" or ", words);
  }

  private static String range(Key key) {
    if (!key.isRanged()) {
      return "";
    }
    if (key.kind == Key.Kind.WHOLE) {
      return (long) key.low + " to " + (long) key.high;
    }
    Unit unit =
        switch (key.kind) {
          case AZIMUTH, HORIZON -> Unit.DEGREE;
          case MONTHS -> Unit.ONE;
          case START -> Unit.PERCENT;
          default ->
              peoples(
                  key.dimensions.get(
                      key.dimensions.size() > 1 && key.kind == Key.Kind.CURVE ? 1 : 0));
        };
    return WrittenValues.rangeText(key, unit).replace("must be ", "");
  }

  private static Unit peoples(Dimension dimension) {
    return switch (dimension) {
      case SHARE -> Unit.PERCENT;
      case SHARE_PER_KELVIN -> Unit.PERCENT_PER_KELVIN;
      case SHARE_PER_MONTH -> Unit.PERCENT_A_MONTH;
      default -> dimension.insideUnit();
    };
  }

  private static String leftOut(Key key) {
    return switch (key.need) {
      case REQUIRED -> "**must be there**";
      case OPTIONAL -> MAY_BE.contains(key.kind) ? "may be" : "not known";
      case DEFAULT ->
          key.usual.isEmpty()
              ? "empty"
              : key.usual + (key.why.isEmpty() ? "" : " (" + key.why + ")");
    };
  }
}
