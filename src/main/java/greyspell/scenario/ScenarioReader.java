package greyspell.scenario;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.array.ModuleChoices;
import greyspell.array.ModuleSpec;
import greyspell.array.SnowRule;
import greyspell.calendar.Monthly;
import greyspell.load.LoadPlan;
import greyspell.power.InverterSpec;
import greyspell.quantity.BadInput;
import greyspell.quantity.Dimension;
import greyspell.quantity.Place;
import greyspell.quantity.Quantity;
import greyspell.quantity.Show;
import greyspell.sky.Site;
import greyspell.sky.SkyChoices;
import greyspell.storage.BankSpec;
import greyspell.storage.CellSheet;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.Node;

/**
 * Reads a scenario file. Either everything in it is understood, or one {@link BadInput} names every
 * fault with its line and column.
 */
public final class ScenarioReader {
  private static final List<Dimension> SHARE = List.of(Dimension.SHARE);
  private static final double ROUND_TURN_DEG = 360.0;

  private static final ArraySpec NO_ARRAY =
      new ArraySpec(
          "",
          0.0,
          0.0,
          EquipmentBinder.NO_MODULE,
          1,
          1,
          Monthly.constant(0.0),
          Monthly.constant(0.0),
          0.0,
          0.0,
          0.0,
          ModuleChoices.usual());

  private final Border border;
  private final EquipmentBinder equipment;
  private final FilePaths paths;
  private final String file;

  private ScenarioReader(Path file, Library library) {
    this.file = file.toString();
    this.border = new Border();
    this.equipment = new EquipmentBinder(library, border);
    this.paths = new FilePaths(file);
  }

  /** With the equipment library that stands beside or above the file, or beside the program. */
  public static Scenario read(Path file) {
    return read(file, null);
  }

  /**
   * With this equipment library.
   *
   * @param libraryFolder holds {@code modules.yaml} and its like; null to look for it as {@link
   *     #read(Path)} does
   */
  public static Scenario read(Path file, @Nullable Path libraryFolder) {
    return new ScenarioReader(file, library(file, libraryFolder)).scenario(file);
  }

  /**
   * A text that is read as if it stood in a file: files that it names are relative to that file's
   * folder, the library is looked for from there, and faults name it.
   *
   * @param libraryFolder as for {@link #read(Path, Path)}
   */
  public static Scenario readText(String text, Path asIfAt, @Nullable Path libraryFolder) {
    var reader = new ScenarioReader(asIfAt, library(asIfAt, libraryFolder));
    return reader.checked(YamlFile.compose(text, asIfAt.toString()));
  }

  /** What has been parsed already. */
  static Scenario read(Node root, Path asIfAt, Library library) {
    return new ScenarioReader(asIfAt, library).checked(root);
  }

  static Library library(Path file, @Nullable Path folder) {
    if (folder == null) {
      return new Library(Library.find(file, programFolder()));
    }
    if (!Files.isDirectory(folder)) {
      throw BadInput.of(
          Place.of(folder.toString()),
          "no such folder",
          "must be the folder of the equipment library",
          "It holds modules.yaml, batteries.yaml and so on.");
    }
    return new Library(folder);
  }

  /** Where the program stands, null if it cannot be told. */
  static @Nullable Path programFolder() {
    CodeSource source = ScenarioReader.class.getProtectionDomain().getCodeSource();
    if (source == null) {
      return null;
    }
    try {
      return Path.of(source.getLocation().toURI()).getParent();
    } catch (URISyntaxException | IllegalArgumentException e) {
      return null;
    }
  }

  private Scenario scenario(Path path) {
    return checked(YamlFile.read(path, file));
  }

  private Scenario checked(Node root) {
    Block home = new Block(Vocabulary.SCENARIO, root, file, "", border, null);
    Scenario scenario = scenario(home);
    border.throwIfAny(file);
    return scenario;
  }

