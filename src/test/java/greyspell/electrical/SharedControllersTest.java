package greyspell.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.ArraySpec;
import greyspell.electrical.Finding.Severity;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand: 13.9 A a string, 410 W a module, controllers that bear 50 A. */
class SharedControllersTest {
  private static SharedControllers on(int count, ArraySpec... planes) {
    return new SharedControllers(
        List.of(planes), Equipment.controller(count, 60.0, 20.0, 145.0, 25.0, 150.0, 50.0));
  }

  private static ArraySpec plane(String name, int inSeries, int inParallel) {
    return Equipment.array(name, Equipment.M410, inSeries, inParallel);
  }

  private static Finding sharing(SharedControllers shared) {
    var findings = new ArrayList<Finding>();
    shared.sharing(findings);
    assertEquals(1, findings.size());
    return findings.get(0);
  }

  @Test
  void aSingleControllerHasNothingToShare() {
    var findings = new ArrayList<Finding>();
    SharedControllers one = on(1, plane("barn", 3, 2), plane("yard", 2, 1));
    one.sharing(findings);
    assertTrue(findings.isEmpty());
    assertEquals(3, one.stringsOnOne());
    assertEquals(3 * 13.9, one.shortCircuitA(), 1e-9);
    assertEquals(8 * 410.0, one.broughtW(51.2), 1e-9);
  }

  /** 3 + 1 on two: two each, so one gets both planes; apart one would carry three, 41.7 A. */
  @Test
  void oneControllerMayGetStringsOfBothPlanes() {
    SharedControllers shared = on(2, plane("barn", 3, 3), plane("yard", 2, 1));
    Finding found = sharing(shared);
    assertEquals(Severity.CAUTION, found.severity());
    assertTrue(
        found
            .text()
            .startsWith("4 strings of 2 planes (barn 3, yard 1) on 2 controllers: shared evenly"),
        found.text());
    assertTrue(
        found.text().contains("each gets 2, and at least one controller gets strings of more"),
        found.text());
    assertTrue(found.text().contains("of 62.8 V and 94.2 V at test conditions"), found.text());
    assertTrue(
        found.text().endsWith("one gets 3 strings, 41.7 A × 1.25 = 52.1 A, and bears 50 A"),
        found.text());
    assertEquals(2 * 13.9, shared.shortCircuitA(), 1e-9);
    assertEquals(2 * 3 * 410.0, shared.broughtW(51.2), 1e-9);
  }

  @Test
  void equalPlanesCanBeKeptApart() {
    Finding same = sharing(on(2, plane("barn", 3, 2), plane("yard", 3, 2)));
    assertEquals(Severity.PASS, same.severity());
    assertTrue(same.text().endsWith("no controller need get strings of more than one plane"));
    Finding unlike = sharing(on(2, plane("barn", 3, 2), plane("yard", 2, 2)));
    assertEquals(Severity.CAUTION, unlike.severity());
    assertFalse(unlike.text().contains("at least one"), unlike.text());
  }

  /** Uneven, yet apart: 3 + 2 on two is three and two. */
  @Test
  void anUnevenShareMayStillBeApart() {
    Finding found = sharing(on(2, plane("barn", 3, 3), plane("yard", 3, 2)));
    assertEquals(Severity.CAUTION, found.severity());
    assertTrue(found.text().contains("the fullest gets 3, and no controller need"), found.text());
  }

  @Test
  void morePlanesThanControllersCannotBeKeptApart() {
    Finding found = sharing(on(2, plane("a", 3, 1), plane("b", 3, 1), plane("c", 3, 2)));
    assertEquals(Severity.CAUTION, found.severity());
    assertTrue(found.text().contains("at least one"), found.text());
    assertFalse(found.text().contains("kept apart"), found.text());
  }

  /** The fullest controller is judged with the strongest strings, not with the average. */
  @Test
  void theStrongestStringsMayMeet() {
    var weak = Equipment.module("weak", 45.0, 6.0, 37.0, 5.6, -0.0027, 1000.0);
    SharedControllers shared = on(2, Equipment.array("old", weak, 4, 2), plane("new", 2, 2));
    assertEquals(2 * 13.9, shared.shortCircuitA(), 1e-9);
    assertEquals(2 * 4 * weak.ratedPowerW(), shared.broughtW(51.2), 1e-9);
  }
}
