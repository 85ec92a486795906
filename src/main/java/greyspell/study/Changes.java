package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.SnowRule;
import greyspell.calendar.Monthly;
import greyspell.cause.Said;
import greyspell.cause.SaidValue.Angle;
import greyspell.cause.SaidValue.Clock;
import greyspell.cause.SaidValue.Count;
import greyspell.cause.SaidValue.Energy;
import greyspell.cause.SaidValue.Name;
import greyspell.cause.SaidValue.Percent;
import greyspell.cause.SaidValue.Power;
import greyspell.load.ApplianceSpec;
import greyspell.load.ApplianceSpec.HourSpan;
import greyspell.load.LoadBook;
import greyspell.load.Priority;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.study.Explanation.Edit;
import greyspell.study.Explanation.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The changes that are tried, in families of one kind by rising size: what costs nothing first.
 * None of them touches a load on which a life or a health depends.
 */
final class Changes {
  private static final int MOST_APPLIANCES = 6;
  private static final int MOST_TIMES_PACKS = 4;
  private static final int FEW_PACKS = 8;
  private static final double NOON_H = 12.5;
  private static final double ROUND_THE_CLOCK_H = 20.0;
  private static final double STEP_DEG = 5.0;

  private final Scenario home;

  Changes(Scenario home) {
    this.home = home;
  }

  /** Each alone: sweeping, cleaning, what stands by. */
  List<Change> doing() {
    var changes = new ArrayList<Change>();
    var snow = new ArrayList<Edit>();
    var clean = new ArrayList<Edit>();
    for (int k = 0; k < home.arrays().size(); k++) {
      ArraySpec array = home.arrays().get(k);
      if (array.snow() != SnowRule.NONE) {
        snow.add(new Edit("arrays[" + k + "].snow", "none"));
      }
      if (!array.soilingFraction().equals(Monthly.constant(0.0))) {
        clean.add(new Edit("arrays[" + k + "].soiling", "0 %"));
      }
    }
    var standby = new ArrayList<Edit>();
    double standbyW = 0.0;
    for (int i = 0; i < appliances().size(); i++) {
      ApplianceSpec a = appliances().get(i);
      if (a.standbyW() > 0.0 && !a.isMedical()) {
        standby.add(new Edit(path(i, "standby"), "0 W"));
        standbyW += a.quantity() * a.standbyW();
      }
    }
    if (!standby.isEmpty()) {
      changes.add(
          new Change(
              Kind.SWITCH_OFF_STANDBY,
              true,
              Said.of("remedy.standby", new Power(standbyW)),
              standby));
    }
    if (!snow.isEmpty()) {
      changes.add(new Change(Kind.CLEAR_SNOW, true, Said.of("remedy.snow"), snow));
    }
    if (!clean.isEmpty()) {
      changes.add(new Change(Kind.CLEAN, true, Said.of("remedy.clean"), clean));
    }
    return changes;
  }

  /** Each load that need not run when it does, at midday instead; then all of them. */
  List<Change> moving() {
    var changes = new ArrayList<Change>();
    var all = new ArrayList<Edit>();
    for (int i = 0; i < appliances().size(); i++) {
      ApplianceSpec a = appliances().get(i);
      double spanH = spanH(a);
      boolean isMovable =
          a.quantity() > 0
              && a.powerW() > 0.0
              && a.priority() != Priority.MUST_RUN
              && !a.isMedical()
              && a.weatherDraw() == null
              && spanH < ROUND_THE_CLOCK_H;
      if (isMovable) {
        double runH = spanH * a.dutyShare() * mostFactor(a);
        int lengthH = (int) Math.max(2.0, Math.ceil(runH));
        int from = (int) Math.round(NOON_H - lengthH / 2.0);
        double duty = a.dutyShare() * spanH / lengthH;
        if (from >= 7 && !isAtMidday(a, from, from + lengthH)) {
          List<Edit> edits =
              List.of(
                  new Edit(path(i, "hours"), hour(from) + "-" + hour(from + lengthH)),
                  new Edit(path(i, "duty"), Show.number(100.0 * duty, 6) + " %"));
          changes.add(
              new Change(
                  Kind.MOVE_LOAD,
                  true,
                  Said.of(
                      "remedy.move",
                      new Name(a.name()),
                      new Clock(from),
                      new Clock(from + lengthH)),
                  edits));
          all.addAll(edits);
        }
      }
    }
    if (changes.size() > 1) {
      changes.add(
          new Change(
              Kind.MOVE_LOAD, true, Said.of("remedy.move.all", new Count(changes.size())), all));
    }
    return changes;
  }

