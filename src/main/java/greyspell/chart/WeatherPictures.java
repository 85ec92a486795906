package greyspell.chart;

import greyspell.calendar.HourCalendar;
import greyspell.weather.WeatherSeries;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.CategorySeries.CategorySeriesRenderStyle;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.internal.chartpart.Chart;
import org.knowm.xchart.internal.series.AxesChartSeries;
import org.knowm.xchart.internal.series.MarkerSeries;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler.LegendLayout;
import org.knowm.xchart.style.Styler.LegendPosition;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.None;

/** Quick looks at a weather file, as PNG. */
public final class WeatherPictures {
  private static final int WIDTH = (int) Look.WIDTH;
  private static final int HEIGHT = 400;
  private static final int SCALE = 2;
  private static final int MOST_YEARS = 4;
  private static final int[] SHADES = {Look.HOUSE, Look.ALWAYS_ON, Look.SUN, Look.LOSSES};

  private final WeatherDays days;
  private final HourCalendar calendar;

  private WeatherPictures(WeatherDays days) {
    this.days = days;
    calendar = days.calendar();
  }

  /** A finished picture. */
  public static final class Drawn {
    private final String name;
    private final String title;
    private final byte[] png;

    private Drawn(String name, String title, byte[] png) {
      this.name = name;
      this.title = title;
      this.png = png;
    }

    /** File name without ending. */
    public String name() {
      return name;
    }

    public String title() {
      return title;
    }

    /** A PNG file's bytes. */
    public byte[] png() {
      return png.clone();
    }
  }

  /**
   * Sun by month and year, sun by day, temperature by month.
   *
   * @throws Pictures.NoFonts on a machine without any font
   */
  public static List<Drawn> draw(WeatherSeries weather) {
    try {
      var pictures = new WeatherPictures(WeatherDays.of(weather));
      return List.of(pictures.byMonth(), pictures.byDay(), pictures.temperature());
    } catch (Error e) {
      throw Pictures.NoFonts.explain(e);
    }
  }

  private String quantity() {
    return days.hasSun() ? "sun on level ground" : "cloud cover";
  }

  private String unit() {
    return days.hasSun() ? "kWh/m² a day" : "% of the sky";
  }

  private Drawn byMonth() {
    double[][] mean = monthByYear();
    int dullest = 0;
    int brightest = 0;
    var all = new double[12];
    for (int m = 0; m < 12; m++) {
      for (double[] year : mean) {
        all[m] += year[m] / mean.length;
      }
      dullest = all[m] < all[dullest] ? m : dullest;
      brightest = all[m] > all[brightest] ? m : brightest;
    }
    String title =
        Say.month(dullest + 1)
            + " has "
            + Say.number(all[dullest], 1)
            + " and "
            + Say.month(brightest + 1)
            + " "
            + Say.number(all[brightest], 1)
            + " "
            + unit()
            + " of "
            + quantity();
    CategoryChart chart = byMonths(title, unit());
    chart.getStyler().setAvailableSpaceFill(0.8);
    double most = 0.0;
    for (double[] year : mean) {
      most = Math.max(most, Arrays.stream(year).max().orElse(0.0));
    }
    chart.getStyler().setYAxisMax(most * 1.06);
    if (mean.length <= MOST_YEARS) {
      for (int y = 0; y < mean.length; y++) {
        String name =
            calendar.isTypical() ? "typical year" : Integer.toString(calendar.firstYear() + y);
        bars(chart, name, mean[y], SHADES[y]);
      }
    } else {
      bars(chart, "dullest year of each month", each(mean, true), Look.HOUSE);
      bars(chart, "mean", all, Look.ALWAYS_ON);
      bars(chart, "brightest year of each month", each(mean, false), Look.SUN);
    }
    return drawn("weather-months", title, chart);
  }

  private static void bars(CategoryChart chart, String name, double[] values, int colour) {
    chart.addSeries(name, monthNames(), list(values)).setFillColor(new Color(colour));
  }

