package corewright.reports.ledger;

import corewright.bench.life.Act;
import corewright.bench.life.Role;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Who may do what. A shop without accounts takes people at their word; from the first account on,
 * every step is taken by somebody with an account, within the role.
 */
public final class Accounts {
  private static final String SUBJECT = "ACCOUNTS";

  private final Database database;
  private final Appender appender;

  Accounts(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  public record Account(String name, Role role) {}

  /** Everybody, by name; empty where the shop has no accounts. */
  public List<Account> all() {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT name, role FROM account ORDER BY name")
                .map(
                    (row, context) ->
                        new Account(row.getString("name"), Role.valueOf(row.getString("role"))))
                .list());
  }

  /**
   * Makes an account, or gives one another role and password. The first is the owner's.
   *
   * @param who who does it; after the first account only an owner may
   * @throws LedgerFault if the password is short, the first role is not owner's, or who may not
   */
  public void put(String name, Role role, char[] password, String who) {
    if (name.isBlank() || password.length < Passwords.LEAST_CHARACTERS) {
      throw new LedgerFault(
          "An account needs a name and a password of " + Passwords.LEAST_CHARACTERS + " characters",
          "Take a few words that nobody else would");
    }
    String salt = Passwords.salt();
    String hash = Passwords.hash(password, salt, Passwords.ITERATIONS); // slow: before the lock
    database.write(
        handle -> {
          if (role(handle, who).isEmpty() && role != Role.OWNER) {
            throw new LedgerFault("The first account is the owner's", "Give it --role owner");
          }
          requireOwner(handle, who, "make accounts");
          Event event =
              appender.append(
                  handle,
                  who,
                  EventKind.ACCOUNT_MADE,
                  SUBJECT,
                  Json.tree(Map.of("name", name.strip(), "role", role.name())));
          return handle.execute(
              "INSERT INTO account (name, role, salt, hash, iterations, since) VALUES (?, ?, ?, ?,"
                  + " ?, ?) ON CONFLICT (name) DO UPDATE SET role = excluded.role, salt ="
                  + " excluded.salt, hash = excluded.hash, iterations = excluded.iterations",
              name.strip(),
              role.name(),
              salt,
              hash,
              Passwords.ITERATIONS,
              event.at());
        });
  }

  /**
   * Lets somebody in. Where the shop has no accounts, everybody is.
   *
   * @throws LedgerFault if name and password do not fit; it does not say which
   */
  public void signIn(String name, char[] password) {
    boolean in =
        database.read(
            handle ->
                isWithoutAccounts(handle)
                    || handle
                        .select("SELECT salt, hash, iterations FROM account WHERE name = ?", name)
                        .map(
                            (row, context) ->
                                Passwords.fits(
                                    password,
                                    row.getString("salt"),
                                    row.getInt("iterations"),
                                    row.getString("hash")))
                        .findFirst()
                        .orElse(false));
    if (!in) {
      throw new LedgerFault("Name and password do not fit", "Try again, or ask the owner");
    }
  }

  /**
   * Writes down what happened at a door of the shop's record, as a wrong password or a step that is
   * not of somebody's role.
   *
   * @param who a name, as it was given; need not be anybody's
   * @param from where it came from
   */
  public void atTheDoor(String what, String who, String from) {
    database.write(
        handle ->
            appender.append(
                handle,
                who.isBlank() ? "nobody" : who,
                EventKind.AT_THE_DOOR,
                "DOOR",
                Json.tree(Map.of("what", what, "from", from))));
  }

  /** Refuses a step that is not of somebody's role. */
  static void require(Handle handle, String who, Act act) {
    Optional<Role> role = role(handle, who);
    if (role.isPresent() && !role.get().may(act)) {
      throw new LedgerFault(
          who
              + " is "
              + role.get().name().toLowerCase(Locale.ROOT)
              + " and may not do this: a unit "
              + act.words(),
          "Ask somebody whose role it is");
    }
  }

  /**
   * Refuses whoever is not the owner; nobody where the shop has no accounts.
   *
   * @param doing as {@code make a backup}
   * @throws LedgerFault if it is somebody else
   */
  public void requireOwner(String who, String doing) {
    database.read(
        handle -> {
          requireOwner(handle, who, doing);
          return true;
        });
  }

  static void requireOwner(Handle handle, String who, String doing) {
    if (role(handle, who).filter(r -> !r.keepsTheShop()).isPresent()) {
      throw new LedgerFault(who + " may not " + doing, "Ask the owner");
    }
  }

  /** Empty where the shop has no accounts. */
  static Optional<Role> role(Handle handle, String who) {
    Optional<Role> role =
        handle
            .select("SELECT role FROM account WHERE name = ?", who)
            .mapTo(String.class)
            .findFirst()
            .map(Role::valueOf);
    if (role.isEmpty() && !isWithoutAccounts(handle)) {
      throw new LedgerFault(who + " has no account", "The owner makes one with 'account'");
    }
    return role;
  }

  private static boolean isWithoutAccounts(Handle handle) {
    return handle.select("SELECT count(*) FROM account").mapTo(Integer.class).one() == 0;
  }
}
