package corewright.files;

import java.util.List;
import java.util.stream.Collectors;

/** A family, profile, bench or dialect that may not be used, with every mistake found in it. */
public final class BadFile extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<Mistake> mistakes;

  public BadFile(List<Mistake> mistakes) {
    super(mistakes.stream().map(Mistake::toString).collect(Collectors.joining("\n")));
    this.mistakes = List.copyOf(mistakes);
  }

  public List<Mistake> mistakes() {
    return mistakes;
  }
}
