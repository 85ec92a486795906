package greyspell.scenario;

import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.EfficiencyPoint;
import greyspell.array.ModuleSpec;
import greyspell.power.Charger;
import greyspell.power.InverterSpec;
import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** Data sheets, from the library, from the file itself, or from both. */
final class EquipmentBinder {
  private static final int[] USUAL_CELLS = {
    18, 20, 24, 32, 36, 40, 44, 48, 50, 54, 56, 60, 66, 72, 78, 80, 84, 88, 96, 108, 120, 144
  };
  private static final double VOLTS_PER_CELL = 0.68;

  /** Stand-ins for what could not be read; they go no further than the next fault report. */
  static final ModuleSpec NO_MODULE =
      new ModuleSpec("", 1.0, 2.0, 2.0, 1.0, 1.0, -0.004, -0.003, 0.0005, 45.0, 1, null, null);

  private static final InverterSpec.EfficiencyAt NO_POINT = new InverterSpec.EfficiencyAt(1.0, 1.0);
  private static final InverterSpec NO_INVERTER =
      new InverterSpec("", 1, 1.0, null, 0.0, 0.0, List.of(NO_POINT));
  private static final ControllerSpec NO_CONTROLLER =
      new ControllerSpec(
          "",
          1,
          null,
          null,
          1.0,
          null,
          null,
          null,
          null,
          null,
          0.0,
          ControllerKind.MPPT,
          List.of());
  private final Library library;
  private final Border border;

  EquipmentBinder(Library library, Border border) {
    this.library = library;
    this.border = border;
  }

  /** The block below this key over the library entry that it names; null after a fault. */
  @Nullable Block find(Block parent, Key key) {
    Node node = parent.node(key);
    if (node == null) {
      if (key.need == Key.Need.REQUIRED) {
        parent.missing(key);
      }
      return null;
    }
    return over(Block.shapeOf(key), node, parent.file(key), parent.path(key), key.name);
  }

  @Nullable Block over(Shape shape, Node node, String file, String path, String key) {
    Node from = node instanceof MappingNode mapping ? fromOf(mapping) : node;
    Block under = null;
    if (from instanceof ScalarNode scalar && !scalar.getValue().isBlank()) {
      Node entry =
          library.entry(shape, scalar.getValue().strip(), Block.placeIn(from, file), key, border);
      if (entry == null) {
        if (node instanceof MappingNode) {
          new Block(shape, node, file, path, border, null); // for its unknown keys
        }
        return null;
      }
      under = new Block(shape, entry, library.shownName(shape), path, border, null);
    }
    return new Block(shape, node, file, path, border, under);
  }

  private static @Nullable Node fromOf(MappingNode mapping) {
    for (NodeTuple tuple : mapping.getValue()) {
      if (tuple.getKeyNode() instanceof ScalarNode key
          && key.getValue().equals(ArrayKeys.FROM.name)) {
        return tuple.getValueNode();
      }
    }
    return null;
  }

  // ---- module -----------------------------------------------------------------------------------

