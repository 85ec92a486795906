package greyspell.handover;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A real browser without a screen, asked to keep to itself; tests skip where there is none. */
final class Browser {
  private static final String MISSING =
      "no chromium and chromedriver on this machine (on Debian: apt-get install chromium"
          + " chromium-driver); pages were not tried in a browser";

  private Browser() {}

  static ChromeDriver open() {
    Path browser = find("chromium", "chromium-browser");
    Path driver = find("chromedriver");
    if (browser == null || driver == null) {
      Assumptions.abort(MISSING);
    }
    var options = new ChromeOptions();
    options.setBinary(String.valueOf(browser));
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-default-apps",
        "--disable-sync",
        "--no-first-run",
        "--window-size=1000,1200");
    var log = new LoggingPreferences();
    log.enable(LogType.BROWSER, Level.ALL);
    log.enable(LogType.PERFORMANCE, Level.ALL);
    options.setCapability("goog:loggingPrefs", log);
    var service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new File(String.valueOf(driver)))
            .build();
    var chrome = new ChromeDriver(service, options);
    chrome.manage().timeouts().scriptTimeout(Duration.ofMinutes(2));
    return chrome;
  }

  private static @Nullable Path find(String... names) {
    return Stream.of(names)
        .flatMap(
            name ->
                Stream.of(String.valueOf(System.getenv("PATH")).split(File.pathSeparator, -1))
                    .map(dir -> Path.of(dir, name)))
        .filter(Files::isExecutable)
        .findFirst()
        .orElse(null);
  }

  static void width(ChromeDriver chrome, int width) {
    chrome.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
  }

  /**
   * @param media "screen" or "print"
   * @param scheme "light" or "dark"
   */
  static void media(ChromeDriver chrome, String media, String scheme) {
    chrome.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            media,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }
}
