package greyspell.chart;

import greyspell.study.StudyResult;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** The pictures of a run, and the two forms in which they are kept. */
public final class Pictures {
  /** File names of all pictures, whether drawn this time or not. */
  public static final List<String> NAMES =
      List.of("months", "fortnight", "grey-spells", "charge", "sources");

  private Pictures() {}

  /** In the order in which they are read. */
  public static List<Picture> of(StudyResult result) {
    var pictures =
        new ArrayList<Picture>(
            List.of(
                MonthBooksPicture.of(result),
                FortnightPicture.of(result),
                GreySpellPicture.of(result),
                YearChargePicture.of(result)));
    if (SourcesPicture.isNeeded(result)) {
      pictures.add(SourcesPicture.of(result));
    }
    return List.copyOf(pictures);
  }

  /** SVG text; needs no fonts on this machine. */
  public static String svg(Picture picture) {
    return SvgCanvas.write(picture);
  }

  /** Draws on what is 1 unit a picture unit, with the faces of these names. */
  public static void paint(Picture picture, Graphics2D graphics, String face, String boldFace) {
    picture.draw(new RasterCanvas(graphics, face, boldFace));
  }

  /**
   * A PNG file's bytes at twice the size.
   *
   * @throws NoFonts on a machine without any font
   */
  public static byte[] png(Picture picture) {
    try {
      return RasterCanvas.write(picture);
    } catch (Error e) {
      throw NoFonts.explain(e);
    }
  }

  /** This machine has no font that Java can draw with. */
  public static final class NoFonts extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private NoFonts(Throwable cause) {
      super(
          "PNG pictures need a font, and Java finds none on this machine. Install one (on Debian:"
              + " fonts-dejavu-core and fontconfig); the SVG pictures and the page do not need it.",
          cause);
    }

    /**
     * Java reports missing fonts as an Error of several kinds; any other Error goes on as it is.
     */
    static NoFonts explain(Error error) {
      for (Throwable t = error; t != null; t = t.getCause()) {
        String said = String.valueOf(t.getMessage());
        boolean isFonts = said.contains("font") || said.contains("Font");
        if (isFonts && !(t instanceof OutOfMemoryError)) {
          return new NoFonts(error);
        }
      }
      throw error;
    }
  }
}
