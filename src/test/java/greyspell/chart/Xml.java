package greyspell.chart;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Parses our pages and pictures strictly. */
public final class Xml {
  private Xml() {}

  public static Document parse(String text) {
    try {
      var factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      var builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder.parse(new InputSource(new StringReader(text)));
    } catch (Exception e) {
      throw new AssertionError("not well-formed: " + e.getMessage(), e);
    }
  }

  /** The text of every element of this name. */
  public static List<String> texts(Document document, String element) {
    var texts = new ArrayList<String>();
    var nodes = document.getElementsByTagName(element);
    for (int k = 0; k < nodes.getLength(); k++) {
      texts.add(nodes.item(k).getTextContent());
    }
    return texts;
  }
}
