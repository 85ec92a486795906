package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.array.EfficiencyPoint;
import greyspell.array.ModuleChoices;
import greyspell.array.ModuleSpec;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.UnknownRun;
import greyspell.load.ApplianceSpec;
import greyspell.load.DegreeHours;
import greyspell.load.LoadPlan;
import greyspell.load.LoadPolicy;
import greyspell.load.LoadRange;
import greyspell.load.LogSpec;
import greyspell.load.RoomDraw;
import greyspell.load.Season;
import greyspell.power.Charger;
import greyspell.power.GeneratorRules;
import greyspell.power.GeneratorSpec;
import greyspell.power.InverterSpec;
import greyspell.power.RunTimes;
import greyspell.sky.Horizon;
import greyspell.sky.Site;
import greyspell.sky.SkyChoices;
import greyspell.storage.BankSpec;
import greyspell.storage.CellSheet;
import greyspell.storage.Enclosure;
import greyspell.storage.KineticSheet;
import greyspell.storage.LifeSheet;
import greyspell.storage.VoltageCurve;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * Keeps the schema and the reference page in step with the reader, and the reader with the records.
 */
class ScenarioDocsTest {
  private static final Path DOCS = TestFolder.PROJECT.resolve("docs");

  private static void hold(String name, String wanted) throws IOException {
    Path file = DOCS.resolve(name);
    String before = Files.exists(file) ? Files.readString(file) : "";
    if ("write".equals(System.getProperty("docs"))) {
      Files.createDirectories(DOCS);
      Files.writeString(file, wanted);
    }
    assertEquals(wanted, before, "docs/" + name + ": make it anew with -Ddocs=write");
  }

  @Test
  void schemaIsInStep() throws IOException {
    hold("scenario.schema.json", ScenarioDocs.schema());
  }

  @Test
  void referenceIsInStep() throws IOException {
    hold("scenario-reference.md", ScenarioDocs.reference());
  }

  // ---- the schema does its work
  // -------------------------------------------------------------------

  private static List<String> schemaFaults(String text) {
    Object tree = new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
    JsonNode value = new ObjectMapper().valueToTree(tree);
    return new SchemaCheck(ScenarioDocs.schemaTree()).faults(value);
  }

