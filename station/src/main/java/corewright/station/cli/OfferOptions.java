package corewright.station.cli;

import corewright.reports.ledger.Money;
import corewright.station.work.Refused;
import java.time.LocalDate;
import picocli.CommandLine.Option;

/**
 * What a quote and a deposit have in common: whose it is, in which currency, how long it stands.
 */
final class OfferOptions {
  @Option(names = "--customer", paramLabel = "NAME", description = "Whose it is.")
  String customer = "";

  @Option(
      names = "--currency",
      defaultValue = "EUR",
      paramLabel = "CODE",
      description = "ISO 4217 (${DEFAULT-VALUE}).")
  private String currency = "";

  @Option(
      names = "--days",
      defaultValue = "30",
      paramLabel = "N",
      description = "How long it stands, from today (${DEFAULT-VALUE}).")
  int days;

  /** An amount as it was typed, such as {@code 150} or {@code 150.50}. */
  Money money(String amount) {
    return Money.of(amount, currency);
  }

  /**
   * Refuses an amount that is nobody's: without a customer there is nothing but a list.
   *
   * @throws Refused if there is one
   */
  void requireNobody(String amount) {
    if (!money(amount).equals(money("0"))) {
      throw new Refused("Nobody said whose " + amount + " it is", "Give --customer NAME.");
    }
  }

  LocalDate until(LocalDate today) {
    return today.plusDays(days);
  }
}
