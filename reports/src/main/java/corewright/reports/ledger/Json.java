package corewright.reports.ledger;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import corewright.bench.record.Dossier;
import corewright.measures.Reading;
import java.util.Map;
import java.util.TreeMap;

/**
 * Records as canonical JSON and back, without loss: keys in the order of their code points, no
 * blanks, numbers in the shortest form that reads back to the same double.
 */
public final class Json {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build())
          .addModule(new Jdk8Module())
          .addModule(new JavaTimeModule())
          .addModule(JsonWords.module())
          .addMixIn(Reading.class, EitherReading.class)
          .addMixIn(Dossier.class, OneVisit.class)
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .build();

  private Json() {}

  /** A certificate's record is of its visit: what came to be known since changes no code. */
  @JsonIgnoreProperties("past")
  private interface OneVisit {}

  /** What Jackson must know about {@link Reading}: the two cases are told apart by their fields. */
  @JsonTypeInfo(use = JsonTypeInfo.Id.DEDUCTION)
  @JsonSubTypes({
    @JsonSubTypes.Type(Reading.Measured.class),
    @JsonSubTypes.Type(Reading.NotMeasured.class)
  })
  private interface EitherReading {}

  /** A record as text; the same record always gives the same text. */
  public static String text(Object record) {
    return canonical(tree(record));
  }

  static JsonNode tree(Object record) {
    return MAPPER.valueToTree(record);
  }

  static String canonical(JsonNode tree) {
    try {
      return MAPPER.writeValueAsString(sorted(tree));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree is always written", e);
    }
  }

  static JsonNode read(String body) {
    try {
      return MAPPER.readTree(body);
    } catch (JsonProcessingException e) {
      throw unreadable(body, e);
    }
  }

  static <T> T record(JsonNode tree, Class<T> type) {
    try {
      return MAPPER.treeToValue(tree, type);
    } catch (JsonProcessingException e) {
      throw unreadable(tree.toString(), e);
    }
  }

  private static LedgerFault unreadable(String body, JsonProcessingException e) {
    return new LedgerFault(
        "An event cannot be read: " + e.getOriginalMessage() + " in " + shortened(body),
        "Verify the ledger; if it is whole, open it with the version that wrote it",
        e);
  }

  private static String shortened(String body) {
    return body.length() <= 80 ? body : body.substring(0, 80) + "…";
  }

  private static JsonNode sorted(JsonNode node) {
    if (node instanceof ObjectNode object) {
      Map<String, JsonNode> fields = new TreeMap<>();
      object.properties().forEach(e -> fields.put(e.getKey(), sorted(e.getValue())));
      ObjectNode result = MAPPER.createObjectNode();
      fields.forEach(result::set);
      return result;
    }
    if (node instanceof ArrayNode array) {
      ArrayNode result = MAPPER.createArrayNode();
      array.forEach(item -> result.add(sorted(item)));
      return result;
    }
    return node;
  }
}
