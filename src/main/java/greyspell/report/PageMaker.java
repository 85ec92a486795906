package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Fortnight;
import greyspell.chart.Say;
import greyspell.load.LoadPolicy;
import greyspell.load.Priority;
import greyspell.power.PeakCheck;
import greyspell.report.Page.Pair;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import greyspell.study.ElectricalCheck;
import greyspell.study.ManyWinters;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts a result into the words and tables of the page. */
final class PageMaker {
  private static final int EVENING = 18;
  private static final int MORNING = 6;

  private final StudyResult result;
  private final HourCalendar calendar;
  private final double usableWh;

  private PageMaker(StudyResult result) {
    this.result = result;
    calendar = Facts.calendar(result);
    usableWh = result.ledger().windowWh();
  }

  static Page page(StudyResult result, ElectricalCheck check, List<String> pictures) {
    return new PageMaker(result).make(check, pictures, Verdict.of(result), null, List.of());
  }

  static Page page(
      StudyResult result,
      ElectricalCheck check,
      List<String> pictures,
      ManyWinters many,
      List<String> winterPictures) {
    return new PageMaker(result)
        .make(
            check,
            pictures,
            WinterVerdict.of(many),
            WintersPage.of(many, winterPictures),
            many.cautions());
  }

  private Page make(
      ElectricalCheck check,
      List<String> pictures,
      Verdict verdict,
      @Nullable WintersPage manyWinters,
      List<String> ofAllWinters) {
    var fortnight = Fortnight.of(result);
    var alwaysOn = Facts.alwaysOn(result);
    var keys = new ArrayList<Pair>();
    for (var line : KeyFigures.of(result)) {
      keys.add(new Pair(line.label(), line.value()));
    }
    var answers = new Answers(result);
    var books = new BooksTables(result);
    var winters = new WinterTables(result);
    return new Page(
        result.scenario().name(),
        Facts.heading(result),
        result.scenario().note(),
        verdict.isAllServed() && verdict.demand().isEmpty(),
        verdict.headline(),
        verdict.demand(),
        verdict.more(),
        keys,
        runningOut(),
        answers.sentences(),
        answers.table(),
        pictures,
        winters.fortnightTitle(fortnight),
        winters.fortnightTable(fortnight),
        winters.spellsSentence(),
        winters.spells(),
        books.books(),
        books.booksNote(),
        books.rules(),
        books.reasons(),
        "The system itself: "
            + KeyFigures.alwaysOn(result)
            + ". It is drawn day and night, whether or not anything is switched on; loads"
            + " that are always on come on top (greyspell load). Each 10 W less of it saves a year "
            + answers.tenWattsLess()
            + ".",
        BooksTables.alwaysOnParts(alwaysOn),
        winters.winters(),
        winters.autonomy(),
        winters.greyAutonomy(),
        GeneratorPage.of(result),
        BankPage.of(result),
        peaks(),
        books.losses(),
        ElectricalPage.of(check, result),
        inputs(),
        result.assumptions(),
        cautions(ofAllWinters),
        HowToRead.words(),
        manyWinters);
  }

  /** Of all winters first, then of the one that is shown in full, each once. */
  private List<String> cautions(List<String> ofAllWinters) {
    var all = new LinkedHashSet<String>(ofAllWinters);
    all.addAll(Cautions.all(result));
    return List.copyOf(all);
  }

  // ---- what running out means

  private List<String> runningOut() {
    var out = new ArrayList<String>();
    var must = Facts.appliances(result, Priority.MUST_RUN);
    int hours = 0;
    int dark = 0;
    double sumC = 0.0;
    double coldestC = Double.MAX_VALUE;
    int nights = 0;
    int lastNight = -1;
    double[] air = result.weather().airTemperatureC();
    for (int h = 0; h < calendar.hours(); h++) {
      if (!result.ledger().isUnmet(h)) {
        continue;
      }
      hours++;
      sumC += air[h];
      coldestC = Math.min(coldestC, air[h]);
      int hourOfDay = calendar.hourOfDay(h);
      if (hourOfDay >= EVENING || hourOfDay < MORNING) {
        dark++;
        int night = (h + 24 - EVENING) / 24;
        nights += night == lastNight ? 0 : 1;
        lastNight = night;
      }
    }
    if (hours == 0) {
      out.add(
          "In the weather looked at nothing went unserved. What follows is what to watch, should a"
              + " harder winter come.");
    } else {
      out.add(
          "Something was not served in "
              + Say.hours(hours)
              + " in all, "
              + Say.number(dark, 0)
              + " of them between "
              + EVENING
              + " h and "
              + MORNING
              + " h; "
              + Say.count(nights, "night was", "nights were")
              + " touched. Outside it was "
              + Say.number(sumC / hours, 0)
              + " °C on average in those hours, at the coldest "
              + Say.number(coldestC, 0)
              + " °C.");
    }
    if (!must.isEmpty()) {
      out.add(
          "What the house cannot do without, by its own list: " + String.join(", ", must) + ".");
    }
    if (!result.scenario().load().policy().isIdle()) {
      out.add(rules(result.scenario().load().policy()));
    }
    out.add(
        "When the bank is down to its reserve, the model runs everything for part of the hour and leaves"
            + " everything off for the rest. A household would rather choose what stays on, and so lose"
            + " the least important things first.");
    return out;
  }

