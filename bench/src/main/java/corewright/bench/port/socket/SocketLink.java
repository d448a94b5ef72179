package corewright.bench.port.socket;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import java.io.Closeable;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.CancelledKeyException;
import java.nio.channels.ClosedSelectorException;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.time.Duration;
import java.util.List;

/** One socket. Behaves as a serial line does: a peer that is gone is a line that is lost. */
final class SocketLink implements Link {
  private final String role;
  private final String name;
  private final SocketChannel channel;
  private final Selector selector;
  private final Clock clock;
  private volatile boolean closed;

  private SocketLink(
      String role, String name, SocketChannel channel, Selector selector, Clock clock) {
    this.role = role;
    this.name = name;
    this.channel = channel;
    this.selector = selector;
    this.clock = clock;
  }

  static SocketLink open(String role, String name, InetSocketAddress address, Clock clock) {
    try {
      SocketChannel channel = SocketChannel.open(address);
      try {
        channel.setOption(StandardSocketOptions.TCP_NODELAY, true);
        channel.configureBlocking(false);
        return new SocketLink(role, name, channel, Selector.open(), clock);
      } catch (IOException refused) {
        channel.close();
        throw refused;
      }
    } catch (IOException refused) {
      throw new InstrumentFault(
          role,
          "opening " + name,
          "nobody listens there (" + refused.getMessage() + ")",
          "Start the emulated bench, and name its ports in the bench description.");
    }
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int read(byte[] into, Duration patience) {
    String doing = "reading from " + name;
    long deadline = clock.nanos() + patience.toNanos();
    try {
      while (true) {
        int count = channel.read(ByteBuffer.wrap(into));
        if (count < 0) {
          throw lost(doing);
        }
        if (count > 0 || !waitFor(SelectionKey.OP_READ, deadline)) {
          return count;
        }
      }
    } catch (IOException | ClosedSelectorException | CancelledKeyException broken) {
      throw lost(doing);
    }
  }

  @Override
  public void write(byte[] bytes, Duration patience) {
    String doing = "writing to " + name;
    long deadline = clock.nanos() + patience.toNanos();
    ByteBuffer left = ByteBuffer.wrap(bytes);
    try {
      while (left.hasRemaining()) {
        channel.write(left);
        if (left.hasRemaining() && !waitFor(SelectionKey.OP_WRITE, deadline)) {
          throw new InstrumentFault(
              role,
              doing,
              left.remaining() + " bytes were not taken within " + patience.toMillis() + " ms",
              "The emulated bench has stopped listening: start it again.");
        }
      }
    } catch (IOException | ClosedSelectorException | CancelledKeyException broken) {
      throw lost(doing);
    }
  }

  /** False once the deadline has passed. */
  private boolean waitFor(int operation, long deadline) throws IOException {
    long left_ms = (deadline - clock.nanos() + 999_999) / 1_000_000;
    if (left_ms <= 0 || closed) {
      return false;
    }
    channel.register(selector, operation);
    selector.select(left_ms);
    selector.selectedKeys().clear();
    return true;
  }

  @Override
  public void close() {
    closed = true;
    for (Closeable one : List.of(channel, selector)) {
      try {
        one.close();
      } catch (IOException broken) {
        // it is given back all the same
      }
    }
  }

  private InstrumentFault lost(String doing) {
    return new InstrumentFault(
        role,
        doing,
        closed ? "the port is closed" : "the line is lost",
        "Start the emulated bench again, then open the bench.");
  }
}
