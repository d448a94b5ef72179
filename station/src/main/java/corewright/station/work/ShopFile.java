package corewright.station.work;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.files.JsonFile;
import corewright.files.JsonSchema;
import corewright.reports.document.Colour;
import corewright.reports.document.Shop;
import corewright.reports.document.logo.Logo;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads {@code shop.json} beside the ledger: whose paper every document is. */
public final class ShopFile {
  private static final String NAME = "shop.json";
  private static final JsonSchema SCHEMA = JsonSchema.resource(ShopFile.class, "shop.schema.json");
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String COMPLAINTS =
      "To object to a result, write to the shop within 30 days and keep the unit as it is.";

  private ShopFile() {}

  /**
   * The shop of a folder; one without a name where nobody has written the file yet.
   *
   * @throws corewright.files.BadFile with every mistake in it
   */
  public static Shop in(Path folder) {
    Path path = folder.resolve(NAME);
    if (!Files.exists(path)) {
      return new Shop("(name of the shop: write " + NAME + ")", "", "", COMPLAINTS);
    }
    return of(path);
  }

  /** The file and what it names beside it; none where nobody has written it yet. */
  static List<String> names(Path folder) {
    Path path = folder.resolve(NAME);
    if (!Files.exists(path)) {
      return List.of();
    }
    String logo = JsonFile.read(path).root().path("logo").asText("");
    return logo.isEmpty() ? List.of(NAME) : List.of(NAME, logo);
  }

  /** How much of what a shop's file must have stands in a file, 0 to 1. */
  static double likeness(JsonFile file) {
    return SCHEMA.likeness(file);
  }

  /**
   * The shop of a file.
   *
   * @throws corewright.files.BadFile with every mistake in it
   */
  static Shop of(Path path) {
    JsonFile file = JsonFile.read(path);
    JsonFile.refuse(SCHEMA.check(file));
    JsonNode root = file.root();
    Shop usual = new Shop("", "", "", COMPLAINTS);
    return new Shop(
            root.path("name").asText(),
            root.path("address").asText(),
            root.path("contact").asText(""),
            root.path("complaints").asText(COMPLAINTS),
            root.path("warrantyMonths").asInt(usual.warranty_months()),
            root.path("warrantyTerms").asText(usual.warrantyTerms()),
            region(root.path("region").asText(usual.region().getCountry())),
            root.path("invented").asBoolean(false))
        .dressed(colour(file), logo(file, path));
  }

  /**
   * Writes what the owner changed; what else the file says stays.
   *
   * @param said text by key; an empty one takes the key away
   * @throws corewright.files.BadFile with every mistake; the file is then as it was
   */
  public static void write(Path folder, Map<String, String> said) {
    Path path = folder.resolve(NAME);
    ObjectNode root =
        Files.exists(path) && JsonFile.read(path).root() instanceof ObjectNode there
            ? there.deepCopy()
            : JSON.createObjectNode();
    said.forEach(
        (key, text) -> {
          if (text.isBlank()) {
            root.remove(key);
          } else if (key.equals("warrantyMonths") && text.strip().matches("[0-9]{1,4}")) {
            root.put(key, Integer.parseInt(text.strip()));
          } else if (key.equals("invented")) {
            root.put(key, Boolean.parseBoolean(text.strip()));
          } else {
            root.put(key, text.strip());
          }
        });
    try {
      Path half = Files.createTempFile(folder, "shop", ".json");
      try {
        Files.writeString(half, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root));
        JsonFile.refuse(SCHEMA.check(JsonFile.read(half)));
        Files.move(half, path, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(half);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + path, e);
    }
  }

  /** The ink of everything else where none is given. */
  private static Colour colour(JsonFile file) {
    JsonNode given = file.root().path("colour");
    if (given.isMissingNode()) {
      return Colour.INK;
    }
    Colour colour = Colour.of(given.asText());
    colour
        .fault()
        .ifPresent(
            fault ->
                JsonFile.refuse(
                    List.of(
                        file.mistake(
                            "/colour",
                            colour + " cannot be the shop's colour: " + fault,
                            "Take a dark brown, orange, violet or grey, or leave the line out"))));
    return colour;
  }

  /** A file beside shop.json; it is read when the first document needs it. */
  private static Optional<Logo> logo(JsonFile file, Path path) {
    String name = file.root().path("logo").asText("");
    return name.isEmpty() ? Optional.empty() : Optional.of(Logo.at(path.resolveSibling(name)));
  }

  /** Texts are English; a date, a decimal mark and a sheet are those of the region. */
  private static Locale region(String country) {
    return new Locale.Builder().setLanguage("en").setRegion(country).build();
  }
}
