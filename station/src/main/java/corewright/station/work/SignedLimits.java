package corewright.station.work;

import corewright.bench.life.Never;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.document.Answered;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.SignOffs.SignOff;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which limits somebody answers for. The texts that the program came with count as delivered until
 * the shop signs its own of the same file; from then on only what was signed counts, so that no
 * newer program changes a limit silently. What nobody answers for never certifies.
 */
public final class SignedLimits {
  private final Catalogue catalogue;
  private final Ledger ledger;

  SignedLimits(Catalogue catalogue, Ledger ledger) {
    this.catalogue = catalogue;
    this.ledger = ledger;
  }

  /**
   * One file as it is now.
   *
   * @param what as {@code profile sd48-ship}
   */
  public record Held(String what, int revision, String sha256, Standing standing) {}

  /**
   * Who answers for a text.
   *
   * @param signed whose signature it carries; empty where it has none
   * @param delivered whether it came with the program and counts as that
   */
  public record Standing(Optional<SignOff> signed, boolean delivered) {
    /** Whether somebody does. */
    public boolean answeredFor() {
      return signed.isPresent() || delivered;
    }
  }

  /** The family and its profiles, as they are now. */
  public List<Held> of(Family family) {
    List<Held> held = new ArrayList<>();
    List<SignOff> signed = ledger.signOffs().all();
    held.add(
        held(
            "family " + family.id(),
            family.revision(),
            family.origin().sha256(),
            Instant.MAX,
            signed));
    for (String id : catalogue.profileIds(family.id())) {
      Profile profile = catalogue.profile(id);
      held.add(
          held(
              "profile " + id, profile.revision(), profile.origin().sha256(), Instant.MAX, signed));
    }
    return held;
  }

  /** Every signature, the newest first. */
  public List<SignOff> all() {
    List<SignOff> all = new ArrayList<>();
    ledger.signOffs().all().forEach(s -> all.add(0, s));
    return all;
  }

  /**
   * Signs a file as it is now.
   *
   * @param what as {@code profile sd48-ship}
   * @param sha256 of the text that the signer has seen; empty: the one that is there
   * @throws Refused if there is no such file, if it changed meanwhile, or if its text differs from
   *     the delivered one and its revision does not
   */
  public Held sign(String what, String sha256, String who) {
    Held now =
        catalogue.families().stream()
            .flatMap(f -> of(f).stream())
            .filter(h -> h.what().equals(what))
            .findFirst()
            .orElseThrow(
                () ->
                    new Refused(
                        "There are no limits called '" + what + "'",
                        "'corewright sign' without a name lists those that there are."));
    if (!sha256.isEmpty() && !sha256.equals(now.sha256())) {
      throw new Refused(
          "The file of " + what + " has changed since it was shown",
          "Look at it again, then sign.");
    }
    Delivered.texts().stream()
        .filter(d -> d.what().equals(what) && !d.sha256().equals(now.sha256()))
        .filter(d -> d.revision() >= now.revision())
        .findFirst()
        .ifPresent(
            d -> {
              throw new Refused(
                  Never.CHANGE_A_LIMIT_UNSIGNED.said(
                      "Revision "
                          + d.revision()
                          + " of "
                          + what
                          + " was delivered with another text"),
                  "Count the revision in the file up, above " + d.revision() + ", and sign that.");
            });
    ledger.signOffs().sign(what, now.revision(), now.sha256(), who);
    return held(what, now.revision(), now.sha256(), Instant.MAX, ledger.signOffs().all());
  }

  /** What a run was held against and nobody answers for, as {@code profile sd48-ship}. */
  public List<String> unsigned(RunRecord run, String family) {
    return held(run, family)
        .filter(held -> !held.standing().answeredFor())
        .map(Held::what)
        .toList();
  }

  /** Who answers for the limits of a unit's last run; empty where it has none. */
  List<Answered> answered(Dossier dossier, Instant by) {
    return dossier.runs().stream()
        .reduce((a, b) -> b)
        .map(run -> answered(run, dossier.core().family(), by))
        .orElse(List.of());
  }

  /**
   * Who answers for the limits that a run was held against.
   *
   * @param by what was signed later does not count
   */
  public List<Answered> answered(RunRecord run, String family, Instant by) {
    return held(run, family)
        .map(
            held ->
                new Answered(
                    held.what(),
                    held.standing()
                        .signed()
                        .filter(s -> !s.at().isAfter(by))
                        .map(s -> new Answered.Signature(s.who(), s.at())),
                    held.standing().delivered()))
        .toList();
  }

  private Stream<Held> held(RunRecord run, String family) {
    List<SignOff> signed = ledger.signOffs().all();
    Instant at = run.started();
    return Stream.of(
        held("family " + family, 0, run.family().sha256(), at, signed),
        held(
            "profile " + run.profileId(),
            run.profileRevision(),
            run.profile().sha256(),
            at,
            signed));
  }

  /**
   * Refuses what says that a unit passed, where nobody answers for the limits of its last run. What
   * an emulated bench shows certifies nothing anyway.
   */
  void mustBeAnsweredFor(Dossier dossier) {
    dossier.runs().stream()
        .reduce((a, b) -> b)
        .filter(run -> run.source() != Source.EMULATED)
        .map(run -> unsigned(run, dossier.core().family()))
        .filter(names -> !names.isEmpty())
        .ifPresent(
            names -> {
              throw new Refused(
                  Never.CHANGE_A_LIMIT_UNSIGNED.said(
                      "Nobody has signed the limits that unit "
                          + dossier.core().tag()
                          + " was held against: "
                          + String.join(", ", names)),
                  "Owner or inspector sign them on House rules or with 'sign'; if the file has"
                      + " changed since, test the unit again.");
            });
  }

  /**
   * @param at when the text was used: what was delivered counts until the shop's first signature
   */
  private static Held held(
      String what, int revision, String sha256, Instant at, List<SignOff> signed) {
    Optional<SignOff> mine = signed.stream().filter(s -> s.sha256().equals(sha256)).findFirst();
    boolean own = signed.stream().anyMatch(s -> s.what().equals(what) && !s.at().isAfter(at));
    boolean delivered =
        !own
            && Delivered.texts().stream()
                .anyMatch(d -> d.what().equals(what) && d.sha256().equals(sha256));
    return new Held(what, revision, sha256, new Standing(mine, delivered));
  }
}
