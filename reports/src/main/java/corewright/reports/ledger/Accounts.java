package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.life.Act;
import corewright.bench.life.Role;
import corewright.measures.Figures;
import java.time.Instant;
import java.util.HashMap;
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
  /** What is written down of a wrong password. */
  public static final String WRONG_PASSWORD = "wrong password";

  private static final String SUBJECT = "ACCOUNTS";
  private static final String DOOR = "DOOR";

  /** Without a grant; EN 50191 counts 60 V DC as harmless to touch. */
  private static final double HARMLESS_V = 60;

  private final Database database;
  private final Appender appender;

  Accounts(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * Somebody.
   *
   * @param upTo_V the highest voltage of a unit that they may energise, V DC
   */
  public record Account(String name, Role role, double upTo_V) {
    /** Which units they may energise, as {@code any} or {@code up to 60 V}. */
    public String energises() {
      return Double.isInfinite(upTo_V) ? "any" : "up to " + Figures.number(upTo_V, 0) + " V";
    }
  }

  /** Everybody, by name; empty where the shop has no accounts. */
  public List<Account> all() {
    return database.read(
        handle -> {
          Map<String, Double> granted = granted(handle);
          return handle
              .createQuery("SELECT name, role FROM account ORDER BY name")
              .map(
                  (row, context) ->
                      account(row.getString("name"), Role.valueOf(row.getString("role")), granted))
              .list();
        });
  }

  /** Somebody by name; empty where there is no such account. */
  public Optional<Account> find(String name) {
    return all().stream().filter(a -> a.name().equalsIgnoreCase(name.strip())).findFirst();
  }

  /** Who grants may do what is granted: an owner has every class. */
  private static Account account(String name, Role role, Map<String, Double> granted) {
    double upTo_V =
        role.keepsTheShop() ? Double.POSITIVE_INFINITY : granted.getOrDefault(name, HARMLESS_V);
    return new Account(name, role, upTo_V);
  }

  private static Map<String, Double> granted(Handle handle) {
    Map<String, Double> granted = new HashMap<>();
    handle
        .select(
            "SELECT body FROM event WHERE tag = ? AND kind = ? ORDER BY position",
            SUBJECT,
            EventKind.AUTHORITY_GRANTED.id())
        .mapTo(String.class)
        .list()
        .forEach(
            body -> {
              JsonNode said = Json.read(body);
              granted.put(said.path("name").asText(), said.path("upTo_V").asDouble());
            });
    return granted;
  }

  /**
   * Says up to which voltage somebody may energise units. Owners only.
   *
   * @param upTo_V V DC; 60 takes a wider authority back
   * @throws LedgerFault if there is no such account, the voltage is none, or who is no owner
   */
  public void grant(String name, double upTo_V, String who) {
    Account to =
        find(name)
            .orElseThrow(
                () -> new LedgerFault(name + " has no account", "Make one first, with its role"));
    if (!(upTo_V > 0) || Double.isInfinite(upTo_V)) {
      throw new LedgerFault(
          "Nobody is authorised up to " + upTo_V + " V", "Give a voltage above 0, as 60 or 120");
    }
    database.write(
        handle -> {
          requireOwner(handle, who, "say what somebody may energise");
          return appender.append(
              handle,
              who,
              EventKind.AUTHORITY_GRANTED,
              SUBJECT,
              Json.tree(Map.of("name", to.name(), "upTo_V", upTo_V)));
        });
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
    int iterations = Passwords.iterations();
    String hash = Passwords.hash(password, salt, iterations); // slow: before the lock
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
              iterations,
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
                DOOR,
                Json.tree(Map.of("what", what, "from", from))));
  }

  /** How many wrong passwords were written down under a name since then. */
  public long wrongSince(String who, Instant since) {
    return database.read(
        handle ->
            handle
                .select(
                    "SELECT body FROM event WHERE tag = ? AND kind = ? AND who = ? AND at >= ?",
                    DOOR,
                    EventKind.AT_THE_DOOR.id(),
                    who,
                    Event.time(since))
                .mapTo(String.class)
                .list()
                .stream()
                .filter(body -> Json.read(body).path("what").asText().equals(WRONG_PASSWORD))
                .count());
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
