/**
 * Pages, tables and files.
 *
 * <p>Comes in: a {@code StudyResult}, or a {@code WeatherSeries}. Goes out: the verdict ({@link
 * greyspell.report.Verdict}), one screen of text ({@link greyspell.report.Summary}), and the files
 * of a run ({@link greyspell.report.ReportFiles}) and of a weather inspection ({@link
 * greyspell.report.WeatherFiles}). May use: study and below.
 *
 * <p>docs/results.md defines every key and column; BooksTest holds that it does. Files take their
 * names only when all are complete ({@code Deliver}). The page's template is
 * src/main/jte/report.jte, filled from {@link greyspell.report.Page} by {@code PageMaker}. The
 * table library is seen only by {@link greyspell.report.WeatherTables}.
 *
 * <p>Read first: {@code ReportFiles}, then {@code PageMaker}. Units: Wh inside, kWh and % outside.
 */
@NullMarked
package greyspell.report;

import org.jspecify.annotations.NullMarked;
