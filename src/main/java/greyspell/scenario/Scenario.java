package greyspell.scenario;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.load.LoadPlan;
import greyspell.power.InverterSpec;
import greyspell.sky.Site;
import greyspell.sky.SkyChoices;
import greyspell.storage.BankSpec;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One home, as its scenario file says, checked and with every default filled in.
 *
 * @param file path as given
 * @param name of the home
 * @param note free words, empty if none
 * @param weather which file
 * @param startChargeFraction of the usable window, null to start from the steady state of the
 *     weather repeated
 * @param seed for whatever is drawn at random
 * @param assumptions every default that was used
 * @param cautions unusual but possible
 */
public record Scenario(
    String file,
    String name,
    String note,
    Site site,
    WeatherChoice weather,
    SkyChoices sky,
    List<ArraySpec> arrays,
    ControllerSpec controller,
    BankSpec bank,
    InverterSpec inverter,
    LoadPlan load,
    @Nullable Double startChargeFraction,
    Costs costs,
    long seed,
    List<Assumption> assumptions,
    List<String> cautions) {
  /** A weather file; the path is as written, relative to the scenario file's folder. */
  public record WeatherChoice(String file, String resolvedPath) {}

  /**
   * A default that was used because the file was silent.
   *
   * @param key path of the key: {@code arrays[0].mismatch}
   * @param value with unit
   * @param why in a few words: where the figure comes from
   */
  public record Assumption(String key, String value, String why) {}

  /**
   * Prices, all optional.
   *
   * @param currency the user's own text
   */
  public record Costs(
      String currency,
      @Nullable Double perModuleCost,
      @Nullable Double perPackCost,
      @Nullable Double fuelPerLitreCost,
      @Nullable Double yearlyCost) {
    public static final Costs NONE = new Costs("", null, null, null, null);
  }
}
