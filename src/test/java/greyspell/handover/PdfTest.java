package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
      assertTrue(text(document, 2, 2).contains(handed.words.say("technical.title")));
      var box = document.getPage(0).getMediaBox();
      assertEquals(Paper.LETTER.widthMm(), box.getWidth() / POINTS_PER_MM, 0.2);
      assertEquals(Paper.LETTER.heightMm(), box.getHeight() / POINTS_PER_MM, 0.2);
    }
  }

  @Test
  void theClientsPartIsOnePageInTheOrderInWhichPeopleAsk() throws IOException {
    HandedOver handed = HandedOver.english();
    try (var document = open()) {
      String first = text(document, 1, 1);
      int at = 0;
      for (String key :
          List.of(
              "running_out",
              "sun_and_need",
              "worst",
              "causes",
              "remedies",
              "free",
              "unsure",
              "next")) {
        int found = first.indexOf(handed.words.say("client." + key), at);
        assertTrue(found > at, key + ": " + first);
        at = found;
      }
      assertTrue(first.contains(handed.words.say("client.words")), first);
      assertTrue(text(document, 2, 2).contains(handed.words.say("technical.title")));
    }
  }

  /** A head whose rows stand on the next page is read as an empty table. */
  @Test
  void noPageEndsWithATablesHead() throws IOException {
    noPageEndsWithAHead(HandedOver.english(), Paper.A4);
    noPageEndsWithAHead(HandedOver.german(), Paper.A4);
    noPageEndsWithAHead(HandedOver.german(), Paper.LETTER);
  }

  private static void noPageEndsWithAHead(HandedOver handed, Paper paper) throws IOException {
    var heads = new ArrayList<String>();
    for (Block block : handed.pages.technical()) {
      if (block instanceof Block.Table table) {
        heads.add(String.join("", table.head()).replaceAll("[\\s\u00a0]+", ""));
      }
    }
    assertTrue(heads.size() > 10);
    String foot = handed.words.say("figure.sheet", handed.result.scenario().name());
    try (var document = Loader.loadPDF(Pdf.of(handed.pages, handed.words, paper))) {
      for (int page = 2; page <= document.getNumberOfPages(); page++) {
        String text = text(document, page, page).replaceAll("[\\s\u00a0]+", "");
        String body = text.replace(foot.replaceAll("[\\s\u00a0]+", ""), "");
        body = body.replaceAll(page + "/" + document.getNumberOfPages() + "$", "");
        for (String head : heads) {
          assertFalse(body.endsWith(head), "page " + page + " ends with " + head);
        }
      }
    }
  }

  @Test
  void lettersAreNeverSmallerThanAsSaid() {
    Fit.TRIED.forEach(fit -> assertTrue(fit.sizePt() >= Fit.LEAST_PT, fit.toString()));
  }

  @Test
  void whatFitsOnePageTakesTheLargestLettersAndWhatDoesNotGoesOverTwo() {
    HandedOver handed = HandedOver.english();
    assertEquals(Fit.TRIED.get(0), Pdf.fit(handed.pages, handed.words, Paper.A4));
    var more = new ArrayList<Block>(handed.pages.client());
    more.addAll(2, handed.pages.client().subList(2, handed.pages.client().size() - 1));
    var longer = new Pages("longer", "longer", more, List.of());
    assertEquals(Fit.TRIED.get(Fit.TRIED.size() - 1), Pdf.fit(longer, handed.words, Paper.A4));
  }

  @Test
  void textCanBeSelectedAlsoWithinPictures() throws IOException {
    try (var document = open()) {
      String text = text(document, 1, 1);
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
