package greyspell.sweep;

import greyspell.electrical.Finding.Severity;
import greyspell.study.VariantFigures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One run of a sweep.
 *
 * @param run its number, from 0
 * @param values of the keys varied, as they were asked for
 * @param figures null if the run was refused
 * @param strings the worst finding about the strings as built, null as above
 * @param checks the worst of all electrical findings, null as above
 * @param fault why it was refused, in one line; empty if it was not
 */
public record SweepRow(
    int run,
    String home,
    String file,
    List<String> values,
    @Nullable VariantFigures figures,
    @Nullable Severity strings,
    @Nullable Severity checks,
    String fault) {
  public SweepRow {
    values = List.copyOf(values);
  }
}
