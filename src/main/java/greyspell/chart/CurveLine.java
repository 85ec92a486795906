package greyspell.chart;

import greyspell.array.CurveTrace;

/**
 * One line of a {@link CurvePicture}.
 *
 * @param name short, as it stands beside the line
 */
record CurveLine(String name, CurveTrace trace) {}
