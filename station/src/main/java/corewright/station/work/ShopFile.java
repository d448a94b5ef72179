package corewright.station.work;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.files.JsonFile;
import corewright.files.JsonSchema;
import corewright.reports.document.Shop;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads {@code shop.json} beside the ledger: name and address on every document. */
public final class ShopFile {
  private static final String NAME = "shop.json";
  private static final JsonSchema SCHEMA = JsonSchema.resource(ShopFile.class, "shop.schema.json");
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
    JsonFile file = JsonFile.read(path);
    JsonFile.refuse(SCHEMA.check(file));
    JsonNode root = file.root();
    return new Shop(
        root.path("name").asText(),
        root.path("address").asText(),
        root.path("contact").asText(""),
        root.path("complaints").asText(COMPLAINTS));
  }
}
