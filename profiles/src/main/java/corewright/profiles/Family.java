package corewright.profiles;

import corewright.files.Origin;
import java.util.List;
import java.util.Optional;

/**
 * Modules that share an electrical interface: what they are, what may be done to them, how their
 * builds are told apart. Read from {@code profiles/families/<id>/family.json}.
 *
 * @param id short id, as {@code sd48}
 * @param revision counts up with every change of the file
 * @param input_V nominal input, V
 * @param inputCeiling_V highest input that the unit may be given, V
 * @param output_V nominal output V₀, V
 * @param ratedLoad_A largest steady load, A
 * @param capacitance_F output capacitance of a healthy unit, F
 * @param esr_ohm its equivalent series resistance at 23 °C, Ω
 * @param switching_Hz converter frequency of the commonest build, Hz
 * @param dead what a meter must find before power; asked for where the bench has a meter
 * @param defaultProfile id of the profile that an imported record is held against when none is
 *     named
 * @param outputs how many outputs the unit feeds, each with a load of its own; 0 where it is not
 *     said
 * @param pins the connector's pins, as stamped on it; empty where they are not said
 * @param testOnly a family that exists for tests; no core may be received as one
 */
public record Family(
    String id,
    int revision,
    String title,
    double input_V,
    double inputCeiling_V,
    double output_V,
    double ratedLoad_A,
    double capacitance_F,
    double esr_ohm,
    double switching_Hz,
    InputZones zones,
    AbortLimits abort,
    Discharge discharge,
    DeadLimits dead,
    String defaultProfile,
    boolean testOnly,
    List<Variant> variants,
    List<Cue> cues,
    List<CheckItem> checklist,
    Economics economics,
    int outputs,
    List<Pin> pins,
    Origin origin) {

  public Family {
    variants = List.copyOf(variants);
    cues = List.copyOf(cues);
    checklist = List.copyOf(checklist);
    pins = List.copyOf(pins);
  }

  /** A family that does not say how many outputs and which pins it has. */
  public Family(
      String id,
      int revision,
      String title,
      double input_V,
      double inputCeiling_V,
      double output_V,
      double ratedLoad_A,
      double capacitance_F,
      double esr_ohm,
      double switching_Hz,
      InputZones zones,
      AbortLimits abort,
      Discharge discharge,
      DeadLimits dead,
      String defaultProfile,
      boolean testOnly,
      List<Variant> variants,
      List<Cue> cues,
      List<CheckItem> checklist,
      Economics economics,
      Origin origin) {
    this(
        id,
        revision,
        title,
        input_V,
        inputCeiling_V,
        output_V,
        ratedLoad_A,
        capacitance_F,
        esr_ohm,
        switching_Hz,
        zones,
        abort,
        discharge,
        dead,
        defaultProfile,
        testOnly,
        variants,
        cues,
        checklist,
        economics,
        0,
        List.of(),
        origin);
  }

  /**
   * One pin of the connector.
   *
   * @param pin its mark, as {@code 3}
   * @param carries what it carries, as {@code feed +}
   */
  public record Pin(String pin, String carries) {}

  /**
   * Above 60 V DC a second person confirms before anything is energised (TRADE: EN 50191 scope).
   */
  public boolean needsSecondPerson() {
    return output_V > 60;
  }

  public Optional<Variant> variant(String variantId) {
    return variants.stream().filter(v -> v.id().equals(variantId)).findFirst();
  }
}
