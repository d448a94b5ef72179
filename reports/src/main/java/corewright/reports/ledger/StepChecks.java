package corewright.reports.ledger;

import corewright.bench.life.Never;
import java.util.HashMap;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** What a step must bring with it, beyond the stage that allows it. */
final class StepChecks {
  /** Below this a unit counts as discharged. Common practice, no source. */
  private static final double SAFE_V = 5;

  private StepChecks() {}

  static void check(Handle handle, String tag, Step step, String who) {
    if (step instanceof Step.Safe safe && !(Math.abs(safe.residual_V()) < SAFE_V)) {
      throw fault(
          tag + " still holds " + safe.residual_V() + " V",
          "Discharge it through its resistor until it reads below "
              + SAFE_V
              + " V, then read again");
    } else if (step instanceof Step.Hold hold) {
      if (hold.question().isBlank() || hold.owner().isBlank()) {
        throw fault(
            "A hold of " + tag + " lacks its question or its owner",
            "Say what would release it and whose question it is");
      }
    } else if (step instanceof Step.Work work) {
      work(handle, tag, work);
    } else if (step instanceof Step.Sealing sealing) {
      sealing(handle, sealing);
    } else if (step instanceof Step.Scrapping scrap) {
      String second = scrap.second().strip();
      boolean another = !second.isEmpty() && !second.equalsIgnoreCase(who.strip());
      if (scrap.reason().isBlank() || (!another && scrap.photo().isBlank())) {
        throw fault(
            "Scrapping "
                + tag
                + " takes a reason, and a second person, who is another, or a photograph",
            "Give --reason, and --second or --photo");
      }
      photograph(handle, tag, scrap.photo().strip());
    } else if (step instanceof Step.Back back && back.reason().isBlank()) {
      throw fault("A step back of " + tag + " lacks its reason", "Say what was wrong");
    }
  }

  private static void photograph(Handle handle, String tag, String sha256) {
    boolean attached =
        sha256.isEmpty()
            || handle
                .select("SELECT 1 FROM attached WHERE tag = ? AND sha256 = ?", tag, sha256)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    if (!attached) {
      throw fault(
          "No photograph of " + tag + " has the hash " + sha256,
          "Attach it first: 'attach " + tag + " FILE' says its hash");
    }
  }

  private static void work(Handle handle, String tag, Step.Work work) {
    if (work.did().isEmpty() && work.fitted().isEmpty()) {
      throw fault("Nothing was done to " + tag, "Say what was done, or which parts were fitted");
    }
    Map<String, Integer> wanted = new HashMap<>();
    for (Fitted fitted : work.fitted()) {
      wanted.merge(fitted.lot(), 1, Integer::sum);
      Stores.Lot lot = lot(handle, fitted.lot());
      if (!fitted.part().strip().equalsIgnoreCase(lot.part().strip())) {
        throw fault(
            "Lot " + lot.lot() + " holds " + lot.part() + ", not " + fitted.part(),
            "Look which lot the part at " + fitted.place() + " came from");
      }
    }
    wanted.forEach(
        (name, count) -> {
          int left = lot(handle, name).remaining();
          if (left < count) {
            throw fault(
                "Lot " + name + " has " + left + " left, " + count + " are wanted",
                "Count the bin, or take the parts from another lot");
          }
        });
  }

  private static Stores.Lot lot(Handle handle, String name) {
    return Stores.find(handle, name)
        .orElseThrow(
            () -> fault("There is no lot " + name + " in store", "Take it into store first"));
  }

  private static void sealing(Handle handle, Step.Sealing sealing) {
    if (sealing.number().isBlank()) {
      throw fault("A seal without a number", "Scan the number on the seal");
    }
    handle
        .select("SELECT tag, at FROM seal WHERE number = ?", sealing.number())
        .map((row, context) -> row.getString("tag") + " on " + row.getString("at").substring(0, 10))
        .findOne()
        .ifPresent(
            used -> {
              throw fault(
                  Never.SEAL_TWICE.said("Seal " + sealing.number() + " was used on " + used),
                  Never.SEAL_TWICE.remedy());
            });
  }

  private static LedgerFault fault(String what, String remedy) {
    return new LedgerFault(what, remedy);
  }
}
