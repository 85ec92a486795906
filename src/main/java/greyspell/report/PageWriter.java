package greyspell.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import greyspell.study.ElectricalCheck;
import greyspell.study.ManyWinters;
import greyspell.study.StudyResult;
import java.util.List;

/** Fills the page's template. */
final class PageWriter {
  private PageWriter() {}

  static String html(StudyResult result, ElectricalCheck check, List<String> pictures) {
    return html(PageMaker.page(result, check, pictures));
  }

  /** The page of one winter out of many, with what all of them say before it. */
  static String html(
      StudyResult result,
      ElectricalCheck check,
      List<String> pictures,
      ManyWinters many,
      List<String> winterPictures) {
    return html(PageMaker.page(result, check, pictures, many, winterPictures));
  }

  private static String html(Page page) {
    var engine =
        TemplateEngine.createPrecompiled(null, ContentType.Html, null, "greyspell.report.page");
    var out = new StringOutput(200_000);
    engine.render("report.jte", page, out);
    return out.toString();
  }
}
