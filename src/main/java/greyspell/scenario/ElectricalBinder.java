package greyspell.scenario;

import greyspell.electrical.Ampacity;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.StringRules;
import greyspell.electrical.UnknownRun;
import greyspell.electrical.WireResistance;
import greyspell.electrical.WireSize;
import greyspell.quantity.Nearest;
import greyspell.quantity.Unit;
import greyspell.storage.BankSpec;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.Node;

/** What the electrical checks need, and the wires with the planes that they serve. */
final class ElectricalBinder {
  static final String UNKNOWN_SIZE = "unknown";
  private final Border border;
  private final String file;
  private final List<String> planes;

  /**
   * @param planes names of the arrays
   */
  ElectricalBinder(Border border, String file, List<String> planes) {
    this.border = border;
    this.file = file;
    this.planes = planes;
  }

  /**
   * What is under {@code electrical}, with the wires.
   *
   * @param lowestInputV lowest voltage at which the inverter works, null if its sheet is silent
   */
  Scenario.Electrical electrical(
      Block block, @Nullable BankSpec bank, @Nullable Double lowestInputV, Wires conductors) {
    Key charging = WireKeys.CHARGING_VOLTAGE;
    Double chargingV = block.optional(charging);
    if (chargingV == null && bank != null) {
      border.assume(
          block.path(charging), Unit.VOLT.text(StringRules.usualChargingV(bank)), charging.why);
    }
    return new Scenario.Electrical(
        block.flag(WireKeys.DWELLING),
        chargingV,
        block.optional(WireKeys.BANK_RESISTANCE),
        cutOffV(block, lowestInputV),
        conductors.known(),
        conductors.unknown());
  }

  /** An inverter stops at its own lowest voltage, whatever is set. */
  private @Nullable Double cutOffV(Block block, @Nullable Double lowestInputV) {
    Key key = WireKeys.CUT_OFF_VOLTAGE;
    Double statedV = block.optional(key);
    if (lowestInputV == null || Double.isNaN(lowestInputV)) {
      return statedV;
    }
    if (statedV == null) {
      border.assume(
          block.path(key),
          Unit.VOLT.text(lowestInputV),
          "the inverter's lowest_input_voltage: nothing else is stated");
      return lowestInputV;
    }
    if (statedV < lowestInputV) {
      border.caution(
          "cut_off_voltage "
              + Unit.VOLT.text(statedV)
              + " lies below the "
              + Unit.VOLT.text(lowestInputV)
              + " down to which the inverter works (lowest_input_voltage): it stops there, and that"
              + " is what is reckoned with.");
      return lowestInputV;
    }
    return statedV;
  }

  /** The wires of a home, those of unknown size apart. */
  record Wires(List<Scenario.Wire> known, List<Scenario.UnknownWire> unknown) {}

  // ---- conductors -------------------------------------------------------------------------------

  Wires conductors(Block home) {
    var wires = new ArrayList<Scenario.Wire>();
    var unknown = new ArrayList<Scenario.UnknownWire>();
    var ways = new ArrayList<Way>();
    List<Node> items = home.list(Vocabulary.CONDUCTORS);
    for (int i = 0; i < items.size(); i++) {
      String path = "conductors[".concat(Integer.toString(i)).concat("]");
      var block = new Block(WireKeys.CONDUCTOR, items.get(i), file, path, border, null);
      wire(block, wires, unknown, ways);
    }
    return new Wires(List.copyOf(wires), List.copyOf(unknown));
  }

  /** Nothing is added after a fault. */
  private void wire(
      Block block, List<Scenario.Wire> wires, List<Scenario.UnknownWire> unknown, List<Way> ways) {
    boolean isRunTold = block.has(WireKeys.RUN);
    ConductorRun.Kind kind = block.word(WireKeys.RUN, ConductorRun.Kind.values());
    String plane = isRunTold ? plane(block, kind) : "";
    boolean isSizeUnknown = block.has(WireKeys.WIRE_SIZE) && isUnknownSize(block);
    WireSize size = isSizeUnknown ? null : size(block);
    Ampacity.Insulation insulation = insulation(block);
    double lengthM = block.measure(WireKeys.WIRE_LENGTH);
    var strands = block.word(WireKeys.STRANDS, WireSize.Strands.values());
    var metal = block.word(WireKeys.METAL, WireResistance.Metal.values());
    int inParallel = block.whole(WireKeys.WIRES_IN_PARALLEL);
    double ambientC = block.measure(WireKeys.AMBIENT);
    Double allowedA = block.optional(WireKeys.ALLOWED_CURRENT);
    if (!isRunTold) {
      return;
    }
    String name =
        block.has(WireKeys.WIRE_NAME)
            ? block.text(WireKeys.WIRE_NAME)
            : kind.words().concat(plane.isEmpty() ? "" : ", ".concat(plane));
    if (Double.isNaN(lengthM) || Double.isNaN(ambientC) || isNoNumber(allowedA)) {
      return;
    }
    if (isSizeUnknown) {
      unknown.add(new Scenario.UnknownWire(new UnknownRun(kind, name, allowedA), plane));
    } else if (size == null) {
      return;
    } else {
      wires.add(
          new Scenario.Wire(
              new ConductorRun(
                  kind,
                  name,
                  lengthM,
                  size,
                  strands,
                  metal,
                  inParallel,
                  ambientC,
                  insulation,
                  allowedA),
              plane));
    }
    var way = new Way(kind, plane);
    refuseTwice(block, way, ways);
    ways.add(way);
  }

