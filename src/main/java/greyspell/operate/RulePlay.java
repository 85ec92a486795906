package greyspell.operate;

import greyspell.balance.Balance;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.balance.Rounds;
import greyspell.balance.SteadyState;
import greyspell.calendar.HourCalendar;
import greyspell.calendar.Winter;
import greyspell.load.ApplianceSpec;
import greyspell.operate.RuleCard.Price;
import greyspell.power.GeneratorSpec;
import greyspell.scenario.Scenario;
import greyspell.study.Trials;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The home living by rules. What a rule leaves off today changes only days after today, so the
 * whole is run again and again with the days on which the charge of the last run calls for it,
 * until they no longer change; rules that do not come to rest are not used.
 */
final class RulePlay {
  private static final int HOURS_PER_DAY = 24;
  private static final int MOST_RUNS = 60;
  private static final int LATEST_SUNSET = 22;

  private final Scenario home;
  private final List<Part> parts = new ArrayList<>();

  /** One part of the weather with what each appliance asks for in it. */
  private static final class Part {
    final Forcing forcing;
    final Design design;
    final List<OneLoad> loads;
    final int[] sunset;

    Part(Forcing forcing, Design design, List<OneLoad> loads) {
      this.forcing = forcing;
      this.design = design;
      this.loads = loads;
      sunset = sunsets(forcing);
    }
  }

  RulePlay(Trials trials) {
    home = trials.home();
    for (int p = 0; p < trials.parts(); p++) {
      Forcing all = trials.books(p, home, Set.of()).forcing();
      var loads = new ArrayList<OneLoad>();
      for (ApplianceSpec a : home.load().appliances()) {
        var others = new ArrayList<>(home.load().appliances());
        others.remove(a);
        loads.add(OneLoad.of(a.priority(), all, trials.forcing(p, with(others), Set.of())));
      }
      parts.add(new Part(all, trials.design(p, home, Set.of()), loads));
    }
  }

  /** Asked by an appliance in all years together. */
  double yearlyWh(int appliance) {
    double sumWh = 0.0;
    for (Part part : parts) {
      sumWh += part.loads.get(appliance).sumWh();
    }
    return sumWh;
  }

  private Scenario with(List<ApplianceSpec> appliances) {
    return home.withLoad(home.load().withAppliances(appliances));
  }

  /** The first hour of each day's evening in which the panels bring nothing. */
  private static int[] sunsets(Forcing forcing) {
    double[] sunWh = forcing.solarNominalWh();
    var sunset = new int[forcing.hours() / HOURS_PER_DAY];
    for (int d = 0; d < sunset.length; d++) {
      int h = d * HOURS_PER_DAY + LATEST_SUNSET;
      while (h > d * HOURS_PER_DAY + HOURS_PER_DAY / 2 && sunWh[h - 1] <= 0.0) {
        h--;
      }
      sunset[d] = h;
    }
    return sunset;
  }

  /**
   * Prices of the rules together: on every second whole winter from the first, and on the others.
   *
   * @return two prices, or none where the rules do not come to rest
   */
  List<Price> prices(List<Rule> rules) {
    GeneratorSpec generator = home.generator() == null ? null : home.generator().spec();
    var learnt = new Sums(generator);
    var tried = new Sums(generator);
    int winter = 0;
    for (Part part : parts) {
      Ledger without = run(part.forcing, part.design);
      boolean[][] off = new boolean[rules.size()][part.sunset.length];
      Forcing lived = part.forcing;
      Ledger with = without;
      boolean isAtRest = rules.isEmpty();
      for (int k = 0; k < MOST_RUNS && !isAtRest; k++) {
        boolean[][] next = called(part, rules, with);
        isAtRest = Arrays.deepEquals(next, off);
        if (!isAtRest) {
          off = next;
          lived = living(part, rules, off);
          with = run(lived, part.design);
        }
      }
      if (!isAtRest) {
        return List.of();
      }
      HourCalendar calendar = part.forcing.calendar();
      for (Winter w : calendar.winters(home.site().isNorthern())) {
        if (w.isWhole()) {
          Sums sums = winter % 2 == 0 ? learnt : tried;
          sums.add(without, with, part.forcing, lived, off, w);
          winter++;
        }
      }
    }
    return List.of(learnt.price(), tried.price());
  }