  /** Everything by so much less. */
  List<Change> less(double dailyWh) {
    var changes = new ArrayList<Change>();
    double now = home.load().growthFraction();
    for (int percent = 5; percent <= 50; percent += 5) {
      double growth = (1.0 + now) * (1.0 - percent / 100.0) - 1.0;
      boolean isMedical = appliances().stream().anyMatch(ApplianceSpec::isMedical);
      if (growth >= -0.5 && !isMedical) {
        changes.add(
            new Change(
                Kind.USE_LESS,
                true,
                Said.of(
                    "remedy.less.all",
                    new Percent(percent / 100.0),
                    new Energy(dailyWh * percent / 100.0),
                    new Energy(dailyWh)),
                List.of(new Edit("loads.growth", Show.number(100.0 * growth, 6) + " %"))));
      }
    }
    return changes;
  }

  /** The hungriest appliances, a family each. */
  List<List<Change>> lessOfOne(List<LoadBook> books, List<Integer> months) {
    var order = new ArrayList<Integer>();
    for (int i = 0; i < appliances().size(); i++) {
      if (!appliances().get(i).isMedical() && appliances().get(i).powerW() > 0.0) {
        order.add(i);
      }
    }
    order.sort(Comparator.comparingDouble(i -> -dailyWh(books.get(i), months)));
    var families = new ArrayList<List<Change>>();
    for (int i : order.subList(0, Math.min(MOST_APPLIANCES, order.size()))) {
      families.add(lessOf(i, dailyWh(books.get(i), months)));
    }
    return families;
  }

  private List<Change> lessOf(int i, double dailyWh) {
    ApplianceSpec a = appliances().get(i);
    var changes = new ArrayList<Change>();
    for (int tenths = 9; tenths >= 0; tenths--) {
      if (tenths > 0 || a.weatherDraw() == null) {
        double left = tenths / 10.0;
        var edits = new ArrayList<Edit>();
        edits.add(new Edit(path(i, "power"), Show.number(left * a.powerW(), 6) + " W"));
        if (a.standbyW() > 0.0) {
          edits.add(new Edit(path(i, "standby"), Show.number(left * a.standbyW(), 6) + " W"));
        }
        Said said =
            tenths == 0
                ? Said.of("remedy.without", new Name(a.name()), new Energy(dailyWh))
                : Said.of(
                    "remedy.less",
                    new Name(a.name()),
                    new Energy((1.0 - left) * dailyWh),
                    new Energy(dailyWh));
        changes.add(new Change(Kind.USE_LESS, true, said, edits));
      }
    }
    return changes;
  }

  /** All planes steeper or flatter, the smallest turn first. */
  List<Change> tilting() {
    var changes = new ArrayList<Change>();
    for (int step = 1; step <= 18; step++) {
      tilt(changes, step * STEP_DEG);
      tilt(changes, -step * STEP_DEG);
    }
    return changes;
  }

