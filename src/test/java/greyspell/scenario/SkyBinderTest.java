package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.sky.CloudTable;
import greyspell.sky.CloudTable.Season;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SkyBinderTest {
  @TempDir Path temp = Path.of("");
  private TestFolder folder = new TestFolder(Path.of("target"));

  @BeforeEach
  void makeFolder() {
    folder = new TestFolder(temp);
  }

  private static String withSky(String sky) {
    return TestFolder.good() + "\nsky:\n" + sky.indent(2);
  }

  @Test
  void theClassicCurveIsUsual() {
    assertNull(folder.read(TestFolder.good()).sky().cloudTable());
    assertNull(folder.read(withSky("cloud: classic\ncloud_depth: 0.7")).sky().cloudTable());
  }

  @Test
  void theTableOfTheProgramIsAssumed() {
    Scenario home = folder.read(withSky("cloud: table"));
    CloudTable table = home.sky().cloudTable();
    assertNotNull(table);
    assertEquals(CloudTable.lowland().rows(), table.rows());
    assertTrue(home.assumptions().stream().anyMatch(a -> a.key().equals("sky.cloud_table")));
    assertTrue(home.assumptions().stream().noneMatch(a -> a.key().equals("sky.cloud_depth")));
  }

  @Test
  void aTableOfOnesOwnIsRead() {
    CloudTable table =
        folder
            .read(
                withSky(
                    """
                    turbidity: 2.5
                    cloud: table
                    cloud_table:
                      - {season: winter, sun: 5 deg, shares: [[0, 1.2], [8, 0.4]]}
                      - {sun: 30 deg, shares: [[0, 1], [4, 0.8], [8, 0.3]]}
                    """))
            .sky()
            .cloudTable();
    assertNotNull(table);
    assertEquals(Season.WINTER, table.rows().get(0).season());
    assertEquals(Season.ALL, table.rows().get(1).season());
    assertEquals(1.2 - 0.1, table.rows().get(0).shares().get(1), 1e-12);
    assertEquals(0.55, table.rows().get(1).shares().get(6), 1e-12);
  }

  @Test
  void badTablesAreRefused() {
    assertFault("cloud: clasic", "must be one of: classic, table");
    assertFault(
        "cloud: classic\ncloud_table:\n  - {sun: 30 deg, shares: [[0, 1], [8, 0.3]]}",
        "cloud_table beside cloud: classic");
    assertFault("cloud: table\nturbidity: 4", "cloud: table with another clear sky");
    assertFault(
        "cloud: table\ncloud_table:\n  - {sun: 95 deg, shares: [[0, 1], [8, 0.3]]}",
        "sun: found \"95 deg\"");
    assertFault(
        "cloud: table\ncloud_table:\n  - {sun: 30 deg, shares: [[0, 1], [8, 5]]}",
        "shares: found \"5\"");
    assertFault(
        "cloud: table\ncloud_table:\n  - {sun: 30 deg, shares: [[0, 1], [10, 0.3]]}",
        "found a point outside 0 to 8 eighths");
    assertFault(
        "cloud: table\ncloud_table:\n  - {season: winter, sun: 30 deg, shares: [[0, 1], [8, 0.3]]}",
        "no row for the rest of the year");
    assertFault("cloud: table\ncloud_table:\n  - {sun: 30 deg}", "shares");
  }

  private void assertFault(String sky, String said) {
    String faults = folder.faults(withSky(sky));
    assertTrue(faults.contains(said), said + " in\n" + faults);
  }
}
