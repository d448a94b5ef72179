package corewright.station.cli;

import corewright.bench.run.Clock;
import corewright.station.web.Console;
import corewright.station.web.Reach;
import corewright.station.work.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Opens the console. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    description =
        "Opens the shop's screens in a browser on this machine. The first start makes the owner's"
            + " account. Nobody elsewhere can reach them unless --address says so.",
    footer = {
      "",
      "Examples:",
      "  corewright serve --shop our-shop",
      "  corewright serve --look --shop our-shop    opens it, asks for its first pages, and leaves",
      "",
      "Ctrl-C closes it; a run that is on is taken to the safe state first."
    })
final class ServeCommand implements Callable<Integer> {
  private static final Duration GLANCE = Duration.ofMillis(100);
  private static final List<String> PAGES = List.of("first", "static/css/look.css", "in");

  @Spec private CommandSpec spec;
  @Mixin private ShopFolder shop;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "7348",
      description = "On which port (${DEFAULT-VALUE}; 0 takes a free one).")
  private int port;

  @Option(
      names = "--address",
      paramLabel = "ADDRESS",
      defaultValue = "127.0.0.1",
      description =
          "Where it listens (${DEFAULT-VALUE}: this machine alone). Any other needs --key-store and"
              + " an owner's account.")
  private String address = "127.0.0.1";

  @Option(
      names = "--name",
      paramLabel = "HOST",
      description = "A further host name under which it is asked for, as bench-room.lan.")
  private Set<String> names = new HashSet<>();

  @Option(
      names = "--key-store",
      paramLabel = "FILE",
      description = "Certificate and key, PKCS #12: pages then come over TLS.")
  private @Nullable Path keyStore;

  @Option(
      names = "--key-store-password-file",
      paramLabel = "FILE",
      description = "First line: the password of the key store.")
  private @Nullable Path keyStorePassword;

  @Option(
      names = "--look",
      description =
          "Only open it on a free port, ask for its first pages, and leave: to see whether it"
              + " works. The launcher makes its archive of classes so.")
  private boolean look;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Clock clock = Clock.system();
    try (StopKeys keys = new StopKeys();
        Console console = Console.open(() -> shop.open("console", clock), clock, reach())) {
      if (look) {
        look(console, out);
        return ExitCodes.DONE;
      }
      out.println("The console is at " + console.address());
      out.flush();
      while (keys.stop().requested().isEmpty()) {
        clock.pause(GLANCE);
      }
    }
    return ExitCodes.DONE;
  }

  private Reach reach() {
    if (look) {
      return Reach.here(0);
    }
    return new Reach(address, port, Optional.ofNullable(keyStore).map(this::tls), names);
  }

  private Reach.Tls tls(Path store) {
    if (keyStorePassword == null) {
      throw new Refused(
          "The key store " + store + " has no password to open it with",
          "Give --key-store-password-file.");
    }
    return new Reach.Tls(store, String.valueOf(Password.given(Optional.of(keyStorePassword))));
  }

  private static void look(Console console, PrintWriter out) throws IOException {
    for (String page : PAGES) {
      URI at = URI.create("http://127.0.0.1:" + console.port() + "/" + page);
      try (InputStream in = at.toURL().openStream()) {
        out.println(page + ": " + in.readAllBytes().length + " bytes");
      }
    }
  }
}
