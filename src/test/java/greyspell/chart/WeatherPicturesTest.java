package greyspell.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.weather.GapReport;
import greyspell.weather.WeatherSeries;
import java.io.ByteArrayInputStream;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class WeatherPicturesTest {
  @Test
  void threePicturesWhoseTitlesStateTheFinding() throws Exception {
    var pictures = WeatherPictures.draw(new SampleStudy().weather());
    assertEquals(3, pictures.size());
    assertTrue(pictures.get(0).title().contains("kWh/m² a day of sun on level ground"));
    assertTrue(pictures.get(1).title().startsWith("In 2023 "));
    assertTrue(pictures.get(2).title().startsWith("The coldest hour, "));
    for (var p : pictures) {
      assertEquals(1520, ImageIO.read(new ByteArrayInputStream(p.png())).getWidth(), p.name());
    }
  }

  @Test
  void manyYearsAndCloudOnlyAreDrawnToo() {
    var sample = new SampleStudy();
    sample.calendar = HourCalendar.of(2010, 9);
    assertEquals(3, WeatherPictures.draw(sample.weather()).size());
    var full = sample.weather();
    var columns = new WeatherSeries.Columns();
    columns.airTemperatureC = full.airTemperatureC();
    columns.cloudShare = new double[full.hours()];
    Arrays.fill(columns.cloudShare, 0.5);
    var cloudy = new WeatherSeries(full.calendar(), full.source(), GapReport.NONE, columns);
    assertTrue(WeatherPictures.draw(cloudy).get(0).title().contains("50.0 % of the sky"));
  }
}
