package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * One event as it is told to people and programs.
 *
 * @param kind what happened, as {@code run ended}
 * @param at when it was written down, UTC
 * @param body the event's own words; its keys are never renamed
 * @param head where it stands, as {@code bench-1:1042} and its hash
 */
public record Happened(String kind, String at, String who, String tag, JsonNode body, Head head) {}
