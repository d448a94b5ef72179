package corewright.station.web.rules;

import corewright.measures.Figures;
import corewright.profiles.Catalogue;
import corewright.profiles.CheckItem;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Variant;
import corewright.station.web.When;
import corewright.station.work.SignedLimits;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** One family as the shop holds to it: builds, key, limits with where each number comes from. */
public record FamilyPage(
    String id,
    String title,
    String what,
    String origin,
    List<Build> builds,
    List<Key> key,
    List<Held> profiles,
    List<CheckItem> checklist,
    Signing signing,
    boolean signer) {
  private static final int HASH_SHOWN = 12;

  /** One build. */
  public record Build(String id, String title, String serviceable, String why, String share) {}

  /** One question of the key, with what each build answers. */
  public record Key(String question, String look, String sure, List<String> answers) {}

  /** One profile with its limits. */
  public record Held(
      String id, String title, String origin, String rule, List<Line> limits, Signing signing) {}

  /**
   * Who answers for one text, and what is signed.
   *
   * @param sha256 of the text that is shown
   */
  public record Signing(String what, String sha256, String words, boolean answeredFor) {
    static Signing of(SignedLimits.Held held) {
      SignedLimits.Standing standing = held.standing();
      return new Signing(
          held.what(),
          held.sha256(),
          standing
              .signed()
              .map(s -> "Signed by " + s.who() + ", " + When.moment(s.at()))
              .orElse(
                  standing.delivered()
                      ? "As delivered with the program; nobody here has signed it yet"
                      : "Changed, and not signed: no certificate is written under it"),
          standing.answeredFor());
    }
  }

  /** One limit. */
  public record Line(String quantity, String limit, String band, String load, String why) {}

  static FamilyPage of(
      Catalogue catalogue, Family family, List<SignedLimits.Held> held, boolean signer) {
    Map<String, Signing> signing =
        held.stream().map(Signing::of).collect(Collectors.toMap(Signing::what, s -> s));
    return new FamilyPage(
        family.id(),
        family.title(),
        Figures.number(family.input_V(), 1)
            + " V in, at most "
            + Figures.number(family.inputCeiling_V(), 1)
            + " V; "
            + Figures.number(family.output_V(), 1)
            + " V out at up to "
            + Figures.number(family.ratedLoad_A(), 2)
            + " A",
        "revision " + family.revision() + ", hash " + shown(family.origin().sha256()),
        family.variants().stream().map(FamilyPage::build).toList(),
        family.cues().stream().map(cue -> key(cue, family)).toList(),
        catalogue.profileIds(family.id()).stream()
            .map(catalogue::profile)
            .map(p -> held(p, Objects.requireNonNull(signing.get("profile " + p.id()))))
            .toList(),
        family.checklist(),
        Objects.requireNonNull(signing.get("family " + family.id())),
        signer);
  }

  private static Build build(Variant v) {
    return new Build(
        v.id(),
        v.title(),
        switch (v.serviceable()) {
          case YES -> "can be rebuilt";
          case CONDITIONAL -> "can be rebuilt on conditions";
          case NO -> "cannot be rebuilt";
        },
        v.why(),
        Figures.number(100 * v.prior(), 0) + " %");
  }

  private static Key key(Cue cue, Family family) {
    return new Key(
        cue.question(),
        cue.look(),
        Figures.number(cue.reliability(), 2),
        family.variants().stream()
            .map(
                v ->
                    v.id()
                        + ": "
                        + String.join(" or ", v.expected().getOrDefault(cue.id(), List.of("any"))))
            .toList());
  }

  private static Held held(Profile p, Signing signing) {
    return new Held(
        p.id(),
        p.title(),
        "revision " + p.revision() + ", hash " + shown(p.origin().sha256()),
        p.purpose() == Profile.Purpose.ARRIVAL
            ? "simple acceptance: U is stated and does not decide"
            : "guard band of U: what is within U of a limit does not pass",
        p.limits().stream().map(FamilyPage::line).toList(),
        signing);
  }

  private static Line line(Limit l) {
    String unit = l.quantity().unit().symbol();
    String step = l.edge().isPresent() ? " for each A of the step" : "";
    return new Line(
        l.quantity().title() + (l.headline() ? ", the headline" : ""),
        Figures.plain(l.pass())
            + " "
            + unit
            + (l.side() == Limit.Side.AT_LEAST ? " or more" : " or less")
            + step,
        l.pass() == l.fail()
            ? "none"
            : "fails beyond " + Figures.plain(l.fail()) + " " + unit + step,
        Double.isInfinite(l.to_A())
            ? Figures.plain(l.from_A()) + " A and more"
            : Figures.plain(l.from_A()) + " to " + Figures.plain(l.to_A()) + " A",
        l.why());
  }

  static String shown(String hash) {
    return hash.substring(0, Math.min(HASH_SHOWN, hash.length()));
  }
}
