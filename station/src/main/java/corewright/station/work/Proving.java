package corewright.station.work;

import corewright.bench.run.Clock;
import corewright.reports.ledger.Accounts;
import corewright.reports.ledger.LedgerFault;
import java.time.Duration;

/**
 * Proves by a password that somebody is who they say, where no door stands before it. Wrong ones
 * are written down, and the record itself counts them: five in a quarter of an hour, whatever
 * program they were given to, and nobody is heard under that name for a while.
 */
public final class Proving {
  private static final Duration WINDOW = Duration.ofMinutes(15);
  private static final int MOST = 5;

  private final Accounts accounts;
  private final Clock clock;

  Proving(Accounts accounts, Clock clock) {
    this.accounts = accounts;
    this.clock = clock;
  }

  /**
   * Lets somebody in; everybody where the shop has no accounts.
   *
   * @param from where they are, as it is written down
   * @throws Refused if wrong passwords were given too often under this name
   * @throws LedgerFault if name and password do not fit; it does not say which
   */
  public void prove(String name, char[] password, String from) {
    if (accounts.all().isEmpty()) {
      return;
    }
    if (accounts.wrongSince(name, clock.wall().minus(WINDOW)) >= MOST) {
      accounts.atTheDoor("too many wrong passwords", name, from);
      throw new Refused(
          "Too many wrong passwords for " + name,
          "Wait a quarter of an hour, or ask the owner for a new one.");
    }
    try {
      accounts.signIn(name, password);
    } catch (LedgerFault wrong) {
      accounts.atTheDoor(Accounts.WRONG_PASSWORD, name, from);
      throw wrong;
    }
  }

  /**
   * The second person of a run, by the password of their own account.
   *
   * @param of what they stand by, as {@code U-000012 on bench-1}
   * @throws Refused if wrong passwords were given too often under this name
   * @throws LedgerFault if name and password do not fit
   */
  public SecondPerson second(String name, char[] password, String of) {
    String known = accounts.find(name).map(Accounts.Account::name).orElse(name.strip());
    prove(known, password, of);
    if (accounts.all().isEmpty()) {
      return new SecondPerson(known, false);
    }
    accounts.atTheDoor("stands by as second person", known, of);
    return SecondPerson.proved(known);
  }
}
