package greyspell.scenario;

import greyspell.electrical.ConductorRun;
import greyspell.electrical.WireResistance;
import greyspell.electrical.WireSize;
import greyspell.quantity.Dimension;

/** Keys of the electrical checks and the wires. The part of {@link Vocabulary} about them. */
final class WireKeys {
  private WireKeys() {}

  static final Key DWELLING =
      Key.of("dwelling", Key.Kind.FLAG, "A one- or two-family dwelling.")
          .usual("yes", "one- or two-family dwelling: the voltage limit of the code holds")
          .into("isDwelling");
  static final Key CHARGING_VOLTAGE =
      Key.measure(
              "charging_voltage",
              "Highest voltage at which the bank is charged.",
              Dimension.VOLTAGE)
          .within(1, 1500)
          .usual("by chemistry", CommonKeys.PRACTICE)
          .into("chargingV");
  static final Key BANK_RESISTANCE =
      Key.measure("bank_resistance", "Internal resistance of the whole bank.", Dimension.RESISTANCE)
          .within(0, 10)
          .into("bankOhm");
  static final Key CUT_OFF_VOLTAGE =
      Key.measure(
              "cut_off_voltage",
              "Below it the inverter switches off; without it the inverter's lowest_input_voltage"
                  + " is taken, and never less than that.",
              Dimension.VOLTAGE)
          .within(1, 1500)
          .into("cutOffV");
  static final Shape ELECTRICAL =
      Shape.of(
          "electrical",
          "What only the electrical checks ask for. They are no design and no approval: local code"
              + " and licensed practice govern.",
          DWELLING,
          CHARGING_VOLTAGE,
          BANK_RESISTANCE,
          CUT_OFF_VOLTAGE);

  static final Key RUN =
      Key.word("run", "Which part of the way.", ConductorRun.Kind.values())
          .required()
          .into("run.kind");
  static final Key WIRE_ARRAY =
      Key.of(
              "array",
              Key.Kind.TEXT,
              "Name of the array that an array_to_controller run serves; left out, every array has"
                  + " such a run of its own.")
          .into("arrayName");
  static final Key WIRE_NAME = CommonKeys.name("the run's words, and the array's name");
  static final Key WIRE_LENGTH =
      Key.measure("length", "One way; there and back is reckoned.", Dimension.LENGTH)
          .within(0.05, 2000)
          .required()
          .into("lengthM");
  static final Key WIRE_SIZE =
      Key.of(
              "size",
              Key.Kind.TEXT,
              "As printed along the cable: \"10 AWG\", \"2/0 AWG\" or \"16 mm2\"; \"unknown\" is a"
                  + " finding of the check, and no loss of the wire is booked.")
          .required()
          .into("size");
  static final Key STRANDS =
      Key.word(
              "strands",
              "Stiff cable with few wires, or flexible cable with fine ones; tells in mm2 only.",
              WireSize.Strands.values())
          .usual("fine", "flexible cable; of the two it has the higher resistance")
          .into("strands");
  static final Key METAL =
      Key.word("metal", "What it is drawn from.", WireResistance.Metal.values())
          .usual("copper", "the usual metal of such cables")
          .into("metal");
  static final Key WIRES_IN_PARALLEL =
      Key.whole("in_parallel", "Wires side by side in each direction.")
          .within(1, 20)
          .usual("1", "")
          .into("inParallel");
  static final Key AMBIENT =
      Key.measure("ambient", "Hottest air around it.", Dimension.TEMPERATURE)
          .within(-60, 85)
          .usual("30 °C", "the air of the ampacity table; a roof is hotter")
          .into("ambientC");
  static final Key INSULATION =
      Key.measure(
              "insulation",
              "Temperature that its insulation is made for: 75 °C or 90 °C.",
              Dimension.TEMPERATURE)
          .within(75, 90)
          .usual("75 °C", "the lower column of the ampacity table")
          .into("insulation");
  static final Key ALLOWED_CURRENT =
      Key.measure(
              "allowed_current",
              "By the cable's own table as it is laid, corrected for air and laying, all wires"
                  + " together; where it is stated the program's table is not asked.",
              Dimension.CURRENT)
          .within(0.1, 5000)
          .into("statedAmpacityA");
  static final Shape CONDUCTOR =
      Shape.of(
          "conductor",
          "A pair of wires, as it is laid. Sizes are judged, never recommended.",
          RUN,
          WIRE_ARRAY,
          WIRE_NAME,
          WIRE_LENGTH,
          WIRE_SIZE,
          STRANDS,
          METAL,
          WIRES_IN_PARALLEL,
          AMBIENT,
          INSULATION,
          ALLOWED_CURRENT);
}
