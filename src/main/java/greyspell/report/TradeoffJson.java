package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.chart.TradeoffSay;
import greyspell.study.ExchangeRate;
import greyspell.study.OtherWay;
import greyspell.study.SunAndStore;
import greyspell.study.Tradeoff;
import greyspell.study.TradeoffAxes;
import greyspell.study.TradeoffMap;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;

/** Panels against storage for other programs; the keys stand in docs/tradeoff.md. */
public final class TradeoffJson {
  private static final int FORMAT = 1;

  private final Tradeoff t;
  private final JsonGenerator json;

  private TradeoffJson(Tradeoff t, JsonGenerator json) {
    this.t = t;
    this.json = json;
  }

  public static String text(Tradeoff t) throws IOException {
    var out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      new TradeoffJson(t, json).write();
    }
    return out.append('\n').toString();
  }

  private void write() throws IOException {
    TradeoffMap map = t.map();
    TradeoffAxes axes = map.axes();
    json.writeStartObject();
    json.writeNumberField("format", FORMAT);
    json.writeStringField("home", t.home().name());
    json.writeNumberField("years", t.years());
    json.writeNumberField("winters", t.winters().size());
    json.writeStringField("way", map.way().name().toLowerCase(Locale.ROOT));
    json.writeStringField("finding", TradeoffSay.exchange(t));
    json.writeFieldName("present");
    point(axes.presentPanels(), axes.presentBank());
    exchange();
    sun();
    json.writeObjectFieldStart("helps_more");
    json.writeBooleanField("is_for_the_same_money", t.helps().isPerMoney());
    Double controller = t.controllerCostBelow();
    if (controller == null) {
      json.writeNullField("controller_price_below");
    } else {
      json.writeNumberField("controller_price_below", controller);
    }
    json.writeStringField("present", word(t.helps().present()));
    if (t.helps().flipsAtModules() > 0) {
      json.writeNumberField("flips_at_modules", t.helps().flipsAtModules());
      json.writeStringField("after_more_modules", word(t.helps().afterMoreModules()));
    }
    if (t.helps().flipsAtStorageWh() > 0.0) {
      json.writeNumberField("flips_at_bank_kwh", t.helps().flipsAtStorageWh() / 1000.0);
      json.writeStringField("after_more_storage", word(t.helps().afterMoreStorage()));
    }
    json.writeEndObject();
    json.writeNumberField("target_unmet_hours_per_year", t.asked().targetHours());
    json.writeArrayFieldStart("frontier");
    for (int i = 0; i < map.panels(); i++) {
      if (t.frontier().get(i) >= 0) {
        point(i, t.frontier().get(i));
      }
    }
    json.writeEndArray();
    int cheapest = t.cheapestPanels();
    if (cheapest >= 0) {
      json.writeFieldName("cheapest");
      point(cheapest, t.frontier().get(cheapest));
    }
    others();
    json.writeStringField("panels_end", axes.end());
    json.writeArrayFieldStart("map");
    for (int i = 0; i < map.panels(); i++) {
      for (int j = 0; j < map.banks(); j++) {
        point(i, j);
      }
    }
    json.writeEndArray();
    json.writeArrayFieldStart("notes");
    for (String note : t.notes()) {
      json.writeString(note);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private void point(int panel, int bank) throws IOException {
    TradeoffMap map = t.map();
    TradeoffAxes axes = map.axes();
    json.writeStartObject();
    json.writeNumberField("modules", axes.modules(panel));
    json.writeNumberField("panels_kw", axes.ratedW(panel) / 1000.0);
    json.writeNumberField("controllers", axes.panels().get(panel).controllers());
    json.writeNumberField("bank_kwh", axes.storageWh(bank) / 1000.0);
    json.writeNumberField("packs", axes.storageWh(bank) / axes.packWh());
    json.writeNumberField("unmet_hours_per_year", map.unmetHours(panel, bank));
    json.writeNumberField("unmet_kwh_per_year", map.unmetWh(panel, bank) / 1000.0);
    json.writeNumberField("generator_hours_per_year", map.generatorHours(panel, bank));
    json.writeNumberField("fuel_l_per_year", map.fuelL(panel, bank));
    if (t.costs().isKnown()) {
      json.writeNumberField("extra_cost", t.costs().extraCost(panel, bank));
    }
    json.writeBooleanField("is_allowed", t.isAllowed(panel, bank));
    json.writeStringField("helps_more", word(t.helps().zone(panel, bank)));
    json.writeEndObject();
  }

  private void exchange() throws IOException {
    ExchangeRate r = t.rate();
    json.writeObjectFieldStart("exchange");
    json.writeNumberField("string_modules", r.stringModules());
    json.writeBooleanField("is_string_buildable", r.isStringBuildable());
    json.writeNumberField("string_saves_kwh_per_year", r.stringSavesWh() / 1000.0);
    json.writeNumberField("pack_kwh", r.packWh() / 1000.0);
    json.writeNumberField("pack_saves_kwh_per_year", r.packSavesWh() / 1000.0);
    number("string_worth_bank_kwh", r.stringWorthWh() / 1000.0);
    number("pack_worth_modules", r.packWorthModules());
    json.writeNumberField("panels_help_to_modules", r.panelsHelpTo());
    json.writeNumberField("storage_helps_to_kwh", r.storageHelpsToWh() / 1000.0);
    json.writeNumberField("least_that_counts_kwh", r.leastThatCountsWh() / 1000.0);
    json.writeNumberField("string_saves_generator_hours", r.stringSavesHours());
    json.writeNumberField("string_saves_fuel_l", r.stringSavesL());
    json.writeNumberField("pack_saves_generator_hours", r.packSavesHours());
    json.writeNumberField("pack_saves_fuel_l", r.packSavesL());
    json.writeEndObject();
  }

  /** Null for more than the map holds. */
  private void number(String name, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumberField(name, value);
    } else {
      json.writeNullField(name);
    }
  }

  private void sun() throws IOException {
    SunAndStore sun = t.sun();
    json.writeObjectFieldStart("leanest_month");
    json.writeNumberField("month", sun.month());
    json.writeNumberField("supply_over_need", sun.supplyPerNeedShare());
    json.writeNumberField("need_kwh_per_day", sun.needWhPerDay() / 1000.0);
    json.writeNumberField("storage_days", sun.storageDays());
    json.writeEndObject();
  }

  private void others() throws IOException {
    json.writeArrayFieldStart("other_ways");
    for (OtherWay way : t.others()) {
      json.writeStartObject();
      json.writeStringField("name", way.name());
      json.writeNumberField("unmet_kwh_per_year", way.unmetWh() / 1000.0);
      json.writeNumberField("saves_kwh_per_year", way.savesWh() / 1000.0);
      number("worth_bank_kwh", way.worthWh() / 1000.0);
      json.writeNumberField("saves_generator_hours", way.savesHours());
      json.writeNumberField("saves_fuel_l", way.savesL());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
