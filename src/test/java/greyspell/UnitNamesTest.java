package greyspell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every number of a record says its unit in its name. */
class UnitNamesTest {
  private static final Pattern UNIT =
      Pattern.compile(
          ".*(W|Wh|Wm2|Whm2|Wm2K|WPerK|V|A|Ah|Ohm|C|K|PerK|PerMs|Deg|Rad|M|M2|Ms|Pa|Cost|H|D|Days|Hours|Years|Efficiency|Fraction|Share"
              + "|Factor|Albedo|PerH|PerW|Exponent|Depth|Probability|Kwh|Kg|L|LPerH|Correlation|Cycles|Ratio|Modules|PerDay|PerYear|PerUnmetHour|Px|Pt)$");

  /** Names that are a unit or share word by themselves. */
  private static final Set<String> WHOLE =
      Set.of(
          "wh",
          "efficiency",
          "factor",
          "exponent",
          "number",
          "clearness",
          "low",
          "middle",
          "high",
          "least",
          "location",
          "scale",
          "skew",
          "minimum",
          "maximum",
          "value",
          "share",
          "shape",
          "cost",
          "years",
          "modules");

  @Test
  void everyDoubleComponentEndsInAUnitOrShareWord() {
    var broken = new TreeSet<String>();
    for (var type :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("greyspell")) {
      Class<?> reflected = type.reflect();
      if (!reflected.isRecord()) {
        continue;
      }
      for (var component : reflected.getRecordComponents()) {
        boolean isDouble =
            component.getType() == double.class || component.getType() == Double.class;
        if (isDouble
            && !UNIT.matcher(component.getName()).matches()
            && !WHOLE.contains(component.getName())) {
          broken.add(reflected.getSimpleName() + "." + component.getName());
        }
      }
    }
    assertEquals(Set.of(), broken);
  }
}
