package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is no weather file, and how files are recognised. */
class WeatherReaderTest {
  private static final String YEAR =
      SmallFiles.csv("utc_start,ghi_wm2,tair_c", t -> t + "Z,0," + t.getHour());
  private static final int RUBBISH_MB = 100;

  @TempDir Path folder;

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private String refusal(Path file) {
    String message =
        assertThrows(BadInput.class, () -> WeatherReader.read(file, "given.csv", 0.0)).getMessage();
    return message == null ? "" : message;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void aNameSaysNothingAboutTheFormat() throws IOException {
    Path csv = file("weather.epw", bytes(YEAR));
    assertEquals("plain CSV", WeatherReader.read(csv, "x", 0.0).source().format());
    Path epw = file("weather.csv", bytes(SmallFiles.epw(r -> r)));
    assertEquals("EPW", WeatherReader.read(epw, "x", -6.0).source().format());
    Path tmy3 =
        file("weather.txt", bytes(SmallFiles.tmy3(SmallFiles.TMY3_HEAD, SmallFiles::tmy3Line)));
    assertEquals("TMY3", WeatherReader.read(tmy3, "x", -8.0).source().format());
  }

  @Test
  void gzipIsUnpackedOnTheWay() throws IOException {
    Path packed = folder.resolve("weather.csv");
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
      out.write(bytes(YEAR));
    }
    assertEquals(23.0, WeatherReader.read(packed, "x", 0.0).airTemperatureC()[23], 0.0);
    byte[] whole = Files.readAllBytes(packed);
    Path cut = file("cut.gz", Arrays.copyOf(whole, whole.length / 2));
    assertTrue(refusal(cut).contains("the compressed file is cut off or damaged"), refusal(cut));
  }

  @Test
  void byteOrderMarkAndWindowsLinesAreNoTrouble() throws IOException {
    Path file = file("weather.csv", bytes("\uFEFF" + YEAR.replace("\n", "\r\n")));
    assertEquals(8760, WeatherReader.read(file, "x", 0.0).hours());
  }

  @Test
  void withoutASiteAFileKeepsItsOwnClock() throws IOException {
    Path epw = file("weather.epw", bytes(SmallFiles.epw(r -> r)));
    assertEquals(-6.0, WeatherReader.readOnItsOwnClock(epw, "x").source().utcOffsetH(), 0.0);
    Path csv = file("weather.csv", bytes(YEAR));
    assertEquals(0.0, WeatherReader.readOnItsOwnClock(csv, "x").source().utcOffsetH(), 0.0);
    Path zoned = file("zoned.csv", bytes("# utc_offset: 2\n" + YEAR));
    assertEquals(2.0, WeatherReader.readOnItsOwnClock(zoned, "x").source().utcOffsetH(), 0.0);
  }

  @Test
  void refusesWhatIsNotThere() throws IOException {
    assertEquals(
        """
        given.csv  no such file
            must be a weather file
            Check the spelling; a relative path counts from the file that names it.""",
        refusal(folder.resolve("nothing.csv")));
    assertTrue(refusal(folder).startsWith("given.csv  is a folder"));
    assertTrue(refusal(file("empty.csv", new byte[0])).startsWith("given.csv  the file is empty"));
    assertTrue(refusal(file("blank.csv", bytes("\n\n  \n"))).contains("the file is empty"));
  }

  @Test
  void refusesWhatItMayNotRead() throws IOException {
    Path file = file("secret.csv", bytes(YEAR));
    Assumptions.assumeTrue(file.toFile().setReadable(false), "permissions cannot be changed here");
    Assumptions.assumeFalse(Files.isReadable(file), "this user may read everything");
    assertTrue(refusal(file).startsWith("given.csv  may not be read"));
  }

  @Test
  void refusesOtherKindsOfFile() throws IOException {
    assertTrue(refusal(file("a.zip", bytes("PK\u0003\u0004 rest"))).contains("is a zip archive"));
    assertTrue(
        refusal(file("a.txt", "utc_end,ghi_wm2".getBytes(StandardCharsets.UTF_16)))
            .contains("is UTF-16 text"));
    String other = refusal(file("b.txt", bytes("date,temperature\n2019,3\n")));
    assertTrue(
        other.startsWith(
            "given.csv:1:1  no known weather format: the file begins \"date,temperature\"\n"
                + "    must be our plain CSV"),
        other);
  }

  @Test
  void refusesAHundredMegabytesOfRubbishAtOnce() throws IOException {
    var random = new Random(5);
    byte[] block = new byte[1 << 20];
    random.nextBytes(block);
    Path binary = rubbish("binary", block);
    byte[] letters = new byte[1 << 20];
    for (int i = 0; i < letters.length; i++) {
      letters[i] = (byte) ('a' + random.nextInt(26));
    }
    Path endless = rubbish("endless", letters);
    for (int i = 60; i < letters.length; i += 61) {
      letters[i] = '\n';
    }
    Path words = rubbish("words", letters);
    assertTimeoutPreemptively(
        Duration.ofSeconds(2),
        () -> {
          assertTrue(refusal(binary).contains("is no text file"), refusal(binary));
          assertTrue(refusal(endless).contains("the first line is longer than"));
          assertTrue(refusal(words).contains("no known weather format"));
        });
  }

  private Path rubbish(String name, byte[] block) throws IOException {
    Path file = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(file)) {
      for (int i = 0; i < RUBBISH_MB; i++) {
        out.write(block);
      }
    }
    return file;
  }

  @Test
  void refusesRubbishUnderAGoodHeadBeforeItsEnd() throws IOException {
    byte[] letters = new byte[1 << 20];
    Arrays.fill(letters, (byte) 'x');
    for (int i = 60; i < letters.length; i += 61) {
      letters[i] = '\n';
    }
    Path file = rubbish("rows", letters);
    Path headed = folder.resolve("headed");
    try (OutputStream out = Files.newOutputStream(headed)) {
      out.write(bytes("utc_start,ghi_wm2,tair_c\n"));
      Files.copy(file, out);
    }
    assertTimeoutPreemptively(
        Duration.ofSeconds(2),
        () -> assertTrue(refusal(headed).contains("and at least 980 more"), refusal(headed)));
    Arrays.fill(letters, (byte) 'x');
    try (OutputStream out = Files.newOutputStream(headed)) {
      out.write(bytes("utc_start,ghi_wm2,tair_c\n"));
      out.write(letters);
    }
    assertTrue(refusal(headed).startsWith("given.csv:2:1  a line longer than 65536 characters"));
  }
}
