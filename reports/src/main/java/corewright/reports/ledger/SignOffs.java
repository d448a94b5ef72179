package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.life.Never;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/**
 * Who signed which limits, and when. Files of rules are edited outside of the record; what was
 * signed is one text, told by its hash, and any other text is not.
 */
public final class SignOffs {
  private static final String SUBJECT = "LIMITS";

  private final Database database;
  private final Appender appender;

  SignOffs(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * One signature under one text.
   *
   * @param what as {@code profile sd48-ship}
   * @param revision as the file says
   * @param sha256 of the file's bytes, lower-case hex
   */
  public record SignOff(String what, int revision, String sha256, String who, Instant at) {}

  /**
   * Signs a text.
   *
   * @throws LedgerFault if the role of {@code who} does not sign limits, or if a text of this or a
   *     later revision was signed already: a change counts the revision up
   */
  public void sign(String what, int revision, String sha256, String who) {
    database.write(
        handle -> {
          for (SignOff before : all(handle)) {
            if (before.what().equals(what) && before.revision() >= revision) {
              throw new LedgerFault(
                  Never.CHANGE_A_LIMIT_UNSIGNED.said(
                      "Revision "
                          + before.revision()
                          + " of "
                          + what
                          + " is signed, by "
                          + before.who()
                          + (before.sha256().equals(sha256)
                              ? ""
                              : ", and its text was another one")),
                  Never.CHANGE_A_LIMIT_UNSIGNED.remedy());
            }
          }
          return appender.append(
              handle,
              who,
              EventKind.LIMITS_SIGNED,
              SUBJECT,
              Json.tree(Map.of("what", what, "revision", revision, "sha256", sha256)));
        });
  }

  /** Every signature, the oldest first. */
  public List<SignOff> all() {
    return database.read(SignOffs::all);
  }

  private static List<SignOff> all(Handle handle) {
    return Events.of(handle, SUBJECT).stream()
        .filter(event -> event.kind().equals(EventKind.LIMITS_SIGNED.id()))
        .map(SignOffs::signOff)
        .toList();
  }

  private static SignOff signOff(Event event) {
    JsonNode body = Json.read(event.body());
    return new SignOff(
        body.path("what").asText(),
        body.path("revision").asInt(),
        body.path("sha256").asText(),
        event.who(),
        Instant.parse(event.at()));
  }
}
