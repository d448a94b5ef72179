package corewright.bench.life;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What looks like the secret of a key, an immobiliser or a security access: a word that names one,
 * with a code beside it. The word alone is no secret ("key code lost by the customer"), and a pin
 * of a connector has fewer digits or a unit behind it. A start, by what the trade writes down;
 * common practice, no source.
 */
public final class Secrets {
  /** A trouble code of SAE J2012, as P0351, is anybody's. */
  private static final String NO_TROUBLE = "(?![PBCU][0-3][0-9A-F]{3}\\b)";

  /** Four digits or more, or letters with at least two digits among them; often in groups. */
  private static final String CODE =
      NO_TROUBLE + "(?:0x)?(?=[-A-Z0-9]*[0-9][-A-Z0-9]*[0-9])[A-Z0-9][-A-Z0-9]{3,}\\b";

  private static final String BYTES = "(?:0x)?(?:[0-9A-F]{2}[ -]?){2,}\\b";

  private static final String SAYS = "\\s*(?:is|was|ist|war|=|:|#|/)?\\s*";

  /** A length, a resistance, a time: a pin that was measured, not one that unlocks. */
  private static final String NO_UNIT =
      "(?!\\s*(?:[µmkM]?(?:ohms?|Ω|V|A|W|s|m)|mm|°C|K|h|hours?|rpm|%)\\b|\\s*[Ω%°])";

  private static final List<Pattern> SECRETS =
      List.of(
          of("(?:key|ignition)[- ]?(?:code|number|no\\.|nr\\.|secret)", CODE),
          of(
              "(?:immobili[sz]er|anti-?theft|transponder)(?:[-"
                  + " ](?:key|pin|secret|login|access|id))?[- ]?(?:code|secret|key|pin|login)?",
              CODE + NO_UNIT),
          of("security[- ](?:key|pin|secret|login|id|code)(?:[- ]code)?", CODE + NO_UNIT),
          of("PIN(?:[- ]?(?:code|number|no\\.?|nr\\.?))?", "[0-9]{4,8}\\b" + NO_UNIT),
          of("security[- ]access", ".{0,40}?\\b(?:seed|key)\\b" + SAYS + BYTES),
          of("(?:Schl(?:ü|ue)ssel|Wegfahrsperren?)[- ]?(?:code|nummer|nr\\.?|pin)", CODE),
          of("code[- ]?(?:cl(?:é|e)|antid(?:é|e)marrage|llave)", CODE));

  private Secrets() {}

  /**
   * The words that name a secret in a text, without its code; empty where there is none.
   *
   * @param text anything that a person typed
   */
  public static Optional<String> in(String text) {
    for (Pattern secret : SECRETS) {
      Matcher found = secret.matcher(text);
      if (found.find()) {
        return Optional.of(found.group(1).strip());
      }
    }
    return Optional.empty();
  }

  private static Pattern of(String words, String code) {
    return Pattern.compile(
        "\\b(" + words + ")" + SAYS + code,
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
  }
}
