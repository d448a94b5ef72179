package corewright.reports.document.template;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The documents that a shop can change without a program, and what each must hold in which order:
 * verdict, limits, what was not tested, cautions and what is not claimed are never taken out.
 *
 * @see "ISO/IEC 17025:2017, 7.8.2 and 7.8.6: what a report says, whoever lays it out"
 */
public enum TemplateKind {
  LETTER("letter", 2500, "head unit received~ finding+ decision+ cautions+ sign~? foot+"),
  TEST_REPORT("test-report", 400, "head unit verdict picture readings decision cautions+ foot+"),
  WARRANTY_REPORT(
      "warranty-report", 400, "head unit verdict picture readings rebuild cautions+ foot+"),
  CERTIFICATE("certificate", 400, "head unit verdict picture readings outcome cautions+ foot+"),
  INSTALL_SHEET(
      "install-sheet", 1200, "head unit warning before+ move+ fit+ measure+ ready+ foot+");

  /** A section of the shop's own, anywhere between the unit and the foot. */
  public static final String TEXT = "text";

  private final String id;
  private final int room;
  private final String sections;

  /**
   * @param room characters that the shop's own words may have
   * @param sections in the order in which they ship; + may be added to, ~ said in other words, ?
   *     left out
   */
  TemplateKind(String id, int room, String sections) {
    this.id = id;
    this.room = room;
    this.sections = sections;
  }

  /** As its file is named, without the ending. */
  public String id() {
    return id;
  }

  int room() {
    return room;
  }

  /** Its sections in the order in which they ship. */
  Map<String, Own> sections() {
    Map<String, Own> named = new LinkedHashMap<>();
    written()
        .forEach(
            section ->
                named.put(
                    name(section),
                    section.contains("~")
                        ? Own.INSTEAD
                        : section.contains("+") ? Own.ADDED : Own.NOTHING));
    return named;
  }

  /** Those that no template may leave out, in their order. */
  List<String> required() {
    return written().filter(s -> !s.contains("?")).map(TemplateKind::name).toList();
  }

  private Stream<String> written() {
    return Pattern.compile(" ").splitAsStream(sections);
  }

  private static String name(String section) {
    return section.replaceAll("[^a-z]", "");
  }

  /** What ships: every section, and nothing of a shop's own. */
  Template shipped() {
    return new Template(
        this,
        sections().keySet().stream()
            .map(name -> new Template.Section(0, name, "", List.of()))
            .toList());
  }

  /** The text of what ships, to begin with. */
  public String text() {
    return "template " + id + "\n\n[" + String.join("]\n[", sections().keySet()) + "]\n";
  }

  public static Optional<TemplateKind> of(String id) {
    return Arrays.stream(values()).filter(kind -> kind.id.equals(id)).findFirst();
  }

  static List<String> ids() {
    return Arrays.stream(values()).map(TemplateKind::id).toList();
  }
}