  private Scenario scenario(Block home) {
    String name = home.text(Vocabulary.HOME);
    String note = home.text(Vocabulary.HOME_NOTE);
    Block siteBlock = home.block(Vocabulary.HOME_SITE);
    Site site = siteBlock == null ? null : SiteBinder.site(name, siteBlock);
    WeatherChoice weather = weather(home);
    SkyChoices sky = sky(home);
    List<Block> arrayBlocks = arrayBlocks(home);
    var electricalBinder = new ElectricalBinder(border, file, names(arrayBlocks));
    ElectricalBinder.Wires wires = electricalBinder.conductors(home);
    List<ArraySpec> arrays = arrays(arrayBlocks, wires.known());
    Block inverterBlock = equipment.find(home, Vocabulary.HOME_INVERTER);
    InverterSpec inverter = inverterBlock == null ? null : equipment.inverter(inverterBlock);
    ControllerSpec controller = controller(home, inverterBlock);
    BankSpec bank = bank(home);
    Block loads = home.block(Vocabulary.HOME_LOADS);
    LoadPlan load =
        loads == null
            ? null
            : new LoadBinder(equipment, paths, site == null || site.isNorthern()).plan(loads);
    Double start = start(home);
    Block electricalBlock = home.block(Vocabulary.HOME_ELECTRICAL);
    if (electricalBlock == null) {
      electricalBlock = nothing(home, WireKeys.ELECTRICAL, Vocabulary.HOME_ELECTRICAL);
    }
    Scenario.Electrical electrical =
        electricalBinder.electrical(
            electricalBlock,
            bank,
            inverterBlock == null ? null : inverterBlock.optional(PowerKeys.LOWEST_INPUT_VOLTAGE),
            wires);
    Scenario.Generator generator = generator(home, inverter, site);
    Scenario.OtherSource otherSource = otherSource(home);
    bank = withResistance(bank, electrical);
    Scenario.Costs costs = new CostBinder(border, file).costs(home);
    int seed = home.whole(Vocabulary.SEED);
    if (site == null || inverter == null || bank == null || load == null || !border.isClean()) {
      border.throwIfAny(file);
      throw new IllegalStateException("a part is missing, yet no fault was noted: " + file);
    }
    new Plausibility(border).judge(site, arrays, controller, bank, inverter, load);
    new Plausibility(border).judgeElectrical(bank, electrical);
    if (inverterBlock != null) {
      new Plausibility(border)
          .judgeInput(
              bank,
              inverterBlock.optional(PowerKeys.LOWEST_INPUT_VOLTAGE),
              inverterBlock.optional(PowerKeys.HIGHEST_INPUT_VOLTAGE));
    }
    return new Scenario(
        file,
        name,
        note,
        site,
        weather,
        sky,
        List.copyOf(arrays),
        controller,
        bank,
        inverter,
        load,
        start,
        costs,
        electrical,
        generator,
        otherSource,
        seed,
        List.copyOf(border.assumptions()),
        List.copyOf(border.cautions()));
  }

  private WeatherChoice weather(Block home) {
    Block block = home.block(Vocabulary.HOME_WEATHER);
    return block == null ? WeatherBinder.NONE : new WeatherBinder(paths, border).weather(block);
  }

  private SkyChoices sky(Block home) {
    Block block = home.block(Vocabulary.HOME_SKY);
    if (block == null) {
      block = nothing(home, Vocabulary.SKY, Vocabulary.HOME_SKY);
    }
    return SkyBinder.sky(block);
  }

  /** A block that was left out whole: every default of it is used. */
  private Block nothing(Block home, Shape shape, Key key) {
    return Block.empty(shape, file, home.path(key), border);
  }

  private List<Block> arrayBlocks(Block home) {
    var blocks = new ArrayList<Block>();
    List<Node> items = home.list(Vocabulary.ARRAYS);
    for (int i = 0; i < items.size(); i++) {
      String path = "arrays[".concat(Integer.toString(i)).concat("]");
      blocks.add(new Block(ArrayKeys.ARRAY, items.get(i), file, path, border, null));
    }
    return blocks;
  }

  private static List<String> names(List<Block> arrayBlocks) {
    var names = new ArrayList<String>();
    for (Block block : arrayBlocks) {
      names.add(block.text(ArrayKeys.ARRAY_NAME));
    }
    return names;
  }

  private List<ArraySpec> arrays(List<Block> blocks, List<Scenario.Wire> wires) {
    var arrays = new ArrayList<ArraySpec>();
    for (Block block : blocks) {
      String name = block.text(ArrayKeys.ARRAY_NAME);
      arrays.add(array(block, ElectricalBinder.serves(wires, name)));
    }
    return arrays;
  }

  /** Nothing where the cable itself is stated, so that it is not counted twice. */
  private double wiringFraction(Block block, boolean hasWire) {
    Key key = ArrayKeys.WIRING_LOSS;
    if (!hasWire) {
      return block.measure(key);
    }
    if (!block.has(key)) {
      border.assume(block.path(key), "0 %", "the cable of this plane is stated under conductors");
      return 0.0;
    }
    double fraction = block.measure(key);
    if (fraction > 0.0) {
      border.caution(
          block.text(ArrayKeys.ARRAY_NAME)
              + ": a wiring_loss of "
              + Show.percent(fraction)
              + " stands beside a cable under conductors: both are counted.");
    }
    return fraction;
  }

