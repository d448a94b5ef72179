package corewright.reports.document.template;

import java.util.List;

/** What a document is made of, from its head to its foot. */
public record Template(TemplateKind kind, List<Section> sections) {
  public Template {
    sections = List.copyOf(sections);
  }

  /**
   * One section.
   *
   * @param line where it stands, counted from 1
   * @param name as the kind knows it, or {@link TemplateKind#TEXT}
   * @param when a verdict or a disposition without which it is left out; empty: always there
   * @param paragraphs what the shop says in it, with placeholders in braces
   */
  public record Section(int line, String name, String when, List<String> paragraphs) {
    public Section {
      paragraphs = List.copyOf(paragraphs);
    }
  }
}
