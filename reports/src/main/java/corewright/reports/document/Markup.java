package corewright.reports.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Builds a page as a tree of elements. Whatever comes in as a string goes out as text: there is no
 * way from a customer's name to an element, so nothing needs to be escaped and nothing can be
 * forgotten.
 */
final class Markup {
  private final Document document;

  Markup() {
    try {
      document = DocumentBuilderFactory.newInstance().newDocumentBuilder().newDocument();
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("every Java makes XML documents", e);
    }
  }

  Document document() {
    return document;
  }

  /**
   * One element.
   *
   * @param kind its name, and its class behind a dot, as {@code div.head}
   * @param children texts and elements, in order
   */
  Element tag(String kind, Object... children) {
    int dot = kind.indexOf('.');
    Element element = document.createElement(dot < 0 ? kind : kind.substring(0, dot));
    if (dot >= 0) {
      element.setAttribute("class", kind.substring(dot + 1));
    }
    for (Object child : children) {
      element.appendChild(
          child instanceof Node node ? node : document.createTextNode(child.toString()));
    }
    return element;
  }

  /**
   * Makes the whole page and returns it.
   *
   * @param css every rule that it needs
   * @param body what it says
   */
  Document page(String title, Locale locale, String css, Element body) {
    Element subject = tag("meta");
    subject.setAttribute("name", "description");
    subject.setAttribute("content", title);
    Element root = tag("html", tag("head", tag("title", title), subject, tag("style", css)), body);
    root.setAttribute("lang", locale.toLanguageTag());
    document.appendChild(root);
    return document;
  }

  /** The rules of a file beside this class. */
  static String css(String name) {
    try (InputStream stream = Markup.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException(name + " is not in the program's jar");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name + " cannot be read", e);
    }
  }

  /**
   * A place that {@link Drawings} fills.
   *
   * @param what one of the names that it knows
   * @param words what is drawn there, for readers who do not see it
   */
  Element drawing(String kind, String what, String words) {
    Element element = tag("object." + kind);
    element.setAttribute("type", Drawings.TYPE);
    element.setAttribute("data", what);
    element.setAttribute("alt", words);
    return element;
  }
}
