package corewright.bench.triage;

/** May the unit be handled at all, and what state is it in. */
public record Custody(Lock lock, Safety safety, Condition condition) {

  /** Nobody disputes it, it is discharged, nothing about it is spoilt. */
  public static final Custody CLEAR = new Custody(Lock.FREE, Safety.DISCHARGED, Condition.SOUND);

  /** Legal, theft or duplicate-serial flag, or a dispute about whose it is. */
  public enum Lock {
    FREE,
    DISPUTED
  }

  /** What forbids to energise it, or to let it out of hand. */
  public enum Safety {
    /** Under the family's safe voltage and not rising, proved twice. */
    DISCHARGED,
    /** Not yet discharged, or not yet proved. */
    CHARGED,
    /** Dried and weighed before it is energised. */
    WET,
    /** Another answer of the checklist forbids power, as a bent pin does. */
    FORBIDDEN
  }

  /** Grades A to C are sound, D is damaged. What is graded X is {@link Build.Identity#FOREIGN}. */
  public enum Condition {
    SOUND,
    /** Water inside, burnt board, broken connector body, potting dug out. */
    DAMAGED
  }
}
