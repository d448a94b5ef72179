package corewright.bench.run;

import java.util.Optional;

/** The interlock chain has opened. */
final class ChainOpen implements Trip {

  @Override
  public Optional<Seen> look(FrameView view) {
    return view.frame().status().interlockWhole()
        ? Optional.empty()
        : Trip.fault(
            "The interlock chain opened.",
            "Close the cover, release the stop button and begin again.");
  }
}