  private static double[] each(double[][] mean, boolean isLowest) {
    var found = mean[0].clone();
    for (double[] year : mean) {
      for (int m = 0; m < 12; m++) {
        found[m] = isLowest ? Math.min(found[m], year[m]) : Math.max(found[m], year[m]);
      }
    }
    return found;
  }

  private double[][] monthByYear() {
    var sum = new double[calendar.years()][12];
    var count = new int[calendar.years()][12];
    for (int day = 0; day < days.days(); day++) {
      int y = calendar.year(day * 24) - calendar.firstYear();
      int m = calendar.month(day * 24) - 1;
      sum[y][m] += days.sky(day);
      count[y][m]++;
    }
    for (int y = 0; y < sum.length; y++) {
      for (int m = 0; m < 12; m++) {
        sum[y][m] /= count[y][m];
      }
    }
    return sum;
  }

  private Drawn byDay() {
    int most = Math.min(days.days(), 366);
    int from = days.days() - most;
    if (calendar.dayOfYear(from * 24) != 1) {
      from = calendar.firstHourOfYear(calendar.years() - 1) / 24;
      most = days.days() - from;
    }
    var x = new ArrayList<Date>();
    var y = new double[most];
    int under = 0;
    double mean = 0.0;
    for (int k = 0; k < most; k++) {
      x.add(noon((from + k) * 24));
      y[k] = days.sky(from + k);
      mean += y[k] / most;
    }
    for (double value : y) {
      under += value < mean * 0.5 ? 1 : 0;
    }
    String year =
        calendar.isTypical()
            ? "the typical year"
            : Integer.toString(calendar.firstYear() + calendar.years() - 1);
    String title =
        "In "
            + year
            + " "
            + Say.count(under, "day", "days")
            + " had less than half the mean "
            + quantity()
            + " of "
            + Say.number(mean, 1)
            + " "
            + unit();
    XYChart chart =
        new XYChartBuilder().width(WIDTH).height(HEIGHT).title(title).yAxisTitle(unit()).build();
    style(chart.getStyler());
    chart.getStyler().setTimezone(TimeZone.getTimeZone(ZoneOffset.UTC));
    chart.getStyler().setDatePattern("d MMM");
    chart.getStyler().setYAxisMin(0.0);
    chart.getStyler().setYAxisMax(Arrays.stream(y).max().orElse(1.0) * 1.06);
    line(chart.addSeries(quantity() + ", day by day", x, list(y)), Look.SUN_EDGE, 1.2f, false);
    line(
        chart.addSeries(
            "mean of the year", List.of(x.get(0), x.get(most - 1)), List.of(mean, mean)),
        Look.HOUSE,
        1.8f,
        true);
    return drawn("weather-days", title, chart);
  }

  private Date noon(int hour) {
    return Date.from(calendar.start(hour).plusHours(12).toInstant(ZoneOffset.UTC));
  }

  private Drawn temperature() {
    var sumLow = new double[12];
    var sumMean = new double[12];
    var sumHigh = new double[12];
    var coldest = new double[12];
    var warmest = new double[12];
    Arrays.fill(coldest, Double.MAX_VALUE);
    Arrays.fill(warmest, -Double.MAX_VALUE);
    var count = new int[12];
    int coldestDay = 0;
    for (int day = 0; day < days.days(); day++) {
      int m = calendar.month(day * 24) - 1;
      sumLow[m] += days.coldestC(day);
      sumMean[m] += days.meanC(day);
      sumHigh[m] += days.warmestC(day);
      coldest[m] = Math.min(coldest[m], days.coldestC(day));
      warmest[m] = Math.max(warmest[m], days.warmestC(day));
      count[m]++;
      coldestDay = days.coldestC(day) < days.coldestC(coldestDay) ? day : coldestDay;
    }
    for (int m = 0; m < 12; m++) {
      sumLow[m] /= count[m];
      sumMean[m] /= count[m];
      sumHigh[m] /= count[m];
    }
    String title =
        "The coldest hour, "
            + Say.number(days.coldestC(coldestDay), 0)
            + " °C, came on "
            + Say.date(calendar, coldestDay * 24);
    CategoryChart chart = byMonths(title, "°C");
    chart.getStyler().setDefaultSeriesRenderStyle(CategorySeriesRenderStyle.Line);
    chart.getStyler().setOverlapped(true);
    line(chart.addSeries("warmest hour", monthNames(), list(warmest)), Look.UNMET, 1.4f, true);
    line(
        chart.addSeries("mean daily high", monthNames(), list(sumHigh)),
        Look.SUN_EDGE,
        1.8f,
        false);
    line(chart.addSeries("mean", monthNames(), list(sumMean)), Look.INK, 2.6f, false);
    line(
        chart.addSeries("mean daily low", monthNames(), list(sumLow)), Look.ALWAYS_ON, 1.8f, false);
    line(chart.addSeries("coldest hour", monthNames(), list(coldest)), Look.HOUSE, 1.4f, true);
    return drawn("weather-temperature", title, chart);
  }