  private void tilt(List<Change> changes, double turnDeg) {
    var edits = new ArrayList<Edit>();
    for (int k = 0; k < home.arrays().size(); k++) {
      double nowDeg = home.arrays().get(k).tiltDeg();
      double tiltDeg = Math.min(90.0, Math.max(0.0, nowDeg + turnDeg));
      if (tiltDeg != nowDeg) {
        edits.add(new Edit("arrays[" + k + "].tilt", Show.trimmed(tiltDeg, 3) + " deg"));
      }
    }
    double firstDeg = home.arrays().get(0).tiltDeg();
    boolean isWhole = home.arrays().stream().anyMatch(a -> isWithin(a.tiltDeg() + turnDeg));
    if (!edits.isEmpty() && isWhole) {
      Said said =
          home.arrays().size() == 1
              ? Said.of("remedy.tilt", new Angle(firstDeg + turnDeg), new Angle(firstDeg))
              : Said.of(
                  turnDeg > 0.0 ? "remedy.steeper" : "remedy.flatter",
                  new Angle(Math.abs(turnDeg)));
      changes.add(new Change(Kind.TILT, false, said, edits));
    }
  }

  private static boolean isWithin(double tiltDeg) {
    return tiltDeg >= 0.0 && tiltDeg <= 90.0;
  }

  /** More strings that the rules allow, with more controllers where they are needed. */
  List<Change> panels() {
    PanelSteps steps = PanelSteps.of(home, new PanelSteps.Room(null, null, true));
    int now = home.arrays().stream().mapToInt(ArraySpec::modules).sum();
    var changes = new ArrayList<Change>();
    for (PanelSteps.Step step : steps.steps()) {
      if (step.modules() > now) {
        var edits = new ArrayList<Edit>();
        for (int k = 0; k < home.arrays().size(); k++) {
          int strings = step.home().arrays().get(k).inParallel();
          if (strings != home.arrays().get(k).inParallel()) {
            edits.add(new Edit("arrays[" + k + "].in_parallel", Integer.toString(strings)));
          }
        }
        int more = step.controllers() - home.controller().count();
        if (more > 0) {
          edits.add(new Edit("controller.count", Integer.toString(step.controllers())));
        }
        changes.add(
            new Change(
                Kind.PANELS,
                false,
                more > 0
                    ? Said.of(
                        "remedy.panels.controllers",
                        new Count(step.modules() - now),
                        new Count(step.modules()),
                        new Count(more))
                    : Said.of(
                        "remedy.panels",
                        new Count(step.modules() - now),
                        new Count(step.modules())),
                edits));
      }
    }
    return changes;
  }

  /** More of the home's own batteries. */
  List<Change> storage() {
    int now = home.bank().packs();
    double packWh = home.bank().capacityWh() / now;
    var changes = new ArrayList<Change>();
    for (int packs = now + 1; packs <= Math.max(MOST_TIMES_PACKS * now, now + FEW_PACKS); packs++) {
      changes.add(
          new Change(
              Kind.STORAGE,
              false,
              Said.of(
                  "remedy.storage",
                  new Energy((packs - now) * packWh),
                  new Count(packs - now),
                  new Energy(packs * packWh)),
              List.of(new Edit("bank.in_parallel", Integer.toString(packs)))));
    }
    return changes;
  }

  private List<ApplianceSpec> appliances() {
    return home.load().appliances();
  }

  private static String path(int appliance, String key) {
    return "loads.appliances[" + appliance + "]." + key;
  }

  private static String hour(int hour) {
    return (hour < 10 ? "0" : "") + hour + ":00";
  }

  private static double spanH(ApplianceSpec a) {
    double sumH = 0.0;
    for (HourSpan span : a.hours()) {
      sumH +=
          span.toH() > span.fromH() ? span.toH() - span.fromH() : 24.0 + span.toH() - span.fromH();
    }
    return sumH;
  }

  private static boolean isAtMidday(ApplianceSpec a, int from, int to) {
    return a.hours().stream()
        .allMatch(s -> s.fromH() >= from && s.toH() <= to && s.toH() > s.fromH());
  }

  private static double mostFactor(ApplianceSpec a) {
    double most = 0.0;
    for (int month = 1; month <= 12; month++) {
      most = Math.max(most, a.monthFactor().in(month));
    }
    return most;
  }

  /** Of an average day in these months. */
  static double dailyWh(LoadBook book, List<Integer> months) {
    double sumWh = 0.0;
    for (int month : months) {
      sumWh += book.monthlyWh().in(month);
    }
    return sumWh / (months.size() * 365.25 / 12.0);
  }
}
