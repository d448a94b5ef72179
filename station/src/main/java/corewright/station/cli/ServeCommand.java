package corewright.station.cli;

import corewright.bench.run.Clock;
import corewright.station.web.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
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
            + " account. Nobody elsewhere can reach them.",
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
      description = "Where it listens, on 127.0.0.1 (${DEFAULT-VALUE}; 0 takes a free one).")
  private int port;

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
        Console console = Console.open(() -> shop.open("console", clock), clock, look ? 0 : port)) {
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

  private static void look(Console console, PrintWriter out) throws IOException {
    for (String page : PAGES) {
      URI at = URI.create("http://127.0.0.1:" + console.port() + "/" + page);
      try (InputStream in = at.toURL().openStream()) {
        out.println(page + ": " + in.readAllBytes().length + " bytes");
      }
    }
  }
}
