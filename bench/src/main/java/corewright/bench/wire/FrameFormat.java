package corewright.bench.wire;

/** The fixed numbers of WIRE.md, version 1. */
final class FrameFormat {
  static final int SYNC_0 = 0x43;
  static final int SYNC_1 = 0x57;
  static final int VERSION = 1;

  static final int HEADER_BYTES = 10;
  static final int CHECK_BYTES = 4;
  static final int MOST_PAYLOAD_BYTES = 32_768;

  static final int IDENTITY = 0x01;
  static final int DONE = 0x02;
  static final int REFUSED = 0x03;
  static final int DATA = 0x04;
  static final int ALIVE = 0x05;

  static final int IDENTIFY = 0x81;
  static final int START = 0x82;
  static final int ACKNOWLEDGE = 0x83;
  static final int STOP = 0x84;
  static final int HEARTBEAT = 0x85;
  static final int RELAY = 0x86;

  private FrameFormat() {}
}
