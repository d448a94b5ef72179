package corewright.bench.run;

import java.util.Optional;

/** The fixture's relay is not where it was put. */
final class RelayOpen implements Trip {

  @Override
  public Optional<Seen> look(FrameView view) {
    if (!view.relayClosed()) {
      return Optional.empty();
    }
    if (view.frame().status().watchdogTripped()) {
      return Trip.fault(
          "The fixture heard nothing from the station for too long and opened its relay.",
          "Close other programs, and check the digitizer's cable.");
    }
    return view.frame().status().relayClosed()
        ? Optional.empty()
        : Trip.fault(
            "The fixture's relay opened by itself.", "Have the fixture and its board checked.");
  }
}
