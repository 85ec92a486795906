package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.electrical.Finding;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ElectricalCheck;
import greyspell.study.Study;
import greyspell.study.StudyResult;
import greyspell.study.TypicalRank;
import greyspell.words.German;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Homes of every kind, well and badly built, in sound and unsound weather: whatever their reader,
 * their run and their checks have to say stands in German on the German pages.
 */
class GermanHomesTest {
  private static final String PLAIN =
      """
      home: Kleinhaus
      site:
        latitude: 52
        longitude: 7
        elevation: 20 m
        utc_offset: 1 h
        horizon: open
        record_low: -20 °C
        record_high: 36 °C
      weather: w.csv
      arrays:
        - name: Scheune
          tilt: 45 deg
          azimuth: S
          in_series: 4
          in_parallel: 2
          module: {name: Werk 7, rated_power: 410 W, open_circuit_voltage: 37.4 V, short_circuit_current: 13.86 A, max_power_voltage: 31.5 V, max_power_current: 13.02 A}
      controller: {name: Regler 3, max_output_current: 60 A, lowest_tracking_voltage: 60 V, highest_tracking_voltage: 140 V, start_voltage: 65 V, absolute_maximum_voltage: 150 V, max_short_circuit_current: 50 A}
      bank:
        battery: {name: Akku 5, chemistry: lithium_iron_phosphate, capacity: 100 Ah, voltage: 51.2 V}
        in_parallel: 2
        enclosure: {place: indoors, temperature: 15 °C}
      inverter: {name: Umrichter 2, continuous_power: 3 kW, surge_power: 6 kW}
      loads:
        appliances:
          - {name: Truhe, power: 100 W, surge: 900 W, duty: 35 %, priority: must_run}
          - {name: Licht, power: 80 W, hours: 17:00-23:00}
      electrical: {dwelling: yes}
      """;

  private static final List<String> NAMES =
      List.of(
          "Kleinhaus",
          "Scheune",
          "Hof",
          "Werk 7",
          "Regler 3",
          "Akku 5",
          "Umrichter 2",
          "Truhe",
          "Licht",
          "Motor 8",
          "Bach",
          "Pumpe",
          "Heizer",
          "Mesnau",
          "w.csv",
          "j.csv",
          "m.csv",
          "t.epw",
          "Europe/Berlin",
          "LED lamp",
          "Brill BR-700");

  @TempDir private Path folder = Path.of("");

  private final Set<Assumption> assumptions = new LinkedHashSet<>();
  private final Set<String> cautions = new LinkedHashSet<>();
  private final Set<Finding> findings = new LinkedHashSet<>();

  // ---- what is read and checked -----------------------------------------------------------------

  private static final String DETAILED =
      " && in_parallel: 2\n  encl=>in_parallel: 2\n  model: detailed\n  service_years: 12\n  encl";

