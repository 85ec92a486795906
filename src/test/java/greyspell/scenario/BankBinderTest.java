package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.Place;
import greyspell.storage.BankSpec;
import greyspell.storage.CellModel;
import greyspell.storage.CellSheet;
import greyspell.storage.Chemistry;
import greyspell.storage.Enclosure;
import greyspell.storage.KineticSheet;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.nodes.Node;

class BankBinderTest {
  private static final String INDOORS = "enclosure: {place: indoors, temperature: 15 °C}";
  @TempDir Path temp;
  private TestFolder folder;

  @BeforeEach
  void makeFolder() {
    folder = new TestFolder(temp);
  }

  private static String assumed(Scenario home, String key) {
    for (Scenario.Assumption a : home.assumptions()) {
      if (a.key().equals(key)) {
        return a.value();
      }
    }
    return "";
  }

  private static String libraryBank(String bank) {
    String good = TestFolder.good();
    return good.substring(0, good.indexOf("bank:\n"))
        + bank
        + good.substring(good.indexOf("inverter:\n"));
  }

  @Test
  void leftOutNothingChanges() {
    Scenario home = folder.read(TestFolder.good());
    BankSpec bank = home.bank();
    assertNull(bank.cells());
    assertNull(bank.tanks());
    assertEquals(1.0, bank.healthShare());
    assertEquals(bank.coldestChargeC(), bank.fullChargeFromC());
    for (Scenario.Assumption a : home.assumptions()) {
      for (String word : List.of("cycle", "calendar", "end_of_life", "taper", "resist", "model")) {
        assertFalse(a.key().startsWith("bank") && a.key().contains(word), a.key());
      }
    }
  }

  @Test
  void aDetailedLithiumBankTakesAndListsItsDefaults() {
    Scenario home =
        folder.read(
            TestFolder.good().replace(INDOORS, INDOORS + "\n  model: detailed\n  health: 80 %"));
    BankSpec bank = home.bank();
    CellSheet cells = bank.cells();
    assertNotNull(cells);
    assertNull(bank.tanks());
    // 16 cells of 1.5 mΩ at 100 Ah, two side by side, at 80 % health
    assertEquals(16 * 0.0015 / 2 / 0.64, cells.resistanceOhm(), 1e-9);
    assertFalse(cells.isLossStated());
    assertEquals("resistance", assumed(home, "bank.losses"));
    assertEquals("24 mΩ", assumed(home, "bank.battery.resistance"));
    assertEquals("95 %", assumed(home, "bank.battery.taper_from"));
    assertEquals("15 years", assumed(home, "bank.battery.calendar_life"));
    assertEquals("80 %", assumed(home, "bank.end_of_life"));
    assertEquals("", assumed(home, "bank.full_charge_every"));
    assertTrue(assumed(home, "bank.battery.charge_efficiency").contains(" in, "));
    assertEquals(10_240.0 * 0.8, bank.contentWh(), 1e-9);
    assertEquals(0.95, CellModel.taper(bank).fromShare());
  }

  @Test
  void aFloodedBankOfTheLibraryHasTanksFittedToItsSheet() {
    Scenario home =
        folder.read(
            libraryBank(
                "bank:\n  battery: Hallam Tub HT-L16\n  in_series: 8\n  in_parallel: 2\n"
                    + "  model: detailed\n  losses: resistance\n  full_charge_every: 7 d\n"
                    + "  end_of_life: 70 %\n  service_years: 12\n  "
                    + INDOORS
                    + "\n"));
    BankSpec bank = home.bank();
    KineticSheet tanks = bank.tanks();
    CellSheet cells = bank.cells();
    assertNotNull(tanks);
    assertNotNull(cells);
    assertEquals(0.556, tanks.availableShare(), 0.005);
    assertEquals(0.240, tanks.exchangePerH(), 0.005);
    assertEquals(454.5 * 48.0 * 2, tanks.tanksWh(), 100.0);
    assertEquals(tanks.tanksWh(), bank.contentWh(), 1e-9);
    assertEquals(8 * 0.0062 / 2, cells.resistanceOhm(), 1e-9);
    assertEquals(8 * 6.33, cells.voltageByCharge().get(4).openV(), 1e-9);
    assertEquals(168.0, bank.life().fullChargeEveryH());
    assertEquals(0.7, bank.life().endOfLifeShare());
    assertEquals(12, bank.life().serviceYears());
    assertEquals("", assumed(home, "bank.battery.cycle_life"));
    assertEquals(
        "14 d",
        assumed(
            folder.read(
                libraryBank(
                    "bank:\n  battery: Hallam Tub HT-L16\n  in_series: 8\n  service_years: 9\n  "
                        + INDOORS
                        + "\n")),
            "bank.full_charge_every"));
  }

  @Test
  void statedTanksKeepTheirProportions() {
    Scenario home =
        folder.read(
            libraryBank(
                "bank:\n  battery: {from: Hallam Tub HT-L16, quick_share: 40 %, exchange_rate: 0.5}\n"
                    + "  in_series: 8\n  model: detailed\n  "
                    + INDOORS
                    + "\n"));
    KineticSheet tanks = home.bank().tanks();
    assertNotNull(tanks);
    assertEquals(0.4, tanks.availableShare());
    assertEquals(0.5, tanks.exchangePerH());
    assertEquals("stated", assumed(home, "bank.losses"));
  }

