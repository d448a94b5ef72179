package corewright.reports.document;

import corewright.reports.document.logo.Logo;
import java.util.Locale;
import java.util.Optional;

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
 * @param colour of its name and of the line below it
 * @param logo before its name; often empty
 */
public record Shop(
    String name,
    String address,
    String contact,
    String complaints,
    int warranty_months,
    String warrantyTerms,
    Locale region,
    boolean invented,
    Colour colour,
    Optional<Logo> logo) {

  /** A shop without a logo, in the ink of everything else. */
  public Shop(
      String name,
      String address,
      String contact,
      String complaints,
      int warranty_months,
      String warrantyTerms,
      Locale region,
      boolean invented) {
    this(
        name,
        address,
        contact,
        complaints,
        warranty_months,
        warrantyTerms,
        region,
        invented,
        Colour.INK,
        Optional.empty());
  }

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
        name,
        address,
        contact,
        complaints,
        warranty_months,
        warrantyTerms,
        region,
        true,
        colour,
        logo);
  }

  /** The same with its own colour and logo. */
  public Shop dressed(Colour own, Optional<Logo> drawn) {
    return new Shop(
        name,
        address,
        contact,
        complaints,
        warranty_months,
        warrantyTerms,
        region,
        invented,
        own,
        drawn);
  }
}
