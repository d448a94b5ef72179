package corewright.station.web.live;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.locks.LockSupport;

/** A way to the console on which at times nothing arrives, while no connection breaks. */
final class Relay implements AutoCloseable {
  private static final int BYTES = 8192;
  private static final int TICK_NANOS = 5_000_000;

  private final ServerSocket door;
  private final int to;
  private volatile boolean silent;

  Relay(int to) throws IOException {
    this.to = to;
    this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    start(this::listen);
  }

  String at(String path) {
    return "http://127.0.0.1:" + door.getLocalPort() + path;
  }

  void silence(boolean nothingArrives) {
    silent = nothingArrives;
  }

  private void listen() {
    try {
      while (!door.isClosed()) {
        Socket browser = door.accept();
        Socket console = new Socket(InetAddress.getLoopbackAddress(), to);
        start(() -> pump(browser, console));
        start(() -> pump(console, browser));
      }
    } catch (IOException closed) {
      // nobody listens any more
    }
  }

  private void pump(Socket from, Socket into) {
    byte[] some = new byte[BYTES];
    try (from;
        into) {
      InputStream in = from.getInputStream();
      OutputStream out = into.getOutputStream();
      for (int n = in.read(some); n >= 0; n = in.read(some)) {
        while (silent) {
          LockSupport.parkNanos(TICK_NANOS);
        }
        out.write(some, 0, n);
        out.flush();
      }
    } catch (IOException gone) {
      // one side has left
    }
  }

  private static void start(Runnable work) {
    Thread thread = new Thread(work, "relay");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void close() throws IOException {
    silent = false;
    door.close();
  }
}
