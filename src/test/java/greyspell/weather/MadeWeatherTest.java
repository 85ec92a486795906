package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Invented climates: the same bits again, within physics, with spells and with years that differ.
 */
class MadeWeatherTest {
  private static final int MANY_YEARS = 40;
  private static final int FIRST = 1981;
  private static final long SEED = 3;
  private static final double ROUNDED_TO_A_WATT = 0.5;

  @TempDir Path folder;

  static Stream<ClimateRecipe> recipes() {
    return ClimateRecipes.all().stream();
  }

  private static ClimateRecipe recipe(String name) {
    ClimateRecipe recipe = ClimateRecipes.find(name);
    assertNotNull(recipe, name);
    return recipe;
  }

  private static double[] global(WeatherSeries series) {
    double[] column = series.globalHorizontalWm2();
    assertNotNull(column);
    return column;
  }

  private static ExtraterrestrialHour sun(ClimateRecipe recipe, WeatherSeries series, int hour) {
    return new ExtraterrestrialHour(
        recipe.latitudeDeg(),
        recipe.longitudeDeg(),
        recipe.utcOffsetH(),
        series.calendar().dayOfYear(hour));
  }

  /** The shipped samples are what the command in their README makes. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "grey-maritime, 2022, 3, 16",
    "cold-continental, 2021, 3, 8",
    "high-plateau, 2021, 3, 3",
    "south-island-coast, 2021, 3, 2"
  })
  void samplesAreMadeAgainBitForBit(String name, int firstYear, int years, long seed)
      throws IOException {
    ClimateRecipe recipe = recipe(name);
    WeatherSeries series = ClimateGenerator.make(recipe, firstYear, years, seed);
    Path made = folder.resolve(name + ".csv");
    PlainCsvWriter.write(series, ClimateGenerator.remarks(recipe, firstYear, years, seed), made);
    Path shipped = Path.of("weather-samples", name + ".csv");
    assertEquals(-1, Files.mismatch(shipped, made), "first byte that differs");
    assertTrue(Files.size(shipped) < 1_000_000, "below one megabyte");
    WeatherSeries read = WeatherReader.read(shipped, name, recipe.utcOffsetH());
    assertArrayEquals(global(series), global(read), 0.0);
    assertArrayEquals(series.airTemperatureC(), read.airTemperatureC(), 0.0);
    assertArrayEquals(series.cloudShare(), read.cloudShare(), 0.0);
    assertArrayEquals(series.windMs(), read.windMs(), 0.0);
    assertEquals(recipe.snowfallM() > 0.0, read.snowDepthM() != null);
    assertEquals(recipe.place(), read.source().place());
    assertEquals(GapReport.NONE, read.gaps());
    String readme = Files.readString(Path.of("weather-samples", "README.md"));
    assertTrue(
        readme.contains(
            "greyspell weather make "
                + name
                + " --out weather-samples/"
                + name
                + ".csv --first-year "
                + firstYear
                + " --years "
                + years
                + " --seed "
                + seed),
        name);
  }

  @Test
  void anotherSeedMakesOtherWeather() {
    ClimateRecipe recipe = recipe("grey-maritime");
    assertFalse(
        Arrays.equals(
            global(ClimateGenerator.make(recipe, 2022, 1, 1)),
            global(ClimateGenerator.make(recipe, 2022, 1, 2))));
  }

  @ParameterizedTest
  @MethodSource("recipes")
  void noHourIsBrighterThanAboveTheAir(ClimateRecipe recipe) {
    WeatherSeries series = ClimateGenerator.make(recipe, FIRST, 3, SEED);
    double[] globalWm2 = global(series);
    for (int hour = 0; hour < globalWm2.length; hour++) {
      double aboveWm2 = sun(recipe, series, hour).irradiationWhm2(hour % 24);
      assertTrue(globalWm2[hour] <= aboveWm2 + ROUNDED_TO_A_WATT, "hour " + hour);
      assertTrue(globalWm2[hour] >= 0.0);
    }
  }

  @ParameterizedTest
  @MethodSource("recipes")
  void longRowsOfYearsMeetTheRecipe(ClimateRecipe recipe) {
    WeatherSeries series = ClimateGenerator.make(recipe, FIRST, MANY_YEARS, SEED);
    double[] daily = WeatherFacts.dailyGlobalWhm2(series);
    double wanted = 0.0;
    double got = 0.0;
    for (int day = 0; day < daily.length; day++) {
      double aboveWhm2 = sun(recipe, series, day * 24).dayWhm2();
      got += daily[day];
      wanted += aboveWhm2 * recipe.meanClearnessShare().in(series.calendar().month(day * 24));
    }
    assertEquals(1.0, got / wanted, 0.03, "annual irradiation against the recipe");
    double[] months = WeatherFacts.overYears(WeatherFacts.monthlyTemperatureC(series));
    for (int month = 1; month <= 12; month++) {
      double swingK = recipe.temperatureSwingK().in(month);
      // 40 monthly means of days that follow each other: standard error a tenth of the swing; four
      // of them, and the course through the months
      assertEquals(
          recipe.meanTemperatureC().in(month), months[month - 1], 0.4 * swingK + 0.7, "" + month);
    }
  }

  @ParameterizedTest
  @MethodSource("recipes")
  void skiesLast(ClimateRecipe recipe) {
    double lagOne = lagOneOfClearness(recipe);
    assertTrue(lagOne > 0.18 && lagOne < 0.48, recipe.name() + " " + lagOne);
  }

  private static double lagOneOfClearness(ClimateRecipe recipe) {
    WeatherSeries series = ClimateGenerator.make(recipe, FIRST, MANY_YEARS, SEED);
    double[] clearness = WeatherFacts.dailyGlobalWhm2(series);
    var mean = new double[13];
    var count = new int[13];
    for (int day = 0; day < clearness.length; day++) {
      clearness[day] /= sun(recipe, series, day * 24).dayWhm2();
      int month = series.calendar().month(day * 24);
      mean[month] += clearness[day];
      count[month]++;
    }
    double product = 0.0;
    double square = 0.0;
    double before = 0.0;
    for (int day = 0; day < clearness.length; day++) {
      int month = series.calendar().month(day * 24);
      double off = clearness[day] - mean[month] / count[month];
      product += off * before;
      square += off * off;
      before = off;
    }
    return product / square;
  }

  @ParameterizedTest
  @MethodSource("recipes")
  void cloudAgreesWithTheSun(ClimateRecipe recipe) {
    WeatherSeries series = ClimateGenerator.make(recipe, FIRST, 3, SEED);
    double[] cloud = series.cloudShare();
    assertNotNull(cloud);
    double[] globalWm2 = global(series);
    var sum = new double[9];
    var count = new int[9];
    for (int hour = 0; hour < cloud.length; hour++) {
      double aboveWm2 = sun(recipe, series, hour).irradiationWhm2(hour % 24);
      if (aboveWm2 > 300.0) {
        int okta = (int) Math.rint(cloud[hour] * 8.0);
        sum[okta] += globalWm2[hour] / aboveWm2;
        count[okta]++;
      }
    }
    double clear = sum[2] / count[2];
    assertTrue(
        sum[8] / count[8] < 0.6 * clear, "overcast lets less than 0.6 of a clear sky through");
    assertTrue(sum[7] / count[7] < sum[4] / count[4], "more cloud, less sun");
    assertTrue(sum[4] / count[4] < clear);
  }

  @Test
  void greyMaritimeWintersAreDullAndDiffer() {
    WeatherSeries series = ClimateGenerator.make(recipe("grey-maritime"), FIRST, MANY_YEARS, SEED);
    double least = 9.0;
    double most = 0.0;
    double mean = 0.0;
    for (double[] year : WeatherFacts.monthlyDailyGlobalKwhm2(series)) {
      least = Math.min(least, year[11]);
      most = Math.max(most, year[11]);
      mean += year[11] / MANY_YEARS;
    }
    assertTrue(mean > 0.38 && mean < 0.60, "December mean " + mean);
    assertTrue(most / least > 1.7, least + " to " + most);
    int longest = WeatherFacts.dullSpells(series, 1000.0).get(0).days();
    assertTrue(longest >= 30 && longest <= 90, "longest run of days under 1 kWh/m2: " + longest);
  }

  @Test
  void theSamplesShowWhatTheyAreFor() {
    WeatherSeries maritime = ClimateGenerator.make(recipe("grey-maritime"), 2022, 3, 16);
    for (double[] year : WeatherFacts.monthlyDailyGlobalKwhm2(maritime)) {
      assertTrue(year[11] >= 0.3 && year[11] <= 0.7, "December " + year[11]);
    }
    assertTrue(WeatherFacts.dullSpells(maritime, 1000.0).get(0).days() >= 21);
    assertEquals(26_304, maritime.hours(), "with the leap day of 2024");

    WeatherSeries continental = ClimateGenerator.make(recipe("cold-continental"), 2021, 3, 8);
    double[] cold = continental.airTemperatureC();
    assertTrue(cold[WeatherFacts.hourOfLeast(cold)] < -30.0);
    double[] snow = continental.snowDepthM();
    assertNotNull(snow);
    assertTrue(snow[WeatherFacts.hourOfMost(snow)] > 0.5);
    assertEquals(0.0, snow[continental.calendar().hourOf(2022, 7, 1, 0)], 0.0);

    WeatherSeries plateau = ClimateGenerator.make(recipe("high-plateau"), 2021, 3, 3);
    for (double[] year : WeatherFacts.monthlyDailyGlobalKwhm2(plateau)) {
      assertTrue(year[11] > 1.9, "December " + year[11]);
    }
    assertTrue(WeatherFacts.dullSpells(plateau, 1000.0).get(0).days() <= 4);

    WeatherSeries south = ClimateGenerator.make(recipe("south-island-coast"), 2021, 3, 2);
    for (double[] year : WeatherFacts.monthlyDailyGlobalKwhm2(south)) {
      assertTrue(year[5] < 0.4 * year[11], "June is winter");
    }
    assertNull(south.snowDepthM());
  }

  @ParameterizedTest
  @MethodSource("recipes")
  void temperatureHasNoJumps(ClimateRecipe recipe) {
    WeatherSeries series = ClimateGenerator.make(recipe, FIRST, 3, SEED);
    assertEquals(0, WeatherFacts.temperatureJumps(series, 8.0).size());
  }

  @Test
  void unknownRecipesAreNotFound() {
    assertNull(ClimateRecipes.find("sunny"));
    assertEquals(4, ClimateRecipes.names().size());
  }

  @Test
  void writingLeavesNothingHalfDone() throws IOException {
    WeatherSeries series = ClimateGenerator.make(recipe("high-plateau"), 2021, 1, 1);
    Path inTheWay = Files.createDirectory(folder.resolve("taken"));
    Files.createFile(inTheWay.resolve("inside"));
    assertThrows(IOException.class, () -> PlainCsvWriter.write(series, List.of(), inTheWay));
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(1, left.count(), "no partial file is left");
    }
  }

  @Test
  void aTypicalYearIsWrittenAndReadAsOne() throws IOException {
    var small = new SmallFiles(folder);
    WeatherSeries series =
        small.read(
            SmallFiles.epw(
                r -> {
                  r.year = 1990 + r.month % 3;
                  r.opaqueTenths = "3";
                  r.globalWm2 = r.hour == 12 ? "123" : "0";
                  return r;
                }),
            -6.0);
    Path file = folder.resolve("typical.csv");
    PlainCsvWriter.write(series, List.of("made for a test"), file);
    String text = Files.readString(file, StandardCharsets.UTF_8);
    assertTrue(text.contains("# typical_year: yes\n"), text.substring(0, 300));
    assertTrue(text.contains("cloud_pct"));
    WeatherSeries again = WeatherReader.read(file, "typical.csv", -6.0);
    assertTrue(again.calendar().isTypical());
    assertArrayEquals(global(series), global(again), 0.0);
    assertArrayEquals(series.cloudShare(), again.cloudShare(), 1e-12);
  }
}
