package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import org.jdbi.v3.core.Handle;

/** Quotes and deposits as rows. */
final class AgreementView {
  private AgreementView() {}

  static void apply(Handle handle, Event event, EventKind kind, JsonNode body) {
    switch (kind) {
      case QUOTED ->
          handle.execute(
              "INSERT INTO agreement (number, customer, mode, family, price, fee, currency, until,"
                  + " state, answered, tag) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, '')",
              event.tag(),
              body.get("customer").asText(),
              body.get("mode").asText(),
              body.get("family").asText(),
              body.at("/price/hundredths").asLong(),
              body.at("/fee/hundredths").asLong(),
              body.at("/price/currency").asText(),
              body.get("until").asText(),
              isBelow(body) ? "approved" : "quoted",
              isBelow(body) ? "agreed beforehand up to " + approveBelow(body) : "");
      case ANSWERED_QUOTE ->
          handle.execute(
              "UPDATE agreement SET state = ?, answered = ? WHERE number = ?",
              body.get("state").asText(),
              body.get("by").asText() + ", " + body.get("channel").asText(),
              event.tag());
      case ARRIVED ->
          handle.execute(
              "UPDATE agreement SET tag = ? WHERE number = ?",
              body.get("tag").asText(),
              event.tag());
      case DEPOSIT_TAKEN ->
          handle.execute(
              "INSERT INTO deposit (number, customer, amount, currency, taken, due, about, outcome,"
                  + " credit, settled, tag) VALUES (?, ?, ?, ?, ?, ?, ?, '', 0, '', '')",
              event.tag(),
              body.get("customer").asText(),
              body.get("amount").asLong(),
              body.get("currency").asText(),
              body.get("taken").asText(),
              body.get("due").asText(),
              body.get("about").asText());
      case DEPOSIT_SETTLED ->
          handle.execute(
              "UPDATE deposit SET outcome = ?, credit = ?, settled = ?, tag = ? WHERE number = ?",
              body.get("ending").asText(),
              body.get("credit").asLong(),
              body.get("settled").asText(),
              body.get("tag").asText(),
              event.tag());
      default -> {
        // persons and places are kept outside of what is told from events
        if (!kind.isOfNoUnit()) {
          throw new IllegalArgumentException(kind + " is no agreement");
        }
      }
    }
  }

  private static boolean isBelow(JsonNode body) {
    return body.at("/price/hundredths").asLong() <= body.at("/approveBelow/hundredths").asLong();
  }

  private static Money approveBelow(JsonNode body) {
    return new Money(
        body.at("/approveBelow/hundredths").asLong(), body.at("/approveBelow/currency").asText());
  }
}
