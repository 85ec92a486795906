package greyspell.handover;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
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

  private Pdf() {}

  /** Loads what is needed by setting one word. */
  static void prepare() {
    set(
        "<html><head><title>-</title></head><body><table><tr><td>W</td></tr></table></body></html>",
        new Pages("", "", List.of(), List.of()));
  }

  /** The file's bytes. */
  static byte[] of(Pages pages, Words words, Paper paper) {
    return set(PageText.paper(pages, words, paper), pages);
  }

  private static byte[] set(String html, Pages pages) {
    XRLog.setLoggingEnabled(false);
    var out = new ByteArrayOutputStream(400_000);
    var builder = new PdfRendererBuilder();
    try (var document = new PDDocument()) {
      PDFont plain = face(document, "DejaVuSans.ttf"), bold = face(document, "DejaVuSans-Bold.ttf");
      builder.usePDDocument(document);
      builder.withHtmlContent(html, null);
      builder.useFont(new PDFontSupplier(plain), PLAIN, 400, FontStyle.NORMAL, true);
      builder.useFont(new PDFontSupplier(bold), PLAIN, 700, FontStyle.NORMAL, true);
      builder.withProducer("greyspell");
      builder.useObjectDrawerFactory(new Drawers(pages, plain, bold));
      builder.toStream(out);
      builder.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** Without ligatures: who searches the text for "off" types two letters f. */
  private static PDFont face(PDDocument document, String file) throws IOException {
    TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(Resource.open(file)));
    face.setEnableGsub(false);
    return PDType0Font.load(document, face, true);
  }

  /** Style of a picture's place. */
  static String placeOf(Picture picture, Paper paper) {
    double wideMm = paper.pictureMm();
    double highMm = wideMm * picture.height() / Pictures.width();
    return "width:" + wideMm + "mm;height:" + highMm + "mm";
  }

  /** Draws the picture of an object's name in its place. */
  private static final class Drawers implements FSObjectDrawerFactory, FSObjectDrawer {
    private final Map<String, Picture> pictures = new HashMap<>();
    private final PdfBoxGraphics2DFontTextDrawer faces = new PdfBoxGraphics2DFontTextDrawer();

    Drawers(Pages pages, PDFont plain, PDFont bold) {
      Stream.concat(pages.client().stream(), pages.technical().stream())
          .filter(Figure.class::isInstance)
          .map(block -> ((Figure) block).picture())
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
      double scale = width / Pictures.width();
      graphics.scale(scale, scale);
      Pictures.paint(picture, graphics, PLAIN, BOLD);
    }
  }
}
