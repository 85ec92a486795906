package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.balance.BusHours;
import greyspell.balance.BusNeed;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.LaneLoop;
import greyspell.balance.Ledger;
import greyspell.balance.RunSums;
import greyspell.balance.UnmetLoop;
import greyspell.outcome.GreySpell;
import greyspell.outcome.OutcomeReader;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.storage.step.BankLimits;
import greyspell.study.PlayGrid.Answer;
import greyspell.study.PlayGrid.Bank;
import greyspell.study.PlayGrid.Panels;
import greyspell.study.PlayGrid.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Works out a {@link PlayGrid} from a finished run: its forcing is kept, the sun and the loads in
 * it are multiplied, the bank is another. The cold, the wires and the voltage of the bank as it
 * stands stay in the forcing, which is exact for the present design and close beside it
 * (PlayGridTest). Homes without anything that needs the full loop are run for their sums alone.
 */
public final class PlayGrids {
  private static final double[] PANEL_TIMES = {1.0, 1.25, 1.5, 2.0, 0.5, 3.0, 0.75};
  private static final double[] BANK_TIMES = {1.0, 1.5, 2.0, 0.5, 3.0, 1.25, 4.0, 0.75, 6.0};
  private static final double[] USE_TIMES = {1.0, 0.8, 1.25, 0.9, 0.6, 1.1, 0.7};

  /**
   * The full loop takes about ten times as long an hour: fewer steps, fewer still of many years.
   */
  private static final int FEW = 5;

  private static final int FEW_USES = 3;

  private static final int MOST_LAPS = 10;
  private static final double SAME_CHARGE_WH = 0.01;

  private final StudyResult result;
  private final Scenario home;
  private final Forcing present;
  private final double years;
  private final List<Panels> panels;
  private final List<Bank> banks = new ArrayList<>();
  private final List<Design> designs = new ArrayList<>();
  private final List<BankSpec> specs;
  private final List<Use> uses;
  private final double[] daySunWh;

  private PlayGrids(StudyResult result) {
    this.result = result;
    home = result.scenario();
    present = result.ledger().forcing();
    years = present.calendar().years();
    daySunWh = new double[present.hours() / 24];
    for (int h = 0; h < present.hours(); h++) {
      daySunWh[h / 24] += present.solarBusWh()[h];
    }
    boolean isFull = !LaneLoop.isFor(present, design(home));
    panels = panels(home, isFull ? FEW : PANEL_TIMES.length);
    specs = banks(home.bank(), isFull ? FEW : BANK_TIMES.length);
    for (BankSpec spec : specs) {
      banks.add(new Bank(spec.packs(), spec.capacityWh(), spec.usableWh()));
      designs.add(design(home.withBank(spec)));
    }
    uses = uses(result, isFull ? FEW_USES : USE_TIMES.length);
  }

  /** All answers, on all cores. */
  public static PlayGrid of(StudyResult result) {
    return new PlayGrids(result).make();
  }

  private Design design(Scenario variant) {
    return new HomeDesign(variant, Without.NOTHING).make(result.weather(), new ArrayList<>());
  }

  private PlayGrid make() {
    int pairs = banks.size() * uses.size();
    List<List<Answer>> columns =
        IntStream.range(0, pairs)
            .parallel()
            .mapToObj(pair -> column(pair / uses.size(), pair % uses.size()))
            .toList();
    var answers = new ArrayList<Answer>();
    for (int panel = 0; panel < panels.size(); panel++) {
      for (int pair = 0; pair < pairs; pair++) {
        answers.add(columns.get(pair).get(panel));
      }
    }
    return new PlayGrid(
        panels,
        banks,
        uses,
        placeOf(panels.stream().mapToDouble(Panels::factor).toArray()),
        specs.indexOf(home.bank()),
        placeOf(uses.stream().mapToDouble(Use::ofNowShare).toArray()),
        (int) years,
        answers);
  }

  private static int placeOf(double[] factors) {
    for (int k = 0; k < factors.length; k++) {
      if (factors[k] == 1.0) {
        return k;
      }
    }
    throw new IllegalStateException("the home as it stands is not in the grid");
  }

  // ---- the axes

  private static List<Panels> panels(Scenario home, int most) {
    int strings = 0, modules = 0;
    double ratedW = 0.0;
    for (ArraySpec array : home.arrays()) {
      strings += array.inParallel();
      modules += array.modules();
      ratedW += array.ratedPowerW();
    }
    var steps = new ArrayList<Panels>();
    for (int count : counts(strings, PANEL_TIMES, most)) {
      double factor = (double) count / strings;
      steps.add(new Panels((int) Math.round(modules * factor), ratedW * factor, factor));
    }
    return steps;
  }

  private static List<BankSpec> banks(BankSpec bank, int most) {
    var specs = new ArrayList<BankSpec>();
    for (int count : counts(bank.packs(), BANK_TIMES, most)) {
      specs.add(bank.withPacks(count));
    }
    return specs;
  }

  /** So many whole numbers about the present one, it among them, by the order of the times. */
  private static Set<Integer> counts(int present, double[] times, int most) {
    var counts = new TreeSet<Integer>();
    for (int k = 0; k < times.length && counts.size() < most; k++) {
      counts.add((int) Math.max(1, Math.round(present * times[k])));
    }
    for (int next = 1; counts.size() < most; next++) {
      counts.add(next);
    }
    return counts;
  }

