package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import corewright.measures.Quantity;
import corewright.profiles.Rules.Rule;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What a profile must keep beyond its schema. A mistake refuses the file; a caution is said and
 * lets it pass.
 */
final class ProfileRules {
  private static final List<Rule<ProfileDraft>> MISTAKES =
      List.of(
          StepRules::names,
          StepRules::deadFirst,
          StepRules::dischargeLast,
          StepRules::loads,
          StepRules::inputs,
          StepRules::sourceLimits,
          StepRules::windows,
          StepRules::proved,
          KindRules::keys,
          KindRules::beside,
          KindRules::ramps,
          FallingRules::zones,
          FallingRules::limits,
          KindRules::levels,
          KindRules::room,
          KindRules::cranks,
          CrankRules::events,
          CrankRules::swings,
          CrankRules::told,
          KindRules::decayLast,
          KindRules::given,
          KindRules::byHand,
          KindRules::once,
          PulseRules::pulses,
          PulseRules::slower,
          PulseRules::slowerIsGiven,
          PulseRules::bursts,
          PulseRules::fed,
          LimitRules::names,
          LimitRules::units,
          LimitRules::bands,
          LimitRules::oneHeadline,
          LimitRules::met,
          LimitRules::driftHasTime,
          LimitRules::abortBeyond);

  private static final Set<Quantity> OF_RIPPLE =
      EnumSet.of(
          Quantity.RIPPLE_PEAK_TO_PEAK,
          Quantity.RIPPLE_RMS,
          Quantity.RIPPLE_FUNDAMENTAL,
          Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE);

  private ProfileRules() {}

  static List<Mistake> check(ProfileDraft draft) {
    List<Mistake> found = new ArrayList<>();
    MISTAKES.forEach(rule -> rule.check(draft, found::add));
    return found;
  }

  static List<Mistake> cautions(ProfileDraft draft) {
    List<Mistake> found = new ArrayList<>();
    double needed_Hz = 2 * draft.family().switching_Hz();
    double rate_Hz = draft.file().number("sampleRate_Hz");
    for (Section limit : draft.limits()) {
      boolean ripple = LimitRules.quantity(limit).filter(OF_RIPPLE::contains).isPresent();
      if (ripple && rate_Hz < needed_Hz) {
        found.add(
            limit.mistake(
                "quantity",
                "at "
                    + shown(rate_Hz)
                    + " samples a second the converter's own ripple is seen folded down, or not"
                    + " at all",
                "Sample with more than " + shown(needed_Hz) + " Hz to see it"));
      }
    }
    for (Section hold : draft.judgedHolds()) {
      double input = hold.number("input_V");
      if (input >= draft.tolerated_V() && input < draft.good_V() && !draft.supplyDrops()) {
        found.add(
            hold.mistake(
                "input_V",
                "with " + shown(input) + " V the input is tolerated at best: a fail will not count",
                "Write at least " + shown(draft.good_V()) + " if it shall"));
      }
    }
    return found;
  }
}
