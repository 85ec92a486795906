package greyspell.scenario;

import greyspell.quantity.BadInput;
import greyspell.quantity.Dimension;
import greyspell.quantity.Fault;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.Place;
import greyspell.quantity.Quantity;
import greyspell.quantity.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A commented scenario that runs as it is, for a user to change. */
public final class StarterScenario {
  private static final String SAMPLES = "weather-samples";
  private static final double PACK_WH = 5120.0;
  private static final int MOST_IN_SERIES = 10;
  private static final int LEAST_IN_SERIES = 4;
  private static final int STRINGS_ON_ONE = 4;
  private static final int USUAL_PANELS = 12;
  private static final int USUAL_PACKS = 3;
  private static final int FEWEST_PANELS = 3;
  private static final int SMALL_FIELD = 24;
  private static final double DEG_PER_H = 15.0;

  private static final double HOURS_PER_DAY = 24.0;
  private static final String USUAL_APPLIANCES =
      """
                     # names from shared/appliances.yaml, or your own
          - "Fridge-freezer, efficient"
          - Chest freezer
          - {from: LED lamp, quantity: 12}
          - Router and modem
          - {from: Laptop, quantity: 2}
          - Television
          - "Well pump, 1/2 hp"
          - "Washing machine, cold wash"
          - {from: Kettle, power: 2.2 kW, evidence: label}
          - Microwave oven
          - Boiler with circulation pumps
          - name: Cellar fan            # not in the library: written out
            power: 30 W
            hours: [08:00-12:00, 14:00-20:00]
            days: Mon-Sun
            months: Oct-Apr
            priority: can_wait          # or must_run, should_run
            evidence: measured          # or label, guess
      """;
  private static final String ALL_TOGETHER =
      """

          # All together, spread evenly. Replace it by a list of appliances: when they
          # run decides how much of the sun is used directly.
          - name: The house
            power: %s
            hours: 00:00-24:00
            evidence: guess
      """;

  private StarterScenario() {}

  /**
   * What a user was asked; null where there was no answer.
   *
   * @param panels how many
   * @param bankWh nominal
   * @param dailyWh asked for in a day, all together
   */
  public record Answers(
      @Nullable String name,
      @Nullable Double latitudeDeg,
      @Nullable Double longitudeDeg,
      @Nullable Integer panels,
      @Nullable Double bankWh,
      @Nullable Double dailyWh) {
    public static final Answers NONE = new Answers(null, null, null, null, null, null);
  }

  /**
   * Writes the file whole or not at all, never over another. The sample weather is named relative
   * to the file where it stands beside or above it, else by its full path.
   */
  public static void write(Path file, Answers answers) {
    write(file, answers, null);
  }

