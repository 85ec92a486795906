package greyspell.operate;

import greyspell.balance.Forcing;
import greyspell.calendar.HourCalendar;
import greyspell.load.ApplianceSpec;
import greyspell.load.Priority;
import greyspell.power.GeneratorRules;
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
 * @param aboveReserveWh charge above the reserve
 * @param heldByColdWh of that, what the cold of these days keeps from being drawn now
 * @param days looked ahead
 * @param sky which stretches were taken
 * @param years of weather from which they are
 * @param all with everything on
 * @param withoutWaiting without what can wait
 * @param mustRun with only what must run
 * @param offs what each appliance buys, one after another; none where the charge lasts in all
 *     stretches with everything on
 * @param generator null without one
 */
public record Today(
    Scenario home,
    LocalDateTime at,
    double chargeShare,
    double aboveReserveWh,
    double heldByColdWh,
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
   * @param plan when to start and to stop it instead; null where the charge lasts without it in
   *     nine of ten stretches
   * @param mayNow whether its hours allow it now, and someone is at home where it is started by
   *     hand
   */
  public record Engine(Outlook byRule, @Nullable EnginePlan plan, boolean mayNow) {}

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
    List<Forcing> lived = LookAhead.lived(trials);
    List<Stretch> stretches = Stretch.of(lived, at, hours, sky);
    var look = new LookAhead(trials, lived, stretches, hours);
    BankSpec bank = home.bank();
    double aboveWh = Math.min(bank.usableWh(), bank.aboveReserveWh(asked.chargeShare()));
    Outlook all = look.of(home, aboveWh, false);
    return new Today(
        home,
        at,
        asked.chargeShare(),
        aboveWh,
        Math.min(aboveWh, look.lockedShare() * bank.usableWh()),
        asked.days(),
        sky.words(),
        trials.years(),
        all,
        look.of(only(home, EnumSet.of(Priority.MUST_RUN, Priority.SHOULD_RUN)), aboveWh, false),
        look.of(only(home, EnumSet.of(Priority.MUST_RUN)), aboveWh, false),
        all.reached() == 0 ? List.of() : offs(look, home, aboveWh),
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

  /** The one that asks for most first, then the next beside it. */
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
    EnginePlan plan =
        all.reachedShare() <= EnginePlan.FEW ? null : EnginePlan.of(look, home, generator, aboveWh);
    return new Engine(look.of(home, aboveWh, true), plan, mayRun(generator.rules(), at));
  }

  private static boolean mayRun(GeneratorRules rules, LocalDateTime at) {
    HourCalendar year = HourCalendar.of(at.getYear(), 1);
    int hour = year.hourOf(at.getYear(), at.getMonthValue(), at.getDayOfMonth(), at.getHour());
    return rules.permitted().hours(year)[hour]
        && (rules.policy() != GeneratorRules.Policy.MANUAL || rules.home().hours(year)[hour]);
  }
}
