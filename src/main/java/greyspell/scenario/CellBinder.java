package greyspell.scenario;

import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.quantity.Show;
import greyspell.quantity.Unit;
import greyspell.storage.BankSpec;
import greyspell.storage.CellDefaults;
import greyspell.storage.CellSheet;
import greyspell.storage.CellSheet.FactorAt;
import greyspell.storage.Chemistry;
import greyspell.storage.KineticSheet;
import greyspell.storage.LifeSheet;
import greyspell.storage.LifeSheet.CyclesAt;
import greyspell.storage.TwoTankFit;
import greyspell.storage.TwoTankFit.RatePoint;
import greyspell.storage.VoltageCurve;
import greyspell.storage.VoltageCurve.VoltageAt;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a battery's sheet says of its cells, its two tanks and its life. */
final class CellBinder {
  private static final double VOLTAGE_APART = 0.25;
  private static final double CAPACITY_APART = 0.02;

  /** Stand-ins for what could not be read; they go no further than the next fault report. */
  private static final CellSheet NO_CELLS =
      new CellSheet(
          List.of(new VoltageAt(0.0, 1.0)),
          1.0,
          List.of(new FactorAt(25.0, 1.0)),
          1.0,
          true,
          1.0,
          1.0);

  private static final KineticSheet NO_TANKS = new KineticSheet(1.0, 1.0, 1.0);

  private static final List<Key> MEASURES =
      List.of(
          BankKeys.RESISTANCE,
          BankKeys.COULOMBIC_EFFICIENCY,
          BankKeys.TAPER_FROM,
          BankKeys.TAPER_TO,
          BankKeys.QUICK_SHARE,
          BankKeys.EXCHANGE_RATE);
  private static final List<Key> CURVES =
      List.of(
          BankKeys.VOLTAGE_BY_CHARGE,
          BankKeys.RESISTANCE_BY_TEMPERATURE,
          BankKeys.CAPACITY_BY_HOURS);

  private final Border border;

  CellBinder(Border border) {
    this.border = border;
  }

  /** What a bank of constant efficiencies does not use is read all the same, for its faults. */
  static void readUnused(Block battery) {
    for (Key key : MEASURES) {
      battery.optional(key);
    }
    for (Key key : CURVES) {
      battery.curve(key);
    }
  }

  // ---- cells ------------------------------------------------------------------------------------