  /**
   * The same from a typical home; what was answered goes before it.
   *
   * @param home null for the usual starter
   */
  public static void write(Path file, Answers answers, @Nullable TypicalHome home) {
    check(answers);
    if (Files.exists(file)) {
      throw taken(file);
    }
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw BadInput.of(
          Place.of(file.toString()),
          "its folder does not exist",
          "must be a new file in a folder that exists",
          "Make the folder first.");
    }
    String text = text(answers, home, weather(file, folder, latitudeDeg(answers)));
    Path part = folder.resolve("." + file.getFileName() + ".part");
    try {
      Files.writeString(
          part,
          text,
          StandardCharsets.UTF_8,
          StandardOpenOption.CREATE,
          StandardOpenOption.TRUNCATE_EXISTING,
          StandardOpenOption.WRITE);
      Files.move(part, file);
    } catch (FileAlreadyExistsException e) {
      drop(part);
      throw taken(file);
    } catch (IOException e) {
      drop(part);
      throw BadInput.of(
          Place.of(file.toString()),
          "cannot be written (" + FileTrouble.words(e) + ")",
          "must be a new file in a folder that may be written to",
          "Choose another folder.");
    }
  }

  private static void drop(Path part) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException e) {
      // what could not be written can stay unwritten; the user is told of the first failure
      return;
    }
  }

  private static BadInput taken(Path file) {
    return BadInput.of(
        Place.of(file.toString()),
        "this file exists already",
        "must be a new file: nothing is written over another",
        "Choose another name.");
  }

  private static void check(Answers answers) {
    var faults = new ArrayList<Fault>();
    range(faults, "latitude", answers.latitudeDeg(), -90, 90, Unit.DEGREE);
    range(faults, "longitude", answers.longitudeDeg(), -180, 180, Unit.DEGREE);
    Integer panels = answers.panels();
    range(faults, "panels", panels == null ? null : (double) panels, FEWEST_PANELS, 400, Unit.ONE);
    range(faults, "bank", answers.bankWh(), 1000, 1_000_000, Unit.KILOWATT_HOUR);
    range(faults, "a day's energy", answers.dailyWh(), 10, 500_000, Unit.KILOWATT_HOUR);
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
  }

  private static void range(
      List<Fault> faults, String name, @Nullable Double value, double low, double high, Unit unit) {
    if (value != null && !(value >= low && value <= high)) {
      boolean isFinite = Math.abs(value) <= Double.MAX_VALUE;
      faults.add(
          new Fault(
              Place.of("answer"),
              name + ": found " + (isFinite ? unit.text(value) : "no number"),
              "must be " + unit.text(low) + " to " + unit.text(high),
              ""));
    }
  }

  // ---- text -------------------------------------------------------------------------------------

  private static double latitudeDeg(Answers answers) {
    return answers.latitudeDeg() == null ? 53.2 : answers.latitudeDeg();
  }

  private static double longitudeDeg(Answers answers) {
    return answers.longitudeDeg() == null ? 6.1 : answers.longitudeDeg();
  }

  private static String text(Answers answers, @Nullable TypicalHome home, String weather) {
    double latitudeDeg = latitudeDeg(answers);
    double longitudeDeg = longitudeDeg(answers);
    boolean isNorthern = latitudeDeg >= 0.0;
    boolean isExample = answers.latitudeDeg() == null;
    int usualPanels = home == null ? USUAL_PANELS : home.panels();
    int usualPacks = home == null ? USUAL_PACKS : home.packs();
    int panels = answers.panels() == null ? usualPanels : answers.panels();
    int inParallel = strings(panels);
    int inSeries = panels / inParallel;
    int leftOver = panels - inSeries * inParallel;
    double bankWh = answers.bankWh() == null ? usualPacks * PACK_WH : answers.bankWh();
    String usualName = home == null ? "My home" : home.words();
    String name = answers.name() == null || answers.name().isBlank() ? usualName : answers.name();
    return template()
        .replace("@latitude@", Unit.ONE.text(latitudeDeg))
        .replace("@longitude@", Unit.ONE.text(longitudeDeg))
        .replace("@elevation@", isExample ? "210 m" : "100 m             # above the sea")
        .replace("@utc_offset@", Unit.HOUR.text((double) Math.round(longitudeDeg / DEG_PER_H)))
        .replace(
            "@horizon@",
            isNorthern ? "SE: 8 deg, S: 4 deg, SW: 12 deg" : "NE: 8 deg, N: 4 deg, NW: 12 deg")
        .replace("@tilt@", Unit.DEGREE.text(tiltDeg(latitudeDeg)))
        .replace("@azimuth@", isNorthern ? "S" : "N")
        .replace("@in_series@", Integer.toString(inSeries))
        .replace(
            "@split@",
            leftOver == 0
                ? ""
                : "                # strings must be equal: left over of your panels: " + leftOver)
        .replace("@in_parallel@", Integer.toString(inParallel))
        .replace("@controller@", controller(inSeries, inParallel))
        .replace("@inverter@", inverter(panels, answers.dailyWh() == null ? home : null))
        .replace("@packs@", Integer.toString((int) Math.max(1, Math.round(bankWh / PACK_WH))))
        .replace("@appliances@", appliances(answers.dailyWh(), home))
        .replace("@weather@", quoted(weather))
        .replace("@name@", quoted(name));
  }

  /** A little steeper than the latitude: the winter sun is what counts. */
  private static double tiltDeg(double latitudeDeg) {
    return Math.rint(Math.max(15.0, Math.min(75.0, Math.abs(latitudeDeg) + 10.0)));
  }

  /** Fewest equal strings of a length that the starter's inverter accepts. */
  private static int strings(int panels) {
    int least = (panels + MOST_IN_SERIES - 1) / MOST_IN_SERIES;
    for (int strings = least; panels / strings >= LEAST_IN_SERIES; strings++) {
      if (panels % strings == 0) {
        return strings;
      }
    }
    return least;
  }

  /**
   * By the size of the field; a typical home's own where its appliances stand.
   *
   * @param home null if its appliances are not asked for
   */
  private static String inverter(int panels, @Nullable TypicalHome home) {
    if (home != null && !home.inverter().isEmpty()) {
      return home.inverter();
    }
    return panels <= SMALL_FIELD
        ? "Kestrel Mere KM-6K2     # from shared/inverters.yaml"
        : "Kestrel Mere KM-12K     # from shared/inverters.yaml";
  }

  /** One that starts with strings so short, and as many as its input asks for. */
  private static String controller(int inSeries, int strings) {
    int count = (strings + STRINGS_ON_ONE - 1) / STRINGS_ON_ONE;
    String longStrings = strings == 1 ? "Sable Ridge SR-F100" : "Sable Ridge SR-F200";
    String name = inSeries < LEAST_IN_SERIES ? "Sable Ridge SR-D100" : longStrings;
    return count == 1
        ? name.concat("   # from shared/controllers.yaml")
        : "{from: ".concat(name).concat(", count: ").concat(Integer.toString(count)).concat("}");
  }

  private static String appliances(@Nullable Double dailyWh, @Nullable TypicalHome home) {
    if (dailyWh == null) {
      return home == null ? USUAL_APPLIANCES.stripTrailing() : home.appliances();
    }
    double meanW = Math.round(dailyWh / HOURS_PER_DAY * 10.0) / 10.0;
    return ALL_TOGETHER.stripTrailing().replace("%s", Quantity.print(meanW, Dimension.POWER));
  }

  /** As a YAML text in double quotes; control characters are dropped. */
  private static String quoted(String text) {
    var out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (!Character.isISOControl(c)) {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }

  private static String template() {
    try (InputStream in = StarterScenario.class.getResourceAsStream("starter.yaml")) {
      if (in == null) {
        throw new IllegalStateException("starter.yaml is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException("starter.yaml cannot be read", e);
    }
  }

  // ---- weather ----------------------------------------------------------------------------------

  private static String sampleName(double latitudeDeg) {
    if (latitudeDeg < 0.0) {
      return "south-island-coast.csv";
    }
    if (latitudeDeg < 42.0) {
      return "high-plateau.csv";
    }
    return latitudeDeg < 50.0 ? "cold-continental.csv" : "grey-maritime.csv";
  }

  private static String weather(Path file, Path folder, double latitudeDeg) {
    Path inside = Path.of(SAMPLES).resolve(sampleName(latitudeDeg));
    Path near = findAbove(folder, inside);
    if (near != null) {
      return folder.relativize(near).toString().replace('\\', '/');
    }
    Path withProgram = findAbove(ScenarioReader.programFolder(), inside);
    if (withProgram != null) {
      return withProgram.toString().replace('\\', '/');
    }
    throw BadInput.of(
        Place.of(file.toString()),
        "no sample weather was found for it",
        "needs " + inside + " beside or above the file, or beside the program",
        "Write the file inside the project's folder.");
  }

  private static @Nullable Path findAbove(@Nullable Path folder, Path inside) {
    for (Path up = folder; up != null; up = up.getParent()) {
      if (Files.isRegularFile(up.resolve(inside))) {
        return up.resolve(inside);
      }
    }
    return null;
  }
}