  private static CategoryChart byMonths(String title, String unit) {
    CategoryChart chart =
        new CategoryChartBuilder()
            .width(WIDTH)
            .height(HEIGHT)
            .title(title)
            .yAxisTitle(unit)
            .build();
    style(chart.getStyler());
    return chart;
  }

  private static List<String> monthNames() {
    var names = new ArrayList<String>();
    for (int m = 1; m <= 12; m++) {
      names.add(Say.shortMonth(m));
    }
    return names;
  }

  private static List<Double> list(double[] values) {
    return Arrays.stream(values).boxed().toList();
  }

  private static void line(AxesChartSeries series, int colour, float width, boolean isDashed) {
    series.setLineColor(new Color(colour));
    series.setLineStyle(
        isDashed
            ? new BasicStroke(
                width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, new float[] {5f, 3f}, 0f)
            : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    if (series instanceof MarkerSeries marked) {
      marked.setMarker(new None());
    }
  }

  private static void style(AxesChartStyler styler) {
    var plain = new Font(Font.SANS_SERIF, Font.PLAIN, (int) Look.TICK);
    styler.setLocale(Locale.ENGLISH);
    styler.setBaseFont(plain);
    styler.setChartBackgroundColor(new Color(Look.PAPER));
    styler.setPlotBackgroundColor(new Color(Look.PAPER));
    styler.setPlotBorderVisible(false);
    styler.setPlotGridVerticalLinesVisible(false);
    styler.setPlotGridLinesColor(new Color(Look.GRID));
    styler.setPlotGridLinesStroke(new BasicStroke(1f));
    styler.setChartTitleFont(new Font(Font.SANS_SERIF, Font.BOLD, (int) Look.TITLE - 2));
    styler.setChartTitleBoxVisible(false);
    styler.setChartFontColor(new Color(Look.INK));
    styler.setAxisTickLabelsFont(plain);
    styler.setAxisTickLabelsColor(new Color(Look.FAINT_INK));
    styler.setAxisTitleFont(plain);
    styler.setAxisTickMarksColor(new Color(Look.AXIS));
    styler.setLegendFont(plain);
    styler.setSeriesMarkers(new Marker[] {new None()});
    styler.setLegendBorderColor(new Color(Look.PAPER));
    styler.setLegendPosition(LegendPosition.OutsideS);
    styler.setLegendLayout(LegendLayout.Horizontal);
    styler.setXAxisMaxLabelCount(12);
    styler.setPlotContentSize(0.99);
    styler.setChartPadding((int) Look.MARGIN);
  }

  private static Drawn drawn(String name, String title, Chart<?, ?> chart) {
    var image = new BufferedImage(WIDTH * SCALE, HEIGHT * SCALE, BufferedImage.TYPE_INT_RGB);
    var graphics = image.createGraphics();
    try {
      graphics.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      graphics.scale(SCALE, SCALE);
      chart.paint(graphics, WIDTH, HEIGHT);
    } finally {
      graphics.dispose();
    }
    int[] rgb = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    return new Drawn(name, title, Png.encode(WIDTH * SCALE, HEIGHT * SCALE, rgb));
  }
}
