package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.reports.ledger.KeptFile;
import corewright.station.work.Verifying.OnDisk;
import java.util.ArrayList;
import java.util.List;

/** How the files of a shop were found, in words and as JSON. */
final class FilesWords {
  private FilesWords() {}

  static List<String> lines(OnDisk disk) {
    List<String> lines = new ArrayList<>();
    lines.add(disk.checked() + " files are the ones that the record names.");
    disk.changed().forEach(f -> lines.add("NOT AS IT WAS KEPT: " + of(f)));
    disk.missing().forEach(f -> lines.add("MISSING: " + of(f)));
    disk.removed().forEach(f -> lines.add("Not here: " + of(f) + "; it can be written again"));
    if (!disk.whole()) {
      lines.add("Take what is wrong from the last backup, and keep what lies here.");
    }
    return lines;
  }

  static void json(OnDisk disk, ObjectNode json) {
    json.put("checked", disk.checked()).put("whole", disk.whole());
    list(disk.changed(), json.putArray("changed"));
    list(disk.missing(), json.putArray("missing"));
    list(disk.removed(), json.putArray("removed"));
  }

  private static void list(List<KeptFile> files, ArrayNode to) {
    files.forEach(f -> to.addObject().put("path", f.path()).put("tag", f.tag()));
  }

  private static String of(KeptFile file) {
    return file.path() + " of " + file.tag();
  }
}
