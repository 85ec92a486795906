package greyspell.report;

import greyspell.chart.SampleStudy;
import java.nio.file.Path;

/** Writes the sample's weather tables and pictures into a folder, to look at them. */
public final class LookAtWeather {
  private LookAtWeather() {}

  public static void main(String[] args) {
    var weather = new SampleStudy().weather();
    WeatherFiles.write(weather, Path.of(args[0]), true);
    System.out.println(WeatherTables.of(weather).text());
    System.out.println(WeatherTables.of(weather).monthsCsv());
  }
}