  private ArraySpec array(Block block, boolean hasWire) {
    Block moduleBlock = equipment.find(block, ArrayKeys.ARRAY_MODULE);
    ModuleSpec module =
        moduleBlock == null ? EquipmentBinder.NO_MODULE : equipment.module(moduleBlock);
    try {
      return new ArraySpec(
          block.text(ArrayKeys.ARRAY_NAME),
          block.measure(ArrayKeys.TILT),
          SiteBinder.azimuth(block, ArrayKeys.AZIMUTH) % ROUND_TURN_DEG,
          module,
          block.whole(ArrayKeys.IN_SERIES),
          block.whole(ArrayKeys.IN_PARALLEL),
          block.monthly(ArrayKeys.SOILING),
          block.monthly(ArrayKeys.SHADE),
          block.measure(ArrayKeys.MISMATCH),
          wiringFraction(block, hasWire),
          block.measure(ArrayKeys.AGEING),
          new ModuleChoices(
              block.word(ArrayKeys.CELL_HEAT, ModuleChoices.CellHeat.values()),
              block.word(ArrayKeys.POWER_CURVE, ModuleChoices.PowerCurve.values()),
              block.measure(ArrayKeys.HEAT_LOSS),
              block.measure(ArrayKeys.WIND_HEAT_LOSS)),
          block.word(ArrayKeys.SNOW, SnowRule.values()));
    } catch (IllegalArgumentException refused) {
      return border.refused(block.place(), refused, NO_ARRAY);
    }
  }

  private ControllerSpec controller(Block home, @Nullable Block inverterBlock) {
    if (home.has(Vocabulary.HOME_CONTROLLER)) {
      Block block = equipment.find(home, Vocabulary.HOME_CONTROLLER);
      return block == null ? equipment.unlimitedController() : equipment.controller(block);
    }
    if (inverterBlock != null && inverterBlock.has(PowerKeys.BUILT_IN_CONTROLLER)) {
      Block block = equipment.find(inverterBlock, PowerKeys.BUILT_IN_CONTROLLER);
      if (block != null) {
        return EquipmentBinder.times(
            equipment.controller(block), inverterBlock.whole(ArrayKeys.COUNT));
      }
    }
    return equipment.unlimitedController();
  }

  private @Nullable BankSpec bank(Block home) {
    Block block = home.block(Vocabulary.HOME_BANK);
    if (block == null) {
      if (home.has(Vocabulary.RESERVE)) {
        home.measure(Vocabulary.RESERVE);
      }
      return null;
    }
    return new BankBinder(border)
        .bank(block, equipment.find(block, BatteryKeys.BANK_BATTERY), home);
  }

  /** A resistance that was stated for the whole bank, as it is now, goes before its batteries'. */
  private static @Nullable BankSpec withResistance(
      @Nullable BankSpec bank, Scenario.Electrical electrical) {
    CellSheet cells = bank == null ? null : bank.cells();
    Double bankOhm = electrical.bankOhm();
    if (bank == null || cells == null || bankOhm == null || !(bankOhm > 0.0)) {
      return bank;
    }
    return bank.inDetail(cells.withResistanceOhm(bankOhm), bank.tanks());
  }

  /** Null for a start from the steady state. */
  private @Nullable Double start(Block home) {
    Key key = Vocabulary.START;
    Node node = home.node(key);
    if (node == null) {
      border.assume(key.name, key.usual, key.why);
      return null;
    }
    String text = home.textBelow(key, node);
    if (text == null || text.strip().equals(key.usual)) {
      return null;
    }
    try {
      double share = Quantity.parse(text, SHARE).inside();
      if (share >= key.low && share <= key.high) {
        return share;
      }
      border.fault(
          home.place(key), Border.found(key.name, text), "must be 0 to 100 %, or steady", "");
    } catch (Quantity.NotUnderstood e) {
      border.fault(
          home.place(key),
          Border.found(key.name, text),
          "must be steady, or a share such as 80 %",
          e.mend());
    }
    return null;
  }

  private Scenario.@Nullable Generator generator(
      Block home, @Nullable InverterSpec inverter, @Nullable Site site) {
    Block block = equipment.find(home, Vocabulary.HOME_GENERATOR);
    return block == null
        ? null
        : new GeneratorBinder(border, file)
            .generator(
                block,
                inverter == null ? null : inverter.charger(),
                site == null ? 0.0 : site.elevationM());
  }

  private Scenario.@Nullable OtherSource otherSource(Block home) {
    Block block = home.block(Vocabulary.HOME_OTHER_SOURCE);
    return block == null
        ? null
        : new Scenario.OtherSource(
            block.text(PowerKeys.SOURCE_NAME),
            block.has(PowerKeys.SOURCE_FILE) ? block.text(PowerKeys.SOURCE_FILE) : "",
            paths.resolved(block, PowerKeys.SOURCE_FILE),
            block.word(PowerKeys.SOURCE_BUS, ApplianceKeys.Supply.values())
                == ApplianceKeys.Supply.DC);
  }
}
