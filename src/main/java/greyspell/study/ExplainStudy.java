package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.balance.BusNeed;
import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.calendar.HourCalendar;
import greyspell.calendar.Winter;
import greyspell.cause.CutLoads;
import greyspell.cause.DarkSpell;
import greyspell.cause.DarkSpells;
import greyspell.cause.Said;
import greyspell.cause.SaidValue.Count;
import greyspell.cause.SaidValue.Energy;
import greyspell.cause.SaidValue.Hours;
import greyspell.cause.SaidValue.Name;
import greyspell.cause.SaidValue.Percent;
import greyspell.cause.SpellStory;
import greyspell.load.ApplianceSpec;
import greyspell.load.Evidence;
import greyspell.load.LoadBook;
import greyspell.load.LoadHours;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.CauseRuns.Stretch;
import greyspell.study.CauseRuns.Stretches;
import greyspell.study.ChangeRuns.PartSpells;
import greyspell.study.Explanation.MonthLine;
import greyspell.study.Explanation.Remedy;
import greyspell.study.Explanation.Shares;
import greyspell.study.Explanation.Spell;
import greyspell.study.Explanation.Verdict;
import greyspell.study.Explanation.WinterLine;
import greyspell.study.Study.Steps;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Why the lights went out in a home, and what would have prevented it: books of every winter, the
 * spells in them, the shares of their causes, their story, and the remedies, straight down the
 * page.
 */
public final class ExplainStudy {
  private static final double CONFIDENCE = 0.95;

  private final Trials trials;
  private final Scenario home;
  private final boolean isDated;
  private final List<PartBooks> parts = new ArrayList<>();

  /** One part of the weather with its books. */
  private record PartBooks(int part, Ledger ledger, List<Winter> winters, List<DarkSpell> spells) {}

  private ExplainStudy(Trials trials) {
    this.trials = trials;
    home = trials.home();
    isDated = trials.parts() == 1 && !trials.calendar(0).isTypical();
  }

  /**
   * Explains.
   *
   * @param trials the home in its winters
   * @param weather where the winters come from
   * @param file the home's scenario, in which remedies are written
   * @param library as the scenario was read with
   */
  public static Explanation of(
      Trials trials, Said weather, ScenarioEdit file, @Nullable Path library, Steps steps) {
    var study = new ExplainStudy(trials);
    steps.step("hour by hour", 0.1);
    study.books();
    steps.step("causes", 0.2);
    List<PartBooks> dark = study.parts.stream().filter(p -> !p.spells.isEmpty()).toList();
    CauseRuns causes =
        dark.isEmpty() ? null : CauseRuns.of(trials, dark.stream().map(study::stretches).toList());
    steps.step("remedies", 0.6);
    var asked =
        new Remedies(
            trials,
            file,
            library,
            study.parts.stream().map(p -> new PartSpells(p.part, p.spells)).toList(),
            study.months());
    Shares whole = causes == null ? null : causes.whole();
    return new Explanation(
        study.home,
        weather,
        study.verdict(),
        study.winterLines(causes, dark),
        study.monthLines(),
        study.spells(causes, dark, asked),
        whole,
        whole == null ? List.<Remedy>of() : asked.all(),
        whole == null ? List.<Remedy>of() : asked.free(),
        study.uncertainties(whole),
        study.cautions());
  }

  private void books() {
    for (int part = 0; part < trials.parts(); part++) {
      Ledger ledger = trials.books(part, home, Set.of());
      parts.add(
          new PartBooks(
              part,
              ledger,
              trials.calendar(part).winters(home.site().isNorthern()),
              DarkSpells.of(ledger, needWh(part, ledger))));
    }
  }

  private double[] needWh(int part, Ledger ledger) {
    return BusNeed.wh(ledger.forcing(), trials.design(part, home, Set.of()).inverter());
  }

  /** Its spells, then its winters. */
  private Stretches stretches(PartBooks part) {
    var stretches = new ArrayList<Stretch>();
    part.spells.forEach(s -> stretches.add(Stretch.of(s)));
    part.winters.forEach(w -> stretches.add(new Stretch(w.fromHour(), w.toHour())));
    return new Stretches(part.part, part.ledger.startChargeWh(), stretches);
  }

  /** In which the spells are; all twelve where there is none. */
  private List<Integer> months() {
    var months = new TreeSet<Integer>();
    for (PartBooks part : parts) {
      for (DarkSpell spell : part.spells) {
        spell.days().forEach(d -> months.add(d.date().getMonthValue()));
      }
    }
    for (int month = 1; month <= 12 && parts.stream().allMatch(p -> p.spells.isEmpty()); month++) {
      months.add(month);
    }
    return List.copyOf(months);
  }

  // ---- figures

