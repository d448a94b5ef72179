package corewright.station.web.door;

import corewright.bench.life.Act;
import corewright.bench.life.Role;
import corewright.station.work.Refused;
import io.javalin.http.Context;
import java.util.Locale;
import java.util.Objects;

/**
 * Somebody who is signed in.
 *
 * @param proof what the forms of this session must send back
 */
public record Visitor(String name, Role role, String proof) {
  private static final String KEY = "visitor";

  /** Whoever asks; the door has let only visitors through to places. */
  public static Visitor of(Context context) {
    return Objects.requireNonNull(context.<Visitor>attribute(KEY), "the door lets nobody else in");
  }

  /** Whether somebody is signed in already. */
  public static boolean isIn(Context context) {
    return context.attribute(KEY) != null;
  }

  void enter(Context context) {
    context.attribute(KEY, this);
  }

  /** The role as people say it. */
  public String roleWords() {
    return role.name().toLowerCase(Locale.ROOT);
  }

  /**
   * Demands a role that may take this step.
   *
   * @throws NotTheirs if it may not
   */
  public void mustBeAllowed(Act act) {
    if (!role.may(act)) {
      throw new NotTheirs(name + " is " + roleWords() + ": no unit is " + act.words() + " by them");
    }
  }

  /**
   * Demands the owner.
   *
   * @param doing what only the owner does, as {@code make accounts}
   * @throws NotTheirs if it is somebody else
   */
  public void mustKeepTheShop(String doing) {
    if (!role.keepsTheShop()) {
      throw new NotTheirs(name + " is " + roleWords() + " and may not " + doing);
    }
  }

  /**
   * Demands a role that answers for limits.
   *
   * @throws NotTheirs if it is another
   */
  public void mustSignLimits() {
    if (!role.signsLimits()) {
      throw new NotTheirs(name + " is " + roleWords() + " and may not sign limits");
    }
  }

  /** A step that is not of the visitor's role. */
  public static final class NotTheirs extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotTheirs(String what) {
      super(what);
    }

    /** As it is told. */
    public Refused told() {
      return new Refused(
          Objects.requireNonNull(getMessage()), "Ask somebody whose role it is, or the owner.");
    }
  }
}
