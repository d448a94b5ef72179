package corewright.reports.ledger;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.KeyDeserializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import java.io.IOException;
import java.util.Arrays;
import java.util.function.Function;

/**
 * How the words of the house stand in JSON: quantities by their id, units by their symbol. The
 * names of their constants may change, these may not.
 */
final class JsonWords {
  private JsonWords() {}

  static SimpleModule module() {
    SimpleModule module = new SimpleModule("words of the house");
    add(module, Quantity.class, Quantity::id);
    add(module, Unit.class, Unit::symbol);
    module.addKeySerializer(
        Quantity.class,
        new StdSerializer<>(Quantity.class) {
          private static final long serialVersionUID = 1L;

          @Override
          public void serialize(Quantity quantity, JsonGenerator to, SerializerProvider provider)
              throws IOException {
            to.writeFieldName(quantity.id());
          }
        });
    module.addKeyDeserializer(
        Quantity.class,
        new KeyDeserializer() {
          @Override
          public Object deserializeKey(String key, DeserializationContext context) {
            return Quantity.of(key);
          }
        });
    return module;
  }

  private static <E extends Enum<E>> void add(
      SimpleModule module, Class<E> type, Function<E, String> word) {
    module.addSerializer(
        type,
        new StdSerializer<>(type) {
          private static final long serialVersionUID = 1L;

          @Override
          public void serialize(E constant, JsonGenerator to, SerializerProvider provider)
              throws IOException {
            to.writeString(word.apply(constant));
          }
        });
    module.addDeserializer(
        type,
        new StdDeserializer<>(type) {
          private static final long serialVersionUID = 1L;

          @Override
          public E deserialize(JsonParser from, DeserializationContext context) throws IOException {
            String text = from.getText();
            return Arrays.stream(type.getEnumConstants())
                .filter(constant -> word.apply(constant).equals(text))
                .findFirst()
                .orElseThrow(() -> context.weirdStringException(text, type, "not a known word"));
          }
        });
  }
}
