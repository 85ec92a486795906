package greyspell.operate;

import greyspell.load.ApplianceSpec;
import greyspell.load.Priority;
import greyspell.power.Charger;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.study.Trials;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * From now on: how long the charge lasts for each class of loads, the chance of reaching the
 * reserve, what each thing that is switched off buys, and what a generator would have to do. The
 * days ahead are those of the years that are known, around this date; they are no forecast.
 *
 * @param at now, local standard time
 * @param chargeShare of the bank, as a monitor shows it
 * @param days looked ahead
 * @param sky which stretches were taken
 * @param years of weather from which they are
 * @param all with everything on
 * @param withoutWaiting without what can wait
 * @param mustRun with only what must run
 * @param offs what each appliance buys, one after another
 * @param generator null without one
 */
public record Today(
    Scenario home,
    LocalDateTime at,
    double chargeShare,
    double aboveReserveWh,
    int days,
    String sky,
    int years,
    Outlook all,
    Outlook withoutWaiting,
    Outlook mustRun,
    List<Off> offs,
    @Nullable Engine generator) {
  private static final int HOURS_PER_DAY = 24;
  private static final int MOST_OFFS = 5;
  private static final double LEAST_WH = 20.0;

  /** A run is long enough when the reserve is reached in no more of the stretches than this. */
  private static final double FEW = 0.1;

  private static final int LONGEST_RUN_H = 24;

  public Today {
    offs = List.copyOf(offs);
  }

  /**
   * Something switched off beside what was switched off before it.
   *
   * @param dayWh what it asks for in a day, as a mean of the stretches
   */
  public record Off(String name, double dayWh, Outlook with) {}

  /**
   * What the generator would do.
   *
   * @param byRule with the rule that the scenario states
   * @param runH to run once and now so that the reserve is reached in at most one stretch of ten; 0
   *     where that is so without it, null where a day of running is not enough
   * @param runFuelL that this burns
   * @param after then
   * @param mayNow whether the permitted hours allow it now
   */
  public record Engine(
      Outlook byRule, @Nullable Integer runH, double runFuelL, Outlook after, boolean mayNow) {}

  /**
   * What is asked.
   *
   * @param chargeShare of the bank, as a monitor shows it: 0 to 1
   */
  public record Asked(LocalDateTime at, double chargeShare, int days, String sky) {}

  /** Looks ahead from now. */
  public static Today of(Trials trials, Asked asked) {
    Scenario home = trials.home();
    int hours = asked.days() * HOURS_PER_DAY;
    LocalDateTime at = asked.at();
    var sky = Stretch.Sky.valueOf(asked.sky().toUpperCase(java.util.Locale.ROOT));
    List<Stretch> stretches =
        Stretch.of(trials, at.getMonthValue(), at.getDayOfMonth(), at.getHour(), hours, sky);
    var look = new LookAhead(trials, stretches, hours);
    BankSpec bank = home.bank();
    double aboveWh = Math.max(0.0, asked.chargeShare() * bank.contentWh() - bank.reserveWh());
    Outlook all = look.of(home, aboveWh, false);
    return new Today(
        home,
        at,
        asked.chargeShare(),
        Math.min(aboveWh, bank.usableWh()),
        asked.days(),
        sky.words(),
        trials.years(),
        all,
        look.of(only(home, EnumSet.of(Priority.MUST_RUN, Priority.SHOULD_RUN)), aboveWh, false),
        look.of(only(home, EnumSet.of(Priority.MUST_RUN)), aboveWh, false),
        offs(look, home, aboveWh),
        engine(look, home, at, aboveWh, all));
  }

  private static Scenario only(Scenario home, Set<Priority> classes) {
    return with(
        home,
        home.load().appliances().stream()
            .filter(a -> classes.contains(a.priority()) || a.isMedical())
            .toList());
  }

  private static Scenario with(Scenario home, List<ApplianceSpec> appliances) {
    return home.withLoad(home.load().withAppliances(appliances));
  }

  /** The one that helps most first, then the next beside it. */
  private static List<Off> offs(LookAhead look, Scenario home, double aboveWh) {
    var left = new ArrayList<ApplianceSpec>();
    for (ApplianceSpec a : home.load().appliances()) {
      if (a.priority() != Priority.MUST_RUN && !a.isMedical()) {
        left.add(a);
      }
    }
    var dayWh = new HashMap<ApplianceSpec, Double>();
    double allWh = look.askedDayWh(home);
    for (ApplianceSpec a : left) {
      var others = new ArrayList<>(home.load().appliances());
      others.remove(a);
      dayWh.put(a, allWh - look.askedDayWh(with(home, others)));
    }
    left.sort(Comparator.comparingDouble((ApplianceSpec a) -> -dayWh.getOrDefault(a, 0.0)));
    var offs = new ArrayList<Off>();
    var on = new ArrayList<>(home.load().appliances());
    for (ApplianceSpec a : left) {
      double wh = dayWh.getOrDefault(a, 0.0);
      if (offs.size() < MOST_OFFS && wh >= LEAST_WH) {
        on.remove(a);
        offs.add(new Off(a.name(), wh, look.of(with(home, on), aboveWh, false)));
      }
    }
    return offs;
  }

  private static @Nullable Engine engine(
      LookAhead look, Scenario home, LocalDateTime at, double aboveWh, Outlook all) {
    Scenario.Generator generator = home.generator();
    if (generator == null) {
      return null;
    }
    Charger charger = generator.rules().charger();
    double dcW = Math.min(charger.mostAcW(), generator.spec().ratedPowerW()) * charger.efficiency();
    double perHourWh = Math.min(dcW, home.bank().maxChargeW()) * home.bank().chargeEfficiency();
    double litresPerH =
        generator.spec().fuelLPerH(Math.min(charger.mostAcW(), generator.spec().ratedPowerW()));
    Integer runH = null;
    Outlook after = all;
    for (int h = 0; h <= LONGEST_RUN_H && runH == null; h++) {
      after = h == 0 ? all : look.of(home, aboveWh + h * perHourWh, false);
      runH = after.reachedShare() <= FEW ? Integer.valueOf(h) : null;
    }
    return new Engine(
        look.of(home, aboveWh, true),
        runH,
        (runH == null ? LONGEST_RUN_H : runH) * litresPerH,
        after,
        mayRun(generator, at));
  }

  private static boolean mayRun(Scenario.Generator generator, LocalDateTime at) {
    double hour = at.getHour();
    return generator.rules().permitted().spans().stream()
        .anyMatch(
            s ->
                s.fromH() < s.toH()
                    ? hour >= s.fromH() && hour + 1.0 <= s.toH()
                    : hour >= s.fromH() || hour + 1.0 <= s.toH());
  }
}
