package greyspell.calendar;

import greyspell.quantity.Fault;
import greyspell.quantity.Place;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line {@code # utc_offset: 1} above a log's header, held against the clock on which its local
 * times are read: the site's.
 */
public final class SiteClock {
  private final double utcOffsetH;
  private @Nullable Fault other;

  /** A clock so many hours ahead of UTC. */
  public SiteClock(double utcOffsetH) {
    this.utcOffsetH = utcOffsetH;
  }

  /** Looks at a remark above the header; what cannot be read is a fault at once. */
  public void remark(String line, String file, int number, List<Fault> faults) {
    UtcOffset.Stated stated = UtcOffset.stated(line);
    if (stated == null) {
      return;
    }
    Double hours = UtcOffset.hours(stated.value());
    var place = new Place(file, number, stated.column());
    if (hours == null) {
      faults.add(UtcOffset.unread(place, stated.value()));
    } else if (hours != utcOffsetH) {
      other = UtcOffset.otherClock(place, stated.value(), utcOffsetH);
    }
  }

  /** Once the header is read: another clock than the site's is a fault where times are local. */
  public void header(boolean isLocal, List<Fault> faults) {
    if (isLocal && other != null) {
      faults.add(other);
    }
  }
}
