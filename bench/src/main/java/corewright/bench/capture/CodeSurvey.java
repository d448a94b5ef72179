package corewright.bench.capture;

import corewright.measures.code.CodeCounts;
import corewright.measures.code.CodeStatistics;
import corewright.measures.code.Codes;
import corewright.measures.code.EdgeAnswer;
import corewright.measures.code.HoldCodes;
import corewright.measures.code.Jumps;
import corewright.measures.code.Welch;
import corewright.measures.spectrum.Spectrum;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * What a record in memory says of its holds and of the output's spectrum, worked out by one thread
 * or several. The record is dealt out, not the kernels: which thread did what changes no hold, and
 * of the spectrum the last digits at most.
 *
 * @param threads that work at the same time, at least one
 */
public record CodeSurvey(int threads) {

  /** Every step of the load; see {@link Jumps}. */
  public int[] steps(Codes load, Jumps jumps, int apart) {
    List<int[]> found =
        deal(part -> jumps.in(load, cut(load.size(), part), cut(load.size(), part + 1)));
    return Jumps.firstOfEach(found.stream().flatMapToInt(Arrays::stream).toArray(), apart);
  }

  /**
   * The hold before the first step, and that after each.
   *
   * @param settle samples after a step that are not in its window
   * @param band half-width of the recovery band, codes
   */
  public List<HoldCodes> holds(Codes output, int[] steps, int settle, double band) {
    int count = steps.length + 1;
    List<List<HoldCodes>> found =
        deal(
            part -> {
              CodeCounts counts = new CodeCounts();
              return IntStream.range(cut(count, part), cut(count, part + 1))
                  .mapToObj(i -> hold(output, steps, i, settle, band, counts))
                  .toList();
            });
    return found.stream().flatMap(List::stream).toList();
  }

  private static HoldCodes hold(
      Codes output, int[] steps, int index, int settle, double band, CodeCounts counts) {
    int start = index == 0 ? 0 : steps[index - 1];
    int end = index < steps.length ? steps[index] : output.size();
    if (end - start <= settle) {
      return new HoldCodes(start, Optional.empty(), Optional.empty());
    }
    counts.add(output, start + settle, end);
    CodeStatistics window = counts.take();
    return new HoldCodes(
        start,
        Optional.of(window),
        index == 0
            ? Optional.empty()
            : Optional.of(EdgeAnswer.of(output, start, start + settle, end, window, band)));
  }

  /**
   * Spectrum of the record; see {@link Welch}.
   *
   * @param lsb value of one code
   */
  public Spectrum spectrum(Codes output, double sampleRate_Hz, double lsb) {
    int segments = output.size() / Welch.HALF - 1;
    List<Welch> parts =
        deal(
            part -> {
              Welch welch = new Welch();
              // A part has one half more than segments: the last is the next part's first.
              int from = cut(segments, part);
              int to = cut(segments, part + 1);
              for (int half = from; from < to && half <= to; half++) {
                welch.add(output, half * Welch.HALF);
              }
              return welch;
            });
    return Welch.spectrum(sampleRate_Hz, lsb, parts.toArray(Welch[]::new));
  }

  private int cut(int count, int part) {
    return (int) ((long) count * part / threads);
  }

  /** Does each part on a thread of its own, the first on this one; results in order. */
  private <T> List<T> deal(IntFunction<T> work) {
    List<CompletableFuture<T>> others = new ArrayList<>();
    for (int part = 1; part < threads; part++) {
      int mine = part;
      CompletableFuture<T> result = new CompletableFuture<>();
      others.add(result);
      Thread worker =
          new Thread(
              () -> {
                try {
                  result.complete(work.apply(mine));
                } catch (RuntimeException failed) {
                  result.completeExceptionally(failed);
                }
              },
              "survey-" + part);
      worker.setDaemon(true);
      worker.start();
    }
    List<T> results = new ArrayList<>();
    results.add(work.apply(0));
    others.forEach(result -> results.add(result.join()));
    return results;
  }
}
