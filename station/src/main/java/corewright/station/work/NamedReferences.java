package corewright.station.work;

import corewright.bench.diagnose.Group;
import corewright.files.BadFile;
import corewright.files.JsonFile;
import corewright.files.Mistake;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.ReferenceUnit;
import corewright.profiles.Catalogue;
import corewright.reports.ledger.LedgerFault;
import corewright.reports.ledger.Tags;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What the reference units of a bench are called by: a slip there and the bench proves nothing. */
final class NamedReferences {
  private NamedReferences() {}

  static List<Mistake> mistakes(JsonFile file, BenchDescription bench, Catalogue catalogue) {
    List<Mistake> found = new ArrayList<>();
    for (int i = 0; i < bench.referenceUnits().size(); i++) {
      ReferenceUnit unit = bench.referenceUnits().get(i);
      String at = "/referenceUnits/" + i;
      tag(file, file.root().at(at).isTextual() ? at : at + "/tag", unit.tag(), found);
      if (!unit.profile().isEmpty() && !there(unit.profile(), catalogue)) {
        found.add(
            file.mistake(
                at + "/profile",
                "there is no profile '" + unit.profile() + "'",
                "Name one that 'run' can be given"));
      }
      if (Arrays.stream(Group.values()).noneMatch(g -> g.name().equals(unit.group()))
          && !unit.group().isEmpty()) {
        found.add(
            file.mistake(
                at + "/group",
                "there is no group of parts '" + unit.group() + "'",
                "Use one of: "
                    + Arrays.stream(Group.values())
                        .map(Group::name)
                        .collect(Collectors.joining(", "))));
      }
    }
    return found;
  }

  private static void tag(JsonFile file, String where, String typed, List<Mistake> found) {
    try {
      String whole = Tags.read(typed);
      if (!whole.equalsIgnoreCase(typed)) {
        found.add(
            file.mistake(where, "'" + typed + "' lacks its check character", "Write " + whole));
      }
    } catch (LedgerFault wrong) {
      found.add(
          file.mistake(
              where,
              "'" + typed + "' is no tag: a character is wrong",
              "Scan it, or read it again"));
    }
  }

  private static boolean there(String profile, Catalogue catalogue) {
    try {
      catalogue.profile(profile);
      return true;
    } catch (BadFile none) {
      return false;
    }
  }
}