  /** What the house itself switches off or moves when the charge is low. */
  private static String rules(LoadPolicy policy) {
    var rules = new ArrayList<String>();
    Double canWaitBelow = policy.shedCanWaitBelowShare();
    Double shouldRunBelow = policy.shedShouldRunBelowShare();
    Double canWaitAbove = policy.canWaitAboveShare();
    if (canWaitBelow != null) {
      rules.add(
          "below " + Say.percent(canWaitBelow) + " of the usable charge what can wait is off");
    }
    if (shouldRunBelow != null) {
      rules.add(
          "below " + Say.percent(shouldRunBelow) + " of the usable charge what should run is off");
    }
    if (canWaitAbove != null) {
      rules.add(
          "what can wait is moved to hours with more than "
              + Say.percent(canWaitAbove)
              + " in the bank");
    }
    return "By the house's own rules "
        + Say.list(rules)
        + ". What is let go so is booked apart and is not counted as unserved.";
  }

  // ---- peaks

  private Table peaks() {
    PeakCheck peaks = result.besides().peaks();
    var inverter = result.scenario().inverter();
    double years = calendar.years();
    Double surgeW = inverter.surgeW();
    Integer aboveSurge = peaks.hoursAboveSurge();
    var rows = new ArrayList<Row>();
    rows.add(
        new Row(
            List.of(
                "what may run together",
                Say.number(peaks.worstRunningW() / 1000.0, 2),
                when(peaks.worstRunningHour()),
                Say.number(inverter.continuousW() / 1000.0, 2) + " for long",
                Say.number(peaks.hoursAboveContinuous() / years, 0)),
            peaks.hoursAboveContinuous() > 0));
    rows.add(
        new Row(
            List.of(
                "and the motor start that adds most",
                Say.number(peaks.worstPeakW() / 1000.0, 2),
                when(peaks.worstHour()),
                surgeW == null ? "not stated" : Say.number(surgeW / 1000.0, 2) + " for a moment",
                aboveSurge == null ? "–" : Say.number(aboveSurge / years, 0)),
            aboveSurge != null && aboveSurge > 0));
    return new Table(
        List.of("Within the hour", "Most, kW", "First on", "Inverter, kW", "Hours a year above"),
        rows);
  }

  private String when(int hour) {
    return hour < 0 ? "–" : Say.shortDateYear(calendar, hour);
  }

  // ---- inputs

  private List<Pair> inputs() {
    var s = result.scenario();
    var out = new ArrayList<Pair>();
    out.add(
        new Pair(
            "Place",
            s.site().name()
                + ", latitude "
                + Say.number(s.site().latitudeDeg(), 2)
                + "°, longitude "
                + Say.number(s.site().longitudeDeg(), 2)
                + "°, "
                + Say.number(s.site().elevationM(), 0)
                + " m"));
    var source = result.weather().source();
    out.add(
        new Pair(
            "Weather",
            s.weather().file()
                + " ("
                + source.format()
                + (source.place().isEmpty() ? "" : ", " + source.place())
                + "), "
                + Facts.years(calendar)
                + ", "
                + Say.hours(result.weather().gaps().missingHours())
                + " missing and filled"));
    for (String gap : result.weather().gaps().notes()) {
      out.add(new Pair("Gaps", gap));
    }
    for (var array : s.arrays()) {
      out.add(
          new Pair(
              "Panels, " + array.name(),
              array.modules()
                  + " × "
                  + array.module().name()
                  + " = "
                  + Say.kw(array.ratedPowerW())
                  + ", tilt "
                  + Say.number(array.tiltDeg(), 0)
                  + "°, facing "
                  + Say.number(array.azimuthDeg(), 0)
                  + "°"));
    }
    out.add(
        new Pair(
            "Bank",
            s.bank().name()
                + ", "
                + Say.kwh(s.bank().capacityWh())
                + ", of which "
                + Say.kwh(usableWh)
                + " above the reserve"));
    out.add(new Pair("Inverter", s.inverter().name() + ", " + Say.kw(s.inverter().continuousW())));
    var generator = s.generator();
    if (generator != null) {
      out.add(
          new Pair(
              "Generator",
              generator.spec().name()
                  + ", "
                  + Say.kw(generator.spec().ratedPowerW())
                  + ", starts below "
                  + Say.percent(generator.rules().startBelowShare())
                  + ", stops above "
                  + Say.percent(generator.rules().stopAboveShare())
                  + " of the usable charge"));
    }
    var other = s.otherSource();
    if (other != null) {
      out.add(new Pair("Second source", other.name() + ", from " + other.file()));
    }
    out.add(new Pair("Start", result.startNote()));
    out.add(new Pair("Scenario file", s.file()));
    return out;
  }
}
