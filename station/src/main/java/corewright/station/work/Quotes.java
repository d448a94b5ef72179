package corewright.station.work;

import corewright.bench.record.CueAnswer;
import corewright.bench.run.Clock;
import corewright.reports.ledger.Agreements.Agreement;
import corewright.reports.ledger.Ledger;
import java.util.List;

/** Brings quotes and units together: the decision table learns what the customer agreed to. */
public final class Quotes {
  private final Ledger ledger;
  private final Clock clock;

  Quotes(Ledger ledger, Clock clock) {
    this.ledger = ledger;
    this.clock = clock;
  }

  /** Notes the customer's answer, also with the unit if it is here already. */
  public Agreement answer(
      String number, boolean approved, String person, String channel, String who) {
    Agreement answered =
        ledger
            .agreements()
            .answer(number, approved, person, channel, WallClock.here(clock).today(), who);
    tell(answered, who);
    return answered;
  }

  /** Notes that a unit came under a quote. */
  public Agreement arrived(String number, String tag, String who) {
    Agreement agreement = ledger.agreements().arrived(number, tag, who);
    tell(agreement, who);
    return agreement;
  }

  private void tell(Agreement agreement, String who) {
    if (!agreement.tag().isEmpty() && !agreement.state().equals("quoted")) {
      ledger.answers(
          agreement.tag(),
          List.of(
              new CueAnswer(Deciding.AGREED + "approval", agreement.state(), who, clock.wall())));
    }
  }
}
