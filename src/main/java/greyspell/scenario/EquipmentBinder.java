package greyspell.scenario;

import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.EfficiencyPoint;
import greyspell.array.ModuleSpec;
import greyspell.power.Charger;
import greyspell.power.InverterSpec;
import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.quantity.Show;
import greyspell.quantity.Unit;
import greyspell.storage.BankDefaults;
import greyspell.storage.BankSpec;
import greyspell.storage.Chemistry;
import greyspell.storage.Enclosure;
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

  private static final Enclosure NO_ENCLOSURE = new Enclosure.Indoors(20.0);
  private static final BankSpec NO_BANK =
      new BankSpec(
          "",
          Chemistry.LITHIUM_IRON_PHOSPHATE,
          1,
          1.0,
          1.0,
          1.0,
          0.0,
          1.0,
          1.0,
          1.0,
          1.0,
          0.0,
          List.of(new BankSpec.CapacityAt(25.0, 1.0)),
          0.0,
          0.0,
          NO_ENCLOSURE);
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
          && key.getValue().equals(Vocabulary.FROM.name)) {
        return tuple.getValueNode();
      }
    }
    return null;
  }

  // ---- module -----------------------------------------------------------------------------------

  ModuleSpec module(Block block) {
    String name = block.text(Vocabulary.MODULE_NAME);
    double ratedPowerW = block.measure(Vocabulary.RATED_POWER);
    double openCircuitV = block.measure(Vocabulary.OPEN_CIRCUIT_VOLTAGE);
    double shortCircuitA = block.measure(Vocabulary.SHORT_CIRCUIT_CURRENT);
    double maxPowerV = block.measure(Vocabulary.MAX_POWER_VOLTAGE);
    double maxPowerA = block.measure(Vocabulary.MAX_POWER_CURRENT);
    double powerPerK = block.measure(Vocabulary.POWER_COEFFICIENT, 1.0 / ratedPowerW);
    double openCircuitPerK = block.measure(Vocabulary.VOLTAGE_COEFFICIENT, 1.0 / openCircuitV);
    double shortCircuitPerK = block.measure(Vocabulary.CURRENT_COEFFICIENT, 1.0 / shortCircuitA);
    double nominalCellC = block.measure(Vocabulary.NOMINAL_CELL_TEMPERATURE);
    int cells = cellsInSeries(block, openCircuitV);
    Double maxSystemV = block.optional(Vocabulary.MAX_SYSTEM_VOLTAGE);
    Double areaM2 = block.optional(Vocabulary.AREA);
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
          block.place(Vocabulary.MAX_POWER_VOLTAGE),
          "max_power_voltage not below open_circuit_voltage",
          "the voltage at rated power is always the smaller one",
          "Are the two swapped?");
    }
    if (maxPowerA >= shortCircuitA) {
      border.fault(
          block.place(Vocabulary.MAX_POWER_CURRENT),
          "max_power_current not below short_circuit_current",
          "the current at rated power is always the smaller one",
          "Are the two swapped?");
    }
  }

  private static int cellsInSeries(Block block, double openCircuitV) {
    Key key = Vocabulary.CELLS_IN_SERIES;
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
        !block.has(Vocabulary.MAX_OUTPUT_POWER) && !block.has(Vocabulary.MAX_OUTPUT_CURRENT);
    if (isSilent
        && !block.isMistyped(Vocabulary.MAX_OUTPUT_POWER)
        && !block.isMistyped(Vocabulary.MAX_OUTPUT_CURRENT)) {
      border.fault(
          block.place(),
          "neither \"max_output_power\" nor \"max_output_current\" in controller",
          "must hold one of them, or both",
          "Write for instance \"max_output_current: 60 A\".");
    }
    List<EfficiencyPoint> points = controllerEfficiency(block);
    boolean isOneFigure = points.size() == 1 && !block.isList(Vocabulary.CONTROLLER_EFFICIENCY);
    try {
      return new ControllerSpec(
          block.text(Vocabulary.CONTROLLER_NAME),
          block.whole(Vocabulary.COUNT),
          block.optional(Vocabulary.MAX_OUTPUT_POWER),
          block.optional(Vocabulary.MAX_OUTPUT_CURRENT),
          points.isEmpty() ? Double.NaN : points.get(points.size() - 1).efficiency(),
          block.optional(Vocabulary.LOWEST_TRACKING_VOLTAGE),
          block.optional(Vocabulary.HIGHEST_TRACKING_VOLTAGE),
          block.optional(Vocabulary.START_VOLTAGE),
          block.optional(Vocabulary.ABSOLUTE_MAXIMUM_VOLTAGE),
          block.optional(Vocabulary.MAX_SHORT_CIRCUIT_CURRENT),
          block.measure(Vocabulary.CONTROLLER_STANDBY),
          block.word(Vocabulary.TRACKING, ControllerKind.values()),
          isOneFigure ? List.of() : points);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_CONTROLLER);
    }
  }

  /** One point for a single figure, which holds at every load; empty after a fault. */
  private List<EfficiencyPoint> controllerEfficiency(Block block) {
    Key key = Vocabulary.CONTROLLER_EFFICIENCY;
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
        parse(Vocabulary.CONTROLLER_EFFICIENCY.usual, Dimension.SHARE),
        null,
        null,
        null,
        null,
        null,
        parse(Vocabulary.CONTROLLER_STANDBY.usual, Dimension.POWER),
        ControllerKind.MPPT,
        List.of());
  }

  static ControllerSpec times(ControllerSpec one, int count) {
    return one.times(count);
  }

  // ---- bank -------------------------------------------------------------------------------------

  /** One battery, as its data sheet says, with the chemistry's defaults. */
  BankSpec battery(Block block) {
    Chemistry chemistry = block.word(Vocabulary.CHEMISTRY, Chemistry.values());
    BankDefaults usual = BankDefaults.of(chemistry);
    double voltageV = block.measure(Vocabulary.VOLTAGE);
    double capacityWh = block.measure(Vocabulary.CAPACITY, voltageV);
    try {
      return new BankSpec(
          block.text(Vocabulary.BATTERY_NAME),
          chemistry,
          1,
          capacityWh,
          voltageV,
          1.0,
          0.0,
          or(block, Vocabulary.CHARGE_EFFICIENCY, usual.chargeEfficiency(), usual.efficiencyWhy()),
          or(
              block,
              Vocabulary.DISCHARGE_EFFICIENCY,
              usual.dischargeEfficiency(),
              usual.efficiencyWhy()),
          limit(block, Vocabulary.MAX_CHARGE, voltageV, capacityWh / usual.fillingH()),
          limit(block, Vocabulary.MAX_DISCHARGE, voltageV, capacityWh / usual.emptyingH()),
          or(
              block,
              Vocabulary.SELF_DISCHARGE,
              usual.selfDischargePerMonthFraction(),
              usual.selfDischargeWhy()),
          capacityCurve(block, usual),
          or(block, Vocabulary.COLDEST_CHARGE, usual.coldestChargeC(), usual.coldestChargeWhy()),
          or(block, Vocabulary.BATTERY_STANDBY, usual.standbyW(), BankDefaults.USUAL_WHY),
          NO_ENCLOSURE);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_BANK);
    }
  }

  private static double parse(String text, Dimension dimension) {
    return Quantity.parse(text, dimension).inside();
  }

  private double or(Block block, Key key, double usual, String why) {
    if (block.has(key)) {
      return block.measure(key);
    }
    border.assume(block.path(key), Quantity.print(usual, key.dimensions.get(0)), why);
    return usual;
  }

  private double limit(Block block, Key key, double voltageV, double usualW) {
    if (block.has(key)) {
      return block.measure(key, voltageV);
    }
    if (!Double.isNaN(usualW)) {
      border.assume(block.path(key), Unit.WATT.text(usualW) + " each", BankDefaults.USUAL_WHY);
    }
    return usualW;
  }

  private List<BankSpec.CapacityAt> capacityCurve(Block block, BankDefaults usual) {
    Key key = Vocabulary.CAPACITY_BY_TEMPERATURE;
    var points = new ArrayList<BankSpec.CapacityAt>();
    List<Block.PointXY> written = block.curve(key);
    if (written != null) {
      for (Block.PointXY p : written) {
        if (!points.isEmpty() && p.y < points.get(points.size() - 1).capacityShare()) {
          border.fault(
              block.place(key),
              key.name + ": found a share that falls as it gets warmer",
              "must rise with temperature",
              "Are two of the shares swapped?");
        }
        try {
          points.add(new BankSpec.CapacityAt(p.x, p.y));
        } catch (IllegalArgumentException refused) {
          points.add(border.refused(block.place(key), refused, new BankSpec.CapacityAt(0.0, 1.0)));
        }
      }
      return points;
    }
    var told = new StringBuilder();
    for (BankSpec.CapacityAt point : usual.capacityByTemperature()) {
      told.append(told.isEmpty() ? "" : ", ");
      told.append(Unit.CELSIUS.text(point.temperatureC())).append(' ');
      told.append(Show.percent(point.capacityShare()));
    }
    border.assume(block.path(key), told.toString(), usual.capacityWhy());
    return usual.capacityByTemperature();
  }

  BankSpec bank(Block block, @Nullable Block batteryBlock, Block home) {
    int inSeries = block.whole(Vocabulary.BANK_IN_SERIES);
    int inParallel = block.whole(Vocabulary.BANK_IN_PARALLEL);
    double fullFraction = block.measure(Vocabulary.FULL);
    Block enclosureBlock = block.block(Vocabulary.BANK_ENCLOSURE);
    Enclosure enclosure = enclosureBlock == null ? NO_ENCLOSURE : enclosure(enclosureBlock);
    if (batteryBlock == null) {
      double reserve = home.has(Vocabulary.RESERVE) ? home.measure(Vocabulary.RESERVE) : Double.NaN;
      refuseReserve(home, block, reserve, fullFraction);
      return NO_BANK;
    }
    BankSpec one = battery(batteryBlock);
    double reserve =
        or(
            home,
            Vocabulary.RESERVE,
            BankDefaults.of(one.chemistry()).reserveFraction(),
            BankDefaults.USUAL_WHY);
    refuseReserve(home, block, reserve, fullFraction);
    int all = inSeries * inParallel;
    try {
      return new BankSpec(
          one.name(),
          one.chemistry(),
          inParallel,
          one.capacityWh() * all,
          one.nominalV() * inSeries,
          fullFraction,
          reserve,
          one.chargeEfficiency(),
          one.dischargeEfficiency(),
          one.maxChargeW() * all,
          one.maxDischargeW() * all,
          one.selfDischargePerMonthFraction(),
          one.capacityByTemperature(),
          one.coldestChargeC(),
          one.standbyW() * all,
          enclosure);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_BANK);
    }
  }

  private void refuseReserve(Block home, Block bank, double reserve, double full) {
    if (reserve >= full) {
      border.fault(
          home.has(Vocabulary.RESERVE)
              ? home.place(Vocabulary.RESERVE)
              : bank.place(Vocabulary.FULL),
          "reserve: " + Unit.PERCENT.text(reserve) + " with full: " + Unit.PERCENT.text(full),
          "the reserve must lie below full",
          "Nothing between the two would be left to use.");
    }
  }

  private Enclosure enclosure(Block block) {
    if (!block.has(Vocabulary.STANDS)) {
      block.missing(Vocabulary.STANDS);
      return NO_ENCLOSURE;
    }
    return switch (block.word(Vocabulary.STANDS, Vocabulary.Stands.values())) {
      case INDOORS -> {
        refuse(block, "indoors", Vocabulary.LAG, Vocabulary.AT_LEAST, Vocabulary.BOX_HEAT_LOSS);
        try {
          yield new Enclosure.Indoors(block.measure(Vocabulary.INDOOR_TEMPERATURE));
        } catch (IllegalArgumentException refused) {
          yield border.refused(block.place(), refused, NO_ENCLOSURE);
        }
      }
      case OUTDOORS -> {
        refuse(
            block,
            "outdoors",
            Vocabulary.INDOOR_TEMPERATURE,
            Vocabulary.AT_LEAST,
            Vocabulary.BOX_HEAT_LOSS);
        try {
          yield new Enclosure.Outdoors(block.measure(Vocabulary.LAG));
        } catch (IllegalArgumentException refused) {
          yield border.refused(block.place(), refused, NO_ENCLOSURE);
        }
      }
      case HEATED -> {
        refuse(block, "heated", Vocabulary.INDOOR_TEMPERATURE);
        try {
          yield new Enclosure.Heated(
              block.measure(Vocabulary.LAG),
              block.measure(Vocabulary.AT_LEAST),
              block.measure(Vocabulary.BOX_HEAT_LOSS));
        } catch (IllegalArgumentException refused) {
          yield border.refused(block.place(), refused, NO_ENCLOSURE);
        }
      }
    };
  }

  /** A value that would be read and then not used. */
  private void refuse(Block block, String place, Key... keys) {
    for (Key key : keys) {
      if (block.has(key)) {
        border.fault(
            block.place(key),
            "\"" + key.name + "\" with place: " + place,
            "has no meaning there",
            "Leave it out, or choose another place.");
      }
    }
  }

  // ---- inverter ---------------------------------------------------------------------------------

  InverterSpec inverter(Block block) {
    int count = block.whole(Vocabulary.COUNT);
    double continuousW = block.measure(Vocabulary.CONTINUOUS_POWER);
    Double surgeW = block.optional(Vocabulary.SURGE_POWER);
    double standbyDayW = standbyDayW(block, continuousW);
    double standbyNightW =
        block.has(Vocabulary.STANDBY_NIGHT) ? block.measure(Vocabulary.STANDBY_NIGHT) : standbyDayW;
    var efficiencies = new ArrayList<InverterSpec.EfficiencyAt>();
    List<Block.PointXY> points = block.curve(Vocabulary.INVERTER_EFFICIENCY);
    if (points == null) {
      Key key = Vocabulary.INVERTER_EFFICIENCY;
      border.assume(block.path(key), key.usual, key.why);
      efficiencies.add(new InverterSpec.EfficiencyAt(0.5, parse(key.usual, Dimension.SHARE)));
    } else {
      for (Block.PointXY p : points) {
        try {
          efficiencies.add(new InverterSpec.EfficiencyAt(p.x, p.y));
        } catch (IllegalArgumentException refused) {
          efficiencies.add(
              border.refused(block.place(Vocabulary.INVERTER_EFFICIENCY), refused, NO_POINT));
        }
      }
    }
    try {
      return new InverterSpec(
          block.text(Vocabulary.INVERTER_NAME),
          count,
          continuousW * count,
          surgeW == null ? null : surgeW * count,
          standbyDayW * count,
          standbyNightW * count,
          efficiencies,
          search(block, count, Math.max(standbyDayW, standbyNightW)),
          charger(block, count));
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_INVERTER);
    }
  }

  /** Null if it never sleeps. */
  private InverterSpec.@Nullable Search search(Block inverter, int count, double standbyW) {
    Key key = Vocabulary.INVERTER_SEARCH;
    Block block = inverter.block(key);
    if (block == null) {
      return null;
    }
    double drawW = block.measure(Vocabulary.SEARCH_DRAW);
    double wakesAtW = block.measure(Vocabulary.WAKES_AT);
    if (drawW > standbyW) {
      border.fault(
          block.place(Vocabulary.SEARCH_DRAW),
          Vocabulary.SEARCH_DRAW.name + ": found " + Unit.WATT.text(drawW),
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
    Block block = inverter.block(Vocabulary.INVERTER_CHARGER);
    return block == null ? null : GeneratorBinder.charger(block).times(count);
  }

  private double standbyDayW(Block block, double continuousW) {
    Key key = Vocabulary.STANDBY_DAY;
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
