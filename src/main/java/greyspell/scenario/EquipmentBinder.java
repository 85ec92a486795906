package greyspell.scenario;

import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.power.GeneratorSpec;
import greyspell.power.InverterSpec;
import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.quantity.Unit;
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

  static ModuleSpec module(Block block) {
    double ratedPowerW = block.measure(Vocabulary.RATED_POWER);
    double openCircuitV = block.measure(Vocabulary.OPEN_CIRCUIT_VOLTAGE);
    double shortCircuitA = block.measure(Vocabulary.SHORT_CIRCUIT_CURRENT);
    return new ModuleSpec(
        block.text(Vocabulary.MODULE_NAME),
        ratedPowerW,
        openCircuitV,
        shortCircuitA,
        block.measure(Vocabulary.MAX_POWER_VOLTAGE),
        block.measure(Vocabulary.MAX_POWER_CURRENT),
        block.measure(Vocabulary.POWER_COEFFICIENT, 1.0 / ratedPowerW),
        block.measure(Vocabulary.VOLTAGE_COEFFICIENT, 1.0 / openCircuitV),
        block.measure(Vocabulary.CURRENT_COEFFICIENT, 1.0 / shortCircuitA),
        block.measure(Vocabulary.NOMINAL_CELL_TEMPERATURE),
        cellsInSeries(block, openCircuitV),
        block.optional(Vocabulary.MAX_SYSTEM_VOLTAGE),
        block.optional(Vocabulary.AREA));
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

  /** A kind that cannot be reckoned yet is a fault. */
  ControllerSpec controller(Block block) {
    if (block.word(Vocabulary.TRACKING, Vocabulary.Tracking.values()) == Vocabulary.Tracking.PWM) {
      border.fault(
          block.place(Vocabulary.TRACKING),
          Border.found(Vocabulary.TRACKING.name, "pwm"),
          "must be mppt: the loss of a pwm controller is not reckoned yet",
          "Choose a controller with tracking: mppt.");
    }
    return controllerSheet(block);
  }

  ControllerSpec controllerSheet(Block block) {
    if (!block.has(Vocabulary.MAX_OUTPUT_POWER) && !block.has(Vocabulary.MAX_OUTPUT_CURRENT)) {
      border.fault(
          block.place(),
          "neither \"max_output_power\" nor \"max_output_current\" in controller",
          "must hold one of them, or both",
          "Write for instance \"max_output_current: 60 A\".");
    }
    return new ControllerSpec(
        block.text(Vocabulary.CONTROLLER_NAME),
        block.whole(Vocabulary.COUNT),
        block.optional(Vocabulary.MAX_OUTPUT_POWER),
        block.optional(Vocabulary.MAX_OUTPUT_CURRENT),
        block.measure(Vocabulary.CONTROLLER_EFFICIENCY),
        block.optional(Vocabulary.LOWEST_TRACKING_VOLTAGE),
        block.optional(Vocabulary.HIGHEST_TRACKING_VOLTAGE),
        block.optional(Vocabulary.START_VOLTAGE),
        block.optional(Vocabulary.ABSOLUTE_MAXIMUM_VOLTAGE),
        block.optional(Vocabulary.MAX_SHORT_CIRCUIT_CURRENT),
        block.measure(Vocabulary.CONTROLLER_STANDBY),
        ControllerKind.MPPT,
        List.of());
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
    ChemistryDefaults usual = ChemistryDefaults.of(chemistry);
    double voltageV = block.measure(Vocabulary.VOLTAGE);
    double capacityWh = block.measure(Vocabulary.CAPACITY, voltageV);
    return new BankSpec(
        block.text(Vocabulary.BATTERY_NAME),
        chemistry,
        1,
        capacityWh,
        voltageV,
        1.0,
        0.0,
        or(block, Vocabulary.CHARGE_EFFICIENCY, usual.chargeEfficiency()),
        or(block, Vocabulary.DISCHARGE_EFFICIENCY, usual.dischargeEfficiency()),
        limit(block, Vocabulary.MAX_CHARGE, voltageV, capacityWh / usual.maxChargeHours()),
        limit(block, Vocabulary.MAX_DISCHARGE, voltageV, capacityWh / usual.maxDischargeHours()),
        or(block, Vocabulary.SELF_DISCHARGE, usual.selfDischarge()),
        capacityCurve(block, usual.capacityByTemperature()),
        or(block, Vocabulary.COLDEST_CHARGE, usual.coldestCharge()),
        or(block, Vocabulary.BATTERY_STANDBY, usual.standby()),
        new Enclosure.Indoors(0.0));
  }

  private static double parse(String text, Dimension dimension) {
    return Quantity.parse(text, dimension).inside();
  }

  private double or(Block block, Key key, String usual) {
    if (block.has(key)) {
      return block.measure(key);
    }
    border.assume(block.path(key), usual, ChemistryDefaults.WHY);
    return parse(usual, key.dimensions.get(0));
  }

  private double limit(Block block, Key key, double voltageV, double usualW) {
    if (block.has(key)) {
      return block.measure(key, voltageV);
    }
    if (!Double.isNaN(usualW)) {
      border.assume(block.path(key), Unit.WATT.text(usualW) + " each", ChemistryDefaults.WHY);
    }
    return usualW;
  }

  private List<BankSpec.CapacityAt> capacityCurve(Block block, String usual) {
    Key key = Vocabulary.CAPACITY_BY_TEMPERATURE;
    var points = new ArrayList<BankSpec.CapacityAt>();
    List<Block.PointXY> written = block.curve(key);
    if (written != null) {
      for (Block.PointXY p : written) {
        if (!points.isEmpty() && p.inY() < points.get(points.size() - 1).capacityShare()) {
          border.fault(
              block.place(key),
              key.name + ": found a share that falls as it gets warmer",
              "must rise with temperature",
              "Are two of the shares swapped?");
        }
        points.add(new BankSpec.CapacityAt(p.inX(), p.inY()));
      }
      return points;
    }
    border.assume(block.path(key), usual, ChemistryDefaults.WHY);
    int from = 0;
    while (from < usual.length()) {
      int comma = usual.indexOf(',', from);
      String pair = usual.substring(from, comma < 0 ? usual.length() : comma).strip();
      int split = pair.indexOf("C ") + 1;
      points.add(
          new BankSpec.CapacityAt(
              parse(pair.substring(0, split), Dimension.TEMPERATURE),
              parse(pair.substring(split), Dimension.SHARE)));
      from = comma < 0 ? usual.length() : comma + 1;
    }
    return points;
  }

  BankSpec bank(Block block, @Nullable Block batteryBlock, Block home) {
    int inSeries = block.whole(Vocabulary.BANK_IN_SERIES);
    int inParallel = block.whole(Vocabulary.BANK_IN_PARALLEL);
    double fullFraction = block.measure(Vocabulary.FULL);
    Block enclosureBlock = block.block(Vocabulary.BANK_ENCLOSURE);
    Enclosure enclosure =
        enclosureBlock == null ? new Enclosure.Indoors(0.0) : enclosure(enclosureBlock);
    if (batteryBlock == null) {
      double reserve = home.has(Vocabulary.RESERVE) ? home.measure(Vocabulary.RESERVE) : Double.NaN;
      refuseReserve(home, block, reserve, fullFraction);
      return nothing(enclosure);
    }
    BankSpec one = battery(batteryBlock);
    double reserve = or(home, Vocabulary.RESERVE, ChemistryDefaults.of(one.chemistry()).reserve());
    refuseReserve(home, block, reserve, fullFraction);
    int all = inSeries * inParallel;
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
  }

  private static BankSpec nothing(Enclosure enclosure) {
    double nan = Double.NaN;
    return new BankSpec(
        "",
        Chemistry.LITHIUM_IRON_PHOSPHATE,
        1,
        nan,
        nan,
        nan,
        nan,
        nan,
        nan,
        nan,
        nan,
        nan,
        List.of(),
        nan,
        nan,
        enclosure);
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
      return new Enclosure.Indoors(0.0);
    }
    return switch (block.word(Vocabulary.STANDS, Vocabulary.Stands.values())) {
      case INDOORS -> {
        refuse(block, "indoors", Vocabulary.LAG, Vocabulary.AT_LEAST, Vocabulary.BOX_HEAT_LOSS);
        yield new Enclosure.Indoors(block.measure(Vocabulary.INDOOR_TEMPERATURE));
      }
      case OUTDOORS -> {
        refuse(
            block,
            "outdoors",
            Vocabulary.INDOOR_TEMPERATURE,
            Vocabulary.AT_LEAST,
            Vocabulary.BOX_HEAT_LOSS);
        yield new Enclosure.Outdoors(block.measure(Vocabulary.LAG));
      }
      case HEATED -> {
        refuse(block, "heated", Vocabulary.INDOOR_TEMPERATURE);
        yield new Enclosure.Heated(
            block.measure(Vocabulary.LAG),
            block.measure(Vocabulary.AT_LEAST),
            block.measure(Vocabulary.BOX_HEAT_LOSS));
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

  // ---- inverter, generator ----------------------------------------------------------------------

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
        efficiencies.add(new InverterSpec.EfficiencyAt(p.inX(), p.inY()));
      }
    }
    return new InverterSpec(
        block.text(Vocabulary.INVERTER_NAME),
        count,
        continuousW * count,
        surgeW == null ? null : surgeW * count,
        standbyDayW * count,
        standbyNightW * count,
        efficiencies);
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

  static GeneratorSpec generator(Block block) {
    double ratedPowerW = block.measure(Vocabulary.GENERATOR_POWER);
    var fuel = block.word(Vocabulary.FUEL, GeneratorSpec.Fuel.values());
    var points = new ArrayList<GeneratorSpec.FuelAt>();
    List<Block.PointXY> written = block.curve(Vocabulary.FUEL_USE);
    if (written != null) {
      for (Block.PointXY p : written) {
        points.add(new GeneratorSpec.FuelAt(p.inX(), p.inY()));
      }
    }
    return new GeneratorSpec(block.text(Vocabulary.GENERATOR_NAME), ratedPowerW, fuel, points);
  }
}
