package corewright.bench.capture;

import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import java.util.Optional;

/**
 * What a capture's file holds for measuring.
 *
 * @param holds what was sampled while the profile's holds ran; empty if it never came to one
 * @param end how the run ended; empty if the file breaks off before
 */
record HeldCapture(CaptureHeader header, Optional<Capture> holds, Optional<RunEnd> end) {}
