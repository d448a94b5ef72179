package corewright.station.work;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.record.Dossier;
import corewright.profiles.Catalogue;
import corewright.reports.ledger.Fitted;
import corewright.reports.ledger.Happened;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Standing;
import corewright.reports.ledger.Stores.Lot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rebuild of a unit: what was done to it on this visit, and what the store has for it. */
public final class Rebuilding {
  private final Catalogue catalogue;
  private final Ledger ledger;

  Rebuilding(Catalogue catalogue, Ledger ledger) {
    this.catalogue = catalogue;
    this.ledger = ledger;
  }

  /**
   * Where a rebuild stands.
   *
   * @param cautions to be read before the cover comes off
   * @param fitted parts by position, with their lots and what the removed ones measured
   * @param did what else was done, lines that a customer can read
   * @param found groups that the teardown showed to be at fault
   * @param lots those of which something is left
   */
  public record State(
      Dossier dossier,
      Standing standing,
      List<String> cautions,
      List<Fitted> fitted,
      List<String> did,
      List<String> found,
      List<Lot> lots) {
    public State {
      cautions = List.copyOf(cautions);
      fitted = List.copyOf(fitted);
      did = List.copyOf(did);
      found = List.copyOf(found);
      lots = List.copyOf(lots);
    }
  }

  public State of(String tag) {
    Dossier dossier = ledger.dossier(tag);
    List<Fitted> fitted = new ArrayList<>();
    List<String> did = new ArrayList<>();
    for (Happened event : ledger.lives().history(tag)) {
      if (event.kind().equals("received")) {
        fitted.clear(); // a visit begins: what was done before belongs to the one before
        did.clear();
      } else if (event.kind().equals("rebuilt")) {
        event.body().path("lines").forEach(line -> did.add(line.asText()));
      } else if (event.kind().equals("worked")) {
        event.body().path("did").forEach(line -> did.add(line.asText()));
        event.body().path("fitted").forEach(part -> fitted.add(fitted(part)));
      }
    }
    return new State(
        dossier,
        ledger.lives().standing(tag),
        Cautions.of(catalogue.family(dossier.core().family())),
        fitted,
        did,
        found(dossier),
        ledger.stores().lots().stream().filter(l -> l.remaining() > 0).toList());
  }

  /**
   * The part that a lot holds.
   *
   * @throws Refused if the store has no such lot
   */
  public String part(String lot) {
    Optional<Lot> known =
        ledger.stores().lots().stream().filter(l -> l.lot().equals(lot)).findFirst();
    return known
        .map(Lot::part)
        .orElseThrow(
            () -> new Refused("There is no lot " + lot + " in store", "Take it into store first."));
  }

  private List<String> found(Dossier dossier) {
    return ledger.facts().confirmed().stream()
        .filter(c -> c.tag().equals(dossier.core().tag()) && c.visit() == dossier.visit())
        .map(c -> c.fault())
        .toList();
  }

  private static Fitted fitted(JsonNode part) {
    return new Fitted(
        part.path("place").asText(),
        part.path("part").asText(),
        part.path("lot").asText(),
        part.path("removed").asText());
  }
}