  private static List<Path> shipped() throws IOException {
    try (var files = Files.list(TestFolder.PROJECT.resolve("scenarios"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @Test
  void schemaTakesEveryShippedHome() throws IOException {
    assertTrue(shipped().size() >= 4);
    for (Path file : shipped()) {
      assertEquals(List.of(), schemaFaults(Files.readString(file)), file.toString());
    }
    assertEquals(List.of(), schemaFaults(TestFolder.good()));
  }

  @Test
  void schemaRefusesWhatTheReaderRefuses() {
    var changes =
        Map.of(
            "elevation: 210 m", "elevaton: 210 m",
            "home: Test House", "note: no name",
            "tilt: 40 deg", "tilt: 40 V",
            "rated_power: 410 W", "rated_power: 410",
            "in_series: 4", "in_series: 0",
            "chemistry: lithium_iron_phosphate", "chemistry: lithium",
            "azimuth: S", "azimuth: sunny",
            "hours: 00:00-24:00", "hours: 7-9",
            "duty: 35 %", "duty: 0.35",
            "start: steady", "start: full");
    for (var change : changes.entrySet()) {
      String text = TestFolder.good().replace(change.getKey(), change.getValue());
      assertFalse(schemaFaults(text).isEmpty(), change.getValue());
    }
  }

  @Test
  void everyShippedHomeIsRead(@TempDir Path temp) throws IOException {
    Files.createDirectories(temp.resolve("scenarios"));
    Files.createDirectories(temp.resolve("weather-samples"));
    String beside = "sedge-island-stream.csv";
    Files.copy(Path.of("scenarios", beside), temp.resolve("scenarios").resolve(beside));
    for (Path file : shipped()) {
      Path copy = Files.copy(file, temp.resolve("scenarios").resolve(file.getFileName()));
      String weather =
          Files.readString(file).replaceAll("(?s).*weather-samples/([a-z-]+\\.csv).*", "$1");
      Files.writeString(temp.resolve("weather-samples").resolve(weather), "");
      Scenario home = ScenarioReader.read(copy, TestFolder.LIBRARY);
      assertFalse(home.load().appliances().isEmpty());
      for (String caution : home.cautions()) {
        boolean isMeant = caution.contains("takes no charge") || caution.contains("medical");
        assertTrue(isMeant, file + ": " + caution);
      }
    }
  }

  // ---- every record component has a key, every key's component exists
  // -----------------------------

  private static final Map<Class<?>, List<Shape>> FILLED_BY = new LinkedHashMap<>();

  static {
    FILLED_BY.put(Scenario.class, List.of(Vocabulary.SCENARIO));
    FILLED_BY.put(WeatherChoice.class, List.of(WeatherKeys.WEATHER));
    FILLED_BY.put(Scenario.Costs.class, List.of(CostKeys.COSTS));
    FILLED_BY.put(Scenario.Measure.class, List.of(CostKeys.MEASURE));
    FILLED_BY.put(Scenario.Electrical.class, List.of(WireKeys.ELECTRICAL, Vocabulary.SCENARIO));
    FILLED_BY.put(Scenario.Wire.class, List.of(WireKeys.CONDUCTOR));
    FILLED_BY.put(ConductorRun.class, List.of(WireKeys.CONDUCTOR));
    FILLED_BY.put(Site.class, List.of(Vocabulary.SITE));
    FILLED_BY.put(SkyChoices.class, List.of(Vocabulary.SKY));
    FILLED_BY.put(ArraySpec.class, List.of(ArrayKeys.ARRAY));
    FILLED_BY.put(ModuleChoices.class, List.of(ArrayKeys.ARRAY));
    FILLED_BY.put(ModuleSpec.class, List.of(ArrayKeys.MODULE));
    FILLED_BY.put(ControllerSpec.class, List.of(ArrayKeys.CONTROLLER));
    FILLED_BY.put(
        BankSpec.class, List.of(BatteryKeys.BANK, BatteryKeys.BATTERY, Vocabulary.SCENARIO));
    FILLED_BY.put(Enclosure.Indoors.class, List.of(BatteryKeys.ENCLOSURE));
    FILLED_BY.put(Enclosure.Outdoors.class, List.of(BatteryKeys.ENCLOSURE));
    FILLED_BY.put(Enclosure.Heated.class, List.of(BatteryKeys.ENCLOSURE));
    FILLED_BY.put(Enclosure.InGround.class, List.of(BatteryKeys.ENCLOSURE));
    FILLED_BY.put(CellSheet.class, List.of(BatteryKeys.BANK, BatteryKeys.BATTERY));
    FILLED_BY.put(KineticSheet.class, List.of(BatteryKeys.BATTERY));
    FILLED_BY.put(LifeSheet.class, List.of(BatteryKeys.BANK, BatteryKeys.BATTERY));
    FILLED_BY.put(Scenario.UnknownWire.class, List.of(WireKeys.CONDUCTOR));
    FILLED_BY.put(UnknownRun.class, List.of(WireKeys.CONDUCTOR));
    FILLED_BY.put(InverterSpec.class, List.of(PowerKeys.INVERTER));
    FILLED_BY.put(LoadPlan.class, List.of(ApplianceKeys.LOADS));
    FILLED_BY.put(ApplianceSpec.class, List.of(ApplianceKeys.APPLIANCE));
    FILLED_BY.put(DegreeHours.class, List.of(LoadKeys.HEATING, LoadKeys.COOLING));
    FILLED_BY.put(RoomDraw.class, List.of(LoadKeys.ROOM));
    FILLED_BY.put(LoadRange.class, List.of(ApplianceKeys.APPLIANCE));
    FILLED_BY.put(LoadPolicy.class, List.of(LoadKeys.POLICY));
    FILLED_BY.put(LogSpec.class, List.of(ApplianceKeys.LOG));
    FILLED_BY.put(Scenario.Generator.class, List.of(PowerKeys.GENERATOR));
    FILLED_BY.put(GeneratorSpec.class, List.of(PowerKeys.GENERATOR));
    FILLED_BY.put(GeneratorSpec.Derating.class, List.of(PowerKeys.DERATING));
    FILLED_BY.put(GeneratorRules.class, List.of(PowerKeys.GENERATOR));
    FILLED_BY.put(RunTimes.class, List.of(PowerKeys.GENERATOR));
    FILLED_BY.put(Charger.class, List.of(PowerKeys.CHARGER));
    FILLED_BY.put(InverterSpec.Search.class, List.of(PowerKeys.SEARCH));
    FILLED_BY.put(Scenario.OtherSource.class, List.of(PowerKeys.OTHER_SOURCE));
  }

  /** Not written by a user, or a copy of something that is. */
  private static final Set<String> NOT_WRITTEN =
      Set.of(
          "Scenario.file",
          "Scenario.assumptions",
          "Scenario.cautions",
          "Electrical.unknownConductors",
          "InverterSpec.sheetNoLoadW",
          "OtherSource.resolvedPath",
          "ApplianceSpec.energyFactor",
          "DegreeHours.isHeating",
          "Site.name");

  /** Points of curves, spans and pairs: the value of one key. */
  private static final Set<Class<?>> VALUES =
      Set.of(
          Scenario.Assumption.class,
          WeatherChoice.WeatherPath.class,
          Horizon.class,
          Horizon.Point.class,
          BankSpec.CapacityAt.class,
          CellSheet.FactorAt.class,
          LifeSheet.CyclesAt.class,
          VoltageCurve.VoltageAt.class,
          InverterSpec.EfficiencyAt.class,
          EfficiencyPoint.class,
          GeneratorSpec.FuelAt.class,
          RunTimes.Span.class,
          ApplianceSpec.HourSpan.class,
          DegreeHours.CopAt.class,
          Season.ByTemperature.class,
          Season.ByDayLength.class);

  @Test
  void everyRecordComponentHasAKey() {
    for (var entry : FILLED_BY.entrySet()) {
      var filled = new HashSet<String>();
      for (Shape shape : entry.getValue()) {
        for (Key key : shape.keys()) {
          filled.add(key.component);
          filled.add(key.component.substring(key.component.indexOf('.') + 1));
          if (key.component.indexOf('.') > 0) {
            filled.add(key.component.substring(0, key.component.indexOf('.')));
          }
        }
      }
      for (RecordComponent component : entry.getKey().getRecordComponents()) {
        String name = entry.getKey().getSimpleName() + "." + component.getName();
        assertTrue(
            filled.contains(component.getName()) || NOT_WRITTEN.contains(name),
            "no key fills " + name);
      }
    }
  }

  @Test
  void everyKeyFillsAComponentThatExists() {
    var components = new HashSet<String>();
    FILLED_BY
        .keySet()
        .forEach(r -> List.of(r.getRecordComponents()).forEach(c -> components.add(c.getName())));
    for (Shape shape : Vocabulary.shapes()) {
      for (Key key : shape.keys()) {
        String name = key.component.substring(key.component.indexOf('.') + 1);
        assertTrue(name.isEmpty() || components.contains(name), shape.name() + "." + key.name);
      }
    }
  }

  @Test
  void everyRecordBelowScenarioIsKnownHere() {
    var seen = new HashSet<Class<?>>();
    var waiting = new ArrayList<Type>(List.of(Scenario.class));
    while (!waiting.isEmpty()) {
      Type type = waiting.remove(waiting.size() - 1);
      if (type instanceof ParameterizedType many) {
        waiting.addAll(List.of(many.getActualTypeArguments()));
      } else if (type instanceof Class<?> one && seen.add(one)) {
        if (one.isSealed()) {
          waiting.addAll(List.of(one.getPermittedSubclasses()));
        }
        if (one.isRecord()) {
          assertTrue(FILLED_BY.containsKey(one) || VALUES.contains(one), one.getName());
          for (RecordComponent component : one.getRecordComponents()) {
            waiting.add(component.getGenericType());
          }
        }
      }
    }
    assertTrue(seen.containsAll(FILLED_BY.keySet()));
  }

  @Test
  void everyDefaultIsReadAsWritten() {
    for (Shape shape : Vocabulary.shapes()) {
      for (Key key : shape.keys()) {
        boolean isMeasured = key.kind == Key.Kind.MEASURE || key.kind == Key.Kind.MONTHLY;
        if (isMeasured && key.usual.matches("-?[0-9].*") && !key.usual.contains(" of ")) {
          double value = greyspell.quantity.Quantity.parse(key.usual, key.dimensions).inside();
          assertTrue(value >= key.low && value <= key.high, shape.name() + "." + key.name);
        }
        assertFalse(key.meaning.isBlank(), key.name);
      }
    }
  }
}
