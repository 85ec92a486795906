package greyspell.scenario;

import greyspell.load.ApplianceSpec;
import greyspell.power.Charger;
import greyspell.power.Fuel;
import greyspell.power.GeneratorRules;
import greyspell.power.GeneratorRules.Policy;
import greyspell.power.GeneratorSpec;
import greyspell.power.GeneratorSpec.FuelAt;
import greyspell.power.RunTimes;
import greyspell.quantity.Show;
import greyspell.quantity.Unit;
import java.time.DayOfWeek;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A generator: its data sheet, and when it runs. */
final class GeneratorBinder {
  private static final double METRES_OF_STEP = 300.0;
  private static final double IDLE_SHARE = 0.25;
  private static final double HIGHEST_EFFICIENCY = 0.45;
  private static final double LOWEST_EFFICIENCY = 0.05;
  private static final double LOW_LOAD_SHARE = 0.25;
  private static final double MILD_AIR_C = 15.0;
  private static final Charger NO_CHARGER = new Charger(1.0, 1.0);
  private static final List<FuelAt> NO_FUEL = List.of(new FuelAt(1.0, 1.0));
  private static final GeneratorSpec NO_GENERATOR =
      new GeneratorSpec("", 1, 1.0, Fuel.DIESEL, NO_FUEL, GeneratorSpec.Derating.NONE);
  private static final GeneratorRules NO_RULES =
      new GeneratorRules(Policy.AUTO, 0.0, 1.0, 0, RunTimes.ALWAYS, RunTimes.ALWAYS, NO_CHARGER);

  private final Border border;
  private final String file;

  /**
   * @param file of the scenario
   */
  GeneratorBinder(Border border, String file) {
    this.border = border;
    this.file = file;
  }

  /**
   * With its rules.
   *
   * @param inverterCharger of the inverter, null if it has none
   */
  Scenario.Generator generator(Block block, @Nullable Charger inverterCharger, double elevationM) {
    GeneratorSpec spec = spec(block);
    GeneratorRules rules = rules(block, spec, inverterCharger);
    judge(spec, rules, elevationM);
    return new Scenario.Generator(spec, rules);
  }

  // ---- data sheet -------------------------------------------------------------------------------

