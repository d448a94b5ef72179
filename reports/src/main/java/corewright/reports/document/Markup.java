package corewright.reports.document;

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