  /** Each replaces what stands before "=>" by what stands after it, and "+" adds to the end. */
  private static final List<String> CHANGES =
      List.of(
          "- name: Scheune\n    tilt=>- tilt",
          "chemistry: lithium_iron_phosphate=>chemistry: lead_acid_sealed" + DETAILED,
          "chemistry: lithium_iron_phosphate=>chemistry: lead_acid_flooded" + DETAILED,
          "chemistry: lithium_iron_phosphate=>chemistry: lead_acid_flooded+reserve: 5 %\n",
          "dwelling: yes=>charging_voltage: 52 V" + DETAILED,
          "capacity: 100 Ah=>capacity: 100 Ah, charge_efficiency: 95 %" + DETAILED,
          "surge_power: 6 kW=>surge_power: 6 kW, lowest_input_voltage: 40 V && dwelling: yes=>cut_off_voltage: 30 V",
          "in_series: 4=>in_series: 1 && open_circuit_voltage: 37.4 V=>open_circuit_voltage: 160 V",
          "surge_power: 6 kW=>surge_power: 930 W && hours: 17:00-23:00=>priority: must_run",
          "{name: Umrichter 2, continuous_power: 3 kW, surge_power: 6 kW}=>{from: Brill BR-700, standby_day: 1 W, standby_night: 1 W}",
          "latitude: 52=>latitude: -52 && appliances:\n=>appliances:\n    - LED lamp\n",
          "  record_low: -20 °C\n=>",
          "  record_high: 36 °C\n=>",
          "  utc_offset: 1 h\n=>",
          "utc_offset: 1 h=>utc_offset: 8 h",
          "longitude: 7=>longitude: -172",
          "  horizon: open\n=>",
          "horizon: open=>horizon: {S: 4 deg, W: 3 deg}",
          "  elevation: 20 m\n=>",
          "latitude: 52=>latitude: -52",
          "azimuth: S=>azimuth: N",
          "tilt: 45 deg=>tilt: 5 deg",
          "in_series: 4=>in_series: 6",
          "in_series: 4=>in_series: 1",
          "in_series: 4=>in_series: 2",
          "in_series: 4=>in_series: 40",
          "in_series: 4=>in_series: 3",
          "in_parallel: 2\n    mod=>in_parallel: 5\n    mod",
          "in_parallel: 2\n    mod=>in_parallel: 500\n    mod",
          "    in_parallel: 2\n    mod=>    mod",
          "rated_power: 410 W=>rated_power: 460 W",
          "rated_power: 410 W=>rated_power: 350 W",
          "max_power_current: 13.02 A=>max_power_current: 13.02 A, max_system_voltage: 100 V",
          "max_power_current: 13.02 A=>max_power_current: 13.02 A, max_system_voltage: 1000 V",
          "max_power_voltage: 31.5 V=>max_power_voltage: 22 V",
          "open_circuit_voltage: 37.4 V=>open_circuit_voltage: 65 V",
          "max_power_current: 13.02 A=>max_power_current: 13.02 A, voltage_coefficient: -0.12 V/K",
          "absolute_maximum_voltage: 150 V, =>",
          ", max_short_circuit_current: 50 A=>",
          "max_short_circuit_current: 50 A=>max_short_circuit_current: 20 A",
          "max_output_current: 60 A=>max_output_power: 2 kW",
          "max_output_current: 60 A=>max_output_current: 60 A, count: 2",
          "max_output_current: 60 A=>max_output_current: 60 A, count: 3",
          "max_output_current: 60 A=>max_output_current: 60 A, tracking: pwm",
          "start_voltage: 65 V=>start_voltage: 119 V",
          "start_voltage: 65 V=>start_voltage: 149 V",
          "highest_tracking_voltage: 140 V=>highest_tracking_voltage: 120 V",
          "chemistry: lithium_iron_phosphate=>chemistry: lead_acid_flooded",
          "chemistry: lithium_iron_phosphate=>chemistry: lead_acid_sealed",
          "in_parallel: 2\n  encl=>in_parallel: 2\n  model: detailed\n  service_years: 12\n  encl",
          "in_parallel: 2\n  encl=>in_parallel: 200\n  encl",
          "capacity: 100 Ah=>capacity: 10 Ah",
          "chemistry: lithium_iron_phosphate, capacity: 100 Ah=>chemistry: lead_acid_flooded, capacity: 100 Ah, charge_efficiency: 90 %",
          "chemistry: lithium_iron_phosphate, capacity: 100 Ah=>chemistry: lead_acid_flooded, capacity: 300 Ah, capacity_by_hours: [[5 h, 80 Ah], [20 h, 100 Ah]]"
              + DETAILED,
          "chemistry: lithium_iron_phosphate, capacity: 100 Ah=>chemistry: lead_acid_flooded, capacity: 100 Ah, capacity_by_hours: [[5 h, 40 Ah], [20 h, 100 Ah], [100 h, 101 Ah]]"
              + DETAILED,
          "chemistry: lithium_iron_phosphate, capacity: 100 Ah=>chemistry: lead_acid_flooded, capacity: 100 Ah, quick_share: 50 %, exchange_rate: 0.3, capacity_by_hours: [[5 h, 80 Ah], [20 h, 100 Ah]]"
              + DETAILED,
          "place: indoors, temperature: 15 °C=>place: indoors",
          "place: indoors, temperature: 15 °C=>place: outdoors",
          "place: indoors, temperature: 15 °C=>place: heated",
          "place: indoors, temperature: 15 °C=>place: heated, mass: 80 kg",
          "place: indoors, temperature: 15 °C=>place: ground",
          "surge_power: 6 kW=>surge_power: 1.1 kW",
          "surge_power: 6 kW=>surge_power: 400 W",
          ", surge_power: 6 kW=>",
          "continuous_power: 3 kW=>continuous_power: 70 W",
          "surge_power: 6 kW=>surge_power: 90 kW",
          "surge_power: 6 kW=>surge_power: 6 kW, lowest_input_voltage: 55 V",
          "surge_power: 6 kW=>surge_power: 6 kW, lowest_input_voltage: 20 V, highest_input_voltage: 30 V",
          "surge_power: 6 kW=>surge_power: 6 kW, efficiency: [[10 %, 95 %], [50 %, 80 %], [100 %, 95 %]]",
          "surge_power: 6 kW=>surge_power: 6 kW, standby_day: 20 W",
          "duty: 35 %, =>",
          "duty: 35 %=>duty: 35 %, medical: yes",
          "power: 80 W, hours: 17:00-23:00=>power: 80 W",
          "Licht, power: 80 W, hours: 17:00-23:00=>Heizer, power: 800 W, duty: 50 %, heating: {loss: 20 W/K}",
          "Licht, power: 80 W, hours: 17:00-23:00=>Heizer, power: 800 W, cooling: {gain: 20 W/K}",
          "Licht, power: 80 W, hours: 17:00-23:00=>Pumpe, power: 300 W, duty: 50 %, water: {daily: 500 l, head: 20 m}",
          "Licht, power: 80 W, hours: 17:00-23:00=>Truhe 2, power: 80 W, room: {place: outdoors}",
          "loads:\n=>loads:\n  when_low: {can_wait_above: 40 %}\n",
          "dwelling: yes=>dwelling: no",
          "electrical: {dwelling: yes}\n=>",
          "dwelling: yes=>charging_voltage: 90 V",
          "dwelling: yes=>charging_voltage: 40 V",
          "dwelling: yes=>cut_off_voltage: 60 V",
          "dwelling: yes=>cut_off_voltage: 50 V, bank_resistance: 80 mΩ",
          "+controller_none",
          "+reserve: 5 %\n",
          "+start: 50 %\n",
          "+costs: {currency: EUR, per_module: 200}\n",
          "+sky: {cloud: table}\n",
          "+sky: {cloud_depth: 0.7}\n",
          "+generator: {rated_power: 3 kW, fuel: petrol, fuel_use: [[50 %, 0.9 l/h]]}\n",
          "+generator: {name: Motor 8, rated_power: 3 kW, fuel: diesel, fuel_use: [[50 %, 9 l/h], [100 %, 12 l/h]], policy: manual, charger: {power: 9 kW}}\n",
          "+generator: {name: Motor 8, rated_power: 3 kW, fuel: diesel, fuel_use: [[50 %, 0.1 l/h], [100 %, 0.2 l/h]], permitted_hours: \"08:00-09:00\", minimum_run: 4 h}\n",
          "+conductors: [{run: array_to_controller, length: 20 m, size: unknown}, {run: controller_to_bank, length: 2 m, size: unknown}, {run: bank_to_inverter, length: 2 m, size: unknown}]\n",
          "+conductors: [{run: array_to_controller, length: 20 m, size: unknown, allowed_current: 10 A}, {run: bank_to_inverter, length: 2 m, size: unknown, allowed_current: 200 A}]\n",
          "+conductors: [{run: array_to_controller, length: 90 m, size: 14 AWG}, {run: controller_to_bank, length: 9 m, size: 10 AWG, in_parallel: 2}, {run: bank_to_inverter, length: 9 m, size: 2 AWG, metal: aluminium}]\n",
          "+conductors: [{run: array_to_controller, length: 20 m, size: 10 mm2}, {run: controller_to_bank, length: 2 m, size: 35 mm2, allowed_current: 60 A}, {run: bank_to_inverter, length: 2 m, size: 70 mm2, allowed_current: 230 A}]\n",
          "in_parallel: 2\n    mod=>in_parallel: 2\n    wiring_loss: 3 %\n    mod+conductors: [{run: array_to_controller, length: 20 m, size: 10 mm2, allowed_current: 60 A}]\n");

