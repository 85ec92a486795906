package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Every book of {@link FullLoop} against its slow, obvious form, hour by hour. */
class FullLoopEqualsPlainTest {
  private static final double ONE_MICRO_WH = 1e-6;
  private static final double ONE_NANO_V = 1e-9;
  private static final int DAYS = 20;

  /** Given to both, or worked out by neither. */
  private static final Set<LedgerColumn> GIVEN =
      EnumSet.of(
          LedgerColumn.SOLAR_NOMINAL,
          LedgerColumn.SOLAR_AVAILABLE,
          LedgerColumn.CLIPPED,
          LedgerColumn.OTHER_AVAILABLE,
          LedgerColumn.AC_ASKED,
          LedgerColumn.DC_ASKED);

  @Property(tries = 200)
  void allBooksAgree(@ForAll long seed) {
    Forcing forcing = Houses.randomFull(seed, DAYS);
    Design design = Houses.randomFullDesign(seed, forcing.hours());
    double startWh = 0.6 * design.bank().windowWh();
    var fast = new Ledger(forcing, design.bank().windowWh(), true);
    FullLoop.run(forcing, design, startWh, fast);
    var plain = new PlainFullBalance(forcing, design, startWh);
    for (int h = 0; h < forcing.hours(); h++) {
      plain.hour(h);
      int hour = h;
      plain.books.forEach(
          (column, wh) -> {
            double got = column(column).of(fast)[hour];
            assertEquals(
                wh, got, ONE_MICRO_WH, () -> "hour " + hour + ", " + column + ": " + design);
          });
      assertEquals(plain.bankV, fast.bankV()[h], ONE_NANO_V, () -> "bank voltage, hour " + hour);
      assertEquals(plain.isGeneratorOn, fast.isGeneratorOn(h), () -> "generator, hour " + hour);
      plain.goOnFrom(fast.chargeWh()[h]);
    }
  }

  /** Else the law above would compare zeros, or leave a book out. */
  @Test
  void everyBookIsComparedAndUsed() {
    var used = EnumSet.noneOf(LedgerColumn.class);
    for (long seed = 0; seed < 60; seed++) {
      Forcing forcing = Houses.randomFull(seed, DAYS);
      Design design = Houses.randomFullDesign(seed, forcing.hours());
      var plain = new PlainFullBalance(forcing, design, 0.0);
      for (int h = 0; h < forcing.hours(); h++) {
        plain.hour(h);
        plain.books.forEach(
            (column, wh) -> {
              if (wh > 0.01) {
                used.add(column(column));
              }
            });
      }
    }
    assertEquals(EnumSet.complementOf(EnumSet.copyOf(GIVEN)), used);
  }

  /** Else the law would leave out ways through the hour that no book shows. */
  @Test
  void everyWayThroughTheHourIsTaken() {
    var happened = EnumSet.noneOf(PlainFullBalance.Happening.class);
    for (long seed = 0; seed < 60; seed++) {
      Forcing forcing = Houses.randomFull(seed, DAYS);
      Design design = Houses.randomFullDesign(seed, forcing.hours());
      var plain = new PlainFullBalance(forcing, design, 0.6 * design.bank().windowWh());
      for (int h = 0; h < forcing.hours(); h++) {
        plain.hour(h);
      }
      happened.addAll(plain.happened);
    }
    assertEquals(EnumSet.allOf(PlainFullBalance.Happening.class), happened);
  }

  private static LedgerColumn column(String name) {
    return LedgerColumn.valueOf(name.toUpperCase(Locale.ROOT));
  }
}
