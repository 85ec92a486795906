package greyspell.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import greyspell.study.ElectricalCheck;
import greyspell.study.StudyResult;
import java.util.List;

/** Fills the page's template. */
final class PageWriter {
  private PageWriter() {}

  static String html(StudyResult result, ElectricalCheck check, List<String> pictures) {
    var engine =
        TemplateEngine.createPrecompiled(null, ContentType.Html, null, "greyspell.report.page");
    var out = new StringOutput(200_000);
    engine.render("report.jte", PageMaker.page(result, check, pictures), out);
    return out.toString();
  }
}
