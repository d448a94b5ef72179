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
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Documents and photographs as the shop keeps them. What is asked for is a name and never a path:
 * of letters, digits and dashes for a document of the folder, a hash for a picture.
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

  /** Documents of one visit of a unit that the record knows of and the folder has, by name. */
  static List<String> of(House house, String tag, int visit) {
    String begins = tag.replaceAll("[^0-9A-Za-z-]", "_") + "-visit-" + visit + "-";
    return house.workshop().ledger().lives().history(tag).stream()
        .filter(event -> event.kind().equals("documented"))
        .map(event -> event.body().path("path").asText().replaceAll(".*[/\\\\]", ""))
        .filter(name -> name.startsWith(begins) && file(house, name).isPresent())
        .distinct()
        .sorted()
        .toList();
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/papers/{name}", this::paper);
    routes.get("/photos/{hash}", this::photo);
  }

  private void paper(Context context) {
    Optional<Path> file = file(house, context.pathParam("name"));
    if (file.isEmpty()) {
      context.status(HttpStatus.NOT_FOUND).result("There is no such document.");
      return;
    }
    context
        .contentType("application/pdf")
        .header("Content-Disposition", "inline; filename=\"" + file.get().getFileName() + "\"");
    send(context, file.get());
  }

  /** A name of letters, digits and dashes cannot lead out of the folder. */
  private static Optional<Path> file(House house, String name) {
    return Optional.of(name)
        .filter(n -> NAME.matcher(n).matches())
        .map(house.workshop().folders().documents()::resolve)
        .filter(f -> Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS));
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