  private static List<Use> uses(StudyResult result, int most) {
    double dayWh = result.outcome().total().loadWh() / result.outcome().total().days();
    var shares = new TreeSet<Double>();
    for (int k = 0; k < most; k++) {
      shares.add(USE_TIMES[k]);
    }
    return shares.stream().map(share -> new Use(share, dayWh * share)).toList();
  }

  // ---- the answers

  /** Of one bank and one use, by panels. */
  private List<Answer> column(int bank, int use) {
    double draw = specs.get(bank).standbyW() - home.bank().standbyW();
    Forcing asked = asking(uses.get(use).ofNowShare(), draw);
    Design design = designs.get(bank);
    double darkDays = OutcomeReader.darkDays(asked, design).in(home.site().isNorthern() ? 12 : 6);
    int[] beating = beating(asked, design);
    return LaneLoop.isFor(asked, design)
        ? eachBySums(asked, design, darkDays, beating)
        : oneByOne(asked, design, darkDays, beating);
  }

  private Forcing asking(double share, double drawWh) {
    if (share == 1.0 && drawWh == 0.0) {
      return present;
    }
    Forcing.Columns columns = present.columns();
    columns.acAskedWh = times(columns.acAskedWh, share, 0.0);
    columns.dcAskedWh = times(columns.dcAskedWh, share, 0.0);
    columns.acShouldRunWh = times(columns.acShouldRunWh, share, 0.0);
    columns.acCanWaitWh = times(columns.acCanWaitWh, share, 0.0);
    columns.dcShouldRunWh = times(columns.dcShouldRunWh, share, 0.0);
    columns.dcCanWaitWh = times(columns.dcCanWaitWh, share, 0.0);
    columns.standingWh = times(columns.standingWh, 1.0, drawWh);
    return new Forcing(present.calendar(), columns);
  }

  private static double[] times(double[] wh, double factor, double more) {
    var out = new double[wh.length];
    for (int h = 0; h < out.length; h++) {
      out[h] = Math.max(0.0, wh[h] * factor + more);
    }
    return out;
  }

  /** Spells that lack more than the full bank gives, by panels. */
  private int[] beating(Forcing asked, Design design) {
    double[] needWh = BusNeed.wh(asked, design.inverter());
    var dayNeedWh = new double[asked.hours() / 24];
    for (int h = 0; h < needWh.length; h++) {
      dayNeedWh[h / 24] += needWh[h] - asked.otherWh(h);
    }
    var beating = new int[panels.size()];
    double givesWh = design.bank().windowWh() * design.bank().dischargeEfficiency();
    var lackWh = new double[dayNeedWh.length];
    for (int k = 0; k < beating.length; k++) {
      for (int day = 0; day < lackWh.length; day++) {
        lackWh[day] = dayNeedWh[day] - panels.get(k).factor() * daySunWh[day];
      }
      for (GreySpell spell : OutcomeReader.greySpells(lackWh, years == 1.0)) {
        beating[k] += spell.shortWh() > givesWh ? 1 : 0;
      }
    }
    return beating;
  }

  private List<Answer> eachBySums(Forcing asked, Design design, double darkDays, int[] beating) {
    var hours = BusHours.of(asked, design.inverter());
    var answers = new ArrayList<Answer>();
    for (int k = 0; k < panels.size(); k++) {
      RunSums sums = run(hours, panels.get(k).factor(), design.bank());
      answers.add(
          new Answer(sums.unmetHours() / years, sums.unmetWh() / years, darkDays, beating[k], 0.0));
    }
    return answers;
  }

  /** As a run does it: from the stated charge, or round and round until it closes. */
  private RunSums run(BusHours hours, double factor, BankLimits bank) {
    Double stated = home.startChargeFraction();
    double startWh = (stated == null ? 1.0 : stated) * bank.windowWh();
    RunSums sums = UnmetLoop.run(hours, factor, bank, startWh);
    for (int lap = 2; stated == null && lap <= MOST_LAPS; lap++) {
      double endWh = sums.endChargeWh();
      if (Math.abs(endWh - startWh) <= SAME_CHARGE_WH) {
        break;
      }
      startWh = endWh;
      sums = UnmetLoop.run(hours, factor, bank, startWh);
    }
    return sums;
  }

  private List<Answer> oneByOne(Forcing asked, Design design, double darkDays, int[] beating) {
    var answers = new ArrayList<Answer>();
    double windowWh = design.bank().windowWh();
    for (int k = 0; k < panels.size(); k++) {
      Forcing sunny = withSun(asked, panels.get(k).factor());
      Ledger ledger = Laps.brief(sunny, design, home.startChargeFraction(), windowWh).ledger();
      double unmetWh = 0.0;
      int unmetHours = 0, generatorHours = 0;
      for (int h = 0; h < ledger.hours(); h++) {
        unmetWh += ledger.unmetWh(h);
        unmetHours += ledger.isUnmet(h) ? 1 : 0;
        generatorHours += ledger.isGeneratorOn(h) ? 1 : 0;
      }
      answers.add(
          new Answer(
              unmetHours / years, unmetWh / years, darkDays, beating[k], generatorHours / years));
    }
    return answers;
  }

  private static Forcing withSun(Forcing forcing, double factor) {
    if (factor == 1.0) {
      return forcing;
    }
    Forcing.Columns columns = forcing.columns();
    columns.solarBusWh = times(columns.solarBusWh, factor, 0.0);
    columns.controllerLossWh = times(columns.controllerLossWh, factor, 0.0);
    columns.solarAvailableWh = times(columns.solarAvailableWh, factor, 0.0);
    columns.clippedWh = times(columns.clippedWh, factor, 0.0);
    return new Forcing(forcing.calendar(), columns);
  }
}
