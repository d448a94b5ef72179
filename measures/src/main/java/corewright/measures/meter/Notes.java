package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.MeterSettings;
import corewright.measures.hold.Hold;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** What a reader must know about a whole run, in sentences. */
final class Notes {
  private Notes() {}

  static String uBasis(MeterSettings settings) {
    if (settings.doubts().isEmpty()) {
      return "scatter and resolution only";
    }
    return "scatter, resolution, gain and offset of "
        + String.join(", ", new TreeSet<>(settings.doubts().keySet()));
  }

  static List<String> of(Capture capture, List<Hold> holds, MeterSettings settings) {
    List<String> notes = new ArrayList<>();
    settings
        .switching_Hz()
        .filter(f -> f > capture.sampleRate_Hz() / 2)
        .ifPresent(
            f ->
                notes.add(
                    "The converter switches at "
                        + Math.round(f)
                        + " Hz, above half the sample rate of "
                        + Math.round(capture.sampleRate_Hz())
                        + " Hz: its ripple is seen folded, and peaks between samples are missed."));
    if (capture.load().isEmpty()) {
      notes.add("The load current was not recorded, so the whole record is one hold.");
    } else if (holds.size() == 1) {
      notes.add("The measured load current never steps, so the whole record is one hold.");
    }
    for (int i = 0; i < holds.size(); i++) {
      if (holds.get(i).pulses() > 0) {
        notes.add(
            "In hold "
                + i
                + " the load left its level "
                + holds.get(i).pulses()
                + " times and came back: pulses, or a contact that opens.");
      }
    }
    if (!capture.gaps().isEmpty()) {
      int missing = capture.gaps().stream().mapToInt(Capture.Gap::count).sum();
      notes.add(missing + " samples are missing; windows that touch them are not read.");
    }
    if (capture.feeds().size() > 1) {
      notes.add(
          "input and inputMinimum are those of the first feed, "
              + capture.feeds().get(0).name()
              + ".");
    }
    return notes;
  }
}
