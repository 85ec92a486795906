package greyspell.scenario;

import greyspell.quantity.Quantity;
import greyspell.quantity.Show;
import greyspell.quantity.Unit;
import greyspell.storage.BankDefaults;
import greyspell.storage.BankSpec;
import greyspell.storage.CellSheet;
import greyspell.storage.Chemistry;
import greyspell.storage.Enclosure;
import greyspell.storage.KineticSheet;
import greyspell.storage.LifeSheet;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The bank: what it is made of, how it is joined, how far it is reckoned. */
final class BankBinder {
  static final Enclosure NO_ENCLOSURE = new Enclosure.Indoors(20.0);
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

  private final Border border;

  BankBinder(Border border) {
    this.border = border;
  }

  /** One battery, as its data sheet says, with the chemistry's defaults. */
  BankSpec battery(Block block) {
    return battery(block, true);
  }

  /**
   * One battery.
   *
   * @param needsEfficiency whether efficiencies that are left out are assumed, or not asked
   */
  BankSpec battery(Block block, boolean needsEfficiency) {
    Chemistry chemistry = block.word(BatteryKeys.CHEMISTRY, Chemistry.values());
    BankDefaults usual = BankDefaults.of(chemistry);
    double voltageV = block.measure(BatteryKeys.VOLTAGE);
    double capacityWh = block.measure(BatteryKeys.CAPACITY, voltageV);
    double coldestC =
        or(block, BatteryKeys.COLDEST_CHARGE, usual.coldestChargeC(), usual.coldestChargeWhy());
    Double fullFromC = block.optional(BankKeys.FULL_CHARGE_FROM);
    refuseWarmer(block, coldestC, fullFromC);
    try {
      return new BankSpec(
          block.text(BatteryKeys.BATTERY_NAME),
          chemistry,
          1,
          capacityWh,
          voltageV,
          1.0,
          0.0,
          efficiency(
              block,
              BatteryKeys.CHARGE_EFFICIENCY,
              usual.chargeEfficiency(),
              usual,
              needsEfficiency),
          efficiency(
              block,
              BatteryKeys.DISCHARGE_EFFICIENCY,
              usual.dischargeEfficiency(),
              usual,
              needsEfficiency),
          limit(block, BatteryKeys.MAX_CHARGE, voltageV, capacityWh / usual.fillingH()),
          limit(block, BatteryKeys.MAX_DISCHARGE, voltageV, capacityWh / usual.emptyingH()),
          or(
              block,
              BatteryKeys.SELF_DISCHARGE,
              usual.selfDischargePerMonthFraction(),
              usual.selfDischargeWhy()),
          capacityCurve(block, usual),
          coldestC,
          or(block, BatteryKeys.BATTERY_STANDBY, usual.standbyW(), BankDefaults.USUAL_WHY),
          NO_ENCLOSURE,
          fullFromC == null ? coldestC : fullFromC,
          1.0,
          null,
          null,
          LifeSheet.usual(chemistry));
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_BANK);
    }
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
    Key key = BatteryKeys.CAPACITY_BY_TEMPERATURE;
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

  private void refuseWarmer(Block block, double coldestC, @Nullable Double fullFromC) {
    if (fullFromC != null && fullFromC < coldestC) {
      border.fault(
          block.place(BankKeys.FULL_CHARGE_FROM),
          "full_charge_from: "
              + Unit.CELSIUS.text(fullFromC)
              + " with coldest_charge: "
              + Unit.CELSIUS.text(coldestC),
          "the full limit must begin above the coldest charging temperature",
          "Are the two swapped?");
    }
  }

  private double efficiency(
      Block block, Key key, double usual, BankDefaults defaults, boolean isNeeded) {
    return isNeeded || block.has(key) ? or(block, key, usual, defaults.efficiencyWhy()) : usual;
  }