  private Scenario home(String text) {
    return ScenarioReader.readText(text, folder.resolve("h.yaml"), Path.of("shared"));
  }

  private void look(String text) {
    Scenario home = home(text);
    assumptions.addAll(home.assumptions());
    cautions.addAll(home.cautions());
    findings.addAll(ElectricalCheck.of(home, null).findings());
  }

  private static String changed(String change) {
    int plus = change.indexOf('+');
    String more = plus < 0 ? "" : change.substring(plus + 1);
    String swap = plus < 0 ? change : change.substring(0, plus);
    if (more.equals("controller_none")) {
      return PLAIN.replaceAll("(?m)^controller: .*\n", "");
    }
    String text = PLAIN;
    for (String one : swap.isEmpty() ? new String[0] : swap.split(" && ", -1)) {
      String[] both = one.split("=>", 2);
      assertTrue(text.contains(both[0]), "changes nothing: " + one);
      text = text.replace(both[0], both[1]);
    }
    return text + more;
  }

  @Test
  void homesAsTheyAreReadAndChecked() throws IOException {
    weather("w.csv", "", "local_start,ghi_wm2,tair_c", t -> t + "," + sunWm2(t, 0) + ",8");
    for (String change : CHANGES) {
      look(changed(change));
    }
    String two =
        """
          - name: Hof
            tilt: 60 deg
            azimuth: SE
            in_series: 2
            in_parallel: 3
            module: {name: Werk 7, rated_power: 410 W, open_circuit_voltage: 37.4 V, short_circuit_current: 13.86 A, max_power_voltage: 31.5 V, max_power_current: 13.02 A}
        controller:\
        """;
    for (int count = 1; count <= 6; count++) {
      look(
          PLAIN
              .replace("controller:", two)
              .replace("max_output_current: 60 A", "max_output_current: 60 A, count: " + count));
      look(
          PLAIN
              .replace("controller:", two.replace("in_series: 2", "in_series: 4"))
              .replace("max_output_current: 60 A", "max_output_current: 60 A, count: " + count));
    }
    records();
    // without names
    look(PLAIN.replaceAll("name: (Regler 3|Akku 5|Umrichter 2|Werk 7|Truhe), ", ""));
    assertTrue(cautions.size() > 30, cautions.size() + " cautions");
    assertTrue(findings.size() > 150, findings.size() + " findings");
    assertTrue(assumptions.size() > 80, assumptions.size() + " assumptions");
    allIsGerman();
  }

