package corewright.station.web.place;

import corewright.bench.record.Core;
import corewright.bench.record.Dossier;
import corewright.reports.ledger.Standing;
import corewright.station.work.Workshop;

/**
 * The unit that a page is about, as it stands at its head.
 *
 * @param tag as the record keeps it
 * @param what family, serial, whose
 * @param stands where it stands, with its grade
 */
public record Unit(String tag, String what, String stands, Standing standing) {

  static Unit of(Workshop workshop, Dossier dossier) {
    Core core = dossier.core();
    Standing standing = workshop.ledger().lives().standing(core.tag());
    String grade = standing.grade().isEmpty() ? "" : ", grade " + standing.grade();
    return new Unit(
        core.tag(),
        core.family()
            + (core.serial().isEmpty() ? ", no serial" : ", serial " + core.serial())
            + (core.customer().isEmpty() ? "" : ", " + core.customer())
            + ", "
            + core.mode(),
        standing.life().stage().words() + grade + ", visit " + dossier.visit(),
        standing);
  }
}
