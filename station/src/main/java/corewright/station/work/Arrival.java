package corewright.station.work;

import corewright.bench.life.Stage;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.Ledger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A core at the counter: a new one, or one that was here before. */
public final class Arrival {
  private static final String CLAIM = "claim";

  private final Reception reception;
  private final Ledger ledger;

  Arrival(Reception reception, Ledger ledger) {
    this.reception = reception;
    this.ledger = ledger;
  }

  /**
   * Receives a core. A unit with an open claim comes in as a claim, and the decision table is told
   * so.
   *
   * @throws Refused if the unit is in the shop already
   */
  public String receive(Answers answers, Optional<String> tag) {
    if (tag.isEmpty() || ledger.find(tag.get()).stream().noneMatch(f -> f.why().equals("tag"))) {
      return reception.receive(answers, tag);
    }
    Stage stage = ledger.lives().standing(tag.get()).life().stage();
    if (stage != Stage.SHIPPED) {
      throw new Refused(
          tag.get() + " was received before and is " + stage.words(),
          "Go on with it as it stands; a unit begins a new visit only after it has left.");
    }
    return reception.receive(withClaim(answers, ledger.claims().of(tag.get())), tag);
  }

  private static Answers withClaim(Answers answers, List<Claim> claims) {
    if (claims.stream().noneMatch(c -> c.closed().isEmpty())
        || answers.agreed().containsKey(CLAIM)) {
      return answers;
    }
    boolean foundNothingBefore = claims.stream().anyMatch(c -> c.claimClass().equals("W4"));
    Map<String, String> agreed = new HashMap<>(answers.agreed());
    agreed.put(CLAIM, foundNothingBefore ? "repeated" : "first");
    return new Answers(
        answers.who(),
        answers.received(),
        answers.cues(),
        answers.checklist(),
        answers.symptoms(),
        agreed);
  }
}