  private Verdict verdict() {
    Trial trial = trials.run(home);
    int winters = trials.winters().size(), dark = trial.darkWinters();
    double unmetWh = trial.unmet().wh(), hours = trial.unmet().unmetHours();
    boolean isNone = dark == 0 && hours == 0.0 && winters > 0;
    Double mayStill = isNone ? 1.0 - Math.pow(1.0 - CONFIDENCE, 1.0 / winters) : null;
    Said said;
    if (mayStill != null) {
      said = Said.of("verdict.none", new Count(winters), new Percent(mayStill));
    } else if (dark == 0) {
      said =
          Said.of(
              "verdict.half",
              new Count(winters),
              new Energy(unmetWh * trials.years()),
              new Hours(hours * trials.years()));
    } else {
      boolean hasHalves = winters < trials.years();
      said =
          hasHalves
              ? Said.of(
                  "verdict.some.halves",
                  new Count(dark),
                  new Count(winters),
                  new Energy(unmetWh),
                  new Hours(hours),
                  new Count(trials.years()))
              : Said.of(
                  winters == 1 ? "verdict.one" : "verdict.some",
                  new Count(dark),
                  new Count(winters),
                  new Energy(unmetWh),
                  new Hours(hours));
    }
    return new Verdict(
        said, winters, dark, unmetWh, hours, trial.generatorHours(), trial.fuelL(), mayStill);
  }

  private List<WinterLine> winterLines(@Nullable CauseRuns causes, List<PartBooks> dark) {
    var lines = new ArrayList<WinterLine>();
    for (PartBooks part : parts) {
      for (int w = 0; w < part.winters.size(); w++) {
        Winter winter = part.winters.get(w);
        if (winter.isWhole()) {
          int at = dark.indexOf(part);
          Shares shares =
              causes == null || at < 0 ? null : causes.shares(at, part.spells.size() + w);
          lines.add(line(part, winter, shares == null || shares.wholeWh() == 0.0 ? null : shares));
        }
      }
    }
    return lines;
  }

  private WinterLine line(PartBooks part, Winter winter, @Nullable Shares shares) {
    Ledger ledger = part.ledger;
    double askedWh = 0.0, unmetWh = 0.0, letGoWh = 0.0, lowestWh = Double.POSITIVE_INFINITY;
    int hours = 0, days = 0, lastDay = -1, generatorHours = 0;
    for (int h = winter.fromHour(); h < winter.toHour(); h++) {
      askedWh += ledger.askedWh(h);
      unmetWh += ledger.unmetWh(h);
      letGoWh += ledger.letGoWh(h);
      lowestWh = Math.min(lowestWh, ledger.chargeWh()[h]);
      generatorHours += ledger.isGeneratorOn(h) ? 1 : 0;
      if (ledger.isUnmet(h)) {
        hours++;
        days += h / 24 != lastDay ? 1 : 0;
        lastDay = h / 24;
      }
    }
    int spells = (int) part.spells.stream().filter(s -> isIn(s, winter, ledger.hours())).count();
    double windowWh = ledger.windowWh();
    return new WinterLine(
        winter.name(),
        part.part,
        askedWh,
        unmetWh,
        hours,
        days,
        letGoWh,
        windowWh > 0.0 ? lowestWh / windowWh : 0.0,
        generatorHours,
        spells,
        shares);
  }

  private static boolean isIn(DarkSpell spell, Winter winter, int hours) {
    int first = spell.firstUnmetHour() % hours;
    return first >= winter.fromHour() && first < winter.toHour();
  }

  private List<MonthLine> monthLines() {
    var sums = new double[12][5];
    var days = new int[12];
    for (PartBooks part : parts) {
      Ledger ledger = part.ledger;
      HourCalendar calendar = ledger.forcing().calendar();
      double[] need = needWh(part.part, ledger);
      double[] full = LedgerColumn.CURTAILED_FULL.of(ledger);
      double[] rate = LedgerColumn.CURTAILED_RATE.of(ledger);
      double[] cold = LedgerColumn.CURTAILED_COLD.of(ledger);
      double[] absorption = LedgerColumn.CURTAILED_ABSORPTION.of(ledger);
      for (int h = 0; h < ledger.hours(); h++) {
        int m = calendar.month(h) - 1;
        days[m] += h % 24 == 0 ? 1 : 0;
        sums[m][0] += ledger.forcing().solarBusWh()[h];
        sums[m][1] += ledger.forcing().otherWh(h);
        sums[m][2] += need[h];
        sums[m][3] += full[h] + rate[h] + cold[h] + absorption[h];
        sums[m][4] += ledger.unmetWh(h);
      }
    }
    var lines = new ArrayList<MonthLine>();
    for (int m = 0; m < 12; m++) {
      double d = days[m];
      double[] s = sums[m];
      lines.add(new MonthLine(m + 1, s[0] / d, s[1] / d, s[2] / d, s[3] / d, s[4] / d));
    }
    return lines;
  }

