package corewright.reports.document.genuine;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The words of a document's pages, and where two sets of them part. */
final class PageWords {
  private static final int MOST = 5;

  /** How far ahead the same word may stand again after some were put in or taken out. */
  private static final int AHEAD = 12;

  private PageWords() {}

  static String of(PDDocument document) throws IOException {
    return new PDFTextStripper().getText(document).replaceAll("[\\s\u00A0]+", " ").strip();
  }

  /** The first places where the pages differ from the signed words, each a sentence. */
  static List<String> differences(String signed, String shown) {
    String[] was = signed.split(" ");
    String[] is = shown.split(" ");
    List<String> found = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (found.size() < MOST && (i < was.length || j < is.length)) {
      if (i < was.length && j < is.length && was[i].equals(is[j])) {
        i++;
        j++;
        continue;
      }
      int[] again = again(was, i, is, j);
      String before = words(was, Math.max(0, i - 3), i);
      found.add(
          "After '"
              + before
              + "' the page says '"
              + words(is, j, again[1])
              + "'; the signed record says '"
              + words(was, i, again[0])
              + "'.");
      i = again[0];
      j = again[1];
    }
    return found;
  }

  /** The nearest pair of places behind {@code i} and {@code j} at which the same word stands. */
  private static int[] again(String[] was, int i, String[] is, int j) {
    for (int sum = 1; sum <= 2 * AHEAD; sum++) {
      for (int a = Math.max(0, sum - AHEAD); a <= Math.min(AHEAD, sum); a++) {
        int x = i + a;
        int y = j + sum - a;
        if (x < was.length && y < is.length && was[x].equals(is[y])) {
          return new int[] {x, y};
        }
      }
    }
    return new int[] {was.length, is.length};
  }

  private static String words(String[] all, int from, int to) {
    return String.join(" ", List.of(all).subList(Math.min(from, all.length), to));
  }
}