  ModuleSpec module(Block block) {
    String name = block.text(ArrayKeys.MODULE_NAME);
    double ratedPowerW = block.measure(ArrayKeys.RATED_POWER);
    double openCircuitV = block.measure(ArrayKeys.OPEN_CIRCUIT_VOLTAGE);
    double shortCircuitA = block.measure(ArrayKeys.SHORT_CIRCUIT_CURRENT);
    double maxPowerV = block.measure(ArrayKeys.MAX_POWER_VOLTAGE);
    double maxPowerA = block.measure(ArrayKeys.MAX_POWER_CURRENT);
    double powerPerK = block.measure(ArrayKeys.POWER_COEFFICIENT, 1.0 / ratedPowerW);
    double openCircuitPerK = block.measure(ArrayKeys.VOLTAGE_COEFFICIENT, 1.0 / openCircuitV);
    double shortCircuitPerK = block.measure(ArrayKeys.CURRENT_COEFFICIENT, 1.0 / shortCircuitA);
    double nominalCellC = block.measure(ArrayKeys.NOMINAL_CELL_TEMPERATURE);
    int cells = cellsInSeries(block, openCircuitV);
    Double maxSystemV = block.optional(ArrayKeys.MAX_SYSTEM_VOLTAGE);
    Double areaM2 = block.optional(ArrayKeys.AREA);
    refuseSwapped(block, maxPowerV, openCircuitV, maxPowerA, shortCircuitA);
    try {
      return new ModuleSpec(
          name,
          ratedPowerW,
          openCircuitV,
          shortCircuitA,
          maxPowerV,
          maxPowerA,
          powerPerK,
          openCircuitPerK,
          shortCircuitPerK,
          nominalCellC,
          cells,
          maxSystemV,
          areaM2);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_MODULE);
    }
  }

  /** The working point of a module lies below its two ends. */
  private void refuseSwapped(
      Block block, double maxPowerV, double openCircuitV, double maxPowerA, double shortCircuitA) {
    if (maxPowerV >= openCircuitV) {
      border.fault(
          block.place(ArrayKeys.MAX_POWER_VOLTAGE),
          "max_power_voltage not below open_circuit_voltage",
          "the voltage at rated power is always the smaller one",
          "Are the two swapped?");
    }
    if (maxPowerA >= shortCircuitA) {
      border.fault(
          block.place(ArrayKeys.MAX_POWER_CURRENT),
          "max_power_current not below short_circuit_current",
          "the current at rated power is always the smaller one",
          "Are the two swapped?");
    }
  }

  private static int cellsInSeries(Block block, double openCircuitV) {
    Key key = ArrayKeys.CELLS_IN_SERIES;
    if (block.has(key)) {
      return block.whole(key);
    }
    int nearest = USUAL_CELLS[0];
    for (int cells : USUAL_CELLS) {
      double off = Math.abs(cells - openCircuitV / VOLTS_PER_CELL);
      if (off < Math.abs(nearest - openCircuitV / VOLTS_PER_CELL)) {
        nearest = cells;
      }
    }
    block.border().assume(block.path(key), Integer.toString(nearest), key.why);
    return nearest;
  }

  // ---- controller -------------------------------------------------------------------------------

  ControllerSpec controller(Block block) {
    boolean isSilent =
        !block.has(ArrayKeys.MAX_OUTPUT_POWER) && !block.has(ArrayKeys.MAX_OUTPUT_CURRENT);
    if (isSilent
        && !block.isMistyped(ArrayKeys.MAX_OUTPUT_POWER)
        && !block.isMistyped(ArrayKeys.MAX_OUTPUT_CURRENT)) {
      border.fault(
          block.place(),
          "neither \"max_output_power\" nor \"max_output_current\" in controller",
          "must hold one of them, or both",
          "Write for instance \"max_output_current: 60 A\".");
    }
    List<EfficiencyPoint> points = controllerEfficiency(block);
    boolean isOneFigure = points.size() == 1 && !block.isList(ArrayKeys.CONTROLLER_EFFICIENCY);
    try {
      return new ControllerSpec(
          block.text(ArrayKeys.CONTROLLER_NAME),
          block.whole(ArrayKeys.COUNT),
          block.optional(ArrayKeys.MAX_OUTPUT_POWER),
          block.optional(ArrayKeys.MAX_OUTPUT_CURRENT),
          points.isEmpty() ? Double.NaN : points.get(points.size() - 1).efficiency(),
          block.optional(ArrayKeys.LOWEST_TRACKING_VOLTAGE),
          block.optional(ArrayKeys.HIGHEST_TRACKING_VOLTAGE),
          block.optional(ArrayKeys.START_VOLTAGE),
          block.optional(ArrayKeys.ABSOLUTE_MAXIMUM_VOLTAGE),
          block.optional(ArrayKeys.MAX_SHORT_CIRCUIT_CURRENT),
          block.measure(ArrayKeys.CONTROLLER_STANDBY),
          block.word(ArrayKeys.TRACKING, ControllerKind.values()),
          isOneFigure ? List.of() : points);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_CONTROLLER);
    }
  }

  /** One point for a single figure, which holds at every load; empty after a fault. */
  private List<EfficiencyPoint> controllerEfficiency(Block block) {
    Key key = ArrayKeys.CONTROLLER_EFFICIENCY;
    List<Block.PointXY> written = block.curve(key);
    if (written == null) {
      border.assume(block.path(key), key.usual, key.why);
      return List.of(new EfficiencyPoint(1.0, parse(key.usual, Dimension.SHARE)));
    }
    var points = new ArrayList<EfficiencyPoint>();
    double inputShare = 0.0;
    for (Block.PointXY p : written) {
      if (Double.isNaN(p.x) || Double.isNaN(p.y)) {
        continue; // told already
      }
      if (!(p.x > 0.0 && p.x <= 1.0)) {
        border.fault(
            block.place(key),
            key.name + ": found a point at " + Unit.PERCENT.text(p.x),
            "must be above 0 and up to 100 % of its greatest output",
            "Leave this point out.");
        continue;
      }
      if (p.x / p.y <= inputShare) {
        border.fault(
            block.place(key),
            key.name + ": found more output for less input at " + Unit.PERCENT.text(p.x),
            "must not rise so steeply between two points",
            "Are two of the efficiencies swapped?");
      }
      inputShare = p.x / p.y;
      points.add(new EfficiencyPoint(p.x, p.y));
    }
    return points;
  }

  /** What is taken where neither the file nor the inverter names one. */
  ControllerSpec unlimitedController() {
    Key key = Vocabulary.HOME_CONTROLLER;
    border.assume(key.name, "one without limits, 97 %, 2 W", key.why);
    return new ControllerSpec(
        "controller not stated",
        1,
        null,
        null,
        parse(ArrayKeys.CONTROLLER_EFFICIENCY.usual, Dimension.SHARE),
        null,
        null,
        null,
        null,
        null,
        parse(ArrayKeys.CONTROLLER_STANDBY.usual, Dimension.POWER),
        ControllerKind.MPPT,
        List.of());
  }

  static ControllerSpec times(ControllerSpec one, int count) {
    return one.times(count);
  }

  private static double parse(String text, Dimension dimension) {
    return Quantity.parse(text, dimension).inside();
  }

  // ---- inverter, generator ----------------------------------------------------------------------

  InverterSpec inverter(Block block) {
    int count = block.whole(ArrayKeys.COUNT);
    double continuousW = block.measure(PowerKeys.CONTINUOUS_POWER);
    Double surgeW = block.optional(PowerKeys.SURGE_POWER);
    double standbyDayW = standbyDayW(block, continuousW);
    double standbyNightW =
        block.has(PowerKeys.STANDBY_NIGHT) ? block.measure(PowerKeys.STANDBY_NIGHT) : standbyDayW;
    var efficiencies = new ArrayList<InverterSpec.EfficiencyAt>();
    List<Block.PointXY> points = block.curve(PowerKeys.INVERTER_EFFICIENCY);
    if (points == null) {
      Key key = PowerKeys.INVERTER_EFFICIENCY;
      border.assume(block.path(key), key.usual, key.why);
      efficiencies.add(new InverterSpec.EfficiencyAt(0.5, parse(key.usual, Dimension.SHARE)));
    } else {
      for (Block.PointXY p : points) {
        try {
          efficiencies.add(new InverterSpec.EfficiencyAt(p.x, p.y));
        } catch (IllegalArgumentException refused) {
          efficiencies.add(
              border.refused(block.place(PowerKeys.INVERTER_EFFICIENCY), refused, NO_POINT));
        }
      }
    }
    try {
      return new InverterSpec(
          block.text(PowerKeys.INVERTER_NAME),
          count,
          continuousW * count,
          surgeW == null ? null : surgeW * count,
          standbyDayW * count,
          standbyNightW * count,
          efficiencies,
          search(block, count, Math.max(standbyDayW, standbyNightW)),
          charger(block, count),
          Math.max(sheetNoLoadW(block), Math.max(standbyDayW, standbyNightW)) * count);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_INVERTER);
    }
  }

  /**
   * The no-load draw that lies in the efficiency points: of the library's sheet where the points
   * are the library's; a figure of this file's own goes with points of its own. 0 if not stated.
   */
  private static double sheetNoLoadW(Block block) {
    Block sheet = block.under();
    if (sheet == null || block.isOwn(PowerKeys.INVERTER_EFFICIENCY)) {
      return 0.0;
    }
    Double dayW = sheet.optional(PowerKeys.STANDBY_DAY);
    Double nightW = sheet.optional(PowerKeys.STANDBY_NIGHT);
    double mostW = Math.max(dayW == null ? 0.0 : dayW, nightW == null ? 0.0 : nightW);
    return Double.isNaN(mostW) ? 0.0 : mostW;
  }

  /** Null if it never sleeps. */
  private InverterSpec.@Nullable Search search(Block inverter, int count, double standbyW) {
    Key key = PowerKeys.INVERTER_SEARCH;
    Block block = inverter.block(key);
    if (block == null) {
      return null;
    }
    double drawW = block.measure(PowerKeys.SEARCH_DRAW);
    double wakesAtW = block.measure(PowerKeys.WAKES_AT);
    if (drawW > standbyW) {
      border.fault(
          block.place(PowerKeys.SEARCH_DRAW),
          PowerKeys.SEARCH_DRAW.name + ": found " + Unit.WATT.text(drawW),
          "must not exceed the standby of " + Unit.WATT.text(standbyW),
          "Asleep it draws less than awake.");
    }
    try {
      return new InverterSpec.Search(drawW * count, wakesAtW);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, new InverterSpec.Search(0.0, 1.0));
    }
  }

  /** Null if it does not charge. */
  private static @Nullable Charger charger(Block inverter, int count) {
    Block block = inverter.block(PowerKeys.INVERTER_CHARGER);
    return block == null ? null : GeneratorBinder.charger(block).times(count);
  }

  private double standbyDayW(Block block, double continuousW) {
    Key key = PowerKeys.STANDBY_DAY;
    if (block.has(key)) {
      return block.measure(key);
    }
    double usualW = parse("1 %", Dimension.SHARE) * continuousW;
    if (!Double.isNaN(usualW)) {
      border.assume(block.path(key), Unit.WATT.text(usualW) + " each", key.why);
    }
    return usualW;
  }
}
