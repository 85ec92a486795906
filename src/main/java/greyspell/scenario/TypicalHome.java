package greyspell.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Homes to begin with, each with a field and a bank that are a fair first try; own choice. */
public enum TypicalHome {
  CABIN("A cabin for weekends and holidays", 4, 1),
  COUPLE("A small house, two people who are careful", 10, 3),
  FAMILY("A family house, heat from wood or fuel", 16, 4),
  SMALLHOLDING("A family with animals and a workshop", 24, 6),
  ALL_ELECTRIC("A house without any fuel, heat pump and all", 40, 12);

  private static final String CABIN_INVERTER =
      """
      {from: Dunmore Ward DW-1600-48, search: {draw: 3 W, wakes_at: 15 W}}
      # from shared/inverters.yaml; its search is set to stay awake for the cameras""";

  private final String words;
  private final int panels;
  private final int packs;

  TypicalHome(String words, int panels, int packs) {
    this.words = words;
    this.panels = panels;
    this.packs = packs;
  }

  /** As a user writes it: "all_electric". */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public String words() {
    return words;
  }

  int panels() {
    return panels;
  }

  int packs() {
    return packs;
  }

  /** Written as in a scenario; empty for one by the size of the field. */
  String inverter() {
    return this == CABIN ? CABIN_INVERTER : "";
  }

  /** Its list of appliances, set in as the starter wants it. */
  String appliances() {
    String file = "homes/" + word() + ".yaml";
    try (InputStream in = TypicalHome.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + " is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).stripTrailing();
    } catch (IOException e) {
      throw new IllegalStateException(file + " cannot be read", e);
    }
  }
}
