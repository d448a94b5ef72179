package corewright.station.cli;

import corewright.bench.run.Clock;
import corewright.station.web.Console;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
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
    footer = {"", "Example:", "  corewright serve --shop our-shop", "", "Ctrl-C closes it."})
final class ServeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopFolder shop;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "7348",
      description = "Where it listens, on 127.0.0.1 (${DEFAULT-VALUE}; 0 takes a free one).")
  private int port;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    Clock clock = Clock.system();
    CountDownLatch over = new CountDownLatch(1);
    try (Console console = Console.open(() -> shop.open("console", clock), clock, port)) {
      Runtime.getRuntime().addShutdownHook(new Thread(over::countDown));
      out.println("The console is at " + console.address());
      out.flush();
      over.await();
    }
    return ExitCodes.DONE;
  }
}
