package greyspell.handover;

import greyspell.calendar.HourCalendar;
import greyspell.handover.Block.Row;
import greyspell.load.Evidence;
import greyspell.load.LoadBook;
import greyspell.quantity.Show;
import greyspell.sky.Horizon;
import greyspell.sky.Site;
import greyspell.study.LoadAudit;
import greyspell.weather.WeatherSource;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Purpose, site and climate, weather, and what the house asks for. */
final class SitePages {
  private final Told told;
  private final Sheet sheet;
  private final Words words;

  private SitePages(Told told, Sheet sheet) {
    this.told = told;
    this.sheet = sheet;
    words = sheet.words();
  }

  static void add(Told told, Sheet sheet) {
    var pages = new SitePages(told, sheet);
    pages.purpose();
    pages.site();
    pages.weather();
    pages.load();
  }

  private void purpose() {
    sheet.section("purpose");
    sheet.text("purpose.for");
    sheet.text("purpose.not");
    if (isEnglishMissed()) {
      sheet.text("purpose.english");
    }
    sheet.said(told.explanation().verdict().said());
  }

  /** Whether a sentence about this home has no words in the language. */
  private boolean isEnglishMissed() {
    var all = new ArrayList<String>(told.result().cautions());
    told.result().assumptions().forEach(a -> all.add(a.why()));
    told.check().findings().forEach(f -> all.addAll(List.of(f.text(), f.reason())));
    return all.stream().anyMatch(english -> words.translated(english) == null)
        || told.result().assumptions().stream().anyMatch(a -> sheet.value(a) == null);
  }

  private void site() {
    sheet.section("site");
    Site site = told.home().site();
    sheet.fact("site.home", told.home().name());
    if (!site.name().isEmpty()) {
      sheet.fact("site.place", site.name());
    }
    sheet.fact(
        "site.position",
        words.say(
            "site.position.text",
            words.number(site.latitudeDeg(), 2),
            words.number(site.longitudeDeg(), 2),
            words.length(site.elevationM())));
    sheet.fact("site.clock", words.say("site.clock.text", words.local(plus(site.utcOffsetH()))));
    sheet.fact("site.horizon", horizon(site.horizon()));
    sheet.fact("site.record_low", recordText(site.recordLowC()));
    sheet.fact("site.record_high", recordText(site.recordHighC()));
    sheet.part("site.climate");
    sheet.table(
        "site.climate",
        List.of("head.month", "head.air_mean", "head.air_low", "head.air_high", "head.sun_bus"),
        climate(),
        false);
  }

  private static String plus(double hours) {
    String number = Show.trimmed(hours, 2);
    return hours >= 0.0 ? "+" + number : number;
  }

  private String recordText(@Nullable Double recordC) {
    return recordC == null ? words.say("not_stated") : words.temperature(recordC);
  }

  private String horizon(Horizon horizon) {
    return horizon.isOpen()
        ? words.say("site.horizon.open")
        : words.say("site.horizon.highest", words.number(horizon.highestDeg(), 0));
  }

  private List<Row> climate() {
    HourCalendar calendar = told.calendar();
    double[] air = told.result().weather().airTemperatureC(), sun = told.forcing().solarBusWh();
    var sum = new double[13];
    var low = new double[13];
    var high = new double[13];
    var sunWh = new double[13];
    var hours = new int[13];
    for (int h = 0; h < calendar.hours(); h++) {
      int m = calendar.month(h);
      low[m] = hours[m] == 0 ? air[h] : Math.min(low[m], air[h]);
      high[m] = hours[m] == 0 ? air[h] : Math.max(high[m], air[h]);
      sum[m] += air[h];
      sunWh[m] += sun[h];
      hours[m]++;
    }
    var rows = new ArrayList<Row>();
    for (int m = 1; m <= 12; m++) {
      rows.add(
          Row.of(
              words.month(m),
              words.evenTemperature(sum[m] / hours[m]),
              words.evenTemperature(low[m]),
              words.evenTemperature(high[m]),
              sheet.kwh(sunWh[m] / hours[m] * 24.0)));
    }
    return rows;
  }

