package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.load.ApplianceSpec;
import greyspell.load.DegreeHours;
import greyspell.load.Evidence;
import greyspell.power.Charger;
import greyspell.power.GeneratorSpec;
import greyspell.power.InverterSpec;
import greyspell.quantity.Place;
import greyspell.storage.BankSpec;
import greyspell.storage.Chemistry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.nodes.Node;

/** Reads every entry of the shipped library, and asks whether its figures can be true. */
class LibraryTest {
  private final Border border = new Border();
  private final Library library = new Library(TestFolder.LIBRARY);
  private final EquipmentBinder equipment = new EquipmentBinder(library, border);

  private List<Block> all(Shape shape) {
    var blocks = new ArrayList<Block>();
    for (String name : library.names(shape, border)) {
      Node entry = library.entry(shape, name, Place.of("test"), "name", border);
      assertNotNull(entry, name);
      blocks.add(new Block(shape, entry, library.shownName(shape), name, border, null));
    }
    return blocks;
  }

  private void assertClean() {
    border.throwIfAny("shared");
  }

  @Test
  void modulesCouldBeTrue() {
    List<Block> blocks = all(ArrayKeys.MODULE);
    assertTrue(blocks.size() >= 12);
    for (Block block : blocks) {
      ModuleSpec m = equipment.module(block);
      String name = m.name();
      assertEquals(1.0, m.maxPowerV() * m.maxPowerA() / m.ratedPowerW(), 0.02, name);
      double fillFactor = m.ratedPowerW() / (m.openCircuitV() * m.shortCircuitA());
      assertTrue(fillFactor > 0.6 && fillFactor < 0.86, name + " fill factor " + fillFactor);
      double cellV = m.openCircuitV() / m.cellsInSeries();
      assertTrue(cellV > 0.5 && cellV < 0.78, name + " volts per cell " + cellV);
      assertTrue(m.maxPowerV() < m.openCircuitV() && m.maxPowerA() < m.shortCircuitA(), name);
      assertTrue(m.powerPerK() < m.openCircuitPerK(), name + ": power falls faster than voltage");
      assertTrue(m.openCircuitPerK() < 0 && m.shortCircuitPerK() > 0, name);
      Double areaM2 = m.areaM2();
      assertNotNull(areaM2, name);
      double efficiency = m.ratedPowerW() / (1000 * areaM2);
      assertTrue(efficiency > 0.08 && efficiency < 0.245, name + " efficiency " + efficiency);
      assertNotNull(m.maxSystemV(), name);
    }
    assertClean();
    assertEquals(List.of(), border.assumptions(), "every figure is stated");
  }

  @Test
  void batteriesCouldBeTrue() {
    List<Block> blocks = all(BatteryKeys.BATTERY);
    assertTrue(blocks.size() >= 10);
    for (Block block : blocks) {
      BankSpec b = new BankBinder(border).battery(block);
      boolean isLithium = b.chemistry() == Chemistry.LITHIUM_IRON_PHOSPHATE;
      double roundTrip = b.chargeEfficiency() * b.dischargeEfficiency();
      assertTrue(
          isLithium ? roundTrip > 0.92 && roundTrip < 0.97 : roundTrip > 0.7 && roundTrip < 0.86,
          b.name() + " round trip " + roundTrip);
      double chargeRate = b.maxChargeW() / b.capacityWh();
      assertTrue(chargeRate > 0.1 && chargeRate <= 0.51, b.name() + " charge rate " + chargeRate);
      assertTrue(b.maxDischargeW() >= b.maxChargeW(), b.name());
      double cellV = isLithium ? 3.2 : 2.0;
      double cells = b.nominalV() / cellV;
      assertEquals(Math.rint(cells), cells, 1e-9, b.name() + " whole cells");
      assertTrue(b.capacityByTemperature().size() >= 3, b.name());
    }
    assertClean();
    assertEquals(List.of(), border.assumptions(), "every figure is stated");
  }

  @Test
  void invertersCouldBeTrue() {
    List<Block> blocks = all(PowerKeys.INVERTER);
    assertTrue(blocks.size() >= 8);
    for (Block block : blocks) {
      InverterSpec i = equipment.inverter(block);
      assertTrue(i.standbyDayW() >= i.standbyNightW(), i.name());
      double standbyShare = i.standbyDayW() / i.continuousW();
      assertTrue(standbyShare > 0.004 && standbyShare < 0.02, i.name() + " " + standbyShare);
      Double surgeW = i.surgeW();
      assertTrue(surgeW != null && surgeW >= 1.5 * i.continuousW(), i.name());
      Charger charger = i.charger();
      if (charger != null) {
        double share = charger.mostAcW() / i.continuousW();
        assertTrue(share > 0.4 && share <= 1.0, i.name() + " charger " + share);
        assertTrue(charger.efficiency() > 0.85 && charger.efficiency() < 0.95, i.name());
      }
      if (block.has(PowerKeys.BUILT_IN_CONTROLLER)) {
        Block inner = block.block(PowerKeys.BUILT_IN_CONTROLLER);
        assertNotNull(inner);
        assertControllerCouldBeTrue(equipment.controller(inner));
      }
    }
    assertClean();
  }

  @Test
  void controllersCouldBeTrue() {
    List<Block> blocks = all(ArrayKeys.CONTROLLER);
    assertTrue(blocks.size() >= 8);
    for (Block block : blocks) {
      assertControllerCouldBeTrue(equipment.controller(block));
    }
    assertClean();
  }

