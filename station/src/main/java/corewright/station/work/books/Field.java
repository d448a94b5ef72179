package corewright.station.work.books;

import java.util.List;
import java.util.Locale;

/** What a column of an old spreadsheet can be, and the words that shops head it with. */
public enum Field {
  NUMBER("number", "no", "nr", "nummer", "job", "auftrag", "order", "lfd", "id", "n°", "numero"),
  RECEIVED("received", "date in", "arrived", "eingang", "annahme", "reception", "reçu", "entrada"),
  CUSTOMER("customer", "client", "kunde", "owner", "name", "firma", "cliente"),
  FAMILY("family", "type", "model", "typ", "modell", "modele", "tipo", "gerät", "unit", "part"),
  SERIAL("serial", "serien", "s/n", "sn", "série", "serie", "seriale"),
  LABEL("label", "marking", "aufschrift", "etikett", "étiquette"),
  COMPLAINT("complaint", "fault", "symptom", "fehler", "defekt", "beanstandung", "panne", "falla"),
  RESULT("result", "outcome", "done", "ergebnis", "befund", "status", "résultat", "resultado"),
  SHIPPED("shipped", "date out", "left", "ausgang", "versand", "expédié", "salida", "returned on"),
  OUTPUT("output", "measured", "ausgangsspannung", "u aus", "uaus", "vout", "tension", "voltage"),
  PRICE("price", "preis", "betrag", "amount", "prix", "precio", "eur"),
  NOTE("note", "remark", "bemerkung", "notiz", "comment", "remarque");

  @SuppressWarnings("ImmutableEnumChecker") // a list of List.of never changes
  private final List<String> words;

  Field(String... words) {
    this.words = List.of(words);
  }

  /** As a mapping names it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** How much of a header this field explains: 3 all of it, 2 its beginning, 1 a part, 0 none. */
  int likeness(String header) {
    String plain = header.toLowerCase(Locale.ROOT).replaceAll("[._\\-()\\[\\]:]+", " ").strip();
    int best = 0;
    for (String word : words) {
      if (plain.equals(word)) {
        best = Math.max(best, 3);
      } else if (word.length() > 2 && plain.startsWith(word)) {
        best = Math.max(best, 2);
      } else if (word.length() > 2 && plain.contains(word)) {
        best = Math.max(best, 1);
      }
    }
    return best;
  }
}
