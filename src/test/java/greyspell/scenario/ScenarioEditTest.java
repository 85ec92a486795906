package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

final class ScenarioEditTest {
  private static final Path AT = Path.of("scenarios", "edited.yaml");
  private static final String HOME =
      """
      # the top
      home: Test
      site:
        latitude: 50   # north
        longitude: 8
      weather: ../w.csv   # bare
      arrays:
        # the good one
        - name: roof
          module: Orrin Bay OB-410H
          tilt: 40 deg  # steep enough
          in_series: 3

        - {name: barn roof, module: "Orrin, B", tilt: 20 deg}   # low
      controller: Sable Ridge SR-D70 # bare too
      bank:
        battery: Stonecrop SC-280
        enclosure:
          place: heated   # warm
          lag: 8 h
      inverter: {from: Dunmore Ward DW-1600-48}
      loads:
        appliances:
          - Router and modem   # all day
          - {from: "Fridge-freezer, efficient", duty: 40 %}
          - name: Saw
            power: 900 W
      sky:
      # the end
      """;

  private static ScenarioEdit edit() {
    return ScenarioEdit.ofText(HOME, AT);
  }

  private static void changes(ScenarioEdit edit, String before, String after) {
    assertTrue(HOME.contains(before), HOME.toString());
    assertEquals(HOME.replace(before, after), edit.text());
  }

  @Test
  void aValueChangesAloneInItsLine() {
    changes(edit().set("arrays[0].tilt", "55 deg"), "40 deg  #", "55 deg  #");
    changes(edit().set("arrays[1].tilt", "55 deg"), "20 deg}", "55 deg}");
    changes(edit().set("arrays[barn roof].tilt", "55 deg"), "20 deg}", "55 deg}");
    changes(edit().set("site.latitude", "51"), "latitude: 50", "latitude: 51");
    changes(edit().set("loads.appliances[Fridge-freezer, efficient].duty", "50 %"), "40 %", "50 %");
    changes(edit().set("loads.appliances[saw].power", "1 kW"), "900 W", "1 kW");
    changes(edit().set("bank.enclosure.place", "outdoors"), "place: heated", "place: outdoors");
  }

  @Test
  void aNewKeyGoesBehindTheOthersOfItsBlock() {
    changes(
        edit().set("arrays[0].in_parallel", "2"),
        "    in_series: 3\n",
        "    in_series: 3\n    in_parallel: 2\n");
    changes(edit().set("arrays[1].in_parallel", "2"), "20 deg}", "20 deg, in_parallel: 2}");
    changes(
        edit().set("bank.in_parallel", "8"), "    lag: 8 h\n", "    lag: 8 h\n  in_parallel: 8\n");
    changes(
        edit().set("loads.when_low.can_wait_below", "40 %"),
        "      power: 900 W\n",
        "      power: 900 W\n  when_low: {can_wait_below: 40 %}\n");
    changes(edit().set("reserve", "15 %"), "sky:\n", "sky:\nreserve: 15 %\n");
    changes(edit().set("sky.turbidity", "4"), "sky:\n", "sky: {turbidity: 4}\n");
  }

  @Test
  void aBareNameBecomesABlockWhenAKeyOfItIsSet() {
    changes(
        edit().set("controller.count", "2"),
        "controller: Sable Ridge SR-D70 # bare too",
        "controller: {from: Sable Ridge SR-D70, count: 2} # bare too");
    changes(
        edit().set("loads.appliances[Router and modem].hours", "07:00-23:00"),
        "- Router and modem   #",
        "- {from: Router and modem, hours: 07:00-23:00}   #");
    changes(
        edit().set("arrays[1].module.rated_power", "400 W"),
        "\"Orrin, B\"",
        "{from: \"Orrin, B\", rated_power: 400 W}");
    changes(edit().set("weather.file", "../x.csv"), "../w.csv", "../x.csv");
    changes(edit().set("weather", "../x.csv"), "../w.csv", "../x.csv");
    changes(edit().set("controller.from", "Other"), "Sable Ridge SR-D70", "Other");
  }

  @Test
  void quotesStandWhereYamlNeedsThem() {
    changes(edit().set("arrays[1].name", "barn, low"), "name: barn roof", "name: \"barn, low\"");
    changes(edit().set("home", "Test: two"), "home: Test", "home: \"Test: two\"");
    changes(edit().set("home", "Test, two"), "home: Test", "home: Test, two");
    changes(edit().set("home", "say \"so\" # 1"), "home: Test", "home: \"say \\\"so\\\" # 1\"");
    changes(edit().set("home", "~"), "home: Test", "home: \"~\"");
    changes(edit().set("home", "[a]"), "home: Test", "home: \"[a]\"");
    changes(
        edit().set("loads.appliances[1].hours", "06:00-08:00, 18:00-22:00"),
        "40 %}",
        "40 %, hours: \"06:00-08:00, 18:00-22:00\"}");
  }

  @Test
  void blocksGoInAndOut() {
    changes(
        edit().set("generator", "from: Tolland TG-3\nstart_below: 30 %"),
        "sky:\n",
        "sky:\n\ngenerator:\n  from: Tolland TG-3\n  start_below: 30 %\n");
    changes(
        edit().set("bank.enclosure", "{place: ground, depth: 1 m}"),
        "enclosure:\n    place: heated   # warm\n    lag: 8 h\n",
        "enclosure: {place: ground, depth: 1 m}\n");
    changes(
        edit().set("controller", "from: X\ncount: 2"),
        "controller: Sable Ridge SR-D70 # bare too\n",
        "controller: # bare too\n  from: X\n  count: 2\n");
    changes(
        edit().set("inverter", "Brill BR-700"), "{from: Dunmore Ward DW-1600-48}", "Brill BR-700");
    changes(
        edit().set("arrays[1].module", "from: X\nrated_power: 3 W"),
        "\"Orrin, B\"",
        "{from: X, rated_power: 3 W}");
    changes(
        edit().set("arrays[0].shade", "[1 %, 2 %]"),
        "in_series: 3\n",
        "in_series: 3\n    shade: [1 %, 2 %]\n");
  }