  private static void assertControllerCouldBeTrue(ControllerSpec c) {
    Double most = c.absoluteMaximumV();
    assertNotNull(most, c.name());
    Double high = c.highestTrackingV();
    Double low = c.lowestTrackingV();
    Double start = c.startV();
    if (high != null && low != null && start != null) {
      assertTrue(low < high && high <= most && start >= low && start < high, c.name());
    }
    assertTrue(c.efficiency() > 0.94 && c.efficiency() < 0.99, c.name());
  }

  @Test
  void generatorsCouldBeTrue() {
    List<Block> blocks = all(PowerKeys.GENERATOR);
    assertTrue(blocks.size() >= 5);
    for (Block block : blocks) {
      GeneratorSpec g = new GeneratorBinder(border, "x.yaml").spec(block);
      double kWhPerL = 10.0; // no fuel holds more: diesel about 10, petrol 9, propane 7
      double last = 0.0;
      for (GeneratorSpec.FuelAt at : g.fuelUse()) {
        assertTrue(at.fuelLPerH() > last, g.name() + " fuel rises with load");
        last = at.fuelLPerH();
        double efficiency = at.loadShare() * g.ratedPowerW() / 1000 / (last * kWhPerL);
        boolean isIdle = at.loadShare() == 0.0;
        assertTrue(isIdle || (efficiency > 0.07 && efficiency < 0.35), g.name() + " " + efficiency);
      }
      double highShare = g.mostW(3000.0, 20.0) / g.ratedPowerW();
      assertTrue(highShare > 0.5 && highShare < 0.95, g.name() + " at 3000 m " + highShare);
      assertTrue(g.mostW(0.0, 20.0) == g.ratedPowerW(), g.name() + " low and mild");
    }
    assertClean();
    assertEquals(List.of(), border.assumptions(), "every figure is stated");
  }

  @Test
  void appliancesCouldBeTrueAndAreMarkedAsGuesses() {
    List<Block> blocks = all(ApplianceKeys.APPLIANCE);
    assertTrue(blocks.size() >= 35);
    var binder = new LoadBinder(equipment, new FilePaths(Path.of("x.yaml")), true);
    for (Block block : blocks) {
      ApplianceSpec a = binder.appliance(block, "x.yaml");
      assertEquals(Evidence.GUESS, a.evidence(), a.name());
      double hours = a.hours().stream().mapToDouble(LibraryTest::length).sum();
      double dayWh = a.powerW() * a.dutyShare() * hours * a.days().size() / 7;
      boolean isThermostat = a.weatherDraw() instanceof DegreeHours;
      assertTrue(dayWh > 1, a.name() + " " + dayWh + " Wh a day");
      assertTrue(isThermostat || dayWh < 6000, a.name() + " " + dayWh + " Wh a day");
    }
    assertClean();
    assertEquals(List.of(), border.assumptions(), "hours and duty are stated");
  }

  private static double length(ApplianceSpec.HourSpan span) {
    return (span.toH() - span.fromH() + 24) % 24 == 0 ? 24 : (span.toH() - span.fromH() + 24) % 24;
  }

  @Test
  void anEntryIsReadWithItsOwnLine(@TempDir Path temp) throws IOException {
    Files.writeString(
        temp.resolve("modules.yaml"),
        "# two\n- name: first # the good one\n  rated_power: 1 W\n\n- name: 'second'\n  rated_pwer: 2 W\n");
    var own = new Library(temp);
    assertEquals(List.of("first", "second"), own.names(ArrayKeys.MODULE, border));
    Node second = own.entry(ArrayKeys.MODULE, "second", Place.of("x"), "module", border);
    assertNotNull(second);
    assertEquals(5, Block.placeIn(second, "x").line());
  }

  @Test
  void otherLayoutsAreReadToo(@TempDir Path temp) throws IOException {
    Files.writeString(
        temp.resolve("modules.yaml"),
        "- rated_power: 1 W\n  name: late\n- {name: \"in \\u0062races\", rated_power: 2 W}\n");
    var own = new Library(temp);
    assertEquals(List.of("late", "in braces"), own.names(ArrayKeys.MODULE, border));
    assertNotNull(own.entry(ArrayKeys.MODULE, "in braces", Place.of("x"), "module", border));
    assertTrue(border.isClean());
  }

  @Test
  void brokenLibrariesAreFaults(@TempDir Path temp) throws IOException {
    Files.writeString(temp.resolve("modules.yaml"), "- name: a\n- name: a\n");
    Files.writeString(temp.resolve("batteries.yaml"), "just words\n");
    var own = new Library(temp);
    own.names(ArrayKeys.MODULE, border);
    own.names(BatteryKeys.BATTERY, border);
    own.names(PowerKeys.INVERTER, border);
    var bad =
        org.junit.jupiter.api.Assertions.assertThrows(
            greyspell.quantity.BadInput.class, () -> border.throwIfAny("x"));
    String text = String.valueOf(bad.getMessage()).replace(temp + "/", "");
    assertTrue(text.contains("batteries.yaml:1:1  the file: found \"just words\""), text);
    assertTrue(text.contains("modules.yaml:2:1  name: found \"a\" a second time"), text);
    assertTrue(text.contains("inverters.yaml  no such file"), text);
  }
}
