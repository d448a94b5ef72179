package corewright.bench.wire;

/** What a reader of the stream has to report, in the order of the wire. */
public sealed interface FrameEvent {

  /**
   * A whole frame, checked, and the first of its number.
   *
   * @param payload handed over, never kept
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, to one reader, and never compared
  record Good(int type, int sequence, byte[] payload) implements FrameEvent {}

  /** A frame whose header is right and whose content is not. Its content is never used. */
  record Broken(int type, int sequence) implements FrameEvent {}

  /**
   * Numbers that never came, broken ones among them; reported before the frame that shows it.
   *
   * @param count how many
   */
  record Lost(int count) implements FrameEvent {}

  /** A frame that was there already; dropped. */
  record Repeated(int type, int sequence) implements FrameEvent {}
}
