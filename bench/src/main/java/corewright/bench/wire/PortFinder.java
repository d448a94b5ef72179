package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.port.Links;
import corewright.bench.port.PortInfo;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Characters;
import corewright.fixtures.describe.PortName;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Finds the port behind each instrument that a bench description names by its USB adapter or by its
 * answer. A port is asked only when an answer has to be found, and then whatever hangs on it gets
 * {@code *IDN?} and, if it does not understand that, the question of a fixture's board. No port
 * that is named otherwise is asked.
 */
public final class PortFinder {
  private static final String TTY = "/dev/tty.";
  private static final String CU = "/dev/cu.";
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  private final Links links;
  private final Supplier<List<PortInfo>> ports;
  private final Clock clock;
  private final Duration patience;

  /**
   * @param links what opens ports
   * @param ports every port that this computer has now
   */
  public PortFinder(Links links, Supplier<List<PortInfo>> ports, Clock clock) {
    this(links, ports, clock, PATIENCE);
  }

  PortFinder(Links links, Supplier<List<PortInfo>> ports, Clock clock, Duration patience) {
    this.links = links;
    this.ports = ports;
    this.clock = clock;
    this.patience = patience;
  }

  /**
   * One port, and who answers there.
   *
   * @param identity maker, model, serial, firmware; empty if nobody says so
   * @param board it is a fixture's board, which speaks frames
   * @param why in place of an identity: what came instead
   */
  public record Heard(PortInfo port, Optional<String> identity, boolean board, String why) {}

  /**
   * The same bench with each port as it is called today.
   *
   * @throws InstrumentFault if a name fits no port, or more than one; says which there are and what
   *     to write
   */
  public BenchDescription bind(BenchDescription bench) {
    Map<String, PortName> names = new LinkedHashMap<>();
    for (Connection c : bench.instruments()) {
      if (!c.isByHand()) {
        names.put(c.role(), PortName.of(c.port()));
      }
    }
    if (names.values().stream().allMatch(n -> n instanceof PortName.AsItStands)) {
      return bench;
    }
    List<PortInfo> all = present();
    Map<String, String> found = new LinkedHashMap<>();
    names.forEach(
        (role, name) -> {
          if (name instanceof PortName.AsItStands path) {
            take(found, role, path.text());
          } else if (name instanceof PortName.Usb usb) {
            take(found, role, PortChoice.adapter(role, usb, all).path());
          }
        });
    List<PortInfo> left = all.stream().filter(p -> !found.containsValue(p.path())).toList();
    Map<String, Heard> heard = new HashMap<>();
    names.forEach(
        (role, name) -> {
          if (name instanceof PortName.Answer answer) {
            Connection line = bench.instrument(role).orElseThrow();
            List<Heard> said = left.stream().map(p -> asked(p, line, heard)).toList();
            take(found, role, PortChoice.answering(role, answer, said).path());
          }
        });
    return bench.withPorts(found);
  }

  private Heard asked(PortInfo port, Connection line, Map<String, Heard> heard) {
    return heard.computeIfAbsent(
        port.path() + " " + line.baud() + " " + line.characters(),
        once -> ask(port, line.baud(), line.characters()));
  }

  private static void take(Map<String, String> found, String role, String path) {
    for (Map.Entry<String, String> other : found.entrySet()) {
      if (other.getValue().equals(path)) {
        throw new InstrumentFault(
            role,
            "finding its port",
            path + " is the " + other.getKey() + "'s already",
            "Name each of the two more closely, with a serial number.");
      }
    }
    found.put(role, path);
  }

  /**
   * Asks every port who is there: {@code *IDN?}, then the board's question, both without parity.
   *
   * @param baud line rate, bit/s
   */
  public List<Heard> survey(int baud) {
    return present().stream().map(p -> ask(p, baud, Characters.NONE_1)).toList();
  }

  private List<PortInfo> present() {
    return once(ports.get());
  }

  /** Every port once: a system that lists it as tty and cu lets only cu open without a carrier. */
  static List<PortInfo> once(List<PortInfo> all) {
    Set<String> paths = all.stream().map(PortInfo::path).collect(Collectors.toSet());
    return all.stream()
        .filter(p -> !p.path().startsWith(TTY) || !paths.contains(p.path().replace(TTY, CU)))
        .toList();
  }

  private Heard ask(PortInfo port, int baud, Characters characters) {
    try (Link link = links.open("port", port.path(), baud, characters)) {
      String answer;
      try {
        answer = WhoIsThere.ask(link, clock, patience);
      } catch (InstrumentFault silent) {
        return board(port, link, silent.found());
      }
      return isIdentity(answer)
          ? new Heard(port, Optional.of(answer), false, "")
          : board(port, link, "it says '" + Texts.printable(answer) + "'");
    } catch (InstrumentFault refused) {
      return new Heard(port, Optional.empty(), false, refused.found());
    }
  }

  private Heard board(PortInfo port, Link link, String why) {
    try {
      String identity = FramedDigitizer.open("port", link, clock).identity();
      return new Heard(port, Optional.of(identity), true, "");
    } catch (InstrumentFault none) {
      return new Heard(port, Optional.empty(), false, why);
    }
  }

  private static boolean isIdentity(String answer) {
    return answer.split(",", -1).length == 4
        && answer.chars().allMatch(c -> c >= 0x20 && c < 0x7F); // IEEE 488.2, 10.14.3: ASCII
  }
}
