package corewright.bench.log.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Refuses a log that a spreadsheet robbed of its decimal marks, times included: 47,6 V has become
 * 476 V, and 2,5 s 25 s. Voltages betray it by their range, times do not.
 */
final class LostMarks {
  private LostMarks() {}

  static void refuse(
      String file, SheetSample sheet, List<Column> columns, TimeColumns times, Choices choices) {
    TimeColumn time = times.columns().get(0);
    boolean open = !time.assumed() && !choices.units().containsKey(Role.TIME);
    boolean wholeSeconds =
        time.kind() == TimeColumn.Kind.NUMBER
            && time.scale() == 1
            && Arrays.stream(time.facts().sorted()).allMatch(v -> v == Math.rint(v));
    Optional<Column> robbed =
        columns.stream()
            .filter(c -> c.role() == Role.SUPPLY || c.role() == Role.OUTPUT)
            .filter(c -> c.scale() == 0.1 || c.scale() == 0.01)
            .filter(c -> Label.of(c.name(), "").unit().filter(u -> u.scale() == 1).isPresent())
            .findFirst();
    if (open && wholeSeconds && robbed.isPresent()) {
      throw Unreadable.at(
          file,
          Math.max(1, sheet.head().headerLine()),
          robbed.get().index() + 1,
          "the values of '"
              + robbed.get().title()
              + "' are ten or a hundred times what their unit allows: decimal marks were lost, and"
              + " the times may have lost theirs",
          "Export the recording again without opening it in a spreadsheet, or say what a time is"
              + " with --unit time=\"0.1 s\"");
    }
  }
}
