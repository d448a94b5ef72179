package corewright.station.web.door;

import corewright.bench.run.Clock;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Who is signed in. Kept in memory: a restart signs everybody out, drafts stay. */
final class Sessions {
  private static final Duration IDLE = Duration.ofHours(4);
  private static final Duration LONGEST = Duration.ofHours(14); // a long working day
  private static final int SECRET_BYTES = 32;
  private static final int MOST_TOLD = 1000;

  private final Map<String, Session> open = new ConcurrentHashMap<>();
  private final Set<String> told = ConcurrentHashMap.newKeySet();
  private final SecureRandom random = new SecureRandom();
  private final Clock clock;

  Sessions(Clock clock) {
    this.clock = clock;
  }

  /**
   * One browser that is signed in.
   *
   * @param proof what its forms must send back
   */
  record Session(String name, String proof, Instant since, Instant seen) {
    boolean isOver(Instant now) {
      return now.isAfter(seen.plus(IDLE)) || now.isAfter(since.plus(LONGEST));
    }
  }

  /** Signs somebody in: always under a new secret, so that a planted one is worth nothing. */
  String begin(String name) {
    Instant now = clock.wall();
    open.values().removeIf(s -> s.isOver(now));
    String secret = secret();
    open.put(secret, new Session(name, secret(), now, now));
    return secret;
  }

  /** The session of a secret, if it is not over. */
  Optional<Session> of(String secret) {
    Instant now = clock.wall();
    Session live =
        open.computeIfPresent(
            secret,
            (k, s) -> s.isOver(now) ? null : new Session(s.name(), s.proof(), s.since(), now));
    return Optional.ofNullable(live);
  }

  /** The same, without counting as a sign of life: a page asks by itself, and nobody sits there. */
  Optional<Session> glance(String secret) {
    return Optional.ofNullable(open.get(secret)).filter(s -> !s.isOver(clock.wall()));
  }

  /** Whether nobody was told yet that this secret opens nothing: a page may ask again and again. */
  boolean isNews(String secret) {
    if (told.size() >= MOST_TOLD) {
      told.clear();
    }
    return told.add(secret);
  }

  void end(String secret) {
    open.remove(secret);
  }

  String secret() {
    byte[] bytes = new byte[SECRET_BYTES];
    random.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }
}
