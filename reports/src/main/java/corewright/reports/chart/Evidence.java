package corewright.reports.chart;

import corewright.bench.record.RunRecord;
import corewright.measures.Capture;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.util.Optional;

/**
 * What a picture is drawn from and a record does not hold itself. Whoever asks for a document
 * answers from the captures beside the ledger and from the texts that the run stored; an empty
 * answer leaves that part of the picture out and says so.
 */
public interface Evidence {

  /** The waveforms of a run; empty where the capture was not kept. */
  Optional<Capture> capture(RunRecord run);

  /** The family as it was when the run was made. */
  Optional<Family> family(RunRecord run);

  /** The profile as it was when the run was made. */
  Optional<Profile> profile(RunRecord run);
}
