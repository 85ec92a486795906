package greyspell.scenario;

import greyspell.calendar.Monthly;
import greyspell.load.ApplianceSpec;
import greyspell.load.ApplianceSpec.HourSpan;
import greyspell.load.Evidence;
import greyspell.load.LoadLogReader;
import greyspell.load.LoadPlan;
import greyspell.load.LoadPolicy;
import greyspell.load.LogClock;
import greyspell.load.LogExtension;
import greyspell.load.LogSpec;
import greyspell.load.Priority;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** What the house asks for. */
final class LoadBinder {
  private static final List<HourSpan> ALL_DAY = List.of(new HourSpan(0.0, 24.0));

  private static final ApplianceSpec NO_APPLIANCE =
      new ApplianceSpec(
          "",
          1,
          0.0,
          0.0,
          null,
          0.0,
          ALL_DAY,
          EnumSet.allOf(DayOfWeek.class),
          Monthly.constant(1.0),
          Priority.SHOULD_RUN,
          Evidence.GUESS,
          false,
          false);

  private final EquipmentBinder equipment;
  private final FilePaths paths;
  private final boolean isNorthern;

  /** Months of the library are those of the north. */
  LoadBinder(EquipmentBinder equipment, FilePaths paths, boolean isNorthern) {
    this.equipment = equipment;
    this.paths = paths;
    this.isNorthern = isNorthern;
  }

  LoadPlan plan(Block block) {
    List<Node> items = block.list(ApplianceKeys.APPLIANCES);
    var appliances = new ArrayList<ApplianceSpec>();
    for (int i = 0; i < items.size(); i++) {
      String path =
          block.path(ApplianceKeys.APPLIANCES).concat("[").concat(Integer.toString(i)).concat("]");
      Block one =
          equipment.over(
              ApplianceKeys.APPLIANCE,
              items.get(i),
              block.file(ApplianceKeys.APPLIANCES),
              path,
              "appliance");
      if (one != null) {
        appliances.add(appliance(one, block.file(ApplianceKeys.APPLIANCES)));
      }
    }
    LogSpec log = log(block);
    boolean isSilent = !block.has(ApplianceKeys.APPLIANCES) && !block.has(ApplianceKeys.LOAD_LOG);
    if (isSilent
        && !block.isMistyped(ApplianceKeys.APPLIANCES)
        && !block.isMistyped(ApplianceKeys.LOAD_LOG)) {
      block
          .border()
          .fault(
              block.place(),
              "neither \"appliances\" nor \"log\" in loads",
              "must hold one of them, or both",
              "Write \"appliances: []\" for a house that asks for nothing.");
    }
    try {
      return new LoadPlan(
          appliances,
          log,
          block.measure(ApplianceKeys.DAILY_VARIATION),
          block.measure(LoadKeys.HOURLY_VARIATION),
          block.measure(LoadKeys.GROWTH),
          policy(block));
    } catch (IllegalArgumentException refused) {
      return block.border().refused(block.place(), refused, new LoadPlan(List.of(), null, 0.0));
    }
  }

  private @Nullable LogSpec log(Block block) {
    Block log = block.block(ApplianceKeys.LOAD_LOG);
    if (log == null) {
      return null;
    }
    LogClock clock = log.word(LoadKeys.LOG_CLOCK, LogClock.values());
    LogExtension extension = log.word(LoadKeys.LOG_EXTENSION, LogExtension.values());
    boolean isScattered = log.flag(LoadKeys.LOG_SCATTER);
    String zone = log.has(LoadKeys.LOG_ZONE) ? log.text(LoadKeys.LOG_ZONE) : null;
    if (clock == LogClock.LOCAL && zone == null) {
      log.border()
          .fault(
              log.place(LoadKeys.LOG_CLOCK),
              "a local clock without its zone",
              "needs \"zone\", which says when daylight saving begins and ends",
              "Write for instance \"zone: Europe/Berlin\", or \"eu\" or \"us\".");
    } else if (zone != null && !LoadLogReader.isZone(zone)) {
      log.border()
          .fault(
              log.place(LoadKeys.LOG_ZONE),
              Border.found(LoadKeys.LOG_ZONE.name, zone),
              "must be a time zone such as Europe/Berlin, or eu or us",
              "");
    }
    try {
      return new LogSpec(
          paths.resolved(log, ApplianceKeys.LOG_FILE),
          log.measure(ApplianceKeys.LOG_FACTOR),
          log.word(LoadKeys.LOG_PRIORITY, Priority.values()),
          clock,
          zone,
          extension,
          isScattered);
    } catch (IllegalArgumentException refused) {
      return log.border().refused(log.place(), refused, new LogSpec("", 1.0));
    }
  }

