package corewright.station.work;

import corewright.bench.life.Act;
import corewright.bench.life.Life;
import corewright.bench.life.Stage;
import corewright.bench.record.Dossier;
import corewright.reports.document.Shop;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Standing;
import corewright.reports.ledger.Step;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/** Lets a unit leave: its paper first, then packed, then shipped with the dates of its warranty. */
public final class Releasing {
  private final Ledger ledger;
  private final Publishing publishing;
  private final Shop shop;
  private final LocalDate today;

  Releasing(Ledger ledger, Publishing publishing, Shop shop, LocalDate today) {
    this.ledger = ledger;
    this.publishing = publishing;
    this.shop = shop;
    this.today = today;
  }

  /**
   * How it leaves.
   *
   * @param carrier who takes it; {@code counter} where it is handed over
   * @param tracking number of the parcel; may be empty
   * @param serial as it was read on the unit that leaves; empty: nobody looked
   */
  public record Request(String tag, String carrier, String tracking, String serial, String who) {}

  /**
   * What left.
   *
   * @param report the warranty report; empty where the unit was not rebuilt and has no warranty
   */
  public record Released(Standing standing, Step.Shipping shipping, Optional<Path> report) {}

  /**
   * Releases a unit.
   *
   * @throws corewright.reports.ledger.LedgerFault if its stage does not allow it, or if it is
   *     another unit
   * @throws corewright.reports.document.Refusal if a rebuilt unit's record does not support a
   *     warranty
   */
  public Released release(Request request) {
    Standing now = ledger.lives().standing(request.tag());
    String tag = now.tag();
    ledger.lives().mustBe(tag, request.serial());
    Dossier dossier = ledger.dossier(tag);
    boolean covered = covers(dossier, now.life());
    Optional<Path> report =
        covered && sealed(now.life().stage())
            ? Optional.of(publishing.write(Paperwork.WARRANTY_REPORT, tag, request.who()))
            : Optional.empty();
    if (now.life().stage() != Stage.PACKED) {
      String read = request.serial().isBlank() ? "" : "serial read: " + request.serial().strip();
      ledger.lives().take(tag, new Step.Plain(Act.PACK, read), request.who());
    }
    Step.Shipping shipping =
        covered
            ? new Step.Shipping(
                request.carrier(),
                request.tracking(),
                today.toString(),
                today.plusMonths(shop.warranty_months()).toString(),
                shop.warrantyTerms())
            : new Step.Shipping(request.carrier(), request.tracking(), "", "", "");
    return new Released(ledger.lives().take(tag, shipping, request.who()), shipping, report);
  }

  /** Whether a warranty begins when a unit leaves as it stands. */
  public static boolean covers(Dossier dossier, Life life) {
    return !dossier.rebuild().isEmpty() && !givenBack(life);
  }

  /** It goes back as it is, opened or not: nothing of it was proven, and nothing is promised. */
  private static boolean givenBack(Life life) {
    return life.stage() == Stage.TO_RETURN
        || (life.stage() == Stage.PACKED && life.before().equals(Optional.of(Stage.TO_RETURN)));
  }

  private static boolean sealed(Stage stage) {
    return stage == Stage.SEALED || stage == Stage.PACKED || stage == Stage.IN_STOCK;
  }
}
