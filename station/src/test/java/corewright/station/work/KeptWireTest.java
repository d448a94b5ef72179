package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.run.Clock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log of whose run nothing came: it is told of where it says something, and goes where not. */
class KeptWireTest {
  private static final Clock CLOCK = Clock.system();

  @TempDir private Path folder;

  @Test
  void whatSaysNothingGoesAndWhatWentWrongBeforeTheRunIsKeptAndTold() throws IOException {
    Folders folders = Folders.at(folder);
    List<Path> told = new ArrayList<>();
    KeptWire.begin(true, folders, CLOCK, told::add).close();
    assertEquals(List.of(), told);
    assertEquals(0, logs(folders));

    try (KeptWire wire = KeptWire.begin(true, folders, CLOCK, told::add)) {
      wire.clock().nanos(); // somebody opened the bench
    }
    assertEquals(1, told.size());
    assertTrue(Files.readString(told.get(0)).contains(" engine T "), told.toString());

    KeptWire.none(folders, CLOCK).close();
    assertEquals(1, logs(folders));
  }

  @Test
  void theNameOfARunTellsItsUnit() {
    assertEquals(Optional.of("U-00418Q"), RunIds.tag("bench-1-U-00418Q-arrival-1-7f3a", "bench-1"));
    assertEquals(Optional.empty(), RunIds.tag("bench-1-U-00418Q-arrival-1-7f3a", "bench-2"));
    assertEquals(Optional.empty(), RunIds.tag("begun-1795967976164", "bench-1"));
  }

  private static long logs(Folders folders) throws IOException {
    try (Stream<Path> all = Files.list(folders.captures())) {
      return all.count();
    }
  }
}
