package corewright.reports.ledger;

import corewright.bench.life.Role;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/**
 * Who may write down what, from a shop's first account on. Steps of a unit have their own table in
 * {@link Role#may}; here is the rest. Common practice, no source: money is not the bench's, tests
 * and decisions are not the counter's, limits are signed by whoever also seals, what concerns the
 * whole shop is the owner's.
 */
final class Rights {
  private static final Set<EventKind> OWNERS =
      EnumSet.of(
          EventKind.FORGOTTEN,
          EventKind.ACCOUNT_MADE,
          EventKind.AUTHORITY_GRANTED,
          EventKind.MOVED,
          EventKind.BROUGHT,
          EventKind.BENCH_UNLOCKED);
  private static final Set<EventKind> NOT_AT_THE_COUNTER =
      EnumSet.of(
          EventKind.RUN_BEGUN,
          EventKind.RUN_ENDED,
          EventKind.DECIDED,
          EventKind.REBUILT,
          EventKind.CONFIRMED,
          EventKind.LIMITS_SIGNED,
          EventKind.BENCH_CHECKED,
          EventKind.BENCH_LOCKED,
          EventKind.CALIBRATED,
          EventKind.BENCH_MEASURED,
          EventKind.AMENDED);
  private static final Set<EventKind> NOT_AT_THE_BENCH =
      EnumSet.of(
          EventKind.QUOTED,
          EventKind.ANSWERED_QUOTE,
          EventKind.DEPOSIT_TAKEN,
          EventKind.DEPOSIT_SETTLED,
          EventKind.LIMITS_SIGNED,
          EventKind.EXPORTED);

  private Rights() {}

  /**
   * Refuses what is not of somebody's role, and everything by somebody without an account.
   *
   * @throws LedgerFault with whom to ask
   */
  static void require(Handle handle, String who, EventKind kind) {
    if (kind == EventKind.AT_THE_DOOR) {
      return; // whoever stands there
    }
    Optional<Role> role = Accounts.role(handle, who);
    if (role.isPresent() && !may(role.get(), kind)) {
      throw new LedgerFault(
          who
              + " is "
              + role.get().name().toLowerCase(Locale.ROOT)
              + " and may not write this down: "
              + kind.id(),
          "Ask somebody whose role it is");
    }
  }

  private static boolean may(Role role, EventKind kind) {
    return switch (role) {
      case COUNTER -> !OWNERS.contains(kind) && !NOT_AT_THE_COUNTER.contains(kind);
      case TECHNICIAN -> !OWNERS.contains(kind) && !NOT_AT_THE_BENCH.contains(kind);
      case INSPECTOR -> !OWNERS.contains(kind);
      case OWNER -> true;
    };
  }
}
