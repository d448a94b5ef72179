package corewright.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A JSON Schema, draft 2020-12. References go inside the schema only; nothing is fetched.
 *
 * @see "JSON Schema Validation, draft 2020-12"
 */
public final class JsonSchema {
  private final Schema schema;
  private final JsonNode root;

  private JsonSchema(JsonFile file) {
    SchemaRegistryConfig english = SchemaRegistryConfig.builder().locale(Locale.ENGLISH).build();
    this.root = file.root();
    this.schema =
        SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12, b -> b.schemaRegistryConfig(english))
            .getSchema(root);
  }

  /**
   * A schema from a folder.
   *
   * @throws BadFile if it is not there or not JSON
   */
  public static JsonSchema read(Path file) {
    return new JsonSchema(JsonFile.read(file));
  }

  /** A schema from the class path, by its name next to {@code near}. */
  public static JsonSchema resource(Class<?> near, String name) {
    try (InputStream in = near.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalArgumentException("no resource " + name + " next to " + near.getName());
      }
      byte[] bytes = in.readAllBytes();
      String text = new String(bytes, StandardCharsets.UTF_8);
      return new JsonSchema(JsonFile.of(new Origin(name, TextFile.sha256(bytes), text)));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Every mistake of {@code file} against this schema, in the order of the lines; often empty. */
  public List<Mistake> check(JsonFile file) {
    List<SchemaMistake> found = new ArrayList<>();
    for (Error error : schema.validate(file.root())) {
      found.add(SchemaMistake.of(error, root, file));
    }
    // A key with a typing mistake is one mistake, not an unknown and a missing one.
    Set<String> meant = new HashSet<>();
    found.forEach(f -> f.meant().ifPresent(meant::add));
    return found.stream()
        .filter(f -> !f.missing().map(meant::contains).orElse(false))
        .map(SchemaMistake::mistake)
        .distinct()
        .sorted(Comparator.comparingInt(Mistake::line))
        .toList();
  }

  /**
   * How much of what the schema demands at the top is there, 0 to 1: tells one kind of file from
   * another.
   */
  public double likeness(JsonFile file) {
    JsonNode required = root.path("required");
    int there = 0;
    for (JsonNode key : required) {
      there += file.root().has(key.asText()) ? 1 : 0;
    }
    return required.isEmpty() ? 0 : (double) there / required.size();
  }

  /** What the schema's {@code title} says the file is, as "load-hold profile". */
  public Optional<String> title() {
    return Optional.ofNullable(root.get("title")).map(JsonNode::asText);
  }
}