  /** A weather file that names its place's records, here or elsewhere, milder or harder. */
  private void records() throws IOException {
    String home = PLAIN.replace("weather: w.csv", "weather: t.epw");
    String silent = home.replaceAll("(?m)^  record_.*\n", "");
    for (String place :
        List.of(
            "Mesnau,-,X,made,0,52.1,7,1.0,60",
            ",-,X,made,0,52,7.1,1.0,20",
            "Mesnau,-,X,made,0,52,7.1,1.0,3")) {
      for (int firstC : new int[] {-40, 10, 45}) {
        extremes(place, firstC);
        look(silent);
        look(home);
        look(home.replace("record_low: -20 °C", "record_low: -5 °C").replace("36 °C", "30 °C"));
      }
    }
    extremes("Mesnau,-,X,made,0,58,7,1.0,60", 10);
    look(silent);
  }

  private void extremes(String place, int firstC) throws IOException {
    String head =
        "LOCATION,"
            + place
            + "\nDESIGN CONDITIONS,1,Handbook,,Heating,12,-2.6,Extremes,10,9,8,27,-7.5,31,3,2,-10,33,-12,34.5,-14,36,-17.4,37.6\n"
            + "TYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\n"
            + "COMMENTS 1,made\nCOMMENTS 2,\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31";
    Files.writeString(
        folder.resolve("t.epw"),
        rows(
            head,
            LocalDateTime.of(2019, 1, 1, 0, 0),
            8760,
            t ->
                t.getYear()
                    + ","
                    + t.getMonthValue()
                    + ","
                    + t.getDayOfMonth()
                    + ","
                    + (t.getHour() + 1)
                    + ",60,A7A7,"
                    + (t.getDayOfYear() == 1 ? firstC : 10)
                    + ",2.0,80,99000,0,0,300,0,0,0,0,0,0,0,90,3.0,10,5,16.0,7620,9,999999999,89,0.06,0,88,0.4,0,1"));
  }

