package greyspell.report;

import com.fasterxml.jackson.core.JsonGenerator;
import greyspell.study.Besides;
import greyspell.study.Besides.LoadAnswers;
import greyspell.study.Besides.ServiceYear;
import greyspell.study.StudyResult;
import greyspell.study.Unmet;
import java.io.IOException;

/** What stands beside the books: always-on draw, range of the loads, peaks, bank. */
final class BesidesJson {
  private final StudyResult result;
  private final Besides besides;
  private final JsonGenerator json;

  BesidesJson(StudyResult result, JsonGenerator json) {
    this.result = result;
    this.json = json;
    besides = result.besides();
  }

  void write() throws IOException {
    alwaysOn();
    loadRange();
    peaks();
    bank();
  }

  private void alwaysOn() throws IOException {
    var on = Facts.alwaysOn(result);
    json.writeObjectFieldStart("always_on");
    number("mean_w", on.meanW());
    number("kwh_per_day", on.meanW() * 24.0 / 1000.0);
    number("share_of_dark_month_pct", on.needShare() * 100.0);
    unmet("ten_watts_less", besides.tenWattsLess());
    json.writeEndObject();
  }

  private void loadRange() throws IOException {
    LoadAnswers loads = besides.loads();
    if (loads == null) {
      return;
    }
    json.writeObjectFieldStart("load_range");
    unmet("low", loads.low());
    unmet("likely", loads.likely());
    unmet("high", loads.high());
    if (loads.narrowest() != null) {
      json.writeStringField("measure_first", loads.narrowest());
      unmet("measure_first_low", loads.narrowestLow());
      unmet("measure_first_high", loads.narrowestHigh());
    }
    json.writeEndObject();
  }

  private void unmet(String key, Unmet unmet) throws IOException {
    json.writeObjectFieldStart(key);
    unmet(unmet);
    json.writeEndObject();
  }

  private void unmet(Unmet unmet) throws IOException {
    number("unmet_kwh_per_year", unmet.wh() / 1000.0);
    number("unmet_hours_per_year", unmet.unmetHours());
    number("shed_kwh_per_year", unmet.letGoWh() / 1000.0);
    number("generator_kwh_per_year", unmet.generatorWh() / 1000.0);
  }

  private void peaks() throws IOException {
    var peaks = besides.peaks();
    json.writeObjectFieldStart("peaks");
    number("running_w", peaks.worstRunningW());
    if (peaks.worstRunningHour() >= 0) {
      json.writeStringField("running_at", time(peaks.worstRunningHour()));
    }
    number("start_w", peaks.worstPeakW());
    if (peaks.worstHour() >= 0) {
      json.writeStringField("start_at", time(peaks.worstHour()));
    }
    json.writeNumberField("hours_above_continuous", peaks.hoursAboveContinuous());
    if (peaks.hoursAboveSurge() != null) {
      json.writeNumberField("hours_above_surge", peaks.hoursAboveSurge());
    }
    json.writeEndObject();
  }

  private void bank() throws IOException {
    json.writeObjectFieldStart("bank");
    int lowest = BankPage.lowestVoltageHour(result);
    if (lowest >= 0) {
      number("lowest_v", result.ledger().bankV()[lowest]);
      json.writeStringField("lowest_v_at", time(lowest));
    }
    json.writeNumberField("longest_without_full_h", besides.fullCharge().longestH());
    json.writeStringField("longest_without_full_from", time(besides.fullCharge().fromHour()));
    json.writeNumberField("times_full", besides.fullCharge().timesFull());
    if (!besides.service().isEmpty()) {
      json.writeArrayFieldStart("service_years");
      for (ServiceYear year : besides.service()) {
        json.writeStartObject();
        json.writeNumberField("service_year", year.number());
        number("capacity_pct", year.healthShare() * 100.0);
        unmet(year.unmet());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    if (besides.replacementYears() != null) {
      number("replacement_years", besides.replacementYears());
    }
    json.writeEndObject();
  }

  private String time(int hour) {
    return Facts.calendar(result).start(hour).toString();
  }

  private void number(String key, double value) throws IOException {
    json.writeNumberField(key, ResultsJson.rounded(value));
  }
}
