package corewright.station.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.run.Clock;
import corewright.station.work.PortList;
import corewright.station.work.PortList.Entry;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the serial ports; speaks to what hangs on them only when asked to. */
@Command(
    name = "ports",
    mixinStandardHelpOptions = true,
    description = {
      "Lists the serial ports of this computer, and what to write as the port into a bench"
          + " description, so that it stays right in another socket: usb:VENDOR:PRODUCT:SERIAL of"
          + " the adapter, or idn:MAKER,MODEL,SERIAL as the instrument answers.",
    },
    footer = {
      "",
      "Examples:",
      "  corewright ports                 lists them, sends nothing",
      "  corewright ports --ask           asks each of them who is there"
    })
final class PortsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--ask",
      description =
          "Ask each port *IDN?, and what is silent whether it is a fixture's board. What is no"
              + " instrument gets these bytes too.")
  private boolean ask;

  @Option(
      names = "--baud",
      paramLabel = "RATE",
      defaultValue = "115200",
      description = "Line rate for --ask, bit/s (${DEFAULT-VALUE}).")
  private int baud;

  @Option(names = "--json", description = "Report as JSON.")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    List<Entry> ports = new PortList(Clock.system()).list(ask, baud);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(new ObjectMapper().writeValueAsString(tree(ports)));
    } else if (ports.isEmpty()) {
      out.println("No serial port. Plug the adapter in; on Linux, join the group that owns it.");
    } else {
      ports.forEach(p -> out.println(line(p)));
    }
    return ExitCodes.DONE;
  }

  private static String line(Entry entry) {
    String usb = entry.port().usb().isEmpty() ? "" : "  USB " + entry.port().usb();
    return entry.port().path()
        + "  "
        + entry.port().title()
        + usb
        + (entry.name().equals(entry.port().path()) ? "" : "  name it " + entry.name())
        + entry.answer().map(a -> System.lineSeparator() + "    " + a).orElse("");
  }

  private static ArrayNode tree(List<Entry> ports) {
    ArrayNode list = new ObjectMapper().createArrayNode();
    for (Entry entry : ports) {
      ObjectNode port = list.addObject();
      port.put("path", entry.port().path());
      port.put("title", entry.port().title());
      port.put("usb", entry.port().usb());
      port.put("serial", entry.port().serial());
      port.put("answer", entry.answer().orElse(null));
      port.put("name", entry.name());
    }
    return list;
  }
}
