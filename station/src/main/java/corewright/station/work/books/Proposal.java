package corewright.station.work.books;

import corewright.reports.ledger.Books;
import java.util.List;
import java.util.Map;

/**
 * What would be brought, shown before anything is.
 *
 * @param unused headers of columns that no field takes; what stands in them stays behind
 * @param fresh rows that would be brought
 * @param before rows that were brought earlier, by their tag
 * @param refused rows that stay behind, each with why
 */
public record Proposal(
    String file,
    Mapping mapping,
    List<String> unused,
    List<Books.Entry> fresh,
    Map<String, Books.Entry> before,
    List<Row.Refusal> refused) {}