  private void weather() {
    sheet.section("weather");
    if (told.isDrawn()) {
      sheet.said(told.explanation().weather());
      sheet.text("weather.two");
    }
    WeatherSource source = told.result().weather().source();
    HourCalendar calendar = told.calendar();
    sheet.fact("weather.fact.file", sheet.translatedOrName(source.file()));
    if (!source.place().isEmpty()) {
      sheet.fact("weather.place", source.place());
    }
    int last = calendar.firstYear() + calendar.years() - 1;
    sheet.fact(
        "weather.years",
        calendar.isTypical()
            ? words.say("weather.typical")
            : words.say(
                "weather.from_to",
                Integer.toString(calendar.firstYear()),
                Integer.toString(last),
                words.number(calendar.years(), 0)));
    var gaps = told.result().weather().gaps();
    sheet.fact(
        "weather.gaps",
        words.say(
            "weather.gaps.text",
            words.hours(gaps.missingHours()),
            words.hours(gaps.longestGapHours())));
    sheet.small("weather.note");
  }

  private void load() {
    sheet.section("load");
    LoadAudit audit = told.audit();
    int dark = audit.winterMonth(), bright = audit.summerMonth();
    sheet.text(
        "load.sum",
        words.energy(audit.daily(audit.yearlyWh())),
        words.month(dark),
        words.energy(audit.dayWh(dark)),
        words.month(bright),
        words.energy(audit.dayWh(bright)));
    var rows = new ArrayList<Row>();
    for (LoadBook book : audit.books()) {
      rows.add(
          Row.of(
              words.name(book.name()),
              words.say("priority." + book.priority().name().toLowerCase(Locale.ROOT)),
              evidence(book.evidence()),
              sheet.fineKwh(audit.dayWh(book, dark)),
              sheet.fineKwh(audit.dayWh(book, bright)),
              words.say(
                  "range",
                  sheet.fineKwh(audit.daily(book.lowYearlyWh())),
                  sheet.fineKwh(audit.daily(book.highYearlyWh())))));
    }
    sheet.table(
        "section.load",
        List.of(
            "head.load",
            "head.priority",
            "head.evidence",
            "head.dark_day",
            "head.bright_day",
            "head.range_day"),
        rows,
        false);
    sheet.small("load.note");
    double growth = told.home().load().growthFraction();
    if (growth != 0.0) {
      sheet.text("load.growth", words.percent(growth));
    }
    alwaysOn();
    peaks();
  }

  private String evidence(Evidence evidence) {
    return words.say("evidence." + evidence.name().toLowerCase(Locale.ROOT));
  }

  private void alwaysOn() {
    sheet.part("load.always_on");
    var rows = new ArrayList<Row>();
    for (var part : told.forcing().standingParts()) {
      double sumWh = 0.0;
      for (double wh : part.wh()) {
        sumWh += wh;
      }
      double meanW = sumWh / told.forcing().hours();
      if (meanW > 0.0) {
        rows.add(
            Row.of(
                words.say("loss." + part.name()),
                words.number(meanW, 1),
                sheet.fineKwh(meanW * 24.0)));
      }
    }
    sheet.table("load.always_on", List.of("head.part", "head.watts", "head.kwh_day"), rows, false);
  }

  private void peaks() {
    var peaks = told.result().besides().peaks();
    var inverter = told.home().inverter();
    Double surgeW = inverter.surgeW();
    sheet.part("load.peaks");
    sheet.fact("load.peaks.running", words.power(peaks.worstRunningW()));
    sheet.fact("load.peaks.start", words.power(peaks.worstPeakW()));
    sheet.fact("load.peaks.continuous", words.power(inverter.continuousW()));
    sheet.fact("load.peaks.surge", surgeW == null ? words.say("not_stated") : words.power(surgeW));
  }
}
