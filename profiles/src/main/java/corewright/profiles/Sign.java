package corewright.profiles;

/** What an answer says about a unit's past. */
public enum Sign {
  /** The label or the cover under it sits where the maker did not put it. */
  LABEL_MOVED,
  /** Font, print or check digit of the label are not the maker's. */
  LABEL_COPIED,
  /** Somebody was inside. */
  OPENED,
  /** The filling is not the one that it was made with. */
  REFILLED,
  /** Solder, flux or parts that no factory left. */
  RESOLDERED,
  /** A seal or mark of another shop. */
  FOREIGN_SEAL,
  /** Two halves that were not made together. */
  MIXED_HALVES
}
