package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.ladder.Bar;
import greyspell.ladder.Ladder;
import greyspell.ladder.Rung;
import greyspell.ladder.Step;
import greyspell.ladder.Tried;
import greyspell.ladder.Turn;
import greyspell.sizing.LifeCycleCost;
import greyspell.study.BankLife;
import greyspell.study.Trial;
import greyspell.study.Unmet;
import java.io.IOException;
import java.io.StringWriter;
import org.jspecify.annotations.Nullable;

/** The ladder for other programs; docs/ladder.md defines the keys. */
public final class LadderJson {
  private final JsonGenerator json;

  private LadderJson(JsonGenerator json) {
    this.json = json;
  }

  public static String text(Ladder ladder) throws IOException {
    var out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      new LadderJson(json).write(ladder);
    }
    return out.append('\n').toString();
  }

  private void write(Ladder ladder) throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", 1);
    json.writeStringField("home", ladder.present().scenario().name());
    json.writeStringField("currency", ladder.present().scenario().costs().currency());
    json.writeNumberField("years", ladder.years());
    trial("present", ladder.present());
    trial("top", ladder.top());
    json.writeArrayFieldStart("rungs");
    for (Rung rung : ladder.rungs()) {
      rung(rung);
    }
    json.writeEndArray();
    json.writeStringField("end", ladder.end());
    json.writeArrayFieldStart("unpriced");
    for (Tried tried : ladder.unpriced()) {
      json.writeStartObject();
      tried(tried);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("missing_prices");
    for (String key : ladder.missingPrices()) {
      json.writeString(key);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("refused");
    for (Ladder.Refused refused : ladder.refused()) {
      json.writeStartObject();
      json.writeStringField("step", refused.step().words());
      json.writeStringField("reason", refused.reason());
      json.writeEndObject();
    }
    json.writeEndArray();
    number("fuel_cost_per_kwh", ladder.fuelCostPerKwh());
    json.writeNumberField("standby_kwh", ladder.standbyWh() / 1000.0);
    life("present_bank", ladder.presentLife());
    life("top_bank", ladder.topLife());
    cost("present_cost", ladder.presentCost());
    cost("top_cost", ladder.topCost());
    bars(ladder);
    json.writeEndObject();
  }

  private void rung(Rung rung) throws IOException {
    json.writeStartObject();
    tried(rung.tried());
    number("cost_per_kwh", rung.costPerKwh());
    number("cost_per_unmet_hour", rung.costPerUnmetHour());
    json.writeArrayFieldStart("ties");
    for (String tie : rung.ties()) {
      json.writeString(tie);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("flips");
    for (Turn flip : rung.flips()) {
      turn(flip);
    }
    json.writeEndArray();
    json.writeFieldName("first_up_to");
    if (rung.upTo() == null) {
      json.writeNull();
    } else {
      turn(rung.upTo());
    }
    json.writeEndObject();
  }

  private void turn(Turn turn) throws IOException {
    json.writeStartObject();
    json.writeStringField("step", turn.tried().step().words());
    json.writeStringField("key", turn.price().key());
    number("price", turn.isPossible() ? turn.cost() : null);
    number("stated_price", turn.price().cost());
    json.writeArrayFieldStart("with");
    for (String key : turn.alsoMissing()) {
      json.writeString(key);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void life(String name, BankLife life) throws IOException {
    json.writeObjectFieldStart(name);
    number("years_left", life.leftYears());
    number("years_new", life.newYears());
    json.writeEndObject();
  }

  private void tried(Tried tried) throws IOException {
    Step step = tried.step();
    json.writeStringField("step", step.words());
    json.writeStringField("kind", step.kind().name().toLowerCase(java.util.Locale.ROOT));
    number("once_cost", step.onceCost());
    json.writeArrayFieldStart("changes");
    for (Step.Change change : step.changes()) {
      json.writeStartObject();
      json.writeStringField("key", change.path());
      json.writeStringField("value", change.value());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("overloaded_wires", tried.wires());
    json.writeNumberField("avoided_kwh", tried.avoidedWh() / 1000.0);
    trial("before", tried.before());
    trial("after", tried.after());
  }

  private void trial(String name, Trial trial) throws IOException {
    json.writeObjectFieldStart(name);
    unmet(trial.unmet());
    json.writeNumberField("winters", trial.winters().size());
    json.writeNumberField("dark_winters", trial.darkWinters());
    json.writeArrayFieldStart("unmet_hours_by_winter");
    for (var winter : trial.winters()) {
      json.writeNumber(winter.figures().unmetHours());
    }
    json.writeEndArray();
    json.writeNumberField("generator_hours", trial.generatorHours());
    json.writeNumberField("generator_fuel_l", trial.fuelL());
    json.writeEndObject();
  }

  private void unmet(Unmet unmet) throws IOException {
    json.writeNumberField("unmet_kwh", unmet.wh() / 1000.0);
    json.writeNumberField("unmet_hours", unmet.unmetHours());
    json.writeNumberField("generator_kwh", unmet.generatorWh() / 1000.0);
  }

  private void cost(String name, @Nullable LifeCycleCost cost) throws IOException {
    if (cost == null) {
      json.writeNullField(name);
      return;
    }
    json.writeObjectFieldStart(name);
    json.writeNumberField("steps", cost.onceCost());
    json.writeNumberField("new_banks", cost.replacementCost());
    json.writeNumberField("fuel", cost.fuelCost());
    json.writeNumberField("wear", cost.wearCost());
    json.writeNumberField("upkeep", cost.upkeepCost());
    json.writeNumberField("total", cost.totalCost());
    json.writeEndObject();
  }

  private void bars(Ladder ladder) throws IOException {
    json.writeArrayFieldStart("bars");
    for (Bar bar : ladder.bars()) {
      json.writeStartObject();
      json.writeStringField("assumption", bar.what());
      end("low", bar.lowWords(), bar.low(), bar.firstLow());
      end("high", bar.highWords(), bar.high(), bar.firstHigh());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void end(String name, String words, Unmet unmet, String first) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("value", words);
    unmet(unmet);
    json.writeStringField("first_buy", first);
    json.writeEndObject();
  }

  private void number(String name, @Nullable Double value) throws IOException {
    if (value == null) {
      json.writeNullField(name);
    } else {
      json.writeNumberField(name, value);
    }
  }
}