  // ---- what is run ------------------------------------------------------------------------------

  private void run(String text) throws IOException {
    StudyResult result = Study.run(home(text), (what, done) -> {});
    assumptions.addAll(result.assumptions());
    cautions.addAll(result.cautions());
    findings.addAll(ElectricalCheck.of(result.scenario(), result).findings());
  }

  @Test
  void homesAsTheyRun() throws IOException {
    typicalFarAway();
    cloudAlone();
    wrongClock();
    logs();
    drawnAndRanked();
    assertTrue(cautions.size() > 15, cautions.toString());
    allIsGerman();
  }

  /** Of another place, with gaps and without wind; motors, a bank that is seldom full. */
  private void typicalFarAway() throws IOException {
    weather(
        "w.csv",
        "# typical_year: yes\n# latitude: 49\n# longitude: 3\n# elevation: 900\n",
        "local_start,ghi_wm2,tair_c",
        t ->
            t
                + ","
                + sunWm2(t, 0) / 4
                + ","
                + (t.getMonthValue() == 3 && t.getDayOfMonth() < 3
                    ? ""
                    : t.getMonthValue() == 1 ? "-30" : "40"));
    String snow = PLAIN.replace("    module:", "    snow: slides\n    module:");
    run(
        snow.replace("surge_power: 6 kW", "surge_power: 930 W")
            .replace("continuous_power: 3 kW", "continuous_power: 170 W")
            .replace("chemistry: lithium_iron_phosphate", "chemistry: lead_acid_flooded")
            .replace("in_parallel: 2\n  encl", "in_parallel: 2\n  model: detailed\n  encl"));
    Files.writeString(
        folder.resolve("bach.csv"),
        source("local_start,source_w", t -> t.getDayOfMonth() == 7 ? "" : "60"));
    Files.writeString(folder.resolve("kurz.csv"), source("local_start,source_w", t -> "60"));
    run(PLAIN + "other_source: {name: Bach, file: bach.csv, bus: ac}\n");
    run(PLAIN + "other_source: {name: Bach, file: kurz.csv, bus: dc}\n");
    run(PLAIN + "other_source: {file: kurz.csv}\n");
  }

