package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import greyspell.report.ReportFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;

/** The page as it stands in a real browser. */
class BrowserTest {
  private static @Nullable ChromeDriver opened;

  @BeforeAll
  static void openOnce() {
    opened = Browser.open();
  }

  @AfterAll
  static void close() {
    if (opened != null) {
      opened.quit();
    }
  }

  @BeforeEach
  void load() {
    Browser.width(chrome(), 1000);
    Browser.media(chrome(), "screen", "light");
    chrome().get(address());
  }

  private static ChromeDriver chrome() {
    return Objects.requireNonNull(opened);
  }

  private static HandedOver handed() {
    return HandedOver.english();
  }

  private static String address() {
    return handed().dir.resolve(Handover.PAGE).toUri().toString();
  }

  private static JsonNode results() throws IOException {
    return new ObjectMapper().readTree(handed().dir.resolve(ReportFiles.RESULTS).toFile());
  }

  // ---- keeps to itself

  @Test
  void nothingIsAskedOfTheNetworkAndNothingFails() {
    chrome().manage().logs().get("performance");
    chrome().manage().logs().get("browser");
    chrome().get(address());
    for (LogEntry entry : chrome().manage().logs().get("performance")) {
      String message = entry.getMessage();
      if (message.contains("\"Network.requestWillBeSent\"")) {
        assertTrue(message.contains("\"url\":\"file:"), message);
      }
    }
    var said = new ArrayList<String>();
    for (LogEntry entry : chrome().manage().logs().get("browser")) {
      said.add(entry.getMessage());
    }
    assertEquals(List.of(), said);
    Object loaded =
        chrome().executeScript("return performance.getEntriesByType('resource').length");
    assertEquals(0L, loaded);
  }

  // ---- sliders

  private String answer(int k) {
    return chrome().findElement(By.id("play-answer-" + k)).getText();
  }

  @Test
  void slidersStartAtTheHomeAsItStandsWhichIsWhatResultsJsonTells() throws IOException {
    JsonNode total = results().get("total");
    double years = handed().result.ledger().forcing().calendar().years();
    assertEquals(handed().words.number(total.get("unmet_hours").asDouble() / years, 0), answer(0));
    assertEquals(
        handed().words.energy(total.get("unmet_kwh").asDouble() * 1000.0 / years), answer(1));
  }

  @Test
  void slidersAnswerAtOnceByKeyboardAndGoBack() {
    String before = answer(0);
    WebElement banks = chrome().findElement(By.id("play-banks"));
    for (int k = 0; k < 8; k++) {
      banks.sendKeys(Keys.ARROW_RIGHT);
    }
    String after = answer(0);
    assertTrue(number(after) < number(before), before + " to " + after);
    assertFalse(String.valueOf(banks.getDomAttribute("aria-valuetext")).isEmpty());
    chrome().findElement(By.id("play-reset")).click();
    assertEquals(before, answer(0));
  }

  private static double number(String shown) {
    return Double.parseDouble(shown.replaceAll("[^0-9.]", ""));
  }

