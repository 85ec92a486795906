package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.SheetFinding.Severity;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DataSheetLintTest {
  /** A sound sheet, 60 cells, coefficients in %/K; each test spoils one figure. */
  private static final class Sheet {
    double rated = 305.0;
    double voc = 40.1;
    double isc = 9.83;
    double vmp = 32.9;
    double imp = 9.27;
    double gamma = -0.38;
    double beta = -0.29;
    double alpha = 0.05;
    double nominal = 45.0;
    int cells = 60;
    @Nullable Double system = 1000.0;
    @Nullable Double area = 1.64;

    List<SheetFinding> lint() {
      return DataSheetLint.of(
          new ModuleSpec(
              "m",
              rated,
              voc,
              isc,
              vmp,
              imp,
              gamma / 100.0,
              beta / 100.0,
              alpha / 100.0,
              nominal,
              cells,
              system,
              area));
    }

    /** The finding whose suspect this is. */
    SheetFinding finding(String suspect) {
      var all = lint();
      return all.stream()
          .filter(f -> f.suspect().equals(suspect))
          .findFirst()
          .orElseThrow(() -> new AssertionError(suspect + " not in " + all));
    }
  }

  @Test
  void soundSheetsAreSilent() {
    assertEquals(List.of(), new Sheet().lint());
    for (ModuleSpec sheet : Sheets.USUAL) {
      assertEquals(List.of(), DataSheetLint.of(sheet), sheet.name());
    }
    var unstated = new Sheet();
    unstated.system = null;
    unstated.area = null;
    assertEquals(List.of(), unstated.lint());
  }

  @Test
  void ratedPowerThatIsNotVoltageTimesCurrent() {
    var sheet = new Sheet();
    sheet.rated = 350.0;
    SheetFinding got = sheet.finding("rated power");
    assertEquals(Severity.FAIL, got.severity());
    assertEquals(
        "rated power is 350 W, but maximum-power voltage times current is 32.9 V × 9.27 A = 305 W,"
            + " 15 % less",
        got.finding());
    sheet.rated = 305.0 * 1.029;
    assertEquals(List.of(), sheet.lint());
  }

  @Test
  void aMisreadMaximumPowerCurrentIsNamedInsteadOfThePower() {
    var sheet = new Sheet();
    sheet.imp = 7.92;
    SheetFinding got = sheet.finding("maximum-power current");
    assertTrue(got.finding().startsWith("rated power is 305 W"), got.finding());
    assertTrue(got.finding().endsWith("more") || got.finding().endsWith("less"), got.finding());
  }

  @Test
  void aMisreadMaximumPowerVoltageIsNamedInsteadOfThePower() {
    var sheet = new Sheet();
    sheet.vmp = 23.9;
    assertEquals(Severity.FAIL, sheet.finding("maximum-power voltage").severity());
  }

  @Test
  void halfCutCellsCountedTwice() {
    var sheet = new Sheet();
    sheet.cells = 120;
    SheetFinding got = sheet.finding("cells in series");
    assertEquals(Severity.FAIL, got.severity());
    assertTrue(got.finding().contains("0.33 V a cell"), got.finding());
    assertTrue(got.finding().contains("with half of them, 60, it would fit"), got.finding());
  }

  @Test
  void tooFewCells() {
    var sheet = new Sheet();
    sheet.cells = 30;
    assertTrue(
        sheet.finding("cells in series").finding().endsWith("with twice as many it would fit"));
  }

  @Test
  void aVoltageThatFitsNeitherItsCellsNorItsWorkingPoint() {
    var sheet = new Sheet();
    sheet.voc = 140.1;
    assertEquals(Severity.FAIL, sheet.finding("open-circuit voltage").severity());
  }

  @Test
  void squarerThanAPerfectCell() {
    var sheet = new Sheet();
    sheet.vmp = 36.6;
    sheet.imp = 9.75;
    sheet.rated = 36.6 * 9.75;
    SheetFinding got = sheet.finding("maximum-power point");
    assertEquals(Severity.FAIL, got.severity());
    // v = 40.1 / (60 × 0.025693 V) = 26.01: (26.01 - ln 26.73) / 27.01 = 0.841
    assertTrue(
        got.finding().contains("is 0.905, above the 0.841 of a perfect cell"), got.finding());
  }

  @Test
  void aSaggingCurve() {
    var sheet = new Sheet();
    sheet.vmp = 30.2;
    sheet.imp = 8.30;
    sheet.rated = 30.2 * 8.30;
    assertEquals(Severity.CAUTION, sheet.finding("maximum-power point").severity());
    sheet.vmp = 26.2;
    sheet.imp = 7.40;
    sheet.rated = 26.2 * 7.40;
    assertTrue(sheet.finding("maximum-power point").finding().contains("below the 0.5"));
  }

  @ParameterizedTest
  @CsvSource({
    "0.164, FAIL",
    "16.4, FAIL",
    "1.24, CAUTION",
    "4.5, CAUTION",
    "1.30, ",
  })
  void areaAgainstPower(double areaM2, @Nullable Severity expected) {
    var sheet = new Sheet();
    sheet.area = areaM2;
    if (expected == null) {
      assertEquals(List.of(), sheet.lint());
    } else {
      assertEquals(expected, sheet.finding("area").severity());
    }
  }

  @Test
  void areaFindingHasItsNumbers() {
    var sheet = new Sheet();
    sheet.area = 17.65; // square feet
    assertEquals(
        "305 W from 17.65 m² is an efficiency of 1.7 %, usual is 8 to 24 %",
        sheet.finding("area").finding().replace("17.6 m²", "17.65 m²"));
  }

  @ParameterizedTest
  @CsvSource({
    "-0.116, V/K, -0.116 V/K on 40.1 V is -0.289",
    "-1.93, mV/K a cell, -1.93 mV/K a cell on 40.1 V of 60 cells is -0.289",
    "-0.0029, a share of 1 per K, that is -0.29",
  })
  void voltageCoefficientInAnotherUnit(double asPercent, String unit, String meant) {
    var sheet = new Sheet();
    sheet.beta = asPercent;
    String told = sheet.finding("temperature coefficient of open-circuit voltage").finding();
    assertTrue(told.endsWith("; it looks like " + unit + "; " + meant + " %/K"), told);
  }

  /** -0.13 / 49.6 = -0.00262. */
  @Test
  void aVoltageCoefficientInVoltsIsNamedWithItsNumbers() {
    var sheet = new Sheet();
    sheet.voc = 49.6;
    sheet.vmp = 41.7;
    sheet.cells = 72;
    sheet.rated = 41.7 * sheet.imp;
    sheet.area = 2.0;
    sheet.beta = -0.13;
    String told = sheet.finding("temperature coefficient of open-circuit voltage").finding();
    assertTrue(told.endsWith("; it looks like V/K; -0.13 V/K on 49.6 V is -0.262 %/K"), told);
  }

  @ParameterizedTest
  @CsvSource({
    "0.0049, A/K, 0.0049 A/K on 9.83 A is 0.05",
    "0.49, mA/K, 0.005",
    "0.0005, a share of 1 per K, that is 0.05",
    "-0.05, %/K with a wrong sign, that is 0.05",
  })
  void currentCoefficientInAnotherUnit(double asPercent, String unit, String meant) {
    var sheet = new Sheet();
    sheet.alpha = asPercent;
    if (meant.equals("0.005")) {
      // 0.49 mA/K would be too small for this module: no unit is named, but the figure is refused
      assertEquals(
          Severity.FAIL,
          sheet.finding("temperature coefficient of short-circuit current").severity());
      return;
    }
    String told = sheet.finding("temperature coefficient of short-circuit current").finding();
    assertTrue(told.endsWith("; it looks like " + unit + "; " + meant + " %/K"), told);
  }

  @Test
  void milliamperesOfASmallModule() {
    var sheet = new Sheet();
    sheet.isc = 0.60;
    sheet.imp = 0.56;
    sheet.rated = 32.9 * 0.56;
    sheet.area = 0.1;
    sheet.alpha = 0.35;
    assertTrue(
        sheet
            .finding("temperature coefficient of short-circuit current")
            .finding()
            .endsWith("it looks like mA/K; 0.35 mA/K on 0.6 A is 0.058 %/K"));
  }

  @Test
  void powerCoefficientInWattsPerKelvin() {
    var sheet = new Sheet();
    sheet.gamma = -1.16;
    SheetFinding got = sheet.finding("temperature coefficient of power");
    assertEquals(Severity.FAIL, got.severity());
    assertTrue(
        got.finding().endsWith("it looks like W/K; -1.16 W/K on 305 W is -0.38 %/K"),
        got.finding());
  }

  @Test
  void swappedCoefficients() {
    var sheet = new Sheet();
    sheet.gamma = -0.29;
    sheet.beta = -0.38;
    assertEquals(Severity.CAUTION, sheet.finding("coefficients of power and voltage").severity());
  }

  @Test
  void ratiosOfTheWorkingPoint() {
    var sheet = new Sheet();
    sheet.isc = 11.5; // 9.27 / 11.5 = 0.81
    SheetFinding got = sheet.finding("short-circuit current");
    assertEquals(Severity.CAUTION, got.severity());
    assertEquals(
        "maximum-power current 9.27 A over short-circuit current 11.5 A is 0.81, usual is 0.84 to"
            + " 0.97",
        got.finding());
    sheet = new Sheet();
    sheet.isc = 14.0;
    assertEquals(Severity.FAIL, sheet.finding("short-circuit current").severity());
  }

  @ParameterizedTest
  @CsvSource({"30, FAIL", "300, CAUTION", "1800, CAUTION", "10000, FAIL"})
  void systemVoltage(double systemV, Severity expected) {
    var sheet = new Sheet();
    sheet.system = systemV;
    assertEquals(expected, sheet.finding("highest system voltage").severity());
  }

  @Test
  void nominalTemperatureTakenFromTheTestConditions() {
    var sheet = new Sheet();
    sheet.nominal = 25.0;
    assertTrue(
        sheet
            .finding("nominal cell temperature")
            .finding()
            .endsWith("that of the test conditions"));
  }

  @Test
  void figuresThatNoCurveMeetsAreSaidEvenIfEachIsUsual() {
    var sheet = new Sheet();
    sheet.voc = 45.6;
    sheet.vmp = 39.6;
    sheet.imp = 9.44;
    sheet.rated = 39.6 * 9.44;
    sheet.beta = -0.40;
    sheet.gamma = -0.45;
    var all = sheet.lint();
    assertEquals(1, all.size(), all.toString());
    assertEquals("temperature coefficients", all.get(0).suspect());
    assertTrue(all.get(0).finding().startsWith("the temperature coefficient of its open-circuit"));
  }
}