  private static LoadPolicy policy(Block block) {
    Block low = block.block(LoadKeys.WHEN_LOW);
    if (low == null) {
      return LoadPolicy.NONE;
    }
    Double shouldBelow = low.optional(LoadKeys.SHED_SHOULD_RUN);
    Double waitBelow = low.optional(LoadKeys.SHED_CAN_WAIT);
    Double waitAbove = low.optional(LoadKeys.WAIT_ABOVE);
    if (shouldBelow != null && waitBelow != null && shouldBelow > waitBelow) {
      low.border()
          .fault(
              low.place(LoadKeys.SHED_SHOULD_RUN),
              "should_run_below above can_wait_below",
              "must be the lower of the two: what can wait goes first",
              "Are the two swapped?");
    }
    if (waitBelow != null && waitAbove != null && waitAbove < waitBelow) {
      low.border()
          .fault(
              low.place(LoadKeys.WAIT_ABOVE),
              "can_wait_above below can_wait_below",
              "must be the higher of the two",
              "Are the two swapped?");
    }
    try {
      return new LoadPolicy(
          shouldBelow,
          waitBelow,
          waitAbove,
          waitAbove == null ? null : low.whole(LoadKeys.LONGEST_WAIT));
    } catch (IllegalArgumentException refused) {
      return low.border().refused(low.place(), refused, LoadPolicy.NONE);
    }
  }

  ApplianceSpec appliance(Block block, String scenarioFile) {
    double powerW = block.measure(ApplianceKeys.POWER);
    Double surgeW = block.optional(ApplianceKeys.SURGE);
    if (surgeW != null && surgeW < powerW) {
      block
          .border()
          .fault(
              block.place(ApplianceKeys.SURGE),
              "surge below power",
              "must be the power of the motor's start, at least that of its run",
              "Leave it out if there is no motor.");
    }
    var weather = new LoadWeatherBinder(block);
    try {
      String name = block.text(ApplianceKeys.APPLIANCE_NAME);
      int quantity = block.whole(ApplianceKeys.QUANTITY);
      double standbyW = block.measure(ApplianceKeys.STANDBY);
      List<HourSpan> hours = hours(block);
      double dutyShare = weather.dutyShare(powerW, hours);
      Evidence evidence = block.word(ApplianceKeys.EVIDENCE, Evidence.values());
      return new ApplianceSpec(
          name,
          quantity,
          powerW,
          standbyW,
          surgeW,
          dutyShare,
          hours,
          days(block),
          season(block, months(block), scenarioFile),
          block.word(ApplianceKeys.PRIORITY, Priority.values()),
          evidence,
          block.word(ApplianceKeys.SUPPLY, ApplianceKeys.Supply.values())
              == ApplianceKeys.Supply.DC,
          block.flag(ApplianceKeys.MEDICAL),
          weather.season(),
          weather.draw(),
          weather.range(evidence),
          1.0);
    } catch (IllegalArgumentException refused) {
      return block.border().refused(block.place(), refused, NO_APPLIANCE);
    }
  }

