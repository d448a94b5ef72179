package corewright.reports.chart;

import java.awt.Graphics2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Pictures as SVG files that look the same everywhere: type is drawn as outlines. */
final class Svg {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private Svg() {}

  /**
   * @param words what the picture shows, for readers who do not see it
   */
  static void write(Picture picture, int height, String words, Path file) {
    write(g -> picture.draw(g, height), Picture.WIDTH, height, words, file);
  }

  /**
   * @param words what the drawing shows, for readers who do not see it
   */
  static void write(Consumer<Graphics2D> drawing, int width, int height, String words, Path file) {
    Document document = document();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment(null);
    SVGGraphics2D g = new SVGGraphics2D(context, true);
    g.setSVGCanvasSize(new java.awt.Dimension(width, height));
    g.setColor(Ink.PAPER);
    g.fillRect(0, 0, width, height);
    drawing.accept(g);
    Element root = g.getRoot();
    root.setAttributeNS(null, "viewBox", "0 0 " + width + " " + height);
    root.setAttributeNS(null, "role", "img");
    Element title = document.createElementNS(NAMESPACE, "title");
    title.setTextContent(words);
    root.insertBefore(title, root.getFirstChild());
    write(root, file);
  }

  /** Plainly, without the reference to a document type that readers would fetch from elsewhere. */
  private static void write(Element root, Path file) {
    try (Writer to = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      Transformer transformer = TransformerFactory.newInstance().newTransformer();
      transformer.transform(new DOMSource(root), new StreamResult(to));
    } catch (IOException e) {
      throw new UncheckedIOException("the picture cannot be written to " + file, e);
    } catch (TransformerException e) {
      throw new IllegalStateException("a picture's tree is always written", e);
    }
  }

  private static Document document() {
    try {
      DOMImplementation dom =
          DocumentBuilderFactory.newInstance().newDocumentBuilder().getDOMImplementation();
      return dom.createDocument(NAMESPACE, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("every Java makes XML documents", e);
    }
  }
}
