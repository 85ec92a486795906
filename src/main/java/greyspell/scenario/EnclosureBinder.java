package greyspell.scenario;

import greyspell.quantity.Unit;
import greyspell.storage.CellDefaults;
import greyspell.storage.Chemistry;
import greyspell.storage.Enclosure;
import org.jspecify.annotations.Nullable;

/** Where the bank stands. */
final class EnclosureBinder {
  private static final Key[] MASS_AND_GROUND = {
    BankKeys.MASS, BankKeys.SPECIFIC_HEAT, BankKeys.DEPTH, BankKeys.SOIL
  };

  private final Border border;

  EnclosureBinder(Border border) {
    this.border = border;
  }

  Enclosure enclosure(Block block, @Nullable Block battery) {
    if (!block.has(BatteryKeys.STANDS)) {
      block.missing(BatteryKeys.STANDS);
      return BankBinder.NO_ENCLOSURE;
    }
    return switch (block.word(BatteryKeys.STANDS, BatteryKeys.Stands.values())) {
      case INDOORS -> {
        refuse(block, "indoors", BatteryKeys.LAG, BatteryKeys.AT_LEAST, BatteryKeys.BOX_HEAT_LOSS);
        refuse(block, "indoors", MASS_AND_GROUND);
        try {
          yield new Enclosure.Indoors(block.measure(BatteryKeys.INDOOR_TEMPERATURE));
        } catch (IllegalArgumentException refused) {
          yield border.refused(block.place(), refused, BankBinder.NO_ENCLOSURE);
        }
      }
      case OUTDOORS -> {
        refuse(block, "outdoors", BatteryKeys.INDOOR_TEMPERATURE, BatteryKeys.AT_LEAST);
        if (!block.has(BankKeys.MASS)) {
          refuse(block, "outdoors", BatteryKeys.BOX_HEAT_LOSS);
        }
        refuse(block, "outdoors", BankKeys.DEPTH, BankKeys.SOIL);
        try {
          yield new Enclosure.Outdoors(lagH(block, battery));
        } catch (IllegalArgumentException refused) {
          yield border.refused(block.place(), refused, BankBinder.NO_ENCLOSURE);
        }
      }
      case HEATED -> {
        refuse(block, "heated", BatteryKeys.INDOOR_TEMPERATURE, BankKeys.DEPTH, BankKeys.SOIL);
        try {
          yield new Enclosure.Heated(
              lagH(block, battery),
              block.measure(BatteryKeys.AT_LEAST),
              block.measure(BatteryKeys.BOX_HEAT_LOSS));
        } catch (IllegalArgumentException refused) {
          yield border.refused(block.place(), refused, BankBinder.NO_ENCLOSURE);
        }
      }
      case GROUND -> {
        refuse(
            block,
            "ground",
            BatteryKeys.INDOOR_TEMPERATURE,
            BatteryKeys.LAG,
            BatteryKeys.AT_LEAST,
            BatteryKeys.BOX_HEAT_LOSS,
            BankKeys.MASS,
            BankKeys.SPECIFIC_HEAT);
        try {
          yield new Enclosure.InGround(
              block.measure(BankKeys.DEPTH), block.word(BankKeys.SOIL, Enclosure.Soil.values()));
        } catch (IllegalArgumentException refused) {
          yield border.refused(block.place(), refused, BankBinder.NO_ENCLOSURE);
        }
      }
    };
  }

  /** Stated, or from the mass and the heat loss. */
  private double lagH(Block block, @Nullable Block battery) {
    if (!block.has(BankKeys.MASS)) {
      refuseAlone(block, BankKeys.SPECIFIC_HEAT, BankKeys.MASS);
      return block.measure(BatteryKeys.LAG);
    }
    double massKg = block.measure(BankKeys.MASS);
    if (block.has(BatteryKeys.LAG)) {
      border.fault(
          block.place(BatteryKeys.LAG),
          "\"lag\" beside \"mass\"",
          "one of the two tells how slowly it follows the air",
          "Leave one out.");
    }
    double lagH =
        Enclosure.lagH(
            massKg, specificHeat(block, battery), block.measure(BatteryKeys.BOX_HEAT_LOSS));
    if (lagH > 0.0) {
      border.assume(block.path(BatteryKeys.LAG), Unit.HOUR.text(lagH), "from mass and heat_loss");
    }
    return lagH;
  }

  private double specificHeat(Block block, @Nullable Block battery) {
    Key key = BankKeys.SPECIFIC_HEAT;
    if (block.has(key) || battery == null || !battery.has(BatteryKeys.CHEMISTRY)) {
      return block.has(key) ? block.measure(key) : Double.NaN;
    }
    Chemistry chemistry = battery.word(BatteryKeys.CHEMISTRY, Chemistry.values());
    double usual = CellDefaults.of(chemistry).specificHeatJPerKgK();
    border.assume(block.path(key), Unit.JOULE_PER_KILOGRAM_KELVIN.text(usual), key.why);
    return usual;
  }

  private void refuseAlone(Block block, Key key, Key other) {
    if (block.has(key)) {
      border.fault(
          block.place(key),
          "\"" + key.name + "\" without \"" + other.name + "\"",
          "has no meaning alone",
          "Write both, or neither.");
    }
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
}
