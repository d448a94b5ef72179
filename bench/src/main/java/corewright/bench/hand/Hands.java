package corewright.bench.hand;

/** The person at the bench. What is asked for is never taken as done: it is measured. */
public interface Hands {

  /** Whose hands they are, as the record names them. */
  String name();

  /**
   * Asks for something and returns at once.
   *
   * @param what one sentence, as {@code Set the load to 2.00 A and switch it on.}
   */
  void please(String what);
}
