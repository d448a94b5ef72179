package corewright.reports.ledger;

import corewright.bench.life.Never;
import corewright.bench.record.Core;
import corewright.bench.record.Past;
import java.time.Instant;
import org.jdbi.v3.core.Handle;

/**
 * A unit's serial or label is another one than was written down: misread, or exchanged. What stood
 * there before stays in the event and on paper.
 */
record Relabelling(String serialWas, String labelWas, String serial, String label, String reason) {

  /** The core as it is called from then on. */
  Core on(Core core) {
    return new Core(
        core.tag(),
        core.family(),
        serial,
        label,
        core.customer(),
        core.mode(),
        core.complaint(),
        core.received(),
        core.receivedBy());
  }

  Past.Relabelled told(Event event) {
    return serial.equals(serialWas)
        ? told("label " + labelWas, "label " + label, event)
        : told("serial " + serialWas, "serial " + serial, event);
  }

  private Past.Relabelled told(String was, String now, Event event) {
    return new Past.Relabelled(was, now, reason, event.who(), Instant.parse(event.at()));
  }

  /**
   * Refuses a serial that is not the one that a unit is known by. Nothing is said where either was
   * not read.
   *
   * @param when as {@code came back}
   */
  static void refuseOther(Handle handle, String tag, String serial, String when) {
    String key = Serials.key(serial);
    handle
        .select("SELECT serial FROM unit WHERE tag = ?", tag)
        .mapTo(String.class)
        .findOne()
        .filter(known -> !key.isEmpty() && !Serials.key(known).isEmpty())
        .filter(known -> !Serials.same(Serials.key(known), key))
        .ifPresent(
            known -> {
              throw new LedgerFault(
                  Never.SWAP_A_SERIAL.said(
                      tag + " is known by serial " + known + ", and " + when + " " + serial),
                  Never.SWAP_A_SERIAL.remedy());
            });
  }

  /** Keeps the row of the unit in step; it is still found by the serial that it had. */
  void apply(Handle handle, String tag) {
    String key = Serials.key(serial);
    handle.execute(
        "UPDATE unit SET serial = ?, serial_key = ?, label = ? WHERE tag = ?",
        serial,
        key,
        label,
        tag);
    Serials.keepTails(handle, key, tag);
  }
}