  BankSpec bank(Block block, @Nullable Block batteryBlock, Block home) {
    int inSeries = block.whole(BatteryKeys.BANK_IN_SERIES);
    int inParallel = block.whole(BatteryKeys.BANK_IN_PARALLEL);
    double fullFraction = block.measure(BatteryKeys.FULL);
    Block enclosureBlock = block.block(BatteryKeys.BANK_ENCLOSURE);
    Enclosure enclosure =
        enclosureBlock == null
            ? NO_ENCLOSURE
            : new EnclosureBinder(border).enclosure(enclosureBlock, batteryBlock);
    boolean isDetailed =
        block.word(BankKeys.MODEL, BankKeys.Model.values()) == BankKeys.Model.DETAILED;
    double healthShare = block.measure(BankKeys.HEALTH);
    if (batteryBlock == null) {
      double reserve = home.has(Vocabulary.RESERVE) ? home.measure(Vocabulary.RESERVE) : Double.NaN;
      refuseReserve(home, block, reserve, fullFraction);
      return NO_BANK;
    }
    boolean isLossStated = isLossStated(block, batteryBlock, isDetailed);
    BankSpec one = battery(batteryBlock, isLossStated);
    double reserve =
        or(
            home,
            Vocabulary.RESERVE,
            BankDefaults.of(one.chemistry()).reserveFraction(),
            BankDefaults.USUAL_WHY);
    refuseReserve(home, block, reserve, fullFraction);
    int all = inSeries * inParallel;
    var cellBinder = new CellBinder(border);
    try {
      var bank =
          new BankSpec(
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
              enclosure,
              one.fullChargeFromC(),
              1.0,
              null,
              null,
              cellBinder.life(block, batteryBlock, one.chemistry(), isDetailed));
      if (isDetailed && one != NO_BANK) {
        CellSheet cells = cellBinder.cells(batteryBlock, one, isLossStated);
        KineticSheet tanks = cellBinder.tanks(batteryBlock, one);
        bank =
            bank.inDetail(
                CellBinder.together(cells, inSeries, inParallel), CellBinder.times(tanks, all));
        assumeNear(batteryBlock, bank, isLossStated);
      } else {
        CellBinder.readUnused(batteryBlock);
      }
      return bank.withHealth(healthShare);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_BANK);
    }
  }

  /** A bank of constant efficiencies loses what is stated or assumed. */
  private boolean isLossStated(Block bank, Block battery, boolean isDetailed) {
    Key key = BankKeys.LOSSES;
    if (bank.has(key)) {
      var losses = bank.word(key, BankKeys.Losses.values());
      if (!isDetailed) {
        border.fault(
            bank.place(key),
            "\"losses\" without model: detailed",
            "has no meaning there",
            "Write \"model: detailed\" beside it, or leave it out.");
        return true;
      }
      return losses == BankKeys.Losses.STATED;
    }
    if (!isDetailed) {
      return true;
    }
    boolean isStated =
        battery.has(BatteryKeys.CHARGE_EFFICIENCY) || battery.has(BatteryKeys.DISCHARGE_EFFICIENCY);
    border.assume(
        bank.path(key),
        isStated ? "stated" : "resistance",
        isStated ? "the battery states an efficiency" : "the battery states no efficiency");
    return isStated;
  }

  /** The constants that stand for the losses of the resistance where only constants are known. */
  private void assumeNear(Block battery, BankSpec bank, boolean isLossStated) {
    if (!isLossStated) {
      border.assume(
          battery.path(BatteryKeys.CHARGE_EFFICIENCY),
          Show.percent(bank.chargeEfficiency())
              + " in, "
              + Show.percent(bank.dischargeEfficiency())
              + " out",
          "near the losses of the resistance at a tenth of the capacity an hour; only for figures"
              + " such as autonomy, the hours themselves follow the resistance");
    }
  }

  private void refuseReserve(Block home, Block bank, double reserve, double full) {
    if (reserve >= full) {
      border.fault(
          home.has(Vocabulary.RESERVE)
              ? home.place(Vocabulary.RESERVE)
              : bank.place(BatteryKeys.FULL),
          "reserve: " + Unit.PERCENT.text(reserve) + " with full: " + Unit.PERCENT.text(full),
          "the reserve must lie below full",
          "Nothing between the two would be left to use.");
    }
  }
}
