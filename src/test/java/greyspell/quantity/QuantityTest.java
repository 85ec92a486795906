package greyspell.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          410 W        | POWER                  | 410
          6 kW         | POWER                  | 6000
          6kw          | POWER                  | 6000
          2 hp         | POWER                  | 1491.3997431645404
          51.2 V       | VOLTAGE                | 51.2
          51,2 V       | VOLTAGE                | 51.2
          0,289 V      | VOLTAGE                | 0.289
          -0.29 %/K    | SHARE_PER_KELVIN       | -0.0029
          -0.29 %/°C   | SHARE_PER_KELVIN       | -0.0029
          -120 mV/K    | VOLTAGE_PER_KELVIN     | -0.12
          12 m         | LENGTH                 | 12
          40 ft        | LENGTH                 | 12.192
          3.2 in       | LENGTH                 | 0.08128
          85 mm        | LENGTH                 | 0.085
          -16 °C       | TEMPERATURE            | -16
          −16 °C       | TEMPERATURE            | -16
          14 °F        | TEMPERATURE            | -10
          -40 °F       | TEMPERATURE            | -40
          273.15 K     | TEMPERATURE            | 0
          9 °F         | TEMPERATURE_DIFFERENCE | 5
          3 K          | TEMPERATURE_DIFFERENCE | 3
          5.12 kWh     | ENERGY                 | 5120
          3.6 MJ       | ENERGY                 | 1000
          280 Ah       | CHARGE                 | 280
          4 mΩ         | RESISTANCE             | 0.004
          15 %         | SHARE                  | 0.15
          30 deg       | ANGLE                  | 30
          30°          | ANGLE                  | 30
          2.5 h        | DURATION               | 2.5
          90 min       | DURATION               | 1.5
          800 W/m2     | IRRADIANCE             | 800
          1.95 m²      | AREA                   | 1.95
          1 gal        | VOLUME                 | 3.785411784
          2 %/month    | SHARE_PER_MONTH        | 0.02
          .5 A         | CURRENT                | 0.5
          1.5e3 W      | POWER                  | 1500
          0.2          | NUMBER                 | 0.2
          """)
  void readsWhatPeopleWrite(String text, Dimension dimension, double inside) {
    assertEquals(inside, Quantity.parse(text, dimension).inside());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1,000 W  | POWER   | a power such as 410 W: the comma may part thousands or a fraction | Write "1000 W" or "1.000 W", whichever is meant.
          410      | POWER   | must be a power with its unit: W, kW, hp or Btu/h | Write "410 W" if that is meant.
          0.15     | SHARE   | must be a share with its unit: % | Write "15 %" if 0.15 of the whole is meant.
          15       | SHARE   | must be a share with its unit: % | Write "15 %".
          2 kWh    | POWER   | must be a power such as 410 W | kWh is energy (how much in all), W and kW are power (how fast): a 2 kW kettle that runs for half an hour takes 1 kWh. Write "2 kW" if power is meant.
          5 kW     | ENERGY  | must be an energy such as 5.12 kWh | kW is power (how fast), Wh and kWh are energy (how much in all): a 2 kW kettle that runs for half an hour takes 1 kWh. Write "5 kWh" if energy is meant.
          12 m     | VOLTAGE | must be a voltage such as 51.2 V | "m" is a unit of length; write V, mV or kV.
          12 Vlt   | VOLTAGE | must be a voltage in V, mV or kV | No unit is spelled "Vlt"; nearest: "12 volt".
          12 blobs | VOLTAGE | must be a voltage in V, mV or kV | No unit is spelled "blobs" here.
          NaN      | POWER   | must be a finite number: a power such as 410 W | Leave the key out if the value is not known.
          .inf     | POWER   | must be a finite number: a power such as 410 W | Leave the key out if the value is not known.
          1e999 W  | POWER   | must be a finite number: a power such as 410 W | Leave the key out if the value is not known.
          much     | POWER   | must be a power such as 410 W | Write a number and a unit: W, kW, hp or Btu/h.
          1 000 W  | POWER   | one number without gaps, then the unit: a power such as 410 W | Write the digits together: "1000 W".
          80 A     | CHARGE  | must be a charge such as 280 Ah | A is current (how fast), Ah is charge (how much in all): read the label anew.
          3 W      | NUMBER  | must be a plain number such as 0.2 | "W" is a unit of power; write no unit.
          5 MΩ     | RESISTANCE | must be a resistance in Ω or mΩ | No unit is spelled "MΩ"; nearest: "5 mΩ".
          """)
  void saysWhatIsWrongAndHowToMendIt(
      String text, Dimension dimension, String expected, String mend) {
    var refusal = assertThrows(Quantity.NotUnderstood.class, () -> Quantity.parse(text, dimension));
    assertEquals(expected + "\n" + mend, refusal.expected() + "\n" + refusal.mend());
  }

  @Test
  void takesTheFirstDimensionThatFits() {
    var either = List.of(Dimension.ENERGY, Dimension.CHARGE);
    assertEquals(Dimension.CHARGE, Quantity.parse("280 Ah", either).dimension());
    assertEquals(Dimension.ENERGY, Quantity.parse("5.12 kWh", either).dimension());
  }

  @Test
  void answersInTheUnitThatWasWritten() {
    assertEquals("40 ft", Quantity.parse("40 ft", Dimension.LENGTH).toString());
    assertEquals("3 °F", Quantity.parse("3 °F", Dimension.TEMPERATURE).toString());
    assertEquals("-1476.4 ft", Unit.FOOT.text(-450.0));
  }

  @Test
  void readsNothingLongerThanALine() {
    assertThrows(
        Quantity.NotUnderstood.class, () -> Quantity.parse("9".repeat(100), Dimension.NUMBER));
  }

  /** What is printed reads back as the very same number, in every dimension. */
  @Property
  void printedValuesReadBackTheSame(
      @ForAll Dimension dimension, @ForAll @DoubleRange(min = -1e9, max = 1e9) double value) {
    String text = Quantity.print(value, dimension);
    assertEquals(value, Quantity.parse(text, dimension).inside(), text);
  }

  /** Every unit leads there and back within rounding. */
  @Property
  void everyUnitLeadsThereAndBack(
      @ForAll Unit unit, @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
    String text = unit.exactText(value);
    double back = Quantity.parse(text, unit.dimension()).inside();
    assertEquals(value, back, 1e-12 * Math.max(1e3, Math.abs(value)), text);
  }

  /** Whatever is typed, the answer is a value or a refusal with advice. */
  @Property
  void neverFailsOtherwise(@ForAll String text, @ForAll Dimension dimension) {
    try {
      double value = Quantity.parse(text, dimension).inside();
      assertEquals(value, value, "finite");
    } catch (Quantity.NotUnderstood e) {
      assertEquals(false, e.expected().isBlank());
    }
  }
}
