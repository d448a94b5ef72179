package corewright.bench.life;

/**
 * What is done for nobody, whoever asks: the rules of the house that are no guard of a bench. Each
 * stands in the refusal that quotes it, or is named by what shows what may not be hidden. To add
 * one: its line here, the code that refuses, its case in {@code NeverTest}.
 */
public enum Never {
  CHANGE_A_CLOSED_RUN(
      "closed-run-stays",
      "A run that was closed is not changed",
      "A run is never changed; make a new one, or 'amend' the old one"),
  REMOVE_A_RESULT(
      "nothing-removed",
      "No event, and so no failed run, is changed or removed",
      "What was wrong is put right by what is written after it, with 'amend'"),
  HIDE_TRIES(
      "tries-counted",
      "A certificate counts every run of its kind on the visit",
      "There is none without them"),
  PROVE_BY_VOID(
      "void-proves-nothing",
      "Nothing is certified from a run that is void, unfinished or without a verdict",
      "Nothing can be certified from it: test it again"),
  CERTIFY_OVERDUE(
      "calibration-in-date",
      "Nothing is certified by an instrument whose calibration was overdue",
      "Calibrate it, and test the unit again"),
  CHANGE_A_LIMIT_UNSIGNED(
      "limits-signed",
      "A limit changes with a new revision and a name that answers for it",
      "A change of limits counts the revision in the file up, and is signed with 'sign'"),
  LEAVE_UNTESTED(
      "final-test",
      "No rebuilt unit leaves without a final test that is newer than its last opening",
      "Run its ship profile after it was closed"),
  SEAL_TWICE(
      "seal-once",
      "A seal number is used once in the life of the shop",
      "A number is used once; take the next seal"),
  TAKE_THE_MAKERS_NAME(
      "shop-is-not-maker",
      "No document names a unit's maker as the shop that tested or rebuilt it",
      "Write the shop's own name into shop.json; or, if the label was read wrongly, say what it is"
          + " with 'relabel', or on its page at the counter"),
  HIDE_A_REBUILD(
      "rebuilds-shown",
      "Signs of an earlier rebuild, and how often the unit was opened here, are printed",
      "There is no certificate and no warranty report without them"),
  GIVE_OUT_A_VEHICLE(
      "vehicle-left-out",
      "What looks like the number of a vehicle is left out of what is given out",
      "'export --with-vehicles' is the owner's choice, and is written down"),
  SWAP_A_SERIAL(
      "serial-stays",
      "The unit that leaves is the one that came; a serial changes with a reason that is printed",
      "Look whether it is that unit; if its label was misread or exchanged, say so first with"
          + " 'relabel', or on its page at the counter"),
  TEST_TO_DESTRUCTION(
      "no-destructive-test",
      "No load dump and no short of an output is run on any unit",
      "There is no kind of step for it"),
  KEEP_A_SECRET(
      "no-secrets",
      "No secret of a key, an immobiliser or a security access is kept",
      "Write down that it was done and by whom, never the code");

  private final String id;
  private final String rule;
  private final String remedy;

  Never(String id, String rule, String remedy) {
    this.id = id;
    this.rule = rule;
    this.remedy = remedy;
  }

  /** Stable, printed, as {@code seal-once}. */
  public String id() {
    return id;
  }

  /** What holds, one sentence without a full stop. */
  public String rule() {
    return rule;
  }

  /** What to do instead, one sentence without a full stop. */
  public String remedy() {
    return remedy;
  }

  /**
   * A refusal that names its rule.
   *
   * @param what cannot be done and where, without a full stop
   */
  public String said(String what) {
    return what + " [" + id + "]";
  }
}
