package corewright.reports.document;

import java.util.Locale;

/**
 * Whose paper it is.
 *
 * @param address one line
 * @param contact telephone or mail, one line; may be empty
 * @param complaints how to object to a result, one sentence
 * @param warranty_months how long a rebuilt unit is covered, counted from the day it leaves
 * @param warrantyTerms what is covered, one or two sentences
 * @param region whose date, decimal mark and sheet its documents take
 * @param invented there is no such shop: whatever it writes is a specimen
 */
public record Shop(
    String name,
    String address,
    String contact,
    String complaints,
    int warranty_months,
    String warrantyTerms,
    Locale region,
    boolean invented) {

  /** A shop that covers a year, parts and labour. */
  public Shop(String name, String address, String contact, String complaints) {
    this(
        name,
        address,
        contact,
        complaints,
        12,
        "Parts and labour, at our bench.",
        Locale.UK,
        false);
  }

  /** The same, known not to exist. */
  public Shop asInvented() {
    return new Shop(
        name, address, contact, complaints, warranty_months, warrantyTerms, region, true);
  }
}
