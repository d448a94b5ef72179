package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import corewright.measures.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What the limits of a profile must keep: units, bands, and a step that they can be held against.
 */
final class LimitRules {
  /** A drift is a slope, and is not read from less, s. */
  private static final double DRIFT_NEEDS_S = 1.0;

  private LimitRules() {}

  static void names(ProfileDraft draft, Consumer<Mistake> found) {
    Rules.uniqueIds(draft.limits(), "limits", found);
    List<String> known = Arrays.stream(Quantity.values()).map(Quantity::id).toList();
    for (Section limit : draft.limits()) {
      String name = limit.text("quantity");
      if (!name.isEmpty() && quantity(limit).isEmpty()) {
        found.accept(
            limit.mistake(
                "quantity", "nothing is measured as '" + name + "'", Rules.meant(name, known)));
      }
    }
  }

  /** The numbers are in the quantity's own unit, for each ampere where they follow a load step. */
  static void units(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section limit : draft.limits()) {
      String given = limit.text("unit");
      Optional<String> wanted =
          quantity(limit).map(q -> q.unit().symbol() + (limit.has("edge") ? "/A" : ""));
      if (wanted.isPresent() && !given.isEmpty() && !given.equals(wanted.get())) {
        found.accept(
            limit.mistake(
                "unit",
                limit.text("quantity") + " is held in " + wanted.get() + ", not in " + given,
                "Write \"" + wanted.get() + "\", and pass and fail in it"));
      }
    }
  }

  /** The marginal band lies on the bad side of the pass limit. */
  static void bands(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section limit : draft.limits()) {
      boolean atLeast = limit.text("side").equals("atLeast");
      double bad = limit.number("fail") - limit.number("pass");
      if (atLeast ? bad > 0 : bad < 0 && limit.text("side").equals("atMost")) {
        found.accept(
            limit.mistake(
                "fail",
                "the marginal band lies on the good side: pass "
                    + (atLeast ? "at least " : "at most ")
                    + shown(limit.number("pass"))
                    + ", fail "
                    + shown(limit.number("fail")),
                "Write at "
                    + (atLeast ? "most " : "least ")
                    + shown(limit.number("pass"))
                    + ", or exchange pass and fail"));
      }
      if (limit.number("to_A") < limit.number("from_A")) {
        found.accept(
            limit.mistake(
                "to_A", "the range of loads ends before it begins", "Write at least from_A"));
      }
    }
  }

  static void oneHeadline(ProfileDraft draft, Consumer<Mistake> found) {
    List<Section> headlines =
        draft.limits().stream().filter(l -> l.flag("headline", false)).toList();
    if (headlines.isEmpty()) {
      found.accept(
          draft
              .file()
              .mistake(
                  "limits",
                  "no limit is the headline",
                  "Write \"headline\": true at the limit that the sentence and the picture speak"
                      + " of"));
    }
    headlines.stream()
        .skip(1)
        .forEach(
            l ->
                found.accept(
                    l.mistake(
                        "headline",
                        "'" + l.text("id") + "' is a second headline",
                        "Leave \"headline\" at one limit")));
  }

  static void met(ProfileDraft draft, Consumer<Mistake> found) {
    List<Section> holds = draft.judgedHolds();
    for (Section limit : draft.limits()) {
      boolean met = false;
      for (int i = 0; i < holds.size(); i++) {
        met |= applies(limit, holds, i);
      }
      boolean ofRun = quantity(limit).filter(Quantity::ofRun).isPresent();
      if (!met && !ofRun && !Double.isNaN(limit.number("from_A"))) {
        found.accept(
            limit.mistake(
                "",
                "'" + limit.text("id") + "' can apply to no judged hold",
                "Match from_A, to_A, fromHold_s and edge with the steps"));
      }
    }
  }

  static void driftHasTime(ProfileDraft draft, Consumer<Mistake> found) {
    List<Section> holds = draft.judgedHolds();
    for (Section limit : draft.limits()) {
      boolean drift = quantity(limit).filter(q -> q == Quantity.DRIFT).isPresent();
      for (int i = 0; drift && i < holds.size(); i++) {
        if (applies(limit, holds, i) && holds.get(i).number("hold_s") < DRIFT_NEEDS_S) {
          found.accept(
              limit.mistake(
                  "",
                  "a drift is not read from a hold under 1 s, as '"
                      + holds.get(i).text("id")
                      + "' is",
                  "Add \"fromHold_s\": 1, or hold longer"));
          break;
        }
      }
    }
  }

  /** What is cut off at once can never be read: the run is over before. */
  static void abortBeyond(ProfileDraft draft, Consumer<Mistake> found) {
    AbortLimits abort = draft.family().abort();
    for (Section limit : draft.limits()) {
      boolean output = quantity(limit).filter(q -> q == Quantity.OUTPUT).isPresent();
      double fail = limit.number("fail");
      if (output && limit.text("side").equals("atMost") && fail >= abort.outputOver_V()) {
        found.accept(
            limit.mistake(
                "fail",
                shown(fail) + " V is never reached: the run is cut off at outputOver_V",
                "Write less than " + shown(abort.outputOver_V())));
      }
      if (output && limit.text("side").equals("atLeast") && fail <= abort.outputUnder_V()) {
        found.accept(
            limit.mistake(
                "fail",
                shown(fail) + " V is never reached: the run is cut off at outputUnder_V",
                "Write more than " + shown(abort.outputUnder_V())));
      }
    }
  }

  /** What is not known, because the file has other mistakes, may apply. */
  private static boolean applies(Section limit, List<Section> holds, int index) {
    Section hold = holds.get(index);
    double load = hold.number("load_A");
    boolean inRange =
        !(load < limit.number("from_A"))
            && !(load > limit.number("to_A"))
            && !(hold.number("hold_s") < limit.number("fromHold_s"));
    if (!inRange || !limit.has("edge")) {
      return inRange;
    }
    Section edge = limit.at("edge");
    if (index == 0) {
      return false;
    }
    double before = holds.get(index - 1).number("load_A");
    return !(before < edge.number("from_A"))
        && !(before > edge.number("to_A"))
        && !(load - before < edge.number("least_A"));
  }

  static Optional<Quantity> quantity(Section limit) {
    return Arrays.stream(Quantity.values())
        .filter(q -> q.id().equals(limit.text("quantity")))
        .findFirst();
  }
}
