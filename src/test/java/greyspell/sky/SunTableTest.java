package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SunTableTest {
  @ParameterizedTest
  @ValueSource(ints = {1990, 2024, 2050})
  void drawsTheCurveThatTheAlgorithmGives(int year) {
    long first = LocalDate.of(year, 1, 1).toEpochDay();
    SunTable table = SunTable.of(first, 366);
    for (long day = first; day < first + 366; day++) {
      SunPosition direct = SunPosition.fromPoleAtNoon(day);
      assertEquals(direct.declinationRad(), table.declinationRad(day + 0.5), Math.toRadians(2e-4));
      assertEquals(
          direct.equationOfTimeRad(), table.equationOfTimeRad(day + 0.5), Math.toRadians(2e-4));
    }
  }
}
