package greyspell.scenario;

import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.Node;

/** Single data sheets by their names in the equipment library, without a scenario. */
public final class EquipmentReader {
  private final Library library;
  private final Border border = new Border();
  private final EquipmentBinder binder;

  private EquipmentReader(@Nullable Path folder) {
    Path found =
        folder != null
            ? folder
            : Library.find(Path.of("scenario.yaml"), ScenarioReader.programFolder());
    library = new Library(found);
    binder = new EquipmentBinder(library, border);
  }

  /**
   * A module of the library.
   *
   * @param folder of the library; null to look at or above the current folder, then beside the
   *     program
   * @param option in which the name was given, for messages
   * @throws BadInput with the nearest names if there is none of this name
   */
  public static ModuleSpec module(@Nullable Path folder, String name, String option) {
    var reader = new EquipmentReader(folder);
    ModuleSpec module =
        reader.binder.module(reader.block(ArrayKeys.MODULE, name, "module", option));
    reader.border.throwIfAny("");
    return module;
  }

  /** A charge controller of the library; as {@link #module}. */
  public static ControllerSpec controller(@Nullable Path folder, String name, String option) {
    var reader = new EquipmentReader(folder);
    ControllerSpec controller =
        reader.binder.controller(reader.block(ArrayKeys.CONTROLLER, name, "controller", option));
    reader.border.throwIfAny("");
    return controller;
  }

  /**
   * Name of the smallest generator of the library with at least this rated power, else of the
   * largest; empty if there is none.
   *
   * @param scenario beside or above which the library is looked for
   * @param folder of the library; null to look for it
   */
  public static String generatorFor(Path scenario, @Nullable Path folder, double neededW) {
    var reader =
        new EquipmentReader(
            folder != null ? folder : Library.find(scenario, ScenarioReader.programFolder()));
    String best = "";
    double bestW = 0.0;
    for (String name : reader.library.names(PowerKeys.GENERATOR, reader.border)) {
      double ratedW =
          reader
              .block(PowerKeys.GENERATOR, name, "generator", "generators.yaml")
              .measure(PowerKeys.GENERATOR_POWER);
      boolean isEnough = ratedW >= neededW;
      if (best.isEmpty()
          || (isEnough && (bestW < neededW || ratedW < bestW))
          || (!isEnough && bestW < neededW && ratedW > bestW)) {
        best = name;
        bestW = ratedW;
      }
    }
    return best;
  }

  /**
   * Refuses a name that no generator of the library has.
   *
   * @param scenario beside or above which the library is looked for
   * @param folder of the library; null to look for it
   * @throws BadInput with the nearest names
   */
  public static void checkGenerator(
      Path scenario, @Nullable Path folder, String name, String option) {
    new EquipmentReader(
            folder != null ? folder : Library.find(scenario, ScenarioReader.programFolder()))
        .block(PowerKeys.GENERATOR, name, "generator", option);
  }

  private Block block(Shape shape, String name, String key, String option) {
    Node entry = library.entry(shape, name, Place.of(option), key, border);
    border.throwIfAny("");
    return new Block(
        shape, Objects.requireNonNull(entry), library.shownName(shape), key, border, null);
  }
}
