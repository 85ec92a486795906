package greyspell.handover;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.util.XRLog;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import greyspell.chart.Picture;
import greyspell.chart.Pictures;
import greyspell.handover.Block.Figure;
import greyspell.words.Words;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * Sets the pages on paper. Text stays text, also within the pictures; the faces are shipped with
 * the program and embedded. The libraries for it are loaded here and nowhere else.
 */
final class Pdf {
  /** Type of an object that stands where a picture goes. */
  static final String PICTURE = "picture/greyspell";

  private static final String PLAIN = "DejaVu Sans";
  private static final String BOLD = "DejaVu Sans Bold";

  private final Pages pages;

  private Pdf(Pages pages) {
    this.pages = pages;
  }

  /** Loads what is needed by setting one word. */
  static void prepare() {
    new Pdf(new Pages("", "", List.of(), List.of()))
        .set(
            "<html><head><title>-</title></head>"
                + "<body><table><tr><td>W</td></tr></table></body></html>");
  }

  /** The file's bytes. */
  static byte[] of(Pages pages, Words words, Paper paper) {
    return new Pdf(pages).set(PageText.paper(pages, words, paper, fit(pages, words, paper)));
  }

  /** The largest letters with which the client's part is one page. */
  static Fit fit(Pages pages, Words words, Paper paper) {
    var client = new Pages(pages.title(), pages.home(), pages.client(), List.of());
    Fit last = Fit.TRIED.get(Fit.TRIED.size() - 1);
    try (var document = new PDDocument()) {
      PDFont plain = face(document, "DejaVuSans.ttf"), bold = face(document, "DejaVuSans-Bold.ttf");
      for (Fit fit : Fit.TRIED) {
        String html = PageText.paper(client, words, paper, fit);
        var builder = new Pdf(client).builder(document, html, plain, bold);
        if (fit == last || sheets(builder) == 1) {
          return fit;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return last;
  }

  /** Number of pages, without painting them. */
  private static int sheets(PdfRendererBuilder builder) throws IOException {
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.layout();
      return renderer.getRootBox().getLayer().getPages().size();
    }
  }

  private byte[] set(String html) {
    var out = new ByteArrayOutputStream(400_000);
    try (var document = new PDDocument()) {
      PDFont plain = face(document, "DejaVuSans.ttf"), bold = face(document, "DejaVuSans-Bold.ttf");
      builder(document, html, plain, bold).toStream(out).run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private PdfRendererBuilder builder(PDDocument document, String html, PDFont plain, PDFont bold) {
    XRLog.setLoggingEnabled(false);
    var builder = new PdfRendererBuilder();
    builder.usePDDocument(document);
    builder.withHtmlContent(html, null);
    builder.useFont(new PDFontSupplier(plain), PLAIN, 400, FontStyle.NORMAL, true);
    builder.useFont(new PDFontSupplier(bold), PLAIN, 700, FontStyle.NORMAL, true);
    builder.withProducer("greyspell");
    builder.useUnicodeLineBreaker(new LineBreaks());
    builder.useObjectDrawerFactory(new Drawers(pages, plain, bold));
    return builder;
  }

  /** Without ligatures: who searches the text for "off" types two letters f. */
  private static PDFont face(PDDocument document, String file) throws IOException {
    TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(Resource.open(file)));
    face.setEnableGsub(false);
    return PDType0Font.load(document, face, true);
  }

  /** Style of a picture's place. */
  static String placeOf(Picture picture, Paper paper, Fit fit) {
    double wideMm = paper.columnMm() * fit.pictureShare();
    double highMm = wideMm * picture.height() / picture.width();
    return "width:" + wideMm + "mm;height:" + highMm + "mm";
  }

  /** Draws the picture of an object's name in its place. */
  private static final class Drawers implements FSObjectDrawerFactory, FSObjectDrawer {
    private final Map<String, Picture> pictures = new HashMap<>();
    private final PdfBoxGraphics2DFontTextDrawer faces = new PdfBoxGraphics2DFontTextDrawer();

    Drawers(Pages pages, PDFont plain, PDFont bold) {
      Stream.concat(pages.client().stream(), pages.technical().stream())
          .filter(Figure.class::isInstance)
          .map(block -> ((Figure) block).pictures().column())
          .forEach(picture -> pictures.put(picture.name(), picture));
      faces.registerFont(PLAIN, plain);
      faces.registerFont(BOLD, bold);
    }

    @Override
    public FSObjectDrawer createDrawer(Element element) {
      return this;
    }

    @Override
    public boolean isReplacedObject(Element element) {
      return element.getNodeName().equals("object");
    }

    @Override
    public @Nullable Map<Shape, String> drawObject(
        Element element,
        double x,
        double y,
        double width,
        double height,
        OutputDevice device,
        RenderingContext context,
        int dotsPerPixel) {
      Picture picture = pictures.get(element.getAttribute("data"));
      if (picture != null) {
        device.drawWithGraphics(
            (float) x,
            (float) y,
            (float) width / dotsPerPixel,
            (float) height / dotsPerPixel,
            graphics -> paint(picture, graphics, width / dotsPerPixel));
      }
      return null;
    }

    private void paint(Picture picture, Graphics2D graphics, double width) {
      if (graphics instanceof PdfBoxGraphics2D pdf) {
        pdf.setFontTextDrawer(faces);
      }
      double scale = width / picture.width();
      graphics.scale(scale, scale);
      Pictures.paint(picture, graphics, PLAIN, BOLD);
    }
  }
}