  private List<Spell> spells(@Nullable CauseRuns causes, List<PartBooks> dark, Remedies remedies) {
    var spells = new ArrayList<Spell>();
    for (int p = 0; p < dark.size() && causes != null; p++) {
      PartBooks part = dark.get(p);
      double[] need = needWh(part.part, part.ledger);
      CutLoads loads = loads(part);
      for (int i = 0; i < part.spells.size(); i++) {
        DarkSpell spell = part.spells.get(i);
        spells.add(
            new Spell(
                winterOf(spell, part),
                part.part,
                spell,
                causes.shares(p, i),
                SpellStory.of(spell, part.ledger, need, loads, isDated),
                SpellStory.days(spell, isDated),
                loads.unserved(spell.fromHour(), spell.toHour(), Integer.MAX_VALUE),
                remedies.of(spells.size())));
      }
    }
    spells.sort(
        Comparator.comparingDouble((Spell s) -> -s.spell().unmetWh())
            .thenComparing(Spell::part)
            .thenComparing(s -> s.spell().fromHour()));
    return spells;
  }

  private CutLoads loads(PartBooks part) {
    return loads(part.ledger, trials.load(part.part, home));
  }

  /** Which of the loads of a house went without. */
  static CutLoads loads(Ledger ledger, LoadHours asked) {
    var loads = new ArrayList<CutLoads.Asked>();
    for (int i = 0; i < asked.books().size(); i++) {
      LoadBook book = asked.books().get(i);
      CutLoads.Rank rank =
          switch (book.priority()) {
            case MUST_RUN -> CutLoads.Rank.MUST;
            case SHOULD_RUN -> CutLoads.Rank.SHOULD;
            case CAN_WAIT -> CutLoads.Rank.CAN_WAIT;
          };
      loads.add(
          new CutLoads.Asked(
              book.name(), rank, book.isDirectCurrent(), book.isMedical(), asked.wh(i)));
    }
    return new CutLoads(ledger, loads);
  }

  private static String winterOf(DarkSpell spell, PartBooks part) {
    for (Winter winter : part.winters) {
      if (isIn(spell, winter, part.ledger.hours())) {
        return winter.name();
      }
    }
    throw new IllegalStateException("a spell outside all winters");
  }

  // ---- what the figures do not carry

  private List<Said> uncertainties(@Nullable Shares shares) {
    var said = new ArrayList<Said>();
    said.add(Said.of("unsure.winters", new Count(trials.winters().size())));
    List<LoadBook> books = trials.load(0, home).books();
    double sumWh = 0.0, lowWh = 0.0, highWh = 0.0, measuredWh = 0.0;
    for (LoadBook book : books) {
      sumWh += book.yearlyWh();
      lowWh += book.lowYearlyWh();
      highWh += book.highYearlyWh();
      measuredWh += book.evidence() == Evidence.MEASURED ? book.yearlyWh() : 0.0;
    }
    if (sumWh > 0.0) {
      said.add(
          Said.of(
              "unsure.load",
              new Percent(measuredWh / sumWh),
              new Energy(lowWh / yearDays()),
              new Energy(highWh / yearDays()),
              new Energy(sumWh / yearDays())));
    }
    if (shares != null) {
      said.add(
          shares.isExact()
              ? Said.of("unsure.shares", new Count(shares.runs()))
              : Said.of(
                  "unsure.shares.drawn", new Count(shares.runs()), new Energy(shares.errorWh())));
      said.add(need(books, sumWh));
    }
    if (trials.years() < 10 * trials.parts() && trials.parts() == 1) {
      said.add(Said.of("unsure.usual_sky", new Count(trials.years())));
    }
    if (!home.load().policy().isIdle()) {
      said.add(Said.of("unsure.let_go"));
    }
    if (!mayHaveMorePanels()) {
      said.add(Said.of("unsure.no_more_panels"));
    }
    said.add(Said.of("unsure.not_told"));
    return said;
  }

  /** Of the mean year of this weather, as everywhere else on the pages. */
  private double yearDays() {
    HourCalendar calendar = trials.calendar(0);
    return (double) calendar.days() / calendar.years();
  }

  /** The same house in three figures: what each is the mean of. */
  private Said need(List<LoadBook> books, double yearWh) {
    List<Integer> months = months();
    double saveWh = books.stream().mapToDouble(b -> Changes.dailyWh(b, months)).sum();
    double busWh =
        monthLines().stream()
            .filter(m -> months.contains(m.month()))
            .mapToDouble(MonthLine::needWh)
            .average()
            .orElse(0.0);
    return Said.of(
        "unsure.need", new Energy(yearWh / yearDays()), new Energy(saveWh), new Energy(busWh));
  }

  private boolean mayHaveMorePanels() {
    int now = home.arrays().stream().mapToInt(ArraySpec::modules).sum();
    return PanelSteps.of(home, new PanelSteps.Room(null, null, true)).steps().stream()
        .anyMatch(step -> step.modules() > now);
  }

  private List<Said> cautions() {
    var said = new ArrayList<Said>();
    for (ApplianceSpec appliance : home.load().appliances()) {
      if (appliance.isMedical()) {
        said.add(Said.of("caution.medical", new Name(appliance.name())));
      }
    }
    return said;
  }
}
