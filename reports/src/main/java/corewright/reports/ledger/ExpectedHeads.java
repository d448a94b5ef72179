package corewright.reports.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Heads that documents name, looked for while the events pass by. */
final class ExpectedHeads {
  private final Map<Head, Boolean> wanted = new LinkedHashMap<>();

  ExpectedHeads(List<Head> heads) {
    heads.forEach(head -> wanted.put(head, false));
  }

  void see(Event event) {
    wanted.replaceAll(
        (head, met) ->
            met
                || (head.chain().equals(event.chain())
                    && head.sequence() == event.sequence()
                    && event.hash().startsWith(head.hash())));
  }

  /** What is wrong about those that were not met. */
  List<String> unmet(List<Head> ends) {
    List<String> problems = new ArrayList<>();
    wanted.forEach(
        (head, met) -> {
          if (!met) {
            long end =
                ends.stream()
                    .filter(e -> e.chain().equals(head.chain()))
                    .mapToLong(Head::sequence)
                    .findFirst()
                    .orElse(0);
            problems.add(
                end < head.sequence()
                    ? "the chain "
                        + head.chain()
                        + " ends at "
                        + end
                        + ", but held "
                        + head
                        + ": cut off"
                    : "event "
                        + head.chain()
                        + ":"
                        + head.sequence()
                        + ": is not the one named "
                        + head);
          }
        });
    return problems;
  }
}
