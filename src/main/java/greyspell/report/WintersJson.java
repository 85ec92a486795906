package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.outcome.Band;
import greyspell.outcome.ExtremeTail;
import greyspell.outcome.GreySpell;
import greyspell.outcome.Odds;
import greyspell.outcome.ReturnCurve;
import greyspell.outcome.SpellClimate;
import greyspell.outcome.SpellClimate.HowOften;
import greyspell.outcome.WinterBands;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterRecord;
import greyspell.outcome.WinterSum;
import greyspell.study.ManyWinters;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Many winters for other programs; docs/results.md says what every key means. */
final class WintersJson {
  static final int FORMAT = 1;
  private static final int MONTHS = 12;
  private static final int MOST_SPELLS = 5;
  private static final double CONFIDENCE = 0.95;
  private static final double PERCENT = 100.0;
  private static final double WH_PER_KWH = 1000.0;

  private final ManyWinters many;
  private final WinterBook book;
  private final WinterBands bands;
  private final JsonGenerator json;

  private WintersJson(ManyWinters many, JsonGenerator json) {
    this.many = many;
    this.json = json;
    book = many.book();
    bands = WinterBands.of(book);
  }

  static void write(ManyWinters many, OutputStream to) throws IOException {
    try (var json = new JsonFactory().createGenerator(to)) {
      json.useDefaultPrettyPrinter();
      new WintersJson(many, json).write();
    }
    to.close();
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", FORMAT);
    json.writeStringField("verdict", WinterVerdict.of(many).text());
    json.writeStringField("scenario", many.scenario().file());
    json.writeStringField("kind", book.kind().name().toLowerCase(Locale.ROOT));
    json.writeStringField("source", book.described());
    json.writeNumberField("winters", book.count());
    json.writeNumberField("dark_winters", book.darkCount());
    json.writeStringField("shown_winter", book.shown().name());
    kwh("usable_bank_kwh", book.usableBankWh());
    odds(Odds.of(book));
    json.writeObjectFieldStart("bands");
    bands();
    json.writeEndObject();
    charge();
    climate(SpellClimate.of(book));
    json.writeArrayFieldStart("per_winter");
    for (WinterRecord winter : book.winters()) {
      winter(winter);
    }
    json.writeEndArray();
    sentences("notes", book.notes());
    sentences("cautions", many.cautions());
    json.writeEndObject();
  }

  private void odds(Odds odds) throws IOException {
    json.writeObjectFieldStart("odds");
    json.writeNumberField("dark_free_winters", odds.darkFree());
    number("dark_free_share", odds.share());
    number("low_share", odds.lowShare());
    number("high_share", odds.highShare());
    number("confidence", CONFIDENCE);
    json.writeBooleanField("is_one_sided", odds.isOneSided());
    json.writeEndObject();
  }

