package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PdfTest {
  private static final int MOST_BYTES = 2_000_000;
  private static final double POINTS_PER_MM = 72.0 / 25.4;

  private static PDDocument open() throws IOException {
    return Loader.loadPDF(HandedOver.english().pdf());
  }

  private static String text(PDDocument document, int from, int to) throws IOException {
    var stripper = new PDFTextStripper();
    stripper.setStartPage(from);
    stripper.setEndPage(to);
    return stripper.getText(document).replaceAll("\\s+", " ");
  }

  @Test
  void isSmallAndOnA4() throws IOException {
    assertTrue(HandedOver.english().pdf().length < MOST_BYTES);
    try (var document = open()) {
      for (PDPage page : document.getPages()) {
        assertEquals(Paper.A4.widthMm(), page.getMediaBox().getWidth() / POINTS_PER_MM, 0.2);
        assertEquals(Paper.A4.heightMm(), page.getMediaBox().getHeight() / POINTS_PER_MM, 0.2);
      }
    }
  }

  @Test
  void letterIsLetter() throws IOException {
    HandedOver handed = HandedOver.english();
    try (var document = Loader.loadPDF(Pdf.of(handed.pages, handed.words, Paper.LETTER))) {
      assertTrue(text(document, 3, 3).contains(handed.words.say("technical.title")));
      var box = document.getPage(0).getMediaBox();
      assertEquals(Paper.LETTER.widthMm(), box.getWidth() / POINTS_PER_MM, 0.2);
      assertEquals(Paper.LETTER.heightMm(), box.getHeight() / POINTS_PER_MM, 0.2);
    }
  }

  @Test
  void theClientsPartFitsTwoSheets() throws IOException {
    String title = HandedOver.english().words.say("technical.title");
    try (var document = open()) {
      assertTrue(text(document, 2, 2).contains(HandedOver.english().words.say("client.next")));
      assertTrue(text(document, 3, 3).contains(title), text(document, 3, 3));
    }
  }

  @Test
  void textCanBeSelectedAlsoWithinPictures() throws IOException {
    try (var document = open()) {
      String text = text(document, 1, 2);
      assertTrue(text.contains("Alder Fold: will the lights stay on?"), text);
      assertTrue(text.contains(HandedOver.english().words.say("picture.sun_left")), text);
    }
  }

  @Test
  void allFacesAreEmbedded() throws IOException {
    var names = new TreeSet<String>();
    try (var document = open()) {
      for (PDPage page : document.getPages()) {
        faces(page.getResources(), names);
      }
    }
    assertTrue(names.size() >= 2, names.toString());
  }

  private static void faces(PDResources resources, Set<String> names) throws IOException {
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      assertTrue(font.isEmbedded(), font.getName());
      names.add(font.getName());
    }
    for (COSName name : resources.getXObjectNames()) {
      PDXObject object = resources.getXObject(name);
      if (object instanceof PDFormXObject form && form.getResources() != null) {
        faces(form.getResources(), names);
      }
    }
  }
}