  /** A part of the way from the sun to the inverter; an empty plane stands for all. */
  private record Way(ConductorRun.Kind kind, String plane) {}

  private static boolean isUnknownSize(Block block) {
    return block.text(WireKeys.WIRE_SIZE).strip().equalsIgnoreCase(UNKNOWN_SIZE);
  }

  private static boolean isNoNumber(@Nullable Double value) {
    return value != null && Double.isNaN(value);
  }

  /** Empty for every plane, and after a fault. */
  private String plane(Block block, ConductorRun.Kind kind) {
    Key key = WireKeys.WIRE_ARRAY;
    if (!block.has(key)) {
      return "";
    }
    String name = block.text(key);
    if (kind != ConductorRun.Kind.ARRAY_TO_CONTROLLER) {
      border.fault(
          block.place(key),
          "\"array\" with run: " + block.text(WireKeys.RUN),
          "has no meaning there",
          "Leave it out: this run serves the whole house.");
      return "";
    }
    int bearers = 0;
    for (String plane : planes) {
      bearers += plane.equals(name) ? 1 : 0;
    }
    if (bearers == 1) {
      return name;
    }
    String nearest = Nearest.of(name, planes);
    border.fault(
        block.place(key),
        Border.found(key.name, name) + (bearers > 1 ? ", which " + bearers + " arrays bear" : ""),
        "must be the name of one array: " + String.join(", ", planes),
        bearers > 1
            ? "Give each array a name of its own."
            : nearest == null ? "" : "Nearest: \"" + nearest + "\".");
    return "";
  }

  private @Nullable WireSize size(Block block) {
    Key key = WireKeys.WIRE_SIZE;
    String text = block.text(key);
    if (!block.has(key) || text.isEmpty()) {
      return null;
    }
    WireSize size = WireSize.find(text);
    if (size == null) {
      border.fault(
          block.place(key),
          Border.found(key.name, text),
          "must be " + WireSize.EXPECTED + ", or unknown",
          "It is printed along the cable.");
    }
    return size;
  }

  private Ampacity.Insulation insulation(Block block) {
    Key key = WireKeys.INSULATION;
    double ratingC = block.measure(key);
    for (Ampacity.Insulation insulation : Ampacity.Insulation.values()) {
      if (Math.abs(insulation.ratingC() - ratingC) < 1e-6) {
        return insulation;
      }
    }
    if (!Double.isNaN(ratingC)) {
      border.fault(
          block.place(key),
          Border.found(key.name, block.text(key)),
          "must be 75 °C or 90 °C, the columns of the ampacity table",
          "Take the lower one for a cable that lies between the two.");
    }
    return Ampacity.Insulation.C75;
  }

  /** Each way has one run: a run without a plane serves them all. */
  private void refuseTwice(Block block, Way way, List<Way> before) {
    for (Way other : before) {
      boolean isSameWay =
          other.kind() == way.kind()
              && (other.plane().equals(way.plane())
                  || other.plane().isEmpty()
                  || way.plane().isEmpty());
      if (isSameWay) {
        String plane = way.plane().isEmpty() ? other.plane() : way.plane();
        border.fault(
            block.place(),
            way.kind().words()
                + " a second time"
                + (plane.isEmpty() ? "" : " for " + Border.shown(plane)),
            "each way has one run",
            way.kind() == ConductorRun.Kind.ARRAY_TO_CONTROLLER
                ? "Name another array, or write \"in_parallel\" for wires side by side."
                : "Write \"in_parallel\" for wires side by side.");
        return;
      }
    }
  }

  /** Whether a wire from this plane to the controller is stated. */
  static boolean serves(List<Scenario.Wire> wires, String plane) {
    for (Scenario.Wire wire : wires) {
      if (wire.run().kind() == ConductorRun.Kind.ARRAY_TO_CONTROLLER
          && (wire.arrayName().isEmpty() || wire.arrayName().equals(plane))) {
        return true;
      }
    }
    return false;
  }
}
