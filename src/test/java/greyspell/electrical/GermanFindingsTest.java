package greyspell.electrical;

import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.DataSheetFit;
import greyspell.array.DataSheetLint;
import greyspell.array.ModuleChoices;
import greyspell.array.ModuleSpec;
import greyspell.array.PowerModel;
import greyspell.power.InverterCurve;
import greyspell.power.InverterSpec;
import greyspell.storage.BankSpec;
import greyspell.words.German;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every judge on equipment of all kinds, good and bad: all that it finds is told in German. */
class GermanFindingsTest {
  private static final List<String> NAMES = List.of("Scheune", "Hof", "Wiese", "Werk 7");

  private final Set<String> sentences = new LinkedHashSet<>();
  private final EnumSet<Finding.Severity> seen = EnumSet.noneOf(Finding.Severity.class);
  private final Random random = new Random(7);

  private void tell(List<Finding> findings) {
    for (Finding f : findings) {
      seen.add(f.severity());
      sentences.add(f.subject().contains(": ") ? f.subject() : "Scheune: " + f.subject());
      sentences.add(f.text());
      sentences.add(f.reason());
    }
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private boolean isOne(int of) {
    return random.nextInt(of) == 0;
  }

  private @Nullable Double maybe(double low, double high) {
    return isOne(4) ? null : Double.valueOf(between(low, high));
  }

  private ModuleSpec module() {
    double openV = between(18.0, 52.0), shortA = between(4.0, 15.0);
    return Equipment.module(
        "Werk 7", openV, shortA, openV * 0.83, shortA * 0.94, -0.0027, isOne(4) ? null : 600.0);
  }

  private ControllerSpec controller() {
    double mostV = between(60.0, 500.0);
    boolean isPwm = isOne(5);
    return new ControllerSpec(
        "Werk 7",
        1 + random.nextInt(4),
        isOne(3) ? between(300.0, 6000.0) : null,
        maybe(10.0, 100.0),
        0.97,
        isPwm ? null : maybe(mostV * 0.1, mostV * 0.5),
        isPwm ? null : maybe(mostV * 0.5, mostV * 0.95),
        isPwm ? null : maybe(mostV * 0.1, mostV * 0.6),
        isOne(5) ? null : mostV,
        maybe(10.0, 80.0),
        1.0,
        isPwm ? ControllerKind.PWM : ControllerKind.MPPT,
        List.of());
  }

  @Test
  void strings() {
    for (int run = 0; run < 3000; run++) {
      var arrays = new ArrayList<ArraySpec>();
      int planes = 1 + random.nextInt(3);
      for (int k = 0; k < planes; k++) {
        arrays.add(
            Equipment.array(
                NAMES.get(k),
                module(),
                1 + random.nextInt(8),
                1 + random.nextInt(isOne(3) ? 15 : 4)));
      }
      boolean isCold = isOne(2);
      StringRules rules =
          Equipment.rules(
              isOne(6) ? null : Double.valueOf(between(isCold ? -60.0 : -30.0, 5.0)),
              isOne(6) ? null : Double.valueOf(between(20.0, 48.0)));
      ControllerSpec controller = controller();
      var built =
          StringJudge.asBuilt(
              arrays, controller, isOne(3) ? rules.withChargingV(between(10.0, 60.0)) : rules);
      tell(built.findings());
      built.missing().forEach(told -> sentences.add("not judged. " + told));
      sentences.addAll(StringGlance.of(arrays, controller, rules.recordLowC()));
    }
    assertTrue(seen.containsAll(EnumSet.allOf(Finding.Severity.class)), seen.toString());
    German.check(sentences, NAMES);
  }

  @Test
  void wires() {
    for (int run = 0; run < 4000; run++) {
      WireSize size = one(List.of(WireSize.values()));
      Double statedA = isOne(3) ? Double.valueOf(between(5.0, 300.0)) : null;
      var load =
          new RunLoad(between(1.0, 150.0), between(1.0, 150.0), between(12.0, 300.0), 0.0, 0.0);
      var wire =
          new ConductorRun(
              one(List.of(ConductorRun.Kind.values())),
              "",
              between(0.5, 90.0),
              size,
              WireSize.Strands.FINE,
              one(List.of(WireResistance.Metal.values())),
              1 + random.nextInt(2),
              between(10.0, 50.0),
              one(List.of(Ampacity.Insulation.values())),
              statedA);
      tell(ConductorJudge.judge(wire, load).findings());
      var unknown = new UnknownRun(wire.kind(), "", statedA);
      tell(unknown.findings(load, "no loss of it is booked"));
      tell(
          unknown.findings(
              load, "no loss of it is booked but the plane's flat wiring_loss of 2.0 %"));
    }
    for (ConductorRun.Kind kind : ConductorRun.Kind.values()) {
      for (String plane : List.of("", ", Scheune")) {
        if (!plane.isEmpty() && kind != ConductorRun.Kind.ARRAY_TO_CONTROLLER) {
          continue; // only those are named by their plane
        }
        for (String subject : List.of("heat", "voltage drop", "small wire", "wires side by side")) {
          sentences.add(kind.words() + plane + ": " + subject);
        }
      }
    }
    assertTrue(seen.containsAll(EnumSet.allOf(Finding.Severity.class)), seen.toString());
    German.check(sentences, NAMES);
  }

  @Test
  void surgesAndLoads() {
    for (int run = 0; run < 2000; run++) {
      InverterSpec inverter = Equipment.inverter(isOne(4) ? null : between(500.0, 20_000.0));
      BankSpec bank = Equipment.bank();
      tell(
          SurgeJudge.judge(
              inverter,
              bank,
              new SurgeJudge.Path(null, maybe(0.0, 0.2), maybe(0.0, 0.2), maybe(30.0, 51.0))));
    }
    tell(LoadJudge.judge(List.of(), Equipment.inverter(null)));
    assertTrue(seen.containsAll(EnumSet.of(Finding.Severity.FAIL, Finding.Severity.CAUTION)));
    sentences.removeIf(s -> s.startsWith("Scheune: "));
    German.check(sentences, NAMES);
  }

  @Test
  void dataSheets() {
    var suspects = new LinkedHashSet<String>();
    for (int run = 0; run < 6000; run++) {
      double openV = between(20.0, 52.0), shortA = between(5.0, 15.0);
      double powerV = openV * (isOne(3) ? between(0.5, 0.98) : 0.83);
      double powerA = shortA * (isOne(3) ? between(0.6, 0.999) : 0.94);
      var module =
          new ModuleSpec(
              "Werk 7",
              powerV * powerA * (isOne(3) ? between(0.7, 1.3) : 1.0),
              openV,
              shortA,
              powerV,
              powerA,
              isOne(2) ? -0.0034 : -anySize(0.02),
              isOne(2) ? -0.0027 : -anySize(0.02),
              isOne(2) ? 0.0005 : (isOne(4) ? -1.0 : 1.0) * anySize(0.005),
              isOne(3) ? one(20.0, 25.0, 60.0) : 45.0,
              isOne(3) ? 1 + random.nextInt(200) : (int) Math.rint(openV / 0.68),
              isOne(3) ? Double.valueOf(one(30.0, 400.0, 1800.0, 2500.0)) : null,
              isOne(2) ? Double.valueOf(between(0.5, 4.0)) : null);
      for (var found : DataSheetLint.of(module)) {
        suspects.add(found.suspect());
        sentences.add("Werk 7: " + found.suspect());
        sentences.add(found.finding());
      }
      sentences.addAll(DataSheetFit.of(module).cautions());
      sentences.addAll(PowerModel.of(module, ModuleChoices.usual()).cautions());
    }
    assertTrue(suspects.size() >= 12, suspects.toString());
    German.check(sentences, NAMES);
  }

  /** A figure in the wrong unit is off by factors of ten. */
  private double anySize(double most) {
    return most * Math.pow(10.0, between(-4.0, 0.0));
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private double one(double... of) {
    return of[random.nextInt(of.length)];
  }

  @Test
  void inverters() {
    for (int run = 0; run < 300; run++) {
      var points = new ArrayList<InverterSpec.EfficiencyAt>();
      int count = 1 + random.nextInt(5);
      for (int k = 1; k <= count; k++) {
        points.add(new InverterSpec.EfficiencyAt((double) k / count, between(0.7, 0.97)));
      }
      double standbyW = between(0.0, 60.0);
      var fit =
          InverterCurve.fit(
              new InverterSpec(
                  "Werk 7", 1, 3000.0, null, standbyW, standbyW, points, null, null, 60.0));
      sentences.addAll(fit.cautions());
      fit.cautions().forEach(c -> sentences.add(c.replace("inverter ", "")));
      if (!fit.note().isEmpty()) {
        sentences.add(fit.note());
      }
    }
    assertTrue(sentences.size() > 100);
    German.check(sentences, NAMES);
  }

  /** So that the checks above can fail. */
  @Test
  void whatIsNotInTheListIsSeen() {
    assertTrue(German.englishIn("5 in Reihe, limit 3 V", NAMES).contains("limit"));
    assertTrue(German.englishIn("Werk 7: Wärme", NAMES).isEmpty());
  }
}
