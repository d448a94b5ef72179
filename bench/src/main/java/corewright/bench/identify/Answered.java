package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.profiles.CheckItem;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.profiles.Sign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that was answered about a unit, as the key takes it: of several answers to one cue the
 * latest, what was looked for and not seen left out.
 *
 * @param cues the family's cues, each as reliable as it is on this unit
 * @param seen the answer of each cue that gives a vote
 * @param understood what became of each cue that was answered
 * @param given the latest answer to each cue
 * @param signs what the checklist says of the unit's past
 * @param noSigns what it was asked for and does not say
 */
record Answered(
    List<Cue> cues,
    Map<Cue, String> seen,
    Map<Cue, Understood> understood,
    Map<Cue, CueAnswer> given,
    Set<Sign> signs,
    Set<Sign> noSigns) {

  private static final Set<Sign> INSIDE =
      Set.of(Sign.OPENED, Sign.REFILLED, Sign.RESOLDERED, Sign.FOREIGN_SEAL);

  /**
   * @throws IllegalArgumentException if an answer is none of its cue's, naming those that are
   */
  static Answered of(Family family, List<CueAnswer> answers) {
    Map<String, CueAnswer> latest = new LinkedHashMap<>();
    List<CueAnswer> inOrder = new ArrayList<>(answers);
    inOrder.sort(Comparator.comparing(CueAnswer::when)); // stable: of two at once the later listed
    inOrder.forEach(a -> latest.put(a.cue(), a));
    Set<Sign> signs = EnumSet.noneOf(Sign.class);
    Set<Sign> noSigns = EnumSet.noneOf(Sign.class);
    for (CheckItem item : family.checklist()) {
      CueAnswer answer = latest.get(item.id());
      if (answer != null && item.answers().contains(answer.answer())) {
        Sign sign = item.signs().get(answer.answer());
        noSigns.addAll(item.signs().values());
        if (sign != null) {
          signs.add(sign);
        }
      }
    }
    noSigns.removeAll(signs);
    boolean opened = signs.stream().anyMatch(INSIDE::contains);
    List<Cue> cues = family.cues().stream().map(c -> opened ? c.opened() : c).toList();
    Map<Cue, String> seen = new LinkedHashMap<>();
    Map<Cue, Understood> understood = new LinkedHashMap<>();
    Map<Cue, CueAnswer> given = new LinkedHashMap<>();
    // in the order of the answers, so that what was seen last is listed last
    for (CueAnswer answer : latest.values()) {
      for (Cue cue : cues) {
        if (cue.id().equals(answer.cue())) {
          Understood means = Understood.of(cue, answer);
          given.put(cue, answer);
          understood.put(cue, means);
          if (!means.answer().equals(Identifier.NOT_SEEN)) {
            seen.put(cue, known(family, cue, means.answer()));
          }
        }
      }
    }
    return new Answered(cues, seen, understood, given, signs, noSigns);
  }

  private static String known(Family family, Cue cue, String answer) {
    if (!cue.answers().contains(answer)) {
      throw new IllegalArgumentException(
          String.format(
              "'%s' is no answer to cue '%s' of family %s. Use one of %s, or '%s'.",
              answer,
              cue.id(),
              family.id(),
              String.join(", ", cue.answers()),
              Identifier.NOT_SEEN));
    }
    return answer;
  }
}
