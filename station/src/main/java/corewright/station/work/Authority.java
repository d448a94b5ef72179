package corewright.station.work;

import corewright.measures.Figures;
import corewright.profiles.Family;
import corewright.reports.ledger.Accounts;
import corewright.reports.ledger.Accounts.Account;
import java.util.List;
import java.util.Optional;

/**
 * Who may energise units of which voltage, and who counts as a second person. Where the shop has no
 * accounts, people are taken at their word.
 */
final class Authority {
  private final Accounts accounts;

  Authority(Accounts accounts) {
    this.accounts = accounts;
  }

  /** Why somebody may not energise a family, each a sentence. */
  List<String> operatorAgainst(String operator, Family family) {
    return accounts
        .find(operator)
        .filter(a -> family.output_V() > a.upTo_V())
        .map(
            a ->
                a.name()
                    + " may energise units "
                    + a.energises()
                    + "; "
                    + family.id()
                    + " makes "
                    + Figures.number(family.output_V(), 0)
                    + " V.")
        .stream()
        .toList();
  }

  /** Why whoever is named beside the operator is no second person, each a sentence. */
  List<String> secondAgainst(String operator, Optional<SecondPerson> second, Family family) {
    String name = second.map(SecondPerson::name).orElse("").strip();
    if (!family.needsSecondPerson() || name.isEmpty() || accounts.all().isEmpty()) {
      return List.of();
    }
    Optional<Account> other = accounts.find(name);
    if (other.isEmpty()) {
      return List.of(name + " has no account of this shop, and counts as nobody here.");
    }
    if (other.get().name().equalsIgnoreCase(operator.strip())) {
      return List.of(name + " is the operator.");
    }
    return second.get().proved()
        ? List.of()
        : List.of(name + " has not confirmed with the password of their own account.");
  }
}