  /** Of one battery. */
  CellSheet cells(Block block, BankSpec one, boolean isLossStated) {
    try {
      return soundCells(block, one, isLossStated);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_CELLS);
    }
  }

  private CellSheet soundCells(Block block, BankSpec one, boolean isLossStated) {
    CellDefaults usual = CellDefaults.of(one.chemistry());
    double ohm;
    if (block.has(BankKeys.RESISTANCE)) {
      ohm = block.measure(BankKeys.RESISTANCE);
    } else {
      ohm = usual.resistanceOhm(one.nominalV(), one.capacityWh());
      assumeNumber(block, BankKeys.RESISTANCE, ohm, usual.resistanceWhy());
    }
    double coulombic =
        isLossStated && !block.has(BankKeys.COULOMBIC_EFFICIENCY)
            ? usual.coulombicEfficiency() // does not tell
            : or(
                block,
                BankKeys.COULOMBIC_EFFICIENCY,
                usual.coulombicEfficiency(),
                CellDefaults.COULOMBIC_WHY);
    double taperFrom =
        or(block, BankKeys.TAPER_FROM, usual.taperFromShare(), CellDefaults.TAPER_WHY);
    double taperTo = or(block, BankKeys.TAPER_TO, usual.taperTopShare(), CellDefaults.TAPER_WHY);
    return new CellSheet(
        voltages(block, one, usual),
        ohm,
        factors(block, usual),
        coulombic,
        isLossStated,
        taperFrom,
        taperTo);
  }

  private List<VoltageAt> voltages(Block block, BankSpec one, CellDefaults usual) {
    Key key = BankKeys.VOLTAGE_BY_CHARGE;
    List<WrittenValues.PointXY> written = block.curve(key);
    if (written == null) {
      List<VoltageAt> typical = VoltageCurve.usual(one.chemistry(), usual.cells(one.nominalV()));
      VoltageAt empty = typical.get(0);
      VoltageAt full = typical.get(typical.size() - 1);
      border.assume(
          block.path(key),
          Show.voltage(empty.openV()) + " empty to " + Show.voltage(full.openV()) + " full",
          CellDefaults.VOLTAGE_WHY);
      return typical;
    }
    var points = new ArrayList<VoltageAt>();
    for (WrittenValues.PointXY p : written) {
      if (Math.abs(p.y / one.nominalV() - 1.0) > VOLTAGE_APART) {
        border.fault(
            block.place(key),
            key.name + ": found a point of " + Show.voltage(p.y),
            "must lie within a quarter of the battery's " + Show.voltage(one.nominalV()),
            "Write the voltages of a whole battery, not of a cell.");
      }
      if (!points.isEmpty() && p.y < points.get(points.size() - 1).openV()) {
        border.fault(
            block.place(key),
            key.name + ": found a voltage that falls as it is charged",
            "must not fall with charge",
            "Are two of the voltages swapped?");
      }
      points.add(new VoltageAt(p.x, p.y));
    }
    return points;
  }

  private List<FactorAt> factors(Block block, CellDefaults usual) {
    Key key = BankKeys.RESISTANCE_BY_TEMPERATURE;
    List<WrittenValues.PointXY> written = block.curve(key);
    if (written == null) {
      var told = new StringBuilder();
      for (FactorAt at : usual.resistanceByTemperature()) {
        told.append(told.isEmpty() ? "" : ", ").append(Unit.CELSIUS.text(at.temperatureC()));
        told.append(' ').append(Show.percent(at.resistanceFactor()));
      }
      border.assume(block.path(key), told.toString(), CellDefaults.FACTORS_WHY);
      return usual.resistanceByTemperature();
    }
    var points = new ArrayList<FactorAt>();
    for (WrittenValues.PointXY p : written) {
      points.add(new FactorAt(p.x, p.y));
    }
    return points;
  }

  /** So many batteries joined. */
  static CellSheet together(CellSheet one, int inSeries, int inParallel) {
    var points = new ArrayList<VoltageAt>();
    for (VoltageAt at : one.voltageByCharge()) {
      points.add(new VoltageAt(at.chargeShare(), at.openV() * inSeries));
    }
    return new CellSheet(
        points,
        one.resistanceOhm() * inSeries / inParallel,
        one.resistanceByTemperature(),
        one.coulombicEfficiency(),
        one.isLossStated(),
        one.taperFromShare(),
        one.taperTopShare());
  }

  // ---- two tanks --------------------------------------------------------------------------------

  /** Of one battery; null for lithium. */
  @Nullable KineticSheet tanks(Block block, BankSpec one) {
    try {
      return soundTanks(block, one);
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_TANKS);
    }
  }

  private @Nullable KineticSheet soundTanks(Block block, BankSpec one) {
    CellDefaults.Tanks usual = CellDefaults.of(one.chemistry()).tanks();
    if (usual == null) {
      for (Key key :
          List.of(BankKeys.CAPACITY_BY_HOURS, BankKeys.QUICK_SHARE, BankKeys.EXCHANGE_RATE)) {
        if (block.has(key)) {
          border.fault(
              block.place(key),
              "\"" + key.name + "\" with chemistry: lithium_iron_phosphate",
              "has no meaning there",
              "Leave it out: two tanks are a matter of lead-acid.");
        }
      }
      return null;
    }
    boolean hasShare = block.has(BankKeys.QUICK_SHARE);
    boolean hasRate = block.has(BankKeys.EXCHANGE_RATE);
    if (hasShare != hasRate) {
      Key key = hasShare ? BankKeys.QUICK_SHARE : BankKeys.EXCHANGE_RATE;
      border.fault(
          block.place(key),
          "\"" + key.name + "\" alone",
          "quick_share and exchange_rate go together",
          "Write both, or neither.");
    }
    boolean isStated = hasShare && hasRate;
    CellDefaults.Tanks start =
        isStated
            ? new CellDefaults.Tanks(
                block.measure(BankKeys.QUICK_SHARE), block.measure(BankKeys.EXCHANGE_RATE))
            : usual;
    List<RatePoint> points = ratePoints(block, one);
    TwoTankFit fit =
        isStated || points.size() < 2
            ? TwoTankFit.sized(points, start)
            : TwoTankFit.of(points, start);
    for (String caution : fit.cautions()) {
      border.caution(one.name() + ": " + caution);
    }
    if (isStated && points.size() > 1) {
      border.assume(
          block.path(BankKeys.CAPACITY_BY_HOURS),
          "for the size of the two tanks alone",
          "quick_share and exchange_rate are stated and go first");
    }
    if (!isStated) {
      String why =
          points.size() < 2
              ? CellDefaults.TANKS_WHY
              : points.size() == 2
                  ? "fitted to capacity_by_hours, the share by chemistry"
                  : "fitted to capacity_by_hours";
      assumeNumber(block, BankKeys.QUICK_SHARE, fit.availableShare(), why);
      assumeNumber(block, BankKeys.EXCHANGE_RATE, fit.exchangePerH(), why);
    }
    return new KineticSheet(
        fit.availableShare(), fit.exchangePerH(), fit.tanksAh() * one.nominalV());
  }

  private List<RatePoint> ratePoints(Block block, BankSpec one) {
    Key key = BankKeys.CAPACITY_BY_HOURS;
    List<WrittenValues.PointXY> written = block.curve(key);
    double nominalAh = one.capacityWh() / one.nominalV();
    if (written == null) {
      border.assume(
          block.path(key),
          Unit.AMPERE_HOUR.text(nominalAh) + " in " + Show.hours(CellDefaults.RATED_H),
          "the usual time over which a capacity is stated");
      return List.of(new RatePoint(CellDefaults.RATED_H, nominalAh));
    }
    var points = new ArrayList<RatePoint>();
    for (WrittenValues.PointXY p : written) {
      if (!(p.x > 0.0)) {
        border.fault(
            block.place(key),
            key.name + ": found a point at " + Unit.HOUR.text(p.x),
            "must be above 0 h",
            "Leave this point out.");
        continue;
      }
      if (!points.isEmpty() && p.y < points.get(points.size() - 1).capacityAh()) {
        border.fault(
            block.place(key),
            key.name + ": found less capacity in more hours",
            "must not fall with time",
            "Are two of the capacities swapped?");
      }
      points.add(new RatePoint(p.x, p.y));
    }
    double least = points.get(0).capacityAh() * (1.0 - CAPACITY_APART);
    double most = points.get(points.size() - 1).capacityAh() * (1.0 + CAPACITY_APART);
    if (nominalAh < least || nominalAh > most) {
      border.caution(
          one.name()
              + ": its capacity of "
              + Unit.AMPERE_HOUR.text(nominalAh)
              + " lies outside its capacity_by_hours: which is right?");
    }
    return points;
  }

  static @Nullable KineticSheet times(@Nullable KineticSheet one, int all) {
    return one == null
        ? null
        : new KineticSheet(one.availableShare(), one.exchangePerH(), one.tanksWh() * all);
  }

  // ---- life -------------------------------------------------------------------------------------

  /** What is left out is listed only where it is asked for: in detail, or over years of service. */
  LifeSheet life(Block bank, Block battery, Chemistry chemistry, boolean isDetailed) {
    CellDefaults usual = CellDefaults.of(chemistry);
    int years = bank.has(BankKeys.SERVICE_YEARS) ? bank.whole(BankKeys.SERVICE_YEARS) : 0;
    boolean isAsked = isDetailed || years > 0;
    Double usualEveryH = usual.fullChargeEveryH();
    Double everyH = bank.optional(BankKeys.FULL_CHARGE_EVERY);
    if (everyH == null && usualEveryH != null && isAsked) {
      border.assume(
          bank.path(BankKeys.FULL_CHARGE_EVERY), Unit.DAY.text(usualEveryH), CellDefaults.END_WHY);
    }
    double toShare = shareOr(battery, BankKeys.CYCLE_LIFE_TO, isAsked);
    double calendarH = calendarLifeH(battery, usual, isAsked);
    double endShare = shareOr(bank, BankKeys.END_OF_LIFE, isAsked);
    try {
      return new LifeSheet(
          cycleLife(battery, usual, isAsked),
          toShare,
          calendarH,
          endShare,
          everyH == null ? usualEveryH : everyH,
          years);
    } catch (IllegalArgumentException refused) {
      return border.refused(battery.place(), refused, LifeSheet.usual(chemistry));
    }
  }

  private double shareOr(Block block, Key key, boolean isAsked) {
    return isAsked || block.has(key) ? block.measure(key) : CellDefaults.END_OF_LIFE_SHARE;
  }

  private double calendarLifeH(Block battery, CellDefaults usual, boolean isAsked) {
    Key key = BankKeys.CALENDAR_LIFE;
    if (battery.has(key)) {
      return battery.measure(key);
    }
    if (isAsked) {
      border.assume(battery.path(key), Unit.YEAR.text(usual.calendarLifeH()), usual.lifeWhy());
    }
    return usual.calendarLifeH();
  }

  private List<CyclesAt> cycleLife(Block battery, CellDefaults usual, boolean isAsked) {
    Key key = BankKeys.CYCLE_LIFE;
    List<WrittenValues.PointXY> written = battery.curve(key);
    if (written == null) {
      if (isAsked) {
        var told = new StringBuilder();
        for (CyclesAt at : usual.cycleLife()) {
          told.append(told.isEmpty() ? "" : ", ").append(Show.percent(at.depthShare()));
          told.append(" deep ").append(Show.number(at.lifeCycles(), 0));
        }
        border.assume(battery.path(key), told.toString(), usual.lifeWhy());
      }
      return usual.cycleLife();
    }
    var points = new ArrayList<CyclesAt>();
    for (WrittenValues.PointXY p : written) {
      if (!(p.x > 0.0 && p.x <= 1.0)) {
        border.fault(
            battery.place(key),
            key.name + ": found a point at " + Unit.PERCENT.text(p.x),
            "must be above 0 and up to 100 % deep",
            "Leave this point out.");
        continue;
      }
      if (!points.isEmpty() && p.y >= points.get(points.size() - 1).lifeCycles()) {
        border.fault(
            battery.place(key),
            key.name + ": found no fewer cycles for deeper ones",
            "must fall with depth",
            "Are two of the counts swapped?");
      }
      points.add(new CyclesAt(p.x, p.y));
    }
    return points;
  }

  // ---- alike ------------------------------------------------------------------------------------

  private double or(Block block, Key key, double usual, String why) {
    if (block.has(key)) {
      return block.measure(key);
    }
    assumeNumber(block, key, usual, why);
    return usual;
  }

  /** Three digits: these are fitted or rough. */
  private void assumeNumber(Block block, Key key, double value, String why) {
    if (Double.isNaN(value)) {
      return; // told already
    }
    Dimension dimension = key.dimensions.get(0);
    border.assume(block.path(key), Quantity.print(threeDigits(value), dimension), why);
  }

  private static double threeDigits(double value) {
    return new BigDecimal(value).round(new MathContext(3)).doubleValue();
  }
}