  GeneratorSpec spec(Block block) {
    int count = block.whole(ArrayKeys.COUNT);
    double ratedPowerW = block.measure(PowerKeys.GENERATOR_POWER);
    var fuel = block.word(PowerKeys.FUEL, Fuel.values());
    List<FuelAt> one = fuelUse(block);
    GeneratorSpec.Derating derating = derating(block);
    try {
      var all = new ArrayList<FuelAt>();
      for (FuelAt at : one) {
        all.add(new FuelAt(at.loadShare(), at.fuelLPerH() * count));
      }
      return new GeneratorSpec(
          block.text(PowerKeys.GENERATOR_NAME), count, ratedPowerW * count, fuel, all, derating);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_GENERATOR);
    }
  }

  /** Points, or a straight line; where the scenario states the one it goes before the library's. */
  private List<FuelAt> fuelUse(Block block) {
    Key idle = PowerKeys.FUEL_AT_NO_LOAD;
    Key full = PowerKeys.FUEL_AT_FULL_LOAD;
    boolean hasPoints = block.has(PowerKeys.FUEL_USE);
    boolean hasLine = block.has(idle) || block.has(full);
    if (hasPoints && hasLine) {
      String pointsFile = block.file(PowerKeys.FUEL_USE);
      String lineFile = block.file(block.has(idle) ? idle : full);
      if (pointsFile.equals(lineFile)) {
        border.fault(
            block.place(PowerKeys.FUEL_USE),
            "\"fuel_use\" beside \""
                + (block.has(idle) ? idle.name : full.name)
                + "\" in generator",
            "the fuel is stated one way: by points, or from no load to full load",
            "Leave one of them out.");
        return NO_FUEL;
      }
      hasPoints = pointsFile.equals(file);
    }
    if (hasPoints || !hasLine) {
      return points(block);
    }
    if (!block.has(idle) || !block.has(full)) {
      Key lacking = block.has(idle) ? full : idle;
      border.fault(
          block.place(),
          "\"" + lacking.name + "\" is missing in generator",
          "must stand beside \"" + (lacking == full ? idle.name : full.name) + "\"",
          "Both ends make the line. Where only one figure is known write fuel_use: [[50 %, 1.2 l/h]].");
      return NO_FUEL;
    }
    double idleLPerH = block.measure(idle);
    double fullLPerH = block.measure(full);
    if (idleLPerH >= fullLPerH) {
      border.fault(
          block.place(idle),
          "fuel_at_no_load not below fuel_at_full_load",
          "an engine that gives power burns more",
          "Are the two swapped?");
    }
    return Double.isNaN(idleLPerH) || Double.isNaN(fullLPerH)
        ? NO_FUEL
        : GeneratorSpec.line(idleLPerH, fullLPerH);
  }

  private List<FuelAt> points(Block block) {
    Key key = PowerKeys.FUEL_USE;
    List<Block.PointXY> written = block.curve(key);
    if (written == null) {
      if (!block.isMistyped(key)) {
        border.fault(
            block.place(),
            "neither \"fuel_use\" nor \"fuel_at_no_load\" with \"fuel_at_full_load\" in generator",
            "must say what it burns in an hour",
            "Write for instance \"fuel_use: [[50 %, 1.2 l/h], [100 %, 2.1 l/h]]\".");
      }
      return NO_FUEL;
    }
    var points = new ArrayList<FuelAt>();
    for (Block.PointXY p : written) {
      if (Double.isNaN(p.x) || Double.isNaN(p.y)) {
        return NO_FUEL; // told already
      }
      if (!points.isEmpty() && p.y < points.get(points.size() - 1).fuelLPerH()) {
        border.fault(
            block.place(key),
            key.name + ": found less fuel for more load",
            "must not fall",
            "Are two of the figures swapped?");
      }
      points.add(new FuelAt(p.x, p.y));
    }
    return points.size() == 1 ? lineThrough(block, points.get(0)) : points;
  }

  /** A sheet with one figure only. */
  private List<FuelAt> lineThrough(Block block, FuelAt at) {
    Key key = PowerKeys.FUEL_USE;
    if (at.loadShare() <= 0.0) {
      border.fault(
          block.place(key),
          key.name + ": found one point, at no load",
          "must hold a point with a load",
          "Add what it burns at full or at half load.");
      return NO_FUEL;
    }
    double fullLPerH = at.fuelLPerH() / (IDLE_SHARE + (1.0 - IDLE_SHARE) * at.loadShare());
    border.assume(
        block.path(key),
        "a quarter of the full-load fuel with nothing drawn, a straight line through the one figure"
            + " stated",
        "own choice, no source");
    return GeneratorSpec.line(IDLE_SHARE * fullLPerH, fullLPerH);
  }

  private GeneratorSpec.Derating derating(Block generator) {
    Key key = PowerKeys.GENERATOR_DERATING;
    Block block = generator.block(key);
    if (block == null) {
      block = Block.empty(PowerKeys.DERATING, file, generator.path(key), border);
    }
    try {
      return new GeneratorSpec.Derating(
          block.measure(PowerKeys.ABOVE_ELEVATION),
          block.measure(PowerKeys.PER_300_M) / METRES_OF_STEP,
          block.measure(PowerKeys.ABOVE_TEMPERATURE),
          block.measure(PowerKeys.PER_DEGREE));
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, GeneratorSpec.Derating.NONE);
    }
  }

  // ---- rules ------------------------------------------------------------------------------------

  private GeneratorRules rules(Block block, GeneratorSpec spec, @Nullable Charger inverterCharger) {
    Policy policy = block.word(PowerKeys.POLICY, Policy.values());
    double start = block.measure(PowerKeys.START_BELOW);
    double stop = block.measure(PowerKeys.STOP_ABOVE);
    if (start >= stop) {
      border.fault(
          block.has(PowerKeys.START_BELOW)
              ? block.place(PowerKeys.START_BELOW)
              : block.place(PowerKeys.STOP_ABOVE),
          "start_below: " + Show.percent(start) + " with stop_above: " + Show.percent(stop),
          "it must start below the charge at which it stops",
          "Are the two swapped?");
    }
    int minimumRunH = minimumRunH(block);
    RunTimes permitted =
        new RunTimes(
            spans(block, PowerKeys.PERMITTED_HOURS),
            days(block, PowerKeys.PERMITTED_DAYS),
            months(block));
    RunTimes home = home(block, policy);
    Charger charger = charger(block, spec, inverterCharger);
    try {
      return new GeneratorRules(policy, start, stop, minimumRunH, permitted, home, charger);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_RULES);
    }
  }

  private int minimumRunH(Block block) {
    Key key = PowerKeys.MINIMUM_RUN;
    double hours = block.measure(key);
    if (Double.isNaN(hours)) {
      return 0;
    }
    if (Math.rint(hours) != hours) {
      border.fault(
          block.place(key),
          key.name + ": found " + Unit.HOUR.text(hours),
          "must be whole hours",
          "The books are hourly: write 1 h or 2 h.");
    }
    return (int) hours;
  }

  /** Only the manual policy asks for it. */
  private RunTimes home(Block block, Policy policy) {
    if (policy == Policy.AUTO) {
      for (Key key : List.of(PowerKeys.HOME_HOURS, PowerKeys.HOME_DAYS)) {
        if (block.has(key)) {
          border.fault(
              block.place(key),
              "\"" + key.name + "\" with policy: auto",
              "has no meaning there",
              "Leave it out, or write policy: manual.");
        }
      }
      return RunTimes.ALWAYS;
    }
    return new RunTimes(
        spans(block, PowerKeys.HOME_HOURS),
        days(block, PowerKeys.HOME_DAYS),
        EnumSet.allOf(Month.class));
  }

  private List<RunTimes.Span> spans(Block block, Key key) {
    String text = LoadBinder.words(block, key);
    if (text == null) {
      if (!block.has(key)) {
        border.assume(block.path(key), key.usual, key.why);
      }
      text = key.usual;
    }
    List<ApplianceSpec.HourSpan> read = LoadWords.hours(text);
    var spans = new ArrayList<RunTimes.Span>();
    if (read == null) {
      LoadBinder.refuse(
          block,
          key,
          text,
          "must be spans of the day such as 08:00-20:00",
          "From 00:00 to 24:00, in quotes or [ ] if there are several.");
      return spans;
    }
    for (ApplianceSpec.HourSpan span : read) {
      spans.add(new RunTimes.Span(span.fromH(), span.toH()));
    }
    return spans;
  }

  private static Set<DayOfWeek> days(Block block, Key key) {
    String text = LoadBinder.words(block, key);
    Set<DayOfWeek> days = LoadWords.days(text == null ? key.usual : text);
    if (days != null) {
      return days;
    }
    LoadBinder.refuse(
        block,
        key,
        text == null ? "" : text,
        "must be days such as Mon-Fri or Sat, Sun",
        "English days, three letters are enough.");
    return EnumSet.allOf(DayOfWeek.class);
  }

  private static Set<Month> months(Block block) {
    Key key = PowerKeys.PERMITTED_MONTHS;
    String text = LoadBinder.words(block, key);
    var factors = LoadWords.months(text == null ? key.usual : text);
    var months = EnumSet.noneOf(Month.class);
    if (factors == null) {
      LoadBinder.refuse(
          block,
          key,
          text == null ? "" : text,
          "must be months such as Nov-Feb",
          "English months, three letters are enough.");
      return EnumSet.allOf(Month.class);
    }
    for (int m = 1; m <= 12; m++) {
      if (factors.in(m) > 0.0) {
        months.add(Month.of(m));
      }
    }
    return months;
  }

  /** Its own, else the inverter's, else one that takes all that the generator gives. */
  private Charger charger(Block block, GeneratorSpec spec, @Nullable Charger inverterCharger) {
    Key key = PowerKeys.GENERATOR_CHARGER;
    Block own = block.block(key);
    if (own != null) {
      return charger(own);
    }
    if (inverterCharger != null) {
      return inverterCharger;
    }
    Block none = Block.empty(PowerKeys.CHARGER, file, block.path(key), border);
    border.assume(
        none.path(PowerKeys.CHARGER_POWER),
        Show.power(spec.ratedPowerW()),
        "neither the generator nor the inverter names a charger: one is taken that bears all it"
            + " gives");
    try {
      return new Charger(spec.ratedPowerW(), none.measure(PowerKeys.CHARGER_EFFICIENCY));
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_CHARGER);
    }
  }

  static Charger charger(Block block) {
    double powerW = block.measure(PowerKeys.CHARGER_POWER);
    double efficiency = block.measure(PowerKeys.CHARGER_EFFICIENCY);
    try {
      return new Charger(powerW, efficiency);
    } catch (IllegalArgumentException refused) {
      return block.border().refused(block.place(), refused, NO_CHARGER);
    }
  }

  // ---- possible, but unusual --------------------------------------------------------------------

  private void judge(GeneratorSpec spec, GeneratorRules rules, double elevationM) {
    if (!border.isClean()) {
      return;
    }
    for (FuelAt at : spec.fuelUse()) {
      double efficiency =
          at.loadShare() * spec.ratedPowerW() / (at.fuelLPerH() * spec.fuel().heatWhPerL());
      boolean isTooGood = efficiency > HIGHEST_EFFICIENCY;
      if (isTooGood || (at.loadShare() >= LOW_LOAD_SHARE && efficiency < LOWEST_EFFICIENCY)) {
        border.caution(
            spec.name()
                + ": at "
                + Show.percent(at.loadShare())
                + " load its fuel becomes power at "
                + Show.percent(efficiency)
                + ": is the figure in litres an hour, not for a kWh?");
      }
    }
    double siteW = spec.mostW(elevationM, MILD_AIR_C);
    double chargerW = rules.charger().mostAcW();
    if (chargerW > siteW) {
      border.caution(
          spec.name()
              + " gives "
              + Show.power(siteW)
              + " at this height, and the charger takes up to "
              + Show.power(chargerW)
              + ": set the charger's own input limit lower, or the engine is overloaded.");
    }
    int longestH = rules.permitted().longestH();
    if (rules.minimumRunH() > longestH) {
      border.caution(
          spec.name()
              + ": permitted_hours leave "
              + longestH
              + " whole hours in a row, less than the shortest run of "
              + rules.minimumRunH()
              + " h: every run is cut short.");
    }
  }
}
