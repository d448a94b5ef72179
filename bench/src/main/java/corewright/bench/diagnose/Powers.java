package corewright.bench.diagnose;

import static corewright.bench.diagnose.Look.reading;

import corewright.bench.diagnose.Siblings.Spread;
import corewright.measures.Quantity;
import java.util.Optional;
import java.util.stream.Stream;

/** Signs in what the unit takes: at rest, and for each further watt that comes out. */
final class Powers {
  private static final double IDLE_HIGH = 0.05;
  private static final double IDLE_RAISED = 0.01;
  private static final double LOSS_HIGH = 12;
  private static final double LOSS_RAISED = 4;

  private final Look look;
  private final Siblings siblings;

  Powers(Look look, Siblings siblings) {
    this.look = look;
    this.siblings = siblings;
  }

  Stream<Seen> seen() {
    return Stream.of(idle(), loss()).flatMap(Optional::stream);
  }

  private Optional<Seen> idle() {
    return siblings
        .of(Trait.IDLE)
        .flatMap(healthy -> Scalar.of(Trait.IDLE, look).map(watt -> idle(watt, healthy)));
  }

  private Seen idle(Scalar watt, Spread healthy) {
    double more = (watt.value() - healthy.median()) / look.rated_W();
    boolean raised = more > IDLE_RAISED && healthy.exceeds(watt.value(), 5, 1.2);
    return new Seen(
        more > IDLE_HIGH ? Sign.IDLE_HIGH : raised ? Sign.IDLE_RAISED : Sign.IDLE_NORMAL,
        "at rest it draws "
            + reading(watt.hold(), Quantity.INPUT_CURRENT)
            + ", "
            + healthy.words(watt.value(), 1, "W"));
  }

  private Optional<Seen> loss() {
    return siblings
        .of(Trait.LOSS)
        .flatMap(healthy -> Scalar.of(Trait.LOSS, look).map(lost -> loss(lost, healthy)));
  }

  private static Seen loss(Scalar lost, Spread healthy) {
    double more = lost.value() - healthy.median();
    return new Seen(
        more > LOSS_HIGH
            ? Sign.LOSS_HIGH
            : more > LOSS_RAISED ? Sign.LOSS_RAISED : Sign.LOSS_NORMAL,
        "lost of each further watt that goes in: " + healthy.words(lost.value(), 1, "%"));
  }
}
