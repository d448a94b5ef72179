package corewright.measures;

/** Where the codes of a waveform lie: on the heap, or outside it where there are very many. */
public interface CodeStore {
  int size();

  /** Code {@code i}; never another one later. */
  int at(int i);
}