  @Test
  void itemsComeAndGo() {
    changes(
        edit().add("arrays", "name: wall\nmodule: X"),
        "20 deg}   # low\n",
        "20 deg}   # low\n  - name: wall\n    module: X\n");
    changes(
        edit().add("arrays", "- name: wall\n  module: X"),
        "20 deg}   # low\n",
        "20 deg}   # low\n  - name: wall\n    module: X\n");
    changes(
        edit().add("loads.appliances", "LED lamp"),
        "power: 900 W\n",
        "power: 900 W\n    - LED lamp\n");
    changes(
        edit().add("conductors", "{run: controller_to_bank, length: 1 m}"),
        "sky:\n",
        "sky:\n\nconductors:\n  - {run: controller_to_bank, length: 1 m}\n");
    changes(edit().remove("loads.appliances[Saw]"), "    - name: Saw\n      power: 900 W\n", "");
    changes(edit().remove("loads.appliances[0]"), "    - Router and modem   # all day\n", "");
    changes(edit().remove("arrays[1].module"), "module: \"Orrin, B\", ", "");
    changes(edit().remove("arrays[1].tilt"), ", tilt: 20 deg", "");
    changes(edit().remove("arrays[0].name"), "name: roof\n    module", "module");
    changes(edit().remove("controller"), "controller: Sable Ridge SR-D70 # bare too\n", "");
    assertTrue(
        edit().remove("arrays[0]").remove("arrays[0]").text().contains("arrays: []\n"),
        edit().remove("arrays[0]").remove("arrays[0]").text().toString());
    assertTrue(
        edit()
            .remove("arrays[0]")
            .remove("arrays[0]")
            .add("arrays", "name: x")
            .text()
            .contains("arrays:\n  - name: x\n"),
        edit().remove("arrays[0]").remove("arrays[0]").add("arrays", "name: x").text().toString());
  }

  @Test
  void lineBreaksStayAsTheyAre() {
    String windows = HOME.replace("\n", "\r\n");
    String changed =
        ScenarioEdit.ofText(windows, AT)
            .set("arrays[0].tilt", "55 deg")
            .set("bank.in_parallel", "8")
            .set("generator", "from: X\nstart_below: 30 %")
            .remove("loads.appliances[0]")
            .text();
    assertTrue(!changed.replace("\r\n", "").contains("\n"));
    assertTrue(!changed.replace("\r\n", "").contains("\r"));
    assertEquals(HOME.lines().count() + 4 - 1 + 1 - 0, changed.lines().count());
  }

  @Test
  void whatIsWrittenIsHandedBack() {
    assertEquals("Orrin, B", edit().written("arrays[1].module"));
    assertNull(edit().written("arrays[0].in_parallel"));
    assertNull(edit().written("sky"));
    assertEquals("../w.csv", edit().written("weather.file"));
    assertEquals("{place: heated, lag: 8 h}", edit().written("bank.enclosure"));
    assertEquals(3, edit().count("loads.appliances"));
    assertEquals(0, edit().count("conductors"));
  }

  private static void refused(Executable change, String... words) {
    String message = String.valueOf(assertThrows(BadInput.class, change).getMessage());
    for (String word : words) {
      assertTrue(message.contains(word), message);
    }
  }

  @Test
  void whatNamesNothingIsRefusedWithTheNearest() {
    refused(
        () -> edit().set("arrays[0].tlt", "1 deg"), "edited.yaml", "Nearest: \"arrays[0].tilt\"");
    refused(() -> edit().set("bnak.in_parallel", "1"), "Nearest: \"bank\"");
    refused(() -> edit().set("arrays[7].tilt", "1 deg"), "no item \"7\"", "[1] barn roof");
    refused(() -> edit().set("arrays[rof].tilt", "1 deg"), "no item \"rof\"", "[0] roof");
    refused(() -> edit().set("arrays.tilt", "1 deg"), "is a list", "arrays[0]", "[0] roof");
    refused(() -> edit().set("bank[0].battery", "X"), "is no list");
    refused(() -> edit().set("home.name", "X"), "is a single value");
    refused(() -> edit().set("arrays[", "X"), "no path of a key");
    refused(() -> edit().set("", "X"), "no path of a key");
    refused(() -> edit().set("arrays[0]..tilt", "X"), "no path of a key");
    refused(() -> edit().remove("reserve"), "is not in the file");
    refused(() -> edit().add("bank", "X"), "is no list");
    refused(() -> edit().set("conductors[0].length", "1 m"), "holds no items");
  }

  @Test
  void whatIsSharedByReferenceIsLeftAlone() {
    String shared =
        """
        home: Test
        arrays:
          - {name: a, module: &m {from: X}}
          - {name: b, module: *m}
        """;
    var edit = ScenarioEdit.ofText(shared, AT);
    refused(() -> edit.set("arrays[1].module.rated_power", "3 W"), "by reference");
    refused(() -> edit.set("arrays[0].module.rated_power", "3 W"), "cannot be changed safely");
    assertEquals(shared.replace("name: b", "name: c"), edit.set("arrays[1].name", "c").text());
  }
}