  private void cloudAlone() throws IOException {
    weather("w.csv", "", "local_start,cloud_okta,tair_c", t -> t + ",6,8");
    run(PLAIN);
    // direct and diffuse light that do not add up
    weather(
        "w.csv",
        "",
        "local_start,ghi_wm2,dni_wm2,dhi_wm2,tair_c",
        t -> t + "," + sunWm2(t, 0) + "," + sunWm2(t, 0) + "," + sunWm2(t, 0) + ",8");
    run(PLAIN);
  }

  private void wrongClock() throws IOException {
    for (int late : new int[] {-2, 2, 7}) {
      weather("w.csv", "", "local_start,ghi_wm2,tair_c", t -> t + "," + sunWm2(t, late) + ",8");
      run(PLAIN);
    }
    assertTrue(cautions.stream().anyMatch(c -> c.contains("against the sun")), cautions.toString());
    weather("w.csv", "", "local_start,ghi_wm2,tair_c", t -> t + ",50,8");
    run(PLAIN);
  }

  private void logs() throws IOException {
    weather(
        "w.csv",
        "",
        "local_start,ghi_wm2,tair_c",
        t -> t + "," + sunWm2(t, 0) + "," + (t.getMonthValue() < 4 ? t.getDayOfMonth() / 2 : 25));
    for (int days : new int[] {10, 45, 300}) {
      Files.writeString(
          folder.resolve("log.csv"),
          rows(
              "local_start,load_w",
              LocalDateTime.of(2019, 1, 1, 0, 0),
              24 * days,
              t ->
                  t
                      + ","
                      + (t.getHour() == 3 && t.getDayOfMonth() == 4
                          ? ""
                          : 90
                              + t.getHour() * (t.getDayOfWeek().getValue() > 5 ? 9 : 5)
                              + t.getDayOfMonth() * 3)));
      for (String more : List.of("", ", other_days: fit", ", clock: local, zone: Europe/Berlin")) {
        if (more.contains("local") && days > 45) {
          continue; // its clock would spring forward
        }
        run(PLAIN.replace("loads:\n", "loads:\n  log: {file: log.csv" + more + "}\n"));
      }
    }
    // years of the weather in which the log does not lie
    Files.writeString(
        folder.resolve("log.csv"),
        rows(
            "local_start,load_w",
            LocalDateTime.of(2011, 1, 1, 0, 0),
            24 * 40,
            t -> t + "," + (90 + t.getHour() * 5)));
    run(PLAIN.replace("loads:\n", "loads:\n  log: {file: log.csv, other_days: fit}\n"));
  }

  private void drawnAndRanked() throws IOException {
    Files.writeString(
        folder.resolve("m.csv"),
        """
        # place: Mesnau
        # latitude: 53.2
        # longitude: 6.1
        # utc_offset: 1
        month,global_kwhm2_day,temperature_c
        1,0.62,3.4
        2,1.29,3.7
        3,2.51,6.1
        4,4.11,9.3
        5,5.02,13
        6,5.18,15.8
        7,5.05,17.9
        8,4.25,17.7
        9,2.98,14.8
        10,1.62,11
        11,0.79,6.9
        12,0.48,4.1
        """);
    run(PLAIN.replace("weather: w.csv", "weather: {means: m.csv}"));
    var years = Path.of("weather-samples/grey-maritime.csv").toAbsolutePath();
    weather(
        "j.csv",
        "# typical_year: yes\n",
        "local_start,ghi_wm2,tair_c",
        t -> t + "," + sunWm2(t, 0) + ",8");
    run(PLAIN.replace("weather: w.csv", "weather: {file: j.csv, years: " + years + "}"));
    assertTrue(
        cautions.stream().anyMatch(c -> c.contains("brighter than all")), cautions.toString());
    for (int rank = 1; rank <= 25; rank++) {
      cautions.add(new TypicalRank("j.csv", rank, 25, 9e4, 8e4).words());
    }
  }

  // ---- made files -------------------------------------------------------------------------------

