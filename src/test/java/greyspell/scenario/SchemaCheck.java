package greyspell.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** As much of JSON Schema as the scenario's schema uses; an unknown word is a fault of the test. */
final class SchemaCheck {
  private final JsonNode root;

  SchemaCheck(JsonNode root) {
    this.root = root;
  }

  /** Where the value does not fit, in words; empty if it does. */
  List<String> faults(JsonNode value) {
    var faults = new ArrayList<String>();
    check(root, value, "", faults);
    return faults;
  }

  private void check(JsonNode schema, JsonNode value, String path, List<String> faults) {
    for (var word : (Iterable<String>) schema::fieldNames) {
      JsonNode says = schema.get(word);
      switch (word) {
        case "$schema", "title", "description", "definitions" -> {}
        case "$ref" -> check(root.at(says.asText().substring(1)), value, path, faults);
        case "anyOf" -> anyOf(says, value, path, faults);
        case "type" -> fault(fits(says, value), path, "type " + says, faults);
        case "enum" -> fault(holds(says, value), path, "one of " + says, faults);
        case "pattern" ->
            fault(
                !value.isTextual() || Pattern.compile(says.asText()).matcher(value.asText()).find(),
                path,
                "pattern " + says,
                faults);
        case "minimum" ->
            fault(!value.isNumber() || value.asDouble() >= says.asDouble(), path, word, faults);
        case "maximum" ->
            fault(!value.isNumber() || value.asDouble() <= says.asDouble(), path, word, faults);
        case "minItems" ->
            fault(!value.isArray() || value.size() >= says.asInt(), path, word, faults);
        case "maxItems" ->
            fault(!value.isArray() || value.size() <= says.asInt(), path, word, faults);
        case "required" -> {
          for (JsonNode name : says) {
            fault(!value.isObject() || value.has(name.asText()), path, "needs " + name, faults);
          }
        }
        case "properties" -> {
          for (var name : (Iterable<String>) says::fieldNames) {
            if (value.has(name)) {
              check(says.get(name), value.get(name), path + "/" + name, faults);
            }
          }
        }
        case "additionalProperties" -> additional(schema, says, value, path, faults);
        case "items" -> items(says, value, path, faults);
        default -> throw new IllegalStateException("unknown word " + word + " at " + path);
      }
    }
  }

  private void anyOf(JsonNode says, JsonNode value, String path, List<String> faults) {
    var nearest = new ArrayList<String>();
    for (JsonNode one : says) {
      var own = new ArrayList<String>();
      check(one, value, path, own);
      if (own.isEmpty()) {
        return;
      }
      nearest.addAll(own);
    }
    faults.add(path + ": none of " + nearest);
  }

  private void additional(
      JsonNode schema, JsonNode says, JsonNode value, String path, List<String> faults) {
    for (var name : (Iterable<String>) value::fieldNames) {
      if (schema.path("properties").has(name)) {
        continue;
      }
      if (says.isBoolean()) {
        fault(says.asBoolean(), path, "unknown " + name, faults);
      } else {
        check(says, value.get(name), path + "/" + name, faults);
      }
    }
  }

  private void items(JsonNode says, JsonNode value, String path, List<String> faults) {
    for (int i = 0; value.isArray() && i < value.size(); i++) {
      JsonNode schema = says.isArray() ? says.path(i) : says;
      if (!schema.isMissingNode()) {
        check(schema, value.get(i), path + "/" + i, faults);
      }
    }
  }

  private static boolean fits(JsonNode type, JsonNode value) {
    if (type.isArray()) {
      for (JsonNode one : type) {
        if (fits(one, value)) {
          return true;
        }
      }
      return false;
    }
    return switch (type.asText()) {
      case "object" -> value.isObject();
      case "array" -> value.isArray();
      case "string" -> value.isTextual();
      case "number" -> value.isNumber();
      case "integer" -> value.isIntegralNumber();
      default -> throw new IllegalStateException("unknown type " + type);
    };
  }

  private static boolean holds(JsonNode words, JsonNode value) {
    for (JsonNode word : words) {
      if (word.equals(value)) {
        return true;
      }
    }
    return false;
  }

  private static void fault(boolean fits, String path, String what, List<String> faults) {
    if (!fits) {
      faults.add(path + ": " + what);
    }
  }
}
