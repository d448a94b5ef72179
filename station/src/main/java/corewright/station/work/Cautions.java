package corewright.station.work;

import corewright.profiles.Family;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a person must have read before a unit is energised. Defers to local codes and licensed
 * practice; replaces neither.
 *
 * @see "EN 50191 (from memory): 60 V DC and 350 mJ as the bounds of harmless test work"
 */
public final class Cautions {
  private static final double HARMLESS_J = 0.35;
  private static final double HARMLESS_V = 60;

  private Cautions() {}

  /** The cautions for one family, most pressing first, each a sentence or two. */
  public static List<String> of(Family family) {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "Stored energy: this unit makes %.0f V and keeps about %.1f J in its capacitors, %s."
                + " It can burn, throw molten metal and startle. It stays charged after the supply"
                + " is off, until the discharge has been measured.",
            family.output_V(),
            stored_J(family),
            stored_J(family) > HARMLESS_J ? "more than counts as harmless" : "a small charge"));
    if (family.output_V() > HARMLESS_V) {
      lines.add(
          "Above 60 V DC: work only behind the closed, interlocked cover, never alone, and take the"
              + " wrist strap off before anything is energised.");
    }
    lines.add(
        "The supply delivers enough current to melt a ring and start a fire: no jewellery, fuse and"
            + " emergency stop in reach, cover closed, glasses on.");
    lines.add("Parts stay hot after a run: let the unit cool before you touch it.");
    lines.add(
        "Only trained people may work on energised equipment, under the electrical and workplace"
            + " codes that hold where you are. Those codes and licensed practice govern; this"
            + " program replaces neither, nor the bench's own emergency stop.");
    return List.copyOf(lines);
  }

  private static double stored_J(Family family) {
    return family.capacitance_F() * family.output_V() * family.output_V() / 2;
  }
}
