package corewright.station.web.live;

import corewright.bench.run.GuardFinding;

/**
 * One guard in the list beside the picture.
 *
 * @param word the guard in one or two words
 * @param text what it found, and what to do where something is missing
 */
public record GuardRow(String word, String text) {

  static GuardRow of(GuardFinding finding) {
    String remedy = finding.remedy().isEmpty() ? "" : " " + finding.remedy();
    return new GuardRow(GuardWords.of(finding.guard()), finding.saw() + remedy);
  }
}