  @Test
  void aMeasuredResistanceOfTheWholeBankGoesFirst() {
    Scenario home =
        folder.read(
            TestFolder.good().replace(INDOORS, INDOORS + "\n  model: detailed\n  health: 80 %")
                + "\nelectrical: {bank_resistance: 12 mΩ}\n");
    CellSheet cells = home.bank().cells();
    assertNotNull(cells);
    assertEquals(0.012, cells.resistanceOhm());
  }

  @Test
  void capacitiesThatDoNotFitAreAskedAbout() {
    Scenario home =
        folder.read(
            libraryBank(
                "bank:\n  battery: {from: Hallam Tub HT-L16, capacity: 500 Ah, capacity_by_hours:"
                    + " [[5 h, 310 Ah], [20 h, 315 Ah], [100 h, 490 Ah]]}\n"
                    + "  in_series: 8\n  model: detailed\n  "
                    + INDOORS
                    + "\n"));
    assertTrue(
        home.cautions().stream().anyMatch(c -> c.contains("Peukert line")),
        home.cautions()::toString);
    assertTrue(home.cautions().stream().anyMatch(c -> c.contains("lies outside its")));
  }

  @Test
  void readsGroundAndMass() {
    String ground = "enclosure: {place: ground, depth: 6 ft, soil: wet}";
    assertEquals(
        new Enclosure.InGround(1.8288, Enclosure.Soil.WET),
        folder.read(TestFolder.good().replace(INDOORS, ground)).bank().enclosure());
    Scenario mass =
        folder.read(
            TestFolder.good()
                .replace(INDOORS, "enclosure: {place: outdoors, mass: 180 kg, heat_loss: 2 W/K}"));
    assertEquals(new Enclosure.Outdoors(25.0), mass.bank().enclosure());
    assertEquals("25 h", assumed(mass, "bank.enclosure.lag"));
    assertEquals("1000 J/kgK", assumed(mass, "bank.enclosure.specific_heat"));
    Scenario heated =
        folder.read(
            TestFolder.good()
                .replace(
                    INDOORS,
                    "enclosure: {place: heated, mass: 180 kg, specific_heat: 2000 J/kgK,"
                        + " heat_loss: 2 W/K, at_least: 5 °C}"));
    assertEquals(new Enclosure.Heated(50.0, 5.0, 2.0), heated.bank().enclosure());
  }

  @Test
  void readsTheSlopeOfTheColdChargeLimit() {
    Scenario home =
        folder.read(
            TestFolder.good()
                .replace("max_charge: 50 A", "max_charge: 50 A\n    full_charge_from: 50 °F"));
    assertEquals(0.0, home.bank().coldestChargeC());
    assertEquals(10.0, home.bank().fullChargeFromC(), 1e-9);
  }

  /** A battery that is refused brings no untrue fault about its voltages with it. */
  @Test
  void aRefusedBatteryIsToldOnce() {
    String told =
        folder.faults(
            TestFolder.good()
                .replace(
                    "max_charge: 50 A",
                    "max_charge: 50 A\n    full_charge_from: -5 °C\n"
                        + "    voltage_by_charge: [[0 %, 48 V], [100 %, 54 V]]")
                .replace("bank:", "bank:\n  model: detailed"));
    assertTrue(told.contains("the full limit must begin above"), told);
    assertFalse(told.contains("within a quarter"), told);
  }

  /** Every entry of the library can be reckoned in detail from its own sheet. */
  @Test
  void libraryStatesWhatDetailNeeds() {
    var border = new Border();
    var library = new Library(TestFolder.LIBRARY);
    for (String name : library.names(BatteryKeys.BATTERY, border)) {
      Node entry = library.entry(BatteryKeys.BATTERY, name, Place.of("test"), "name", border);
      assertNotNull(entry, name);
      var block = new Block(BatteryKeys.BATTERY, entry, "batteries.yaml", name, border, null);
      BankSpec one = new BankBinder(border).battery(block);
      var binder = new CellBinder(border);
      CellSheet cells = binder.cells(block, one, false);
      KineticSheet tanks = binder.tanks(block, one);
      int assumedBefore = border.assumptions().size();
      binder.life(
          Block.empty(BatteryKeys.BANK, "x", "bank", border), block, one.chemistry(), false);
      assertEquals(assumedBefore, border.assumptions().size(), name);
      boolean isLithium = one.chemistry() == Chemistry.LITHIUM_IRON_PHOSPHATE;
      assertEquals(isLithium, tanks == null, name);
      assertTrue(tanks == null || tanks.tanksWh() > one.capacityWh(), name);
      double ohmAh = cells.resistanceOhm() * one.capacityWh() / one.nominalV() / one.nominalV();
      assertTrue(ohmAh > 0.02 && ohmAh < 0.5, name + " " + ohmAh);
      BankSpec bank = one.inDetail(cells, tanks);
      double thereAndBack = bank.chargeEfficiency() * bank.dischargeEfficiency();
      assertTrue(
          isLithium ? thereAndBack > 0.94 : thereAndBack > 0.74 && thereAndBack < 0.9,
          name + " " + thereAndBack);
      assertEquals(
          1.0, cells.voltageByCharge().get(0).openV() / one.nominalV(), 0.12, name + " empty");
    }
    border.throwIfAny("shared");
    for (Scenario.Assumption a : border.assumptions()) {
      assertTrue(
          a.key().endsWith("quick_share") || a.key().endsWith("exchange_rate"), a.toString());
    }
    assertEquals(List.of(), border.cautions());
  }
}
