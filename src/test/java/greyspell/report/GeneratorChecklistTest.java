package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class GeneratorChecklistTest {
  @Test
  void whoeverRunsAnEngineIsToldWhatKills() {
    List<Checklist.Item> items = Checklist.generator();
    assertEquals(
        List.of(
            "Carbon monoxide",
            "Exhaust outdoors",
            "Transfer switch",
            "Neutral and earth",
            "Fuel",
            "Wet and hot",
            "Overload"),
        items.stream().map(Checklist.Item::name).toList());
    String all = String.join(" ", items.stream().map(Checklist.Item::reason).toList());
    for (String word :
        List.of("outdoors", "licensed electrician", "local code", "back", "alarms")) {
      assertTrue(all.toLowerCase(java.util.Locale.ROOT).contains(word), word);
    }
    assertFalse(all.contains(" A ") || all.matches(".*\\d+ (A|AWG|mm2).*"), "no sizes");
  }
}