  private static List<HourSpan> hours(Block block) {
    Key key = ApplianceKeys.HOURS;
    String text = words(block, key);
    if (text == null) {
      if (!block.has(key)) {
        block.border().assume(block.path(key), key.usual, key.why);
      }
      return ALL_DAY;
    }
    List<HourSpan> spans = LoadWords.hours(text);
    if (spans == null) {
      refuse(
          block,
          key,
          text,
          "must be spans of the day such as 07:00-09:00",
          "From 00:00 to 24:00, in quotes or [ ] if there are several.");
      return ALL_DAY;
    }
    if (LoadWords.overlap(spans)) {
      refuse(block, key, text, "must be spans that do not overlap", "Join the two.");
    }
    return spans;
  }

  private static Set<DayOfWeek> days(Block block) {
    Key key = ApplianceKeys.DAYS;
    String text = words(block, key);
    Set<DayOfWeek> days = text == null ? EnumSet.allOf(DayOfWeek.class) : LoadWords.days(text);
    if (days == null) {
      refuse(
          block,
          key,
          text == null ? "" : text,
          "must be days such as Mon-Fri or Sat, Sun",
          "English days, three letters are enough.");
      return EnumSet.allOf(DayOfWeek.class);
    }
    return days;
  }

  private static Monthly months(Block block) {
    Key key = ApplianceKeys.MONTHS;
    if (block.node(key) instanceof SequenceNode list && isFactors(list)) {
      return factors(block, key, list);
    }
    String text = words(block, key);
    Monthly months = text == null ? Monthly.constant(1.0) : LoadWords.months(text);
    if (months == null) {
      refuse(
          block,
          key,
          text == null ? "" : text,
          "must be months such as Nov-Feb, or twelve factors",
          "English months, three letters are enough.");
      return Monthly.constant(1.0);
    }
    return months;
  }

  /** What the library says of months is said of the north. */
  private Monthly season(Block block, Monthly months, String scenarioFile) {
    Key key = ApplianceKeys.MONTHS;
    if (isNorthern || !block.has(key) || block.file(key).equals(scenarioFile)) {
      return months;
    }
    var shifted = new double[12];
    for (int month = 1; month <= 12; month++) {
      shifted[month - 1] = months.in((month + 5) % 12 + 1);
    }
    Monthly southern = Monthly.of(shifted);
    if (!southern.equals(months)) {
      block
          .border()
          .assume(
              block.path(key),
              "the library's, moved by six months",
              "the library writes the months of the north");
    }
    return southern;
  }

  private static boolean isFactors(SequenceNode list) {
    return !list.getValue().isEmpty()
        && list.getValue().get(0) instanceof ScalarNode first
        && !first.getValue().isEmpty()
        && !Character.isLetter(first.getValue().charAt(0));
  }

  private static Monthly factors(Block block, Key key, SequenceNode list) {
    if (list.getValue().size() != 12) {
      block
          .border()
          .fault(
              block.place(key),
              key.name + ": found a list of " + list.getValue().size(),
              "must be months such as Nov-Feb, or twelve factors",
              "January first.");
      return Monthly.constant(1.0);
    }
    var factors = new double[12];
    for (int i = 0; i < 12; i++) {
      factors[i] =
          block.scalarMeasure(
              ApplianceKeys.MONTH_FACTOR, list.getValue().get(i), block.file(key), Double.NaN);
    }
    return Monthly.of(factors);
  }

  /** One value, or the values of a list with commas between; null if it is left out or no word. */
  static @Nullable String words(Block block, Key key) {
    Node node = block.node(key);
    if (node == null) {
      return null;
    }
    if (node instanceof SequenceNode list && !list.getValue().isEmpty()) {
      var parts = new ArrayList<String>();
      for (Node item : list.getValue()) {
        String part = block.scalar(key, item, block.file(key));
        if (part == null) {
          return null;
        }
        parts.add(part);
      }
      return String.join(", ", parts);
    }
    return block.scalar(key, node, block.file(key));
  }

  static void refuse(Block block, Key key, String text, String expected, String mend) {
    block.border().fault(block.place(key), Border.found(key.name, text), expected, mend);
  }
}
