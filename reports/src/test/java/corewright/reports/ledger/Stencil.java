package corewright.reports.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A text with holes in it, filled for one unit after the other. */
final class Stencil {
  private final List<String> solid = new ArrayList<>();
  private final List<Integer> holes = new ArrayList<>();

  /**
   * @param marks what stands in the text where each value goes, none the beginning of another
   */
  Stencil(String text, List<String> marks) {
    Matcher found =
        Pattern.compile(marks.stream().map(Pattern::quote).collect(Collectors.joining("|")))
            .matcher(text);
    int from = 0;
    while (found.find()) {
      solid.add(text.substring(from, found.start()));
      holes.add(marks.indexOf(found.group()));
      from = found.end();
    }
    solid.add(text.substring(from));
  }

  String fill(String[] values) {
    if (holes.isEmpty()) {
      return solid.get(0);
    }
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < holes.size(); i++) {
      text.append(solid.get(i)).append(values[holes.get(i)]);
    }
    return text.append(solid.get(holes.size())).toString();
  }
}
