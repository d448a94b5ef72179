package corewright.reports.document;

import corewright.bench.life.Never;
import corewright.bench.record.Dossier;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The name at the head of a page is the shop's, never that of the unit's maker: where the label, as
 * it was read when the unit first came, bears the shop's name, one of the two is wrong.
 */
final class OwnName {
  /** They stand in the names of shops and of makers alike. */
  private static final Set<String> COMMON =
      Set.of(
          ("and the of for und der die das co company inc ltd llc limited plc gmbh ag kg oy ab as"
                  + " srl spa sarl bv nv electronics elektronik electric auto automotive truck"
                  + " motor motors engine parts module modules driver rebuild rebuilds rebuilders"
                  + " rebuilding repair repairs service services works workshop shop bench tech"
                  + " technik diesel marine new used rebuilt unit name write json")
              .split(" "));

  private OwnName() {}

  /**
   * @throws Refusal if the label of a unit that was not here before bears the shop's name
   */
  static void require(Shop shop, Dossier dossier) {
    List<String> name = words(shop.name()).stream().filter(w -> !COMMON.contains(w)).toList();
    List<String> label = words(dossier.core().label());
    boolean ours = dossier.visit() > 1; // it may bear our own label since
    if (!ours
        && String.join("", name).length() >= 3
        && Collections.indexOfSubList(label, name) >= 0) {
      throw new Refusal(
          Never.TAKE_THE_MAKERS_NAME.said(
              "The label of unit "
                  + dossier.core().tag()
                  + " says '"
                  + dossier.core().label()
                  + "', and this paper would be "
                  + shop.name()
                  + "'s"),
          Never.TAKE_THE_MAKERS_NAME.remedy());
    }
  }

  private static List<String> words(String text) {
    String plain = Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    return Arrays.stream(plain.split("[^\\p{L}\\p{N}]+")).filter(w -> !w.isEmpty()).toList();
  }
}
