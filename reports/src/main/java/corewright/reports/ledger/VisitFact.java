package corewright.reports.ledger;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What figures about many units are made from: one visit, in short. Texts are empty where nothing
 * was written down.
 *
 * @param received on which day, in UTC like every day here
 * @param disposition of the last decision
 * @param arrival verdict of the last judged run as received or returned
 * @param firstShip verdict of the first judged final test on a bench
 * @param shipBench where that was
 * @param technician who worked on it; the first by name where several did
 * @param sealed whether a seal holds, or held when it left
 * @param stage where the visit ended: the unit's stage, or {@code SHIPPED} for an earlier visit
 * @param shipped when it left; empty: it is here
 * @param cold outcome of the last test in the cold before anything was done to it, {@code ALONE}
 *     where nothing else of that run failed; empty: none was made
 * @param hot likewise in the heat
 * @param promised until when the customer should have it; empty: nobody promised
 */
public record VisitFact(
    String tag,
    int visit,
    String family,
    String variant,
    String mode,
    String customer,
    LocalDate received,
    String disposition,
    String arrival,
    String firstShip,
    String shipBench,
    String technician,
    boolean sealed,
    String stage,
    Optional<LocalDate> shipped,
    String cold,
    String hot,
    Optional<LocalDate> promised) {}