  @Test
  void withoutScriptsTheTableStands() {
    chrome().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      chrome().get(address());
      assertFalse(chrome().findElement(By.id("play")).isDisplayed());
      assertFalse(
          chrome().findElements(By.cssSelector("#play + details table tr.marked")).isEmpty());
    } finally {
      chrome().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  // ---- figures

  @Test
  void theYearIsThatOfResultsJsonAndMonthsThoseOfMonthsCsv() throws IOException {
    double years = handed().result.ledger().forcing().calendar().years();
    JsonNode total = results().get("total");
    assertEquals(kwh(total.get("served_kwh").asDouble() / years), booked(13, 3));
    assertEquals(kwh(total.get("curtailed_kwh").asDouble() / years), booked(13, 1));
    List<String> lines = Files.readAllLines(handed().dir.resolve(ReportFiles.MONTHS));
    for (int month = 1; month <= 12; month++) {
      double served = 0.0, unmet = 0.0;
      for (String line : lines.subList(1, lines.size())) {
        String[] cells = line.split(",", -1);
        if (Integer.parseInt(cells[0].substring(5)) == month) {
          served += Double.parseDouble(cells[3]);
          unmet += Double.parseDouble(cells[4]);
        }
      }
      assertEquals(kwh(served / years), booked(month, 3));
      assertEquals(kwh(unmet / years), booked(month, 6));
    }
  }

  private static String kwh(double kwh) {
    return handed().words.number(kwh, 1);
  }

  /** A figure of the books by month, the first column being the month's name. */
  private String booked(int row, int column) {
    String cells = "h2#books + div tbody tr:nth-child(" + row + ") td";
    return chrome().findElements(By.cssSelector(cells)).get(column).getText();
  }

  @Test
  void everyPictureHasATitleADescriptionAndATable() {
    List<WebElement> figures = chrome().findElements(By.tagName("figure"));
    assertTrue(figures.size() >= 3);
    for (WebElement figure : figures) {
      assertEquals(2, figure.findElements(By.cssSelector("svg[role=img] > title")).size());
      assertEquals(2, figure.findElements(By.cssSelector("svg[role=img] > desc")).size());
      assertEquals(1, shown(figure));
      assertTrue(figure.findElements(By.cssSelector("details table tbody tr")).size() >= 4);
    }
  }

  private static long shown(WebElement figure) {
    return figure.findElements(By.tagName("svg")).stream().filter(WebElement::isDisplayed).count();
  }

  // ---- widths

  private void fits() {
    Object over =
        chrome()
            .executeScript(
                "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
    assertTrue(over instanceof Long px && px <= 0L, "too wide by " + over + " px");
  }

  @Test
  void nothingSticksOutOnAPhone() {
    Browser.width(chrome(), 360);
    fits();
    for (WebElement figure : chrome().findElements(By.tagName("figure"))) {
      assertEquals(1, shown(figure));
      WebElement column = figure.findElement(By.cssSelector(".narrow svg"));
      assertTrue(column.isDisplayed());
      assertTrue(column.getRect().getWidth() <= 360, "the picture is as wide as the phone");
    }
  }

  @Test
  void nothingSticksOutOnPaper() {
    // A4 less the margins of the style sheet, 182 mm at 96 to the inch
    Browser.width(chrome(), 688);
    Browser.media(chrome(), "print", "light");
    fits();
    Object over =
        chrome()
            .executeScript(
                "return Array.from(document.querySelectorAll('.scroll'))"
                    + ".filter(e => e.offsetParent && e.scrollWidth > e.clientWidth + 1)"
                    + ".map(e => e.getAttribute('aria-label') + ' ' + e.scrollWidth)");
    assertEquals(List.of(), over);
  }

  @Test
  void paperIsWhiteAlsoWhereTheScreenIsDark() {
    Browser.media(chrome(), "print", "dark");
    assertEquals(
        "rgb(255, 255, 255)",
        chrome().executeScript("return getComputedStyle(document.body).backgroundColor"));
  }

  // ---- for everyone

  private void audit() throws IOException {
    try (var in =
        BrowserTest.class.getResourceAsStream(
            "/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js")) {
      chrome()
          .executeScript(
              new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8));
    }
    Object found =
        chrome()
            .executeAsyncScript(
                "const done = arguments[arguments.length - 1];"
                    + "axe.run().then(r => done(r.violations"
                    + ".filter(v => v.impact === 'serious' || v.impact === 'critical')"
                    + ".map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.html).join(' | '))))");
    assertEquals(List.of(), found);
  }

  @Test
  void theAuditFindsNothingSerious() throws IOException {
    audit();
  }

  @Test
  void norInTheDarkOnAPhone() throws IOException {
    Browser.media(chrome(), "screen", "dark");
    Browser.width(chrome(), 360);
    audit();
    Object ground =
        chrome().executeScript("return getComputedStyle(document.body).backgroundColor");
    assertEquals("rgb(22, 29, 34)", ground);
    Object ink =
        chrome().executeScript("return getComputedStyle(document.querySelector('svg text')).fill");
    assertEquals("rgb(230, 235, 238)", ink);
  }
}