  /** As {@code run} does it: from the stated charge, else from the one to which it settles. */
  private Ledger run(Forcing forcing, Design design) {
    Ledger books = Ledger.of(forcing, design);
    Double statedShare = home.startChargeFraction();
    if (statedShare == null) {
      SteadyState.run(books.windowWh(), new Rounds(forcing, design, books)::run);
    } else {
      Balance.run(forcing, design, statedShare * books.windowWh(), books);
    }
    return books;
  }

  /** The days, from sunset on, on which each rule holds. */
  private boolean[][] called(Part part, List<Rule> rules, Ledger books) {
    int days = part.sunset.length;
    boolean[][] off = new boolean[rules.size()][days];
    for (int d = 0; d < days; d++) {
      int h = part.sunset[d];
      double share = home.bank().monitorShare(books.chargeWh()[h - 1]);
      boolean isGrey = isGrey(part, (d + 1) % days);
      for (int r = 0; r < rules.size(); r++) {
        Rule rule = rules.get(r);
        off[r][d] = share < rule.belowShare() && (isGrey || !rule.ifGrey());
      }
    }
    return off;
  }

  private static boolean isGrey(Part part, int day) {
    Forcing f = part.forcing;
    double sunWh = 0.0, needWh = 0.0;
    for (int h = day * HOURS_PER_DAY; h < (day + 1) * HOURS_PER_DAY; h++) {
      sunWh += f.solarBusWh()[h];
      needWh += f.acAskedWh()[h] + f.dcAskedWh()[h] + f.standingWh()[h];
    }
    return sunWh < needWh;
  }

  private static Forcing living(Part part, List<Rule> rules, boolean[][] off) {
    Forcing.Columns columns = part.forcing.columns();
    OneLoad.own(columns);
    int days = part.sunset.length, hours = part.forcing.hours();
    for (int d = 0; d < days; d++) {
      int from = part.sunset[d];
      int to = d + 1 < days ? part.sunset[d + 1] : part.sunset[0] + hours;
      Set<Integer> stays = staysOff(rules, off, d);
      for (int a : stays) {
        for (int h = from; h < to; h++) {
          part.loads.get(a).leaveOff(columns, h % hours);
        }
      }
    }
    return new Forcing(part.forcing.calendar(), columns);
  }

  private static Set<Integer> staysOff(List<Rule> rules, boolean[][] off, int day) {
    var stays = new TreeSet<Integer>();
    for (int r = 0; r < rules.size(); r++) {
      if (off[r][day]) {
        stays.addAll(rules.get(r).appliances());
      }
    }
    return stays;
  }

  /** Of some winters. */
  private static final class Sums {
    private final @Nullable GeneratorSpec generator;
    private int winters;
    private double unmetWh, withWh, givenUpWh, hours, hoursWith, ruleDays, fuelL, fuelWithL;

    Sums(@Nullable GeneratorSpec generator) {
      this.generator = generator;
    }

    void add(Ledger without, Ledger with, Forcing asked, Forcing lived, boolean[][] off, Winter w) {
      winters++;
      for (int h = w.fromHour(); h < w.toHour(); h++) {
        unmetWh += without.unmetWh(h);
        withWh += with.unmetWh(h);
        hours += without.isUnmet(h) ? 1 : 0;
        hoursWith += with.isUnmet(h) ? 1 : 0;
        fuelL += fuelL(without, h);
        fuelWithL += fuelL(with, h);
        givenUpWh +=
            asked.acAskedWh()[h]
                - lived.acAskedWh()[h]
                + asked.dcAskedWh()[h]
                - lived.dcAskedWh()[h]
                + with.letGoWh(h)
                - without.letGoWh(h);
      }
      for (int d = w.fromHour() / HOURS_PER_DAY; d < w.toHour() / HOURS_PER_DAY; d++) {
        boolean isOff = false;
        for (boolean[] rule : off) {
          isOff |= rule[d];
        }
        ruleDays += isOff ? 1 : 0;
      }
    }

    private double fuelL(Ledger books, int hour) {
      return generator != null && books.isGeneratorOn(hour)
          ? generator.fuelLPerH(books.generatorWh(hour))
          : 0.0;
    }

    Price price() {
      double n = Math.max(1, winters);
      return new Price(
          unmetWh / n,
          withWh / n,
          hours / n,
          hoursWith / n,
          givenUpWh / n,
          ruleDays / n,
          fuelL / n,
          fuelWithL / n);
    }
  }
}
