package corewright.reports.ledger;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;

/**
 * What somebody has to add to a run that was closed. The run itself is never changed.
 *
 * @param run id of the run
 * @param original hash of the event that closed it
 * @param text what is added or put right, in a sentence
 * @param reason why it was not so from the beginning
 * @param who answers for it
 */
@JsonIgnoreProperties(ignoreUnknown = true)
public record Amendment(String run, String original, String text, String reason, String who) {}