  private void bands() throws IOException {
    for (WinterSum sum : WinterSum.values()) {
      band(sum.key() + "_kwh", bands.wh(sum), 1.0 / WH_PER_KWH);
    }
    band("unmet_hours", bands.unmetHours(), 1.0);
    band("unmet_days", bands.unmetDays(), 1.0);
    band("generator_hours", bands.generatorHours(), 1.0);
    band("longest_shortfall_hours", bands.longestShortfallHours(), 1.0);
    band("lowest_charge_pct", bands.lowestShare(), PERCENT);
    json.writeArrayFieldStart("per_month");
    for (int month = 1; month <= MONTHS; month++) {
      json.writeStartObject();
      json.writeNumberField("month", month);
      for (WinterSum sum : WinterSum.values()) {
        band(sum.key() + "_kwh", bands.wh(sum, month), 1.0 / WH_PER_KWH);
      }
      band("unmet_hours", bands.unmetHours(month), 1.0);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void band(String key, Band band, double factor) throws IOException {
    json.writeObjectFieldStart(key);
    number("p10", band.low() * factor);
    number("p50", band.middle() * factor);
    number("p90", band.high() * factor);
    json.writeEndObject();
  }

  /** Through the year: three lists of 365 days, 1 January first. */
  private void charge() throws IOException {
    json.writeObjectFieldStart("lowest_charge_of_day_pct");
    days("p10", Band::low);
    days("p50", Band::middle);
    days("p90", Band::high);
    json.writeEndObject();
  }

  private void days(String key, ToDoubleFunction<Band> which) throws IOException {
    json.writeArrayFieldStart(key);
    for (int day = 0; day < WinterRecord.DAYS; day++) {
      double percent = which.applyAsDouble(bands.lowestShare(day)) * PERCENT;
      json.writeNumber(Math.rint(percent * 10.0) / 10.0);
    }
    json.writeEndArray();
  }

  private void climate(SpellClimate climate) throws IOException {
    json.writeObjectFieldStart("grey_spells_return");
    howOften("by_length", "least_days", climate.byLength(), 1.0);
    howOften("by_depth", "least_short_kwh", climate.byDepth(), 1.0 / WH_PER_KWH);
    curve("longest_days", climate.length(), 1.0);
    curve("deepest_short_kwh", climate.depth(), 1.0 / WH_PER_KWH);
    curve("riding_bank_kwh", climate.bank(), 1.0 / WH_PER_KWH);
    json.writeEndObject();
    json.writeBooleanField("is_riding_bank_exact", book.isRidingExact());
  }

  private void howOften(String key, String size, List<HowOften> rows, double factor)
      throws IOException {
    json.writeArrayFieldStart(key);
    for (HowOften row : rows) {
      json.writeStartObject();
      number(size, row.least() * factor);
      json.writeNumberField("spells", row.spells());
      json.writeNumberField("in_winters", row.winters());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void curve(String key, ReturnCurve curve, double factor) throws IOException {
    json.writeArrayFieldStart(key);
    ExtremeTail tail = curve.tail();
    for (int onceIn : SpellClimate.ONCE_IN) {
      json.writeStartObject();
      json.writeNumberField("once_in_winters", onceIn);
      json.writeNumberField("may_pass_winters", curve.mayPass(onceIn));
      finite("counted", curve.counted(onceIn) * factor);
      if (tail != null) {
        number("fitted", tail.value(onceIn) * factor);
        number("fitted_low", tail.low(onceIn) * factor);
        number("fitted_high", tail.high(onceIn) * factor);
        number("fitted_shape", tail.shape());
        json.writeBooleanField("is_fit_doubtful", curve.isTailDoubtful());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void winter(WinterRecord w) throws IOException {
    json.writeStartObject();
    json.writeNumberField("number", w.number() + 1);
    json.writeStringField("winter", w.name());
    for (WinterSum sum : WinterSum.values()) {
      kwh(sum.key() + "_kwh", w.wh(sum));
    }
    json.writeNumberField("unmet_hours", w.unmetHours());
    json.writeNumberField("unmet_days", w.months().unmetDays());
    json.writeNumberField("generator_hours", w.months().generatorHours());
    json.writeNumberField("generator_starts", w.generatorStarts());
    json.writeNumberField("longest_shortfall_hours", w.longestShortfall().hours());
    number("lowest_charge_pct", w.lowestShareOfAll() * PERCENT);
    json.writeStringField("lowest_charge_day", WinterDays.day(w.lowestDay()));
    finite("riding_bank_kwh", w.ridingBank().leastWh() / WH_PER_KWH);
    json.writeArrayFieldStart("deepest_grey_spells");
    for (GreySpell spell : w.spells().subList(0, Math.min(MOST_SPELLS, w.spells().size()))) {
      json.writeStartObject();
      json.writeStringField("start", WinterDays.day(spell.fromDay()));
      json.writeNumberField("days", spell.days());
      kwh("short_kwh", spell.shortWh());
      kwh("unmet_kwh", spell.unmetWh());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void sentences(String key, List<String> all) throws IOException {
    json.writeArrayFieldStart(key);
    for (String sentence : all) {
      json.writeString(sentence);
    }
    json.writeEndArray();
  }

  /** Null where there is no such number. */
  private void finite(String key, double value) throws IOException {
    if (value < Double.POSITIVE_INFINITY) {
      number(key, value);
    } else {
      json.writeNullField(key);
    }
  }

  private void kwh(String key, double wh) throws IOException {
    number(key, wh / WH_PER_KWH);
  }

  private void number(String key, double value) throws IOException {
    json.writeNumberField(key, ResultsJson.rounded(value));
  }
}
