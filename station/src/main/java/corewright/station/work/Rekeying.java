package corewright.station.work;

import corewright.bench.identify.Rekey;
import corewright.bench.record.Dossier;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.reports.ledger.Ledger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Runs the units of a family through its key as it is now. */
public final class Rekeying {
  private final Catalogue catalogue;
  private final Ledger ledger;

  Rekeying(Catalogue catalogue, Ledger ledger) {
    this.catalogue = catalogue;
    this.ledger = ledger;
  }

  /**
   * What came of one unit.
   *
   * @param serial the maker's serial, exactly as read
   */
  public record Result(String tag, String serial, Rekey rekey) {}

  /** Every unit of the family, by tag. Writes nothing. */
  public List<Result> of(String familyId) {
    Family family = catalogue.family(familyId);
    List<Result> results = new ArrayList<>();
    for (String tag : ledger.units(family.id())) {
      Dossier dossier = ledger.dossier(tag);
      results.add(
          new Result(
              tag,
              dossier.core().serial(),
              Rekey.of(family, dossier.identification(), dossier.answers(), Map.of())));
    }
    return List.copyOf(results);
  }

  /** Writes what the key now says of a unit into its record. */
  public void keep(Result result, String who) {
    ledger.identified(result.tag(), result.rekey().now(), who);
  }
}
