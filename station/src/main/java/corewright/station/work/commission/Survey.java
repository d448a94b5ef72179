package corewright.station.work.commission;

import corewright.bench.port.Links;
import corewright.bench.port.PortInfo;
import corewright.bench.run.Clock;
import corewright.bench.wire.PortChoice;
import corewright.bench.wire.PortFinder;
import corewright.bench.wire.PortFinder.Heard;
import corewright.files.BadFile;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.describe.Dialect;
import corewright.station.work.Home;
import corewright.station.work.commission.Answering.Candidate;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Asks every port who is there, and which dialects know the answer. */
public final class Survey {
  private final Links links;
  private final Clock clock;
  private final List<Dialect> dialects = new ArrayList<>();

  /**
   * @param beside folder in which dialects of one's own may lie; where the bench's file will be
   */
  public Survey(Home home, Path beside, Links links, Clock clock) {
    this.links = links;
    this.clock = clock;
    read(home.dialects());
    if (!beside.equals(home.dialects())) {
      read(beside);
    }
  }

  /**
   * Every port once: at each rate only those are asked that were silent before.
   *
   * @param listed what this computer lists
   * @param more paths that somebody has named besides, as a link that the system has made, a
   *     pseudo-terminal or {@code tcp:ADDRESS:PORT}; no list has those
   * @param rates line rates, bit/s; the likely one first
   */
  public List<Answering> of(List<PortInfo> listed, Collection<String> more, List<Integer> rates) {
    List<PortInfo> left = new ArrayList<>(listed);
    more.stream()
        .filter(path -> listed.stream().noneMatch(p -> p.path().equals(path)))
        .forEach(path -> left.add(new PortInfo(path, "", "", "")));
    List<Answering> heard = new ArrayList<>();
    for (int baud : rates) {
      for (Heard h : new PortFinder(links, () -> left, clock).survey(baud)) {
        boolean last = baud == rates.get(rates.size() - 1);
        if (h.identity().isPresent() || last) {
          heard.add(new Answering(h, baud, name(h, listed), may(h)));
        }
      }
      heard.forEach(a -> left.remove(a.heard().port()));
    }
    return heard.stream().map(a -> isAlone(a, heard) ? a : a.byPath()).toList();
  }

  /** What no list has cannot be looked for by another name either. */
  private static String name(Heard heard, List<PortInfo> listed) {
    return listed.contains(heard.port()) ? PortChoice.lasting(heard, listed) : heard.port().path();
  }

  /** Two instruments may give the same answer, serial number and all. */
  private static boolean isAlone(Answering one, List<Answering> all) {
    return all.stream().filter(a -> a.name().equals(one.name())).count() == 1;
  }

  /** Dialects of a role, for an instrument that none of them knows. */
  public List<String> dialects(String role) {
    return dialects.stream().filter(d -> d.role().equals(role)).map(Dialect::id).sorted().toList();
  }

  private List<Candidate> may(Heard heard) {
    if (heard.board()) {
      return List.of(new Candidate("digitizer", ""));
    }
    return heard.identity().stream()
        .flatMap(i -> dialects.stream().filter(d -> d.identifies(i)))
        .map(d -> new Candidate(d.role(), d.id()))
        .toList();
  }

  private void read(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      files
          .filter(f -> f.toString().endsWith(".json") && !f.toString().endsWith(".schema.json"))
          .sorted()
          .flatMap(f -> dialect(f).stream())
          .forEach(dialects::add);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the dialects in " + folder + " cannot be read", unreadable);
    }
  }

  /** Empty for a file that is none: a bench lies there too. */
  private static Optional<Dialect> dialect(Path file) {
    try {
      return Optional.of(Descriptions.dialect(file));
    } catch (BadFile other) {
      return Optional.empty();
    }
  }
}
