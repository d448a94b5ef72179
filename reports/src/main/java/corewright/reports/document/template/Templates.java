package corewright.reports.document.template;

import corewright.files.BadFile;
import corewright.files.Mistake;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A shop's own templates as texts. They are read into sections when a document needs them, so that
 * a mistake in one stops no bench.
 *
 * @param texts by the id of their kind; what is missing is as it ships
 */
public record Templates(Map<String, String> texts) {
  /** Nothing of a shop's own. */
  public static final Templates SHIPPED = new Templates(Map.of());

  private static final String FOLDER = "templates";
  private static final int MOST_BYTES = 20_000;

  public Templates {
    texts = Map.copyOf(texts);
  }

  /** Those in {@code templates} of a shop's folder, as {@code letter.txt}. */
  public static Templates in(Path shop) {
    Map<String, String> texts = new TreeMap<>();
    for (TemplateKind kind : TemplateKind.values()) {
      Path file = shop.resolve(FOLDER).resolve(kind.id() + ".txt");
      if (Files.isRegularFile(file)) {
        texts.put(kind.id(), text(file));
      }
    }
    return new Templates(texts);
  }

  /**
   * The text of a file.
   *
   * @throws BadFile if it is none
   */
  public static String text(Path file) {
    try {
      if (Files.size(file) <= MOST_BYTES) {
        return Files.readString(file);
      }
      throw bad(file, "it has more than " + MOST_BYTES + " bytes", "Shorten it");
    } catch (CharacterCodingException e) {
      throw bad(file, "it is no text in UTF-8", "Save it as UTF-8");
    } catch (IOException e) {
      throw bad(file, "it cannot be read", "See that it lies there and may be read");
    }
  }

  private static BadFile bad(Path file, String message, String remedy) {
    return new BadFile(List.of(new Mistake(file.toString(), 0, "template", message, remedy)));
  }

  /**
   * What a kind of document is made of.
   *
   * @throws BadFile with every mistake in the shop's own, if it has one
   */
  public Template of(TemplateKind kind) {
    String own = texts.get(kind.id());
    if (own == null) {
      return kind.shipped();
    }
    String file = FOLDER + "/" + kind.id() + ".txt";
    Template template = TemplateReader.read(file, own);
    if (template.kind() != kind) {
      throw bad(Path.of(file), "it is a template of a " + template.kind().id(), "Rename it");
    }
    return template;
  }
}
