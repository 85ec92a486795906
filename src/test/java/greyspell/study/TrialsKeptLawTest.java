package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.balance.NamedHours;
import greyspell.quantity.BadInput;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.ClimateSite;
import greyspell.weather.ensemble.EnsembleSource;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is kept between the runs of one home must not show: a variant that is run after and beside
 * many others has, hour by hour, the very books that it has alone. A thing kept under a key that
 * leaves out what it depends on would be a wrong number that nothing else tells.
 */
final class TrialsKeptLawTest {
  private static final int TOGETHER = 12;

  /** Each a path and its values; what a home cannot have is refused and passed over. */
  private static final List<List<String>> EDITS =
      List.of(
          List.of("bank.enclosure", "outdoors", "{place: outdoors, lag: 20 h}", "indoors"),
          List.of("bank.enclosure", "{place: heated, at_least: 8 °C, lag: 9 h, heat_loss: 2 W/K}"),
          List.of("bank.health", "80 %", "60 %"),
          List.of("bank.in_parallel", "2", "3"),
          List.of("bank.model", "detailed"),
          List.of("bank.battery", cold("Pinnock PK-25100", 6), cold("Pinnock PK-25100", 2)),
          List.of("bank.battery", cold("Quarrel QW-51200", 3)),
          List.of("reserve", "30 %", "5 %"),
          List.of("arrays[0].tilt", "30 deg", "80 deg"),
          List.of("arrays[0].azimuth", "150 deg", "220 deg"),
          List.of("arrays[0].in_parallel", "1", "3"),
          List.of("arrays[0].soiling", "0 %", "12 %"),
          List.of("arrays[0].ageing", "0 %", "9 %"),
          List.of("arrays[0].snow", "none", "slides"),
          List.of("arrays[0].shade", "10 %"),
          List.of("controller", "Tolland PW-12-10", "Sable Ridge SR-D70", "Sable Ridge SR-B50"),
          List.of("controller.count", "1", "2"),
          List.of("controller.standby", "1 W", "9 W"),
          List.of("inverter.standby_night", "3 W", "30 W"),
          List.of("inverter.continuous_power", "400 W", "900 W"),
          List.of("inverter.search", "{draw: 2 W, wakes_at: 12 W}", "{draw: 2 W, wakes_at: 60 W}"),
          List.of("conductors[0].length", "1 m", "80 m"),
          List.of("conductors[1].length", "0.5 m", "9 m"),
          List.of("conductors[2].length", "0.5 m", "9 m"),
          List.of("loads.growth", "0 %", "25 %"),
          List.of("loads.daily_variation", "0 %", "20 %"),
          List.of("loads.hourly_variation", "0 %", "15 %"),
          List.of("loads.when_low", "{can_wait_below: 50 %, can_wait_above: 70 %}"),
          List.of("loads.appliances[0].quantity", "1", "2"),
          List.of("loads.appliances[1].hours", "09:00-11:00", "20:00-23:00"),
          List.of("loads.appliances[1].priority", "can_wait", "must_run"),
          List.of("seed", "3", "4"),
          List.of("electrical.cut_off_voltage", "11 V", "46 V"),
          List.of(
              "generator",
              "{from: Ember Hollow EH-4P, policy: auto, start_below: 20 %, stop_above: 60 %}",
              "{from: Ember Hollow EH-4P, policy: manual, home_hours: 17:00-22:00}"),
          List.of("generator.permitted_hours", "08:00-12:00", "10:00-20:00"),
          List.of("other_source.bus", "ac", "dc"));

  private static String cold(String battery, int coldestC) {
    return "{from: %s, coldest_charge: %d °C, full_charge_from: 13 °C}"
        .formatted(battery, coldestC);
  }

  private record Variant(Scenario home, Set<Effect> leftOut, String told) {}

  /** Each change alone, so that no two differ in more than one thing; then several together. */
  private static List<Variant> variants(ScenarioEdit home, Random random) {
    var variants = new ArrayList<Variant>();
    variants.add(new Variant(home.scenario(null), Set.of(), "as it stands"));
    for (List<String> edit : EDITS) {
      for (String value : edit.subList(1, edit.size())) {
        ScenarioEdit edited = edited(home, edit.get(0), value);
        if (edited != home) {
          String told = edit.get(0) + "=" + value;
          variants.add(new Variant(edited.scenario(null), Set.of(), told));
        }
      }
    }
    for (int v = 0; v < TOGETHER; v++) {
      ScenarioEdit edited = home;
      for (int k = random.nextInt(4); k > 0; k--) {
        List<String> edit = EDITS.get(random.nextInt(EDITS.size()));
        edited = edited(edited, edit.get(0), edit.get(1 + random.nextInt(edit.size() - 1)));
      }
      var leftOut = EnumSet.noneOf(Effect.class);
      int often = 1 + random.nextInt(3);
      for (Effect effect : Effect.values()) {
        if (random.nextInt(12) < often) {
          leftOut.add(effect);
        }
      }
      variants.add(new Variant(edited.scenario(null), leftOut, v + " without " + leftOut));
    }
    return variants;
  }

