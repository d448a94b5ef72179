package corewright.bench.record;

import java.time.Instant;

/**
 * What a person saw.
 *
 * @param cue id of the cue or checklist item
 * @param answer one of its answers, as read
 * @param who who looked
 */
public record CueAnswer(String cue, String answer, String who, Instant when) {}
