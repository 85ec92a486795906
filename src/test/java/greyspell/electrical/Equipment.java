package greyspell.electrical;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleChoices;
import greyspell.array.ModuleSpec;
import greyspell.calendar.Monthly;
import greyspell.power.InverterSpec;
import greyspell.storage.BankSpec;
import greyspell.storage.Chemistry;
import greyspell.storage.Enclosure;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Invented equipment for tests of strings and wires. */
public final class Equipment {
  /** 54 cells (halved), about 410 W: Voc 37.5 V, Vmp 31.4 V, -0.27 and -0.34 %/K. */
  public static final ModuleSpec M410 =
      module("Test 410", 37.5, 13.9, 31.4, 13.06, -0.0027, 1000.0);

  private Equipment() {}

  public static ModuleSpec module(
      String name,
      double openV,
      double shortA,
      double powerV,
      double powerA,
      double openPerK,
      @Nullable Double maxSystemV) {
    return new ModuleSpec(
        name,
        Math.rint(powerV * powerA),
        openV,
        shortA,
        powerV,
        powerA,
        -0.0034,
        openPerK,
        0.0005,
        45.0,
        54,
        maxSystemV,
        null);
  }

  /** The one place that makes controllers. */
  public static ControllerSpec controller(
      int count,
      @Nullable Double outputA,
      @Nullable Double lowestV,
      @Nullable Double highestV,
      @Nullable Double startV,
      @Nullable Double mostV,
      @Nullable Double mostA) {
    return new ControllerSpec(
        "Test " + mostV,
        count,
        null,
        outputA,
        0.97,
        lowestV,
        highestV,
        startV,
        mostV,
        mostA,
        1.0,
        ControllerKind.MPPT,
        List.of());
  }

  /** Joins the strings straight to the bank. */
  public static ControllerSpec pwm() {
    return new ControllerSpec(
        "Test straight",
        1,
        null,
        40.0,
        0.98,
        null,
        null,
        null,
        60.0,
        40.0,
        0.1,
        ControllerKind.PWM,
        List.of());
  }

  /** 150 V, 60 A out, 50 A in. */
  public static ControllerSpec c150() {
    return controller(1, 60.0, 20.0, 145.0, 25.0, 150.0, 50.0);
  }

  /** 250 V, 100 A out, 70 A in. */
  public static ControllerSpec c250() {
    return controller(1, 100.0, 30.0, 240.0, 35.0, 250.0, 70.0);
  }

  /** 51.2 V lithium iron phosphate, 20 kWh, 15 kW. */
  public static BankSpec bank() {
    return new BankSpec(
        "Test bank",
        Chemistry.LITHIUM_IRON_PHOSPHATE,
        4,
        20_480.0,
        51.2,
        1.0,
        0.1,
        0.97,
        0.97,
        15_000.0,
        15_000.0,
        0.02,
        List.of(new BankSpec.CapacityAt(25.0, 1.0)),
        0.0,
        5.0,
        new Enclosure.Indoors(15.0));
  }

  public static InverterSpec inverter(@Nullable Double surgeW) {
    return new InverterSpec(
        "Test inverter",
        1,
        6000.0,
        surgeW,
        40.0,
        40.0,
        List.of(new InverterSpec.EfficiencyAt(0.2, 0.94), new InverterSpec.EfficiencyAt(1.0, 0.9)));
  }

  public static StringRules rules(@Nullable Double lowC, @Nullable Double highC) {
    return StringRules.usual(lowC, highC, bank());
  }

  public static ArraySpec array(String name, ModuleSpec module, int inSeries, int inParallel) {
    return new ArraySpec(
        name,
        40.0,
        180.0,
        module,
        inSeries,
        inParallel,
        Monthly.constant(0.02),
        Monthly.constant(0.0),
        0.01,
        0.02,
        0.0,
        ModuleChoices.usual());
  }

  /** Plausible stickers from a seed. */
  public static List<ModuleSpec> modules(int count, long seed) {
    var random = new Random(seed);
    var modules = new ArrayList<ModuleSpec>();
    for (int k = 0; k < count; k++) {
      double openV = 20.0 + 35.0 * random.nextDouble();
      double shortA = 5.0 + 11.0 * random.nextDouble();
      modules.add(
          module(
              "Sheet " + k,
              openV,
              shortA,
              openV * (0.81 + 0.03 * random.nextDouble()),
              shortA * (0.93 + 0.02 * random.nextDouble()),
              -0.0024 - 0.0008 * random.nextDouble(),
              random.nextBoolean() ? 1000.0 : 600.0));
    }
    return modules;
  }

  /** Controllers from 75 to 600 V, from a seed. */
  public static List<ControllerSpec> controllers(int count, long seed) {
    var random = new Random(seed);
    double[] mostV = {75.0, 100.0, 150.0, 250.0, 450.0, 600.0};
    var controllers = new ArrayList<ControllerSpec>();
    for (int k = 0; k < count; k++) {
      double v = mostV[k % mostV.length];
      controllers.add(
          controller(
              1 + random.nextInt(2),
              20.0 + 80.0 * random.nextDouble(),
              v * 0.15,
              v * 0.95,
              v * 0.2,
              v,
              20.0 + 60.0 * random.nextDouble()));
    }
    return controllers;
  }

  public static ConductorRun run(
      WireSize size, double lengthM, double ambientC, Ampacity.Insulation insulation) {
    return new ConductorRun(
        ConductorRun.Kind.ARRAY_TO_CONTROLLER,
        "array to controller",
        lengthM,
        size,
        WireSize.Strands.FINE,
        WireResistance.Metal.COPPER,
        1,
        ambientC,
        insulation,
        null);
  }
}
