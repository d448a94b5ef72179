package corewright.bench.identify;

import corewright.profiles.Variant.Serviceable;

/**
 * What one answer to a question would change.
 *
 * @param chance how probable the answer is by what is known now, 0 to 1
 * @param variant the build that would then be the most probable
 * @param posterior its probability then, 0 to 1
 * @param serviceable whether that build can be rebuilt
 */
public record Consequence(
    String answer, double chance, String variant, double posterior, Serviceable serviceable) {

  Consequence outOf(double total) {
    return new Consequence(answer, chance / total, variant, posterior, serviceable);
  }
}
