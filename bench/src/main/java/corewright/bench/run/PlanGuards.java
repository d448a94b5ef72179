package corewright.bench.run;

import corewright.bench.record.Identification;
import corewright.bench.run.Guard.Answer;
import corewright.measures.Figures;
import corewright.profiles.Family;
import corewright.profiles.Step;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Guards that look at what is asked for. To add one: its line in ALL, its method, its case. */
final class PlanGuards {
  static final List<Guard.OnPaper> ALL =
      List.of(
          Guard.onPaper("cautions-confirmed", PlanGuards::cautions),
          Guard.onPaper("identity-known", PlanGuards::identity),
          Guard.onPaper("checklist-clear", PlanGuards::checklist),
          Guard.onPaper("unit-may-be-powered", PlanGuards::unit),
          Guard.onPaper("bench-in-control", PlanGuards::control),
          Guard.onPaper("contacts-good", PlanGuards::contacts),
          Guard.onPaper("operator-authorised", PlanGuards::operator),
          Guard.onPaper("second-person", PlanGuards::secondPerson),
          Guard.onPaper("profile-fits-family", PlanGuards::profile),
          Guard.onPaper("order-of-steps", PlanGuards::order),
          Guard.onPaper("levels-allowed", PlanGuards::levels),
          Guard.onPaper("trip-margin", PlanGuards::tripMargin));

  /** Kinds that stand at the beginning or the end alone. */
  private static final Set<Step.Kind> ENDS =
      EnumSet.of(Step.Kind.DEAD_CHECK, Step.Kind.FIRST_POWER, Step.Kind.DISCHARGE);

  private PlanGuards() {}

  private static Answer cautions(RunPlan plan) {
    boolean read = plan.confirmations().cautions();
    return Answer.of(
        read,
        read ? "The cautions were confirmed." : "The cautions were not confirmed.",
        "Read them and confirm.");
  }

  private static Answer identity(RunPlan plan) {
    boolean uncertain =
        plan.confirmations()
            .identity()
            .equals(java.util.Optional.of(Identification.Band.UNCERTAIN));
    return Answer.of(
        !uncertain,
        uncertain
            ? "It is not certain what the unit is."
            : "The family is " + plan.family().id() + ".",
        "Answer the next question of the identification first.");
  }

  private static Answer checklist(RunPlan plan) {
    List<String> blocking = plan.confirmations().blocking();
    return Answer.of(
        blocking.isEmpty(),
        blocking.isEmpty()
            ? "No answer of the checklist forbids power."
            : "The checklist says " + String.join(", ", blocking) + ".",
        "Put that right, then answer the checklist again.");
  }

  private static Answer unit(RunPlan plan) {
    return clear(
        plan.confirmations().clearance().unit(),
        "The record knows nothing that forbids power.",
        "Take the unit there first, or leave it without power.");
  }

  /** A locked bench is proved with its reference units: they alone may still be run. */
  private static Answer control(RunPlan plan) {
    Clearance clearance = plan.confirmations().clearance();
    return clearance.reference()
        ? Answer.of(true, "The unit is one that this bench is proved with.", "")
        : clear(
            clearance.bench(),
            "Nothing that its reference units showed speaks against the bench.",
            "The bench is locked: find out why, and run the reference unit again; or an owner"
                + " unlocks it in writing.");
  }

  private static Answer contacts(RunPlan plan) {
    return clear(
        plan.confirmations().clearance().contacts(),
        "Nothing that was measured speaks against the fixture's contacts.",
        "Clean or replace the contacts, then measure them with 'condition'.");
  }

  private static Answer operator(RunPlan plan) {
    return clear(
        plan.confirmations().clearance().operator(),
        "Nobody has said that " + plan.operator() + " may not run this.",
        "Have somebody run it who may.");
  }

  private static Answer clear(List<String> against, String otherwise, String remedy) {
    return Answer.of(
        against.isEmpty(), against.isEmpty() ? otherwise : String.join(" ", against), remedy);
  }

  private static Answer secondPerson(RunPlan plan) {
    if (!plan.family().needsSecondPerson()) {
      return Answer.of(true, "At no more than 60 V one person is enough.", "");
    }
    String other = plan.confirmations().secondPerson().orElse("").strip();
    boolean there = !other.isEmpty() && !other.equalsIgnoreCase(plan.operator().strip());
    List<String> against = plan.confirmations().clearance().second();
    if (there && !against.isEmpty()) {
      return Answer.of(
          false,
          String.join(" ", against),
          "Have a second person of the shop confirm, with name and password.");
    }
    return Answer.of(
        there,
        there
            ? other + " is there as the second person."
            : "The unit makes "
                + Figures.number(plan.family().output_V(), 0)
                + " V, and nobody but the operator has confirmed.",
        "Have a second person confirm.");
  }

  private static Answer profile(RunPlan plan) {
    boolean fits = plan.profile().family().equals(plan.family().id());
    return Answer.of(
        fits,
        "Profile "
            + plan.profile().id()
            + " is one for "
            + plan.profile().family()
            + (fits ? "." : ", the unit is a " + plan.family().id() + "."),
        "Choose a profile of the unit's family.");
  }

  /** Dead check, first power, holds, discharge; nothing may be powered before or left after. */
  private static Answer order(RunPlan plan) {
    List<Step.Kind> kinds = plan.profile().steps().stream().map(Step::kind).toList();
    int last = kinds.size() - 1;
    boolean right =
        kinds.size() >= 4
            && kinds.get(0) == Step.Kind.DEAD_CHECK
            && kinds.get(1) == Step.Kind.FIRST_POWER
            && kinds.subList(2, last).stream().noneMatch(ENDS::contains)
            && kinds.get(last) == Step.Kind.DISCHARGE;
    return Answer.of(
        right,
        right
            ? kinds.size() + " steps, from the dead check to the discharge."
            : "The steps are " + kinds + ".",
        "A profile begins with a dead check and a first power, and ends with a discharge.");
  }

  private static Answer levels(RunPlan plan) {
    Family family = plan.family();
    double most_V = plan.profile().steps().stream().mapToDouble(Step::highest_V).max().orElse(0);
    double most_A = plan.profile().steps().stream().mapToDouble(Step::mean_A).max().orElse(0);
    return Answer.of(
        most_V <= family.inputCeiling_V() && most_A <= family.ratedLoad_A(),
        "The profile asks for up to "
            + Figures.number(most_V, 2)
            + " V and "
            + Figures.number(most_A, 2)
            + " A; the family allows "
            + Figures.number(family.inputCeiling_V(), 2)
            + " V and "
            + Figures.number(family.ratedLoad_A(), 2)
            + " A.",
        "Lower the levels in the profile.");
  }

  /**
   * The source's own protection is what holds the supply current; the output's lower limit is held
   * by the station, and must allow the time that the bench needs.
   */
  private static Answer tripMargin(RunPlan plan) {
    double needs_s = plan.family().abort().underHold_s();
    double trip_s = plan.bench().trip_s();
    return Answer.of(
        trip_s <= needs_s,
        "The bench is off within "
            + Figures.number(trip_s * 1000, 0)
            + " ms of a fault; the fastest limit that it must hold by itself allows "
            + Figures.number(needs_s * 1000, 0)
            + " ms.",
        "Use a faster bench, or give the limit the time that this one needs.");
  }
}
