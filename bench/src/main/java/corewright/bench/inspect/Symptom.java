package corewright.bench.inspect;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a customer can say of a fault, and how often it is said where each {@link Suspect} is at
 * fault. The answers to one question sum to 1 in each column. The trade's judgement, a start for a
 * shop's own.
 */
public enum Symptom {
  EVERY_OUTPUT(Kind.CODES, "every output", 0.55, 0.35, 0.45, 0.01, 0.05),
  SEVERAL_OUTPUTS(Kind.CODES, "several outputs", 0.15, 0.15, 0.20, 0.10, 0.15),
  ONE_OUTPUT(Kind.CODES, "one output", 0.06, 0.02, 0.05, 0.75, 0.15),
  SHARED_ONLY(Kind.CODES, "only supply, ground or module", 0.14, 0.38, 0.20, 0.01, 0.15),
  NO_CODES(Kind.CODES, "no codes", 0.10, 0.10, 0.10, 0.13, 0.50),

  ALWAYS(Kind.WHEN, "always", 0.30, 0.15, 0.15, 0.45, 0.25),
  COLD(Kind.WHEN, "cold", 0.30, 0.20, 0.10, 0.05, 0.15),
  HOT(Kind.WHEN, "hot", 0.20, 0.05, 0.10, 0.15, 0.15),
  LOW_SUPPLY(Kind.WHEN, "while cranking or on a low battery", 0.12, 0.45, 0.25, 0.05, 0.15),
  NOW_AND_THEN(Kind.WHEN, "now and then", 0.08, 0.15, 0.40, 0.30, 0.30),

  NOTHING_KNOWN(Kind.AFTER, "nothing known", 0.45, 0.40, 0.40, 0.55, 0.60),
  JUMP_START(Kind.AFTER, "jump start", 0.18, 0.10, 0.04, 0.04, 0.05),
  WATER(Kind.AFTER, "water", 0.12, 0.08, 0.16, 0.14, 0.10),
  WELDING(Kind.AFTER, "welding", 0.08, 0.02, 0.10, 0.04, 0.05),
  BATTERY_CHANGE(Kind.AFTER, "battery change", 0.05, 0.30, 0.10, 0.03, 0.10),
  EARLIER_REPAIR(Kind.AFTER, "earlier repair", 0.12, 0.10, 0.20, 0.20, 0.10);

  /** Which question it answers. */
  public enum Kind {
    CODES("symptom/codes", "Which fault codes did the customer report?"),
    WHEN("symptom/when", "When does it happen?"),
    AFTER("symptom/after", "After what did it begin?");

    private final String id;
    private final String question;

    Kind(String id, String question) {
      this.id = id;
      this.question = question;
    }

    /** The id under which the record keeps its answer. */
    public String id() {
      return id;
    }

    public String question() {
      return question;
    }

    /** The possible answers. */
    public List<String> answers() {
      return Arrays.stream(Symptom.values()).filter(s -> s.kind == this).map(s -> s.words).toList();
    }
  }

  private final Kind kind;
  private final String words;
  private final double module;
  private final double feed;
  private final double ground;
  private final double oneOutput;
  private final double other;

  Symptom(
      Kind kind,
      String words,
      double module,
      double feed,
      double ground,
      double oneOutput,
      double other) {
    this.kind = kind;
    this.words = words;
    this.module = module;
    this.feed = feed;
    this.ground = ground;
    this.oneOutput = oneOutput;
    this.other = other;
  }

  public Kind kind() {
    return kind;
  }

  public String words() {
    return words;
  }

  /** The symptom that these words stand for. */
  public static Optional<Symptom> of(Kind kind, String words) {
    return Arrays.stream(values()).filter(s -> s.kind == kind && s.words.equals(words)).findFirst();
  }

  /** How often it is said where {@code suspect} is at fault, 0 to 1. */
  double given(Suspect suspect) {
    return switch (suspect) {
      case MODULE -> module;
      case FEED -> feed;
      case GROUND -> ground;
      case ONE_OUTPUT -> oneOutput;
      case OTHER -> other;
    };
  }
}
