package corewright.station.web.place;

import corewright.station.web.House;
import corewright.station.web.Place;
import corewright.station.work.Photographs;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Documents and photographs as the shop keeps them. What is asked for is a name and never a path:
 * it must stand in the folder's own list, or be the hash of a picture.
 */
final class Papers implements Place {
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]{1,120}\\.pdf");
  private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");
  private static final int HEAD_BYTES = 12;

  private final House house;

  Papers(House house) {
    this.house = house;
  }

  /** Where a document is read. */
  static String href(Path document) {
    return "/papers/" + document.getFileName();
  }

  /** Documents of one visit of a unit, by the names that they are written under. */
  static List<String> of(House house, String tag, int visit) {
    String begins = tag.replaceAll("[^0-9A-Za-z-]", "_") + "-visit-" + visit + "-";
    try (Stream<Path> all = Files.list(house.workshop().folders().documents())) {
      return all.map(f -> String.valueOf(f.getFileName()))
          .filter(n -> n.startsWith(begins) && NAME.matcher(n).matches())
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list the documents", e);
    }
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/papers/{name}", this::paper);
    routes.get("/photos/{hash}", this::photo);
  }

  private void paper(Context context) {
    String name = context.pathParam("name");
    Optional<Path> file = NAME.matcher(name).matches() ? listed(name) : Optional.empty();
    if (file.isEmpty()) {
      context.status(HttpStatus.NOT_FOUND).result("There is no such document.");
      return;
    }
    context
        .contentType("application/pdf")
        .header("Content-Disposition", "inline; filename=\"" + file.get().getFileName() + "\"");
    send(context, file.get());
  }

  private Optional<Path> listed(String name) {
    try (Stream<Path> all = Files.list(house.workshop().folders().documents())) {
      return all.filter(Files::isRegularFile)
          .filter(f -> String.valueOf(f.getFileName()).equals(name))
          .findFirst();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list the documents", e);
    }
  }

  /** A picture by its hash; what is no picture is not sent, whatever it is called. */
  private void photo(Context context) {
    String hash = context.pathParam("hash");
    Path file =
        house.workshop().folders().files().resolve(HASH.matcher(hash).matches() ? hash : "-");
    Optional<Photographs.Kind> kind =
        Files.isRegularFile(file) ? Photographs.Kind.of(head(file)) : Optional.empty();
    if (kind.isEmpty()) {
      context.status(HttpStatus.NOT_FOUND).result("There is no such photograph.");
      return;
    }
    context
        .contentType(kind.get().mediaType())
        .header("Content-Disposition", "inline; filename=\"" + hash.substring(0, 8) + "\"");
    send(context, file);
  }

  private static byte[] head(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(HEAD_BYTES);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  private static void send(Context context, Path file) {
    try {
      context.result(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }
}
