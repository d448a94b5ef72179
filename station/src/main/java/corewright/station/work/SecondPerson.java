package corewright.station.work;

import java.util.Optional;

/**
 * Who else is there, above 60 V DC.
 *
 * @param name as their account has it; as it was given where the shop has no accounts
 * @param proved by the password of their own account, for this run
 */
public record SecondPerson(String name, boolean proved) {

  /** Somebody who was named and no more: enough only where people are taken at their word. */
  public static Optional<SecondPerson> named(String name) {
    return name.isBlank() ? Optional.empty() : Optional.of(new SecondPerson(name.strip(), false));
  }

  /** Somebody whose password was asked for. */
  public static SecondPerson proved(String name) {
    return new SecondPerson(name, true);
  }
}