  /** Roughly the sun of 52 N on a clear day. */
  private static int sunWm2(LocalDateTime t, int lateH) {
    double season = Math.cos((t.getDayOfYear() - 172) / 365.0 * 2.0 * Math.PI);
    double hour = (t.getHour() + 0.5 - 12.5 - lateH) / 24.0 * 2.0 * Math.PI;
    double declination = Math.toRadians(23.4 * season), latitude = Math.toRadians(52.0);
    double height =
        Math.sin(latitude) * Math.sin(declination)
            + Math.cos(latitude) * Math.cos(declination) * Math.cos(hour);
    return height <= 0.0 ? 0 : (int) (1000.0 * Math.pow(height, 1.15));
  }

  private void weather(String name, String head, String header, Function<LocalDateTime, String> row)
      throws IOException {
    Files.writeString(
        folder.resolve(name),
        "# utc_offset: 1\n" + head + rows(header, LocalDateTime.of(2019, 1, 1, 0, 0), 8760, row));
  }

  private static String source(String header, Function<LocalDateTime, String> watts) {
    return rows(
        header, LocalDateTime.of(2019, 2, 1, 0, 0), 8760 - 31 * 24, t -> t + "," + watts.apply(t));
  }

  private static String rows(
      String header, LocalDateTime from, int hours, Function<LocalDateTime, String> row) {
    var text = new StringBuilder(header).append('\n');
    for (int h = 0; h < hours; h++) {
      text.append(row.apply(from.plusHours(h))).append('\n');
    }
    return text.toString();
  }

  // ---- the pages --------------------------------------------------------------------------------

  /** On the pages of another home, in place of its own. */
  private void allIsGerman() {
    HandedOver other = HandedOver.english();
    StudyResult r = other.result;
    var told =
        new StudyResult(
            r.scenario(),
            r.weather(),
            r.ledger(),
            r.outcome(),
            r.besides(),
            r.planes(),
            List.copyOf(assumptions),
            List.copyOf(cautions),
            r.startNote());
    var check =
        new ElectricalCheck(
            List.of(new ElectricalCheck.Group("all", List.copyOf(findings), "")), List.of());
    Pages pages = Handover.pages(told, other.explanation, check, German.WORDS);
    var wrong = new TreeSet<String>();
    int rows = 0;
    for (Block block : pages.technical()) {
      for (String text : texts(block)) {
        rows++;
        var left = German.englishIn(text, NAMES);
        boolean isWordOfTheFile = text.matches("[a-z_]+");
        if ((!left.isEmpty() && !isWordOfTheFile)
            || text.contains(German.WORDS.say("only_english"))) {
          wrong.add(left + ": " + text);
        }
      }
    }
    assumptions.stream()
        .filter(a -> German.WORDS.translated(a.why()) == null)
        .forEach(a -> wrong.add("NONE: " + a));
    cautions.stream()
        .filter(c -> German.WORDS.translated(c) == null)
        .forEach(c -> wrong.add("NONE: " + c));
    assertEquals("", String.join("\n", wrong));
    assertTrue(rows > findings.size() + assumptions.size() + cautions.size());
    String text = PageText.screen(pages, German.WORDS);
    assertFalse(text.contains(German.WORDS.say("only_english")));
    assertFalse(text.contains(German.WORDS.say("purpose.english")));
    assertFalse(text.contains("englische Ausgabe"));
  }

  /** Of tables in words and of lists. */
  private static List<String> texts(Block block) {
    if (block instanceof Block.Items items) {
      return items.items();
    }
    var texts = new ArrayList<String>();
    if (block instanceof Block.Table table && table.isText()) {
      // keys of the scenario file hold what the user calls things
      int first = table.head().get(0).equals(German.WORDS.say("head.key")) ? 1 : 0;
      table.rows().forEach(row -> texts.addAll(row.cells().subList(first, row.cells().size())));
    }
    return texts;
  }
}
