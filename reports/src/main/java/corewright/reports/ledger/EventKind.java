package corewright.reports.ledger;

import corewright.bench.life.Act;
import java.util.Arrays;
import java.util.Optional;

/**
 * What can happen to a unit. Adding one: a constant here, its method in {@link Ledger} or its
 * {@link Step}, its case in {@link Views} and, if documents show it, in {@link Dossiers}. The
 * {@link #id} is in every event and never changes.
 */
enum EventKind {
  RECEIVED("received"),
  BROUGHT("brought from old books"),
  ANSWERED("answered"),
  IDENTIFIED("identified"),
  RUN_BEGUN("run begun"),
  RUN_ENDED("run ended"),
  DECIDED("decided"),
  REBUILT("rebuilt"),
  DOCUMENTED("documented"),
  AMENDED("amended"),
  RELABELLED("relabelled"),
  QUARANTINED("quarantined", Act.QUARANTINE),
  FREED("freed", Act.FREE),
  MADE_SAFE("made safe", Act.MAKE_SAFE),
  HELD("held", Act.HOLD),
  OPENED("opened", Act.OPEN),
  WORKED("worked", Act.WORK),
  CLOSED("closed", Act.CLOSE),
  SEALED("sealed", Act.SEAL),
  PACKED("packed", Act.PACK),
  SHIPPED("shipped", Act.SHIP),
  STOCKED("stocked", Act.STOCK),
  HARVESTED("harvested", Act.HARVEST),
  SCRAPPED("scrapped", Act.SCRAP),
  STEPPED_BACK("stepped back", Act.STEP_BACK),
  GRADED("graded"),
  PROMISED("promised"),
  ATTACHED("attached"),
  CLAIM_OPENED("claim opened"),
  CLAIM_CLOSED("claim closed"),
  CONFIRMED("confirmed"),
  LOT_RECEIVED("lot received"),
  QUOTED("quoted"),
  ANSWERED_QUOTE("quote answered"),
  ARRIVED("arrived"),
  DEPOSIT_TAKEN("deposit taken"),
  DEPOSIT_SETTLED("deposit settled"),
  FORGOTTEN("forgotten"),
  ACCOUNT_MADE("account made"),
  AUTHORITY_GRANTED("authority granted"),
  MOVED("ledger moved"),
  EXPORTED("exported"),
  LIMITS_SIGNED("limits signed"),
  BENCH_CHECKED("bench checked"),
  BENCH_LOCKED("bench locked"),
  BENCH_UNLOCKED("bench unlocked"),
  CALIBRATED("calibrated"),
  BENCH_MEASURED("bench measured"),
  AT_THE_DOOR("at the door");

  private final String id;
  private final Optional<Act> act;

  EventKind(String id) {
    this.id = id;
    this.act = Optional.empty();
  }

  EventKind(String id, Act act) {
    this.id = id;
    this.act = Optional.of(act);
  }

  String id() {
    return id;
  }

  /** The step that it is, where it is no more than that; see {@link Acts}. */
  Optional<Act> act() {
    return act;
  }

  /** Whether it is about a lot, a quote, a deposit or a bench, and not about a unit. */
  boolean isOfNoUnit() {
    return switch (this) {
      case LOT_RECEIVED,
          QUOTED,
          ANSWERED_QUOTE,
          ARRIVED,
          DEPOSIT_TAKEN,
          DEPOSIT_SETTLED,
          FORGOTTEN,
          ACCOUNT_MADE,
          AUTHORITY_GRANTED,
          MOVED,
          EXPORTED,
          LIMITS_SIGNED,
          BENCH_CHECKED,
          BENCH_LOCKED,
          BENCH_UNLOCKED,
          CALIBRATED,
          BENCH_MEASURED,
          AT_THE_DOOR ->
          true;
      default -> false;
    };
  }

  /** Whether a visit begins with an event of this kind. */
  static boolean beginsAVisit(String id) {
    return id.equals(RECEIVED.id) || id.equals(BROUGHT.id);
  }

  static EventKind of(String id) {
    for (EventKind kind : values()) {
      if (kind.id.equals(id)) {
        return kind;
      }
    }
    throw new LedgerFault(
        "The ledger holds an event of kind '" + id + "', which this version does not know",
        "Open it with the version that wrote it, or a newer one");
  }

  static EventKind of(Act act) {
    return Arrays.stream(values())
        .filter(kind -> kind.act.filter(a -> a == act).isPresent())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(act + " is told by events of its own"));
  }
}