  /** As it was if this home cannot have it. */
  private static ScenarioEdit edited(ScenarioEdit home, String path, String value) {
    try {
      ScenarioEdit edited = home.set(path, value);
      edited.scenario(null);
      return edited;
    } catch (BadInput refused) {
      return home;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"whin-cabin", "harrow-combe", "peat-hut", "sedge-island"})
  void runAmongOthersIsRunAlone(String name) {
    ScenarioEdit home = ScenarioEdit.of(Path.of("scenarios", name + ".yaml"));
    Scenario asItStands = home.scenario(null);
    WeatherSeries weather = Study.read(asItStands);
    amongOthers(
        variants(home, new Random(name.hashCode())), () -> Trials.of(asItStands, weather), 1);
  }

  @Test
  void drawnWintersToo() {
    ScenarioEdit home = ScenarioEdit.of(Path.of("scenarios/harrow-combe.yaml"));
    Scenario asItStands = home.scenario(null);
    WeatherSeries weather = Study.read(asItStands);
    var source =
        EnsembleSource.spliced(weather, ClimateSite.of(weather.source(), null, null), 2, 5L);
    amongOthers(
        variants(home, new Random(5)),
        () -> Trials.of(asItStands, source, 2, (what, done) -> {}),
        2);
  }

  private static void amongOthers(List<Variant> variants, Supplier<Trials> alone, int parts) {
    Trials shared = alone.get();
    assertEquals(parts, shared.parts());
    List<List<Ledger>> among = List.of();
    // first beside one another, as threads happen to come, then once more from what was kept
    for (int k = 0; k < 2; k++) {
      among =
          IntStream.range(0, variants.size())
              .parallel()
              .mapToObj(v -> books(shared, variants.get(v), parts))
              .toList();
    }
    int unserved = 0;
    for (int v = 0; v < variants.size(); v++) {
      Variant variant = variants.get(v);
      Trials own = alone.get();
      for (int part = 0; part < parts; part++) {
        Ledger expected = own.books(part, variant.home, variant.leftOut);
        same(expected, among.get(v).get(part), variant.told);
        Ledger brief = shared.brief(part, variant.home, variant.leftOut, null);
        assertArrayEquals(expected.unmetWh(), brief.unmetWh(), variant.told);
        assertArrayEquals(expected.chargeWh(), brief.chargeWh(), variant.told);
        unserved += Arrays.stream(expected.unmetWh()).sum() > 0.0 ? 1 : 0;
      }
    }
    assertTrue(unserved > variants.size() / 4, "variants that say nothing");
  }

  private static List<Ledger> books(Trials trials, Variant variant, int parts) {
    return IntStream.range(0, parts)
        .mapToObj(part -> trials.books(part, variant.home, variant.leftOut))
        .toList();
  }

  private static void same(Ledger expected, Ledger got, String told) {
    assertArrayEquals(expected.unmetWh(), got.unmetWh(), told);
    assertArrayEquals(expected.chargeWh(), got.chargeWh(), told);
    Forcing.Columns is = expected.forcing().columns(), has = got.forcing().columns();
    assertArrayEquals(is.solarNominalWh, has.solarNominalWh, told);
    assertArrayEquals(is.solarAvailableWh, has.solarAvailableWh, told);
    assertArrayEquals(is.solarBusWh, has.solarBusWh, told);
    assertArrayEquals(is.clippedWh, has.clippedWh, told);
    same(is.arrayLosses, has.arrayLosses, told);
    same(is.controllerParts, has.controllerParts, told);
    same(is.standingParts, has.standingParts, told);
    assertArrayEquals(is.otherBusWh, has.otherBusWh, told);
    assertArrayEquals(is.acAskedWh, has.acAskedWh, told);
    assertArrayEquals(is.dcAskedWh, has.dcAskedWh, told);
    assertArrayEquals(is.acCanWaitWh, has.acCanWaitWh, told);
    assertArrayEquals(is.bankTemperatureC, has.bankTemperatureC, told);
    assertArrayEquals(is.lockedShare, has.lockedShare, told);
    assertArrayEquals(is.chargeShare, has.chargeShare, told);
  }

  private static void same(List<NamedHours> expected, List<NamedHours> got, String told) {
    assertEquals(expected.size(), got.size(), told);
    for (int k = 0; k < expected.size(); k++) {
      assertEquals(expected.get(k).name(), got.get(k).name(), told);
      assertArrayEquals(expected.get(k).wh(), got.get(k).wh(), told);
    }
  }
}
