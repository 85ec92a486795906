package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.sizing.HandMethod;
import greyspell.sizing.Tally.OneWinter;
import greyspell.sizing.Target;
import greyspell.sizing.Target.AutonomyDays;
import greyspell.sizing.Target.DarkWinters;
import greyspell.sizing.Target.LossDays;
import greyspell.sizing.Target.UnmetHours;
import greyspell.study.CheapestByPrice;
import greyspell.study.SizeResult;
import greyspell.study.SizeResult.Point;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What size a target takes, for other programs: JSON, and the frontier as CSV. */
public final class SizeJson {
  private static final double WH_PER_KWH = 1000.0;

  private SizeJson() {}

  /**
   * The whole answer.
   *
   * @param weather which winters, a sentence
   */
  public static String text(SizeResult result, String weather, List<String> cautions)
      throws IOException {
    var out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("home", result.home().name());
      json.writeArrayFieldStart("targets");
      for (Target target : result.targets()) {
        target(json, target);
      }
      json.writeEndArray();
      json.writeStringField("weather", weather);
      json.writeNumberField("years", result.years());
      json.writeNumberField("whole_winters", result.wholeWinters());
      json.writeBooleanField("present_meets_target", result.isPresentEnough());
      point(json, "present", result.present());
      point(json, "least_bank", result.leastBank());
      point(json, "largest_bank_looked_at", result.largestBank());
      point(json, "fewest_panels", result.fewestPanels());
      point(json, "cheapest", result.cheapest());
      json.writeArrayFieldStart("frontier");
      for (Point point : result.frontier()) {
        json.writeStartObject();
        fields(json, point);
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeStringField("panels_end", result.steps().end());
      json.writeArrayFieldStart("missing_prices");
      for (String key : result.missingPrices()) {
        json.writeString(key);
      }
      json.writeEndArray();
      byPrice(json, result.byPrice());
      hand(json, result);
      json.writeBooleanField("by_sums", result.isBySums());
      json.writeNumberField("pairs_looked_at", result.tried());
      json.writeNumberField("pairs", result.possible());
      json.writeArrayFieldStart("cautions");
      for (String caution : cautions) {
        json.writeString(caution);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return out.append('\n').toString();
  }

  private static void target(JsonGenerator json, Target target) throws IOException {
    json.writeStartObject();
    if (target instanceof UnmetHours t) {
      json.writeNumberField("unmet_hours_per_year_at_most", t.mostPerYear());
    } else if (target instanceof LossDays t) {
      json.writeNumberField("loss_days_per_winter_at_most", t.mostPerWinter());
    } else if (target instanceof DarkWinters t) {
      json.writeNumberField("dark_winters_at_most", t.most());
      json.writeNumberField("dark_winters_in", t.of());
    } else if (target instanceof AutonomyDays t) {
      json.writeNumberField("autonomy_days_at_least", t.least());
    }
    json.writeEndObject();
  }

  private static void point(JsonGenerator json, String name, @Nullable Point point)
      throws IOException {
    if (point == null) {
      json.writeNullField(name);
      return;
    }
    json.writeObjectFieldStart(name);
    fields(json, point);
    json.writeArrayFieldStart("winters");
    for (OneWinter winter : point.tally().winters()) {
      json.writeStartObject();
      json.writeStringField("name", winter.name());
      json.writeNumberField("unmet_hours", winter.unmetHours());
      json.writeNumberField("loss_days", winter.lossDays());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void fields(JsonGenerator json, Point point) throws IOException {
    Integer packs = point.packs();
    Double cost = point.cost();
    json.writeNumberField("modules", point.modules());
    json.writeNumberField("rated_kw", point.ratedW() / WH_PER_KWH);
    json.writeNumberField("controllers", point.controllers());
    if (packs == null) {
      json.writeNullField("packs");
    } else {
      json.writeNumberField("packs", packs);
    }
    json.writeNumberField("capacity_kwh", point.capacityWh() / WH_PER_KWH);
    json.writeNumberField("unmet_hours_per_year", point.tally().unmetHoursPerYear());
    json.writeNumberField("dark_winters", point.tally().darkWinters());
    json.writeNumberField("most_loss_days_in_a_winter", point.tally().mostLossDays());
    json.writeNumberField("generator_hours_per_year", point.tally().generatorHoursPerYear());
    if (cost == null) {
      json.writeNullField("cost");
    } else {
      json.writeNumberField("cost", cost);
    }
  }

  private static void byPrice(JsonGenerator json, @Nullable CheapestByPrice byPrice)
      throws IOException {
    if (byPrice == null) {
      json.writeNullField("cheapest_by_price");
      return;
    }
    json.writeObjectFieldStart("cheapest_by_price");
    json.writeStringField("price_of", byPrice.unknown().name().toLowerCase(Locale.ROOT));
    json.writeBooleanField("controllers_left_aside", byPrice.areControllersLeftAside());
    json.writeArrayFieldStart("ranges");
    for (CheapestByPrice.Range range : byPrice.ranges()) {
      json.writeStartObject();
      if (Double.isFinite(range.upToCost())) {
        json.writeNumberField("up_to", range.upToCost());
      } else {
        json.writeNullField("up_to");
      }
      fields(json, range.point());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void hand(JsonGenerator json, SizeResult result) throws IOException {
    HandMethod hand = result.hand();
    json.writeObjectFieldStart("by_hand");
    json.writeNumberField("month_of_greatest_need", hand.loadMonth());
    json.writeNumberField("need_ah_per_day", hand.loadAhPerDay());
    json.writeNumberField("reserve_days", hand.asked().reserveDays());
    json.writeNumberField("reserve_ah", hand.carriedAh());
    json.writeNumberField("by_depth_ah", hand.byDepthAh());
    json.writeNumberField("by_daily_depth_ah", hand.byDailyDepthAh());
    json.writeNumberField("by_end_of_life_ah", hand.byEndOfLifeAh());
    json.writeNumberField("cold_factor", hand.asked().coldFactor());
    json.writeNumberField("in_the_cold_ah", hand.inTheColdAh());
    json.writeNumberField("margin_share", hand.asked().marginShare());
    json.writeNumberField("with_margin_ah", hand.withMarginAh());
    json.writeNumberField("greatest_hour_a", hand.mostA());
    json.writeNumberField("emptied_in_h", hand.emptiedInH());
    json.writeNumberField("rate_share", hand.rateShare());
    json.writeNumberField("capacity_ah", hand.capacityAh());
    json.writeNumberField("packs", hand.packs());
    int month = hand.arrayMonth();
    json.writeNumberField("month_of_most_panels", month);
    json.writeNumberField("array_kwh_per_day", hand.asked().arrayWhPerDay().in(month) / WH_PER_KWH);
    json.writeNumberField("other_kwh_per_day", hand.asked().otherWhPerDay().in(month) / WH_PER_KWH);
    json.writeNumberField("array_to_load_ratio_now", hand.nowRatio());
    json.writeNumberField("array_to_load_ratio_wanted", hand.asked().wantedRatio());
    json.writeNumberField("modules", hand.modules());
    if (result.deficit().isKnown()) {
      json.writeNumberField("longest_lack_kwh", result.deficit().deepestWh() / WH_PER_KWH);
    } else {
      json.writeNullField("longest_lack_kwh");
    }
    json.writeBooleanField("pair_meets_target", result.isHandPairEnough());
    json.writeEndObject();
    point(json, "hand_pair", result.handPair());
  }

  /** The frontier, a row a pair. */
  public static String csv(SizeResult result) {
    var out = new StringBuilder();
    out.append(
        "modules,rated_kw,controllers,packs,capacity_kwh,unmet_hours_per_year,dark_winters,whole_winters,"
            + "most_loss_days_in_a_winter,generator_hours_per_year,cost\n");
    for (Point p : result.frontier()) {
      Integer packs = p.packs();
      Double cost = p.cost();
      out.append(
          String.format(
              Locale.ROOT,
              "%d,%.3f,%d,%s,%.4f,%.4f,%d,%d,%d,%.4f,%s%n",
              p.modules(),
              p.ratedW() / WH_PER_KWH,
              p.controllers(),
              packs == null ? "" : packs.toString(),
              p.capacityWh() / WH_PER_KWH,
              p.tally().unmetHoursPerYear(),
              p.tally().darkWinters(),
              p.tally().wholeWinters(),
              p.tally().mostLossDays(),
              p.tally().generatorHoursPerYear(),
              cost == null ? "" : String.format(Locale.ROOT, "%.2f", cost)));
    }
    return out.toString().replace("\r\n", "\n");
  }
}
