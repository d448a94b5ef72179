package corewright.station.web.door;

import corewright.bench.life.Role;
import corewright.bench.run.Clock;
import corewright.reports.ledger.Accounts;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Everybody passes here first: the host must be ours, the visitor signed in, a form our own. Roles
 * are read from the ledger at every request, so a changed one holds at once.
 */
public final class Door {
  static final String COOKIE = "corewright";
  private static final Set<String> OPEN = Set.of("/in", "/first");

  /** What every open page asks once a second, whether anybody looks at it or not. */
  private static final String ASKED_BY_PAGES = "/bench/glance";

  private static final Set<HandlerType> SAFE = Set.of(HandlerType.GET, HandlerType.HEAD);

  private final Hosts hosts;
  private final Supplier<Accounts> accounts;
  private final DoorBook book;
  private final Sessions sessions;
  private final Tries tries;
  private final boolean secure;

  /**
   * @param secure whether the console is served over TLS, and cookies only then
   */
  public Door(
      Hosts hosts, Supplier<Accounts> accounts, DoorBook book, Clock clock, boolean secure) {
    this.hosts = hosts;
    this.accounts = accounts;
    this.book = book;
    this.sessions = new Sessions(clock);
    this.tries = new Tries(clock);
    this.secure = secure;
  }

  /** Stands before all routes. */
  public void stand(RoutesConfig routes) {
    routes.before(this::check);
    routes.post("/out", this::leave);
  }

  private void check(Context context) {
    Headers.on(context);
    String host = Objects.requireNonNullElse(context.header("Host"), "");
    if (!hosts.allow(host)) {
      refuse(context, HttpStatus.MISDIRECTED_REQUEST, "host " + host, "", "This is not " + host);
      return;
    }
    if (context.path().startsWith("/static/")) {
      return;
    }
    Optional<Visitor> visitor = visitor(context);
    visitor.ifPresent(v -> v.enter(context));
    boolean posts = !SAFE.contains(context.method());
    if (posts && !isOurForm(context, visitor)) {
      refuse(
          context,
          HttpStatus.FORBIDDEN,
          "form without proof",
          visitor.map(Visitor::name).orElse(""),
          "This form is not from a page of this console, or its session is over");
      return;
    }
    if (visitor.isEmpty() && !OPEN.contains(context.path())) {
      context.skipRemainingHandlers();
      if (posts || context.header("X-Form") != null) {
        Answers.refused(context, HttpStatus.UNAUTHORIZED, overNow());
      } else {
        context.redirect(
            accounts.get().all().isEmpty() ? "/first" : "/in" + Onward.asked(context.path()),
            HttpStatus.SEE_OTHER);
      }
    }
  }

  private static Refused overNow() {
    return new Refused(
        "Nobody is signed in here any more",
        "Sign in again in another tab, then send this form once more: nothing in it is lost.");
  }

  private Optional<Visitor> visitor(Context context) {
    String secret = context.cookie(COOKIE);
    if (secret == null) {
      return Optional.empty();
    }
    boolean byItself = context.path().equals(ASKED_BY_PAGES);
    Optional<Sessions.Session> session = byItself ? sessions.glance(secret) : sessions.of(secret);
    if (session.isEmpty() && !byItself && sessions.isNews(secret)) {
      book.note("session that is over", "", context);
    }
    return session.flatMap(s -> role(s.name()).map(role -> new Visitor(s.name(), role, s.proof())));
  }

  private Optional<Role> role(String name) {
    return accounts.get().all().stream()
        .filter(a -> a.name().equals(name))
        .map(Accounts.Account::role)
        .findFirst();
  }

  /** A strict cookie, the origin and a secret in the form: any of them stops a foreign page. */
  private boolean isOurForm(Context context, Optional<Visitor> visitor) {
    String origin = context.header("Origin");
    if (origin != null && !hosts.allowOrigin(origin)) {
      return false;
    }
    String expected =
        visitor.map(Visitor::proof).orElseGet(() -> Objects.requireNonNullElse(gate(context), ""));
    String sent = Objects.requireNonNullElse(sentProof(context), "");
    return !expected.isEmpty()
        && MessageDigest.isEqual(
            expected.getBytes(StandardCharsets.UTF_8), sent.getBytes(StandardCharsets.UTF_8));
  }

  private static String sentProof(Context context) {
    String header = context.header("X-Proof");
    return header != null ? header : context.formParam("proof");
  }

  /** Before anybody is signed in the proof is a cookie of its own, sent back by the form. */
  private static String gate(Context context) {
    return context.cookie(COOKIE + "-gate");
  }

  /** A proof for the forms of the door itself. */
  public String gateProof(Context context) {
    String there = gate(context);
    if (there != null && !there.isEmpty()) {
      return there;
    }
    String fresh = sessions.secret();
    set(context, COOKIE + "-gate", fresh);
    return fresh;
  }

  /**
   * Lets somebody in.
   *
   * @throws Refused if name and password do not fit, or too often did not
   */
  public void enter(Context context, String name, char[] password) {
    fits(context, name, password);
    book.note("signed in", name, context);
    String old = context.cookie(COOKIE);
    if (old != null) {
      sessions.end(old);
    }
    set(context, COOKIE, sessions.begin(name));
  }

  /**
   * Asks whoever stands beside the visitor for name and password; who is signed in stays so.
   *
   * @param as what they confirm, as it is written down
   * @return the name as their account has it
   * @throws Refused if they do not fit, or too often did not
   */
  public String prove(Context context, String name, char[] password, String as) {
    String known = accounts.get().find(name).map(Accounts.Account::name).orElse(name);
    fits(context, known, password);
    book.note(as, known, context);
    return known;
  }

  private void fits(Context context, String name, char[] password) {
    if (tries.mustWait(name, context.ip())) {
      book.note("too many wrong passwords", name, context);
      throw new Refused(
          "Too many wrong passwords for " + name,
          "Wait a quarter of an hour, or ask the owner for a new one.");
    }
    try {
      accounts.get().signIn(name, password);
    } catch (RuntimeException wrong) {
      tries.failed(name, context.ip());
      book.note(Accounts.WRONG_PASSWORD, name, context);
      throw new Refused("Name and password do not fit", "Try again, or ask the owner.");
    }
    tries.succeeded(name);
  }

  private void leave(Context context) {
    String secret = context.cookie(COOKIE);
    if (secret != null) {
      sessions.end(secret);
    }
    context.removeCookie(COOKIE);
    Answers.go(context, "/in");
  }

  private void set(Context context, String name, String value) {
    context.cookie(new Cookie(name, value, "/", -1, secure, true, null, SameSite.STRICT));
  }

  private void refuse(Context context, HttpStatus status, String what, String who, String told) {
    book.note(what, who, context);
    context.skipRemainingHandlers();
    Answers.refused(
        context, status, new Refused(told, "Open the console by the address that it printed."));
  }
}
