package greyspell.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.cause.DarkSpell;
import greyspell.cause.Said;
import greyspell.cause.SaidValue.Amount;
import greyspell.cause.SpellDay;
import greyspell.study.Explanation;
import greyspell.study.Explanation.Cost;
import greyspell.study.Explanation.MonthLine;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Remedy;
import greyspell.study.Explanation.Shares;
import greyspell.study.Explanation.Spell;
import greyspell.study.Explanation.WinterLine;
import greyspell.study.WinterCause;
import greyspell.words.Words;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** An explanation for other programs: kWh, hours, shares of 1; sentences in the words' language. */
public final class ExplainJson {
  private final JsonGenerator json;
  private final Words words;

  private ExplainJson(JsonGenerator json, Words words) {
    this.json = json;
    this.words = words;
  }

  public static String text(Explanation told, Words words) throws IOException {
    var out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      new ExplainJson(json, words).write(told);
    }
    return out.append('\n').toString();
  }

  private void write(Explanation told) throws IOException {
    json.writeStartObject();
    json.writeStringField("home", told.home().name());
    said("weather", told.weather());
    if (!told.home().costs().currency().isEmpty()) {
      json.writeStringField("currency", told.home().costs().currency());
    }
    json.writeObjectFieldStart("verdict");
    said("said", told.verdict().said());
    json.writeNumberField("winters", told.verdict().winters());
    json.writeNumberField("dark_winters", told.verdict().darkWinters());
    kwh("unmet_kwh_per_year", told.verdict().meanUnmetWh());
    json.writeNumberField("unmet_hours_per_year", told.verdict().meanUnmetHours());
    Double mayStill = told.verdict().mayStillFailShare();
    if (mayStill != null) {
      json.writeNumberField("dark_share_up_to", mayStill);
    }
    json.writeEndObject();
    winters(told.winters());
    months(told.months());
    shares(told.shares());
    json.writeArrayFieldStart("spells");
    for (Spell spell : told.spells()) {
      spell(spell);
    }
    json.writeEndArray();
    remedies("remedies", told.remedies());
    remedies("free", told.free());
    saids("uncertainties", told.uncertainties());
    saids("cautions", told.cautions());
    json.writeEndObject();
  }

  private void winters(List<WinterLine> winters) throws IOException {
    json.writeArrayFieldStart("winters");
    for (WinterLine winter : winters) {
      json.writeStartObject();
      json.writeStringField("name", winter.name());
      kwh("asked_kwh", winter.askedWh());
      kwh("unmet_kwh", winter.unmetWh());
      json.writeNumberField("unmet_hours", winter.unmetHours());
      json.writeNumberField("unmet_days", winter.unmetDays());
      kwh("let_go_kwh", winter.letGoWh());
      json.writeNumberField("lowest_charge_share", winter.lowestChargeShare());
      json.writeNumberField("generator_hours", winter.generatorHours());
      json.writeNumberField("spells", winter.spells());
      shares(winter.shares());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void months(List<MonthLine> months) throws IOException {
    json.writeArrayFieldStart("months");
    for (MonthLine month : months) {
      json.writeStartObject();
      json.writeNumberField("month", month.month());
      kwh("solar_kwh_per_day", month.solarWh());
      kwh("other_kwh_per_day", month.otherWh());
      kwh("need_kwh_per_day", month.needWh());
      kwh("curtailed_kwh_per_day", month.curtailedWh());
      kwh("unmet_kwh_per_day", month.unmetWh());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void shares(@Nullable Shares shares) throws IOException {
    if (shares == null) {
      return;
    }
    json.writeObjectFieldStart("shares");
    kwh("whole_kwh", shares.wholeWh());
    kwh("without_any_of_them_kwh", shares.restWh());
    json.writeBooleanField("exact", shares.isExact());
    json.writeNumberField("runs", shares.runs());
    json.writeArrayFieldStart("causes");
    for (Part part : shares.parts()) {
      json.writeStartObject();
      json.writeStringField("cause", name(part.cause()));
      json.writeStringField("words", words.pattern(part.cause().key()));
      json.writeBooleanField("season", part.cause().isSeason());
      kwh("kwh", part.wh());
      json.writeNumberField("share", part.ofWholeShare());
      kwh("standard_error_kwh", part.standardErrorWh());
      kwh("alone_kwh", part.aloneWh());
      if (!part.members().isEmpty()) {
        json.writeArrayFieldStart("members");
        for (WinterCause member : part.members()) {
          json.writeString(name(member));
        }
        json.writeEndArray();
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void spell(Spell told) throws IOException {
    DarkSpell spell = told.spell();
    json.writeStartObject();
    json.writeStringField("winter", told.winter());
    json.writeStringField("from", spell.days().get(0).date().toString());
    json.writeStringField("to", spell.days().get(spell.days().size() - 1).date().toString());
    json.writeBooleanField("full_at_start", spell.isFullAtStart());
    json.writeBooleanField("recovered", spell.isRecovered());
    kwh("unmet_kwh", spell.unmetWh());
    json.writeNumberField("unmet_hours", spell.unmetHours());
    json.writeArrayFieldStart("days");
    for (SpellDay day : spell.days()) {
      json.writeStartObject();
      json.writeStringField("date", day.date().toString());
      kwh("solar_kwh", day.solarBusWh());
      kwh("other_kwh", day.otherWh());
      kwh("generator_kwh", day.generatorWh());
      kwh("need_kwh", day.needWh());
      kwh("asked_kwh", day.askedWh());
      kwh("unmet_kwh", day.unmetWh());
      kwh("let_go_kwh", day.letGoWh());
      json.writeNumberField("unmet_hours", day.unmetHours());
      json.writeNumberField("end_charge_share", day.endChargeShare());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cut");
    for (Amount load : told.cut().named()) {
      json.writeStartObject();
      json.writeStringField("load", load.name());
      kwh("kwh", load.wh());
      json.writeEndObject();
    }
    json.writeEndArray();
    kwh("cut_unknown_kwh", told.cut().unknownWh());
    shares(told.shares());
    saids("story", told.story());
    remedies("remedies", told.remedies());
    json.writeEndObject();
  }

  private void remedies(String name, List<Remedy> remedies) throws IOException {
    json.writeArrayFieldStart(name);
    for (Remedy remedy : remedies) {
      json.writeStartObject();
      json.writeStringField("kind", remedy.kind().name().toLowerCase(Locale.ROOT));
      said("said", remedy.said());
      said("effect", remedy.effect());
      json.writeBooleanField("prevents", remedy.isFound());
      json.writeBooleanField("free", remedy.isFree());
      kwh("unmet_kwh_after", remedy.afterUnmetWh());
      json.writeNumberField("unmet_hours_after", remedy.afterUnmetHours());
      json.writeNumberField("dark_winters_after", remedy.afterDarkWinters());
      cost(remedy.cost());
      strings("overloaded_wires", remedy.wires());
      json.writeArrayFieldStart("edits");
      for (Explanation.Edit edit : remedy.edits()) {
        json.writeString(edit.path() + "=" + (edit.value() == null ? "" : edit.value()));
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void saids(String name, List<Said> said) throws IOException {
    json.writeArrayFieldStart(name);
    for (Said sentence : said) {
      json.writeString(words.say(sentence));
    }
    json.writeEndArray();
  }

  private void said(String name, Said said) throws IOException {
    json.writeStringField(name, words.say(said));
  }

  private void strings(String name, List<String> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }

  private void cost(Cost cost) throws IOException {
    json.writeNumberField("once_cost", cost.onceCost());
    strings("unpriced", cost.unpriced());
    Double moreYearly = cost.moreYearlyCost();
    if (moreYearly != null) {
      json.writeNumberField("more_yearly_cost", moreYearly);
    }
  }

  private void kwh(String name, double wh) throws IOException {
    json.writeNumberField(name, wh / 1000.0);
  }

  private static String name(WinterCause cause) {
    return cause.name().toLowerCase(Locale.ROOT);
  }
}
