package corewright.bench.capture.csv;

import corewright.bench.capture.ReadProgress;
import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.measures.Capture;
import corewright.measures.Waveform;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;

/**
 * Reads a record of text, plain or compressed with gzip, as a capture. Columns are found by their
 * headings; what was taken for granted is handed out to be printed.
 */
public final class TextRecord {
  private static final int PREVIEW_BYTES = 1 << 16;
  private static final int MOST_EXPECTED = 1 << 29;
  private static final int GZIP_MARK = 0x1F8B; // RFC 1952, 2.3.1

  private TextRecord() {}

  /**
   * What was read.
   *
   * @param guesses what was taken for granted, each a sentence; empty for the plain header
   */
  public record Read(Capture capture, List<String> guesses) {
    public Read {
      guesses = List.copyOf(guesses);
    }
  }

  /** Reads a whole record. */
  public static Read read(Path path) {
    return read(path, ReadProgress.UNSEEN);
  }

  /**
   * Reads a whole record. Memory is four bytes for each of the first four million values of a
   * column; longer ones lie in a temporary file.
   *
   * @throws BadFile naming line and column of the first thing that is wrong
   */
  public static Read read(Path path, ReadProgress progress) {
    return read(path, progress, Overrides.NONE);
  }

  /**
   * The same with what a person says of it.
   *
   * @param overrides win over the headings
   */
  public static Read read(Path path, ReadProgress progress, Overrides overrides) {
    if (!Files.exists(path)) {
      throw whole(path, "there is no such file", "Check the name and the folder");
    }
    if (Files.isDirectory(path)) {
      throw whole(path, "this is a folder", "Name the file itself");
    }
    try (InputStream in = open(path, progress)) {
      in.mark(PREVIEW_BYTES + 1);
      byte[] preview = in.readNBytes(PREVIEW_BYTES);
      if (preview.length == 0) {
        throw whole(path, "the file is empty", "Ask for the recording again");
      }
      List<String> head = lines(preview);
      in.reset();
      Layout layout = Layout.of(path.toString(), head, overrides);
      double lines = (double) Files.size(path) / preview.length * head.size();
      return new Rows(path.toString(), layout, (int) Math.min(MOST_EXPECTED, 1.02 * lines))
          .read(in);
    } catch (IOException | UncheckedIOException broken) {
      throw whole(
          path,
          "it cannot be read: " + broken.getMessage(),
          "Check that it is readable and was copied whole");
    }
  }

  /** What is wrong with a file before any line of it is looked at. */
  private static BadFile whole(Path path, String message, String remedy) {
    return new BadFile(List.of(new Mistake(path.toString(), 0, "file", message, remedy)));
  }

  private static InputStream open(Path path, ReadProgress progress) throws IOException {
    InputStream file = new WatchedInput(Files.newInputStream(path), Files.size(path), progress);
    InputStream in = new BufferedInputStream(file, PREVIEW_BYTES);
    in.mark(2);
    boolean gzip = (in.read() << 8 | in.read()) == GZIP_MARK;
    in.reset();
    return PlainText.of(
        gzip ? new BufferedInputStream(new GZIPInputStream(in, PREVIEW_BYTES), PREVIEW_BYTES) : in);
  }

  /** Complete lines of a preview; the last, cut off, only if it is the only one. */
  private static List<String> lines(byte[] preview) {
    String text = new String(preview, StandardCharsets.UTF_8);
    if (text.startsWith("\uFEFF")) {
      text = text.substring(1);
    }
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (preview.length == PREVIEW_BYTES && lines.size() > 1) {
      lines.remove(lines.size() - 1);
    }
    return lines;
  }

  /** What a field is read for. */
  private enum Use {
    NONE,
    TIME,
    VALUES;

    static Use of(Optional<Layout.Column> column) {
      return column.map(c -> c.role() == Role.TIME ? TIME : VALUES).orElse(NONE);
    }
  }

  /** The rows of one file, being read. */
  private static final class Rows {
    private final String file;
    private final Layout layout;
    private final List<DecimalColumn> columns = new ArrayList<>();
    private final Use[] uses;

    Rows(String file, Layout layout, int expected) {
      this.file = file;
      this.layout = layout;
      uses = layout.columns().stream().map(Use::of).toArray(Use[]::new);
      for (Use use : uses) {
        columns.add(new DecimalColumn(use == Use.VALUES ? expected : 0));
      }
    }

    Read read(InputStream in) throws IOException {
      FieldScanner scanner = new FieldScanner(in, layout.delimiter(), layout.point());
      TimeBase time = timeBase();
      scanner.skipTo(layout.firstLine());
      while (scanner.hasLine()) {
        row(scanner, time);
      }
      return new Read(capture(time), guesses(time));
    }

    private TimeBase timeBase() {
      if (layout.rate_Hz().isPresent()) {
        return new TimeBase(file, "", 0); // the rate was given: nothing is asked of it
      }
      int at = index(Role.TIME).orElseThrow();
      return new TimeBase(file, where(at), layout.columns().get(at).orElseThrow().decimals());
    }

    private void row(FieldScanner scanner, TimeBase time) throws IOException {
      int line = scanner.line();
      int missing = 0;
      for (int i = 0; i < uses.length; i++) {
        if (uses[i] == Use.NONE) {
          scanner.skip();
        } else {
          FieldScanner.Found found = scanner.number();
          if (found != FieldScanner.Found.NUMBER) {
            throw bad(line, where(i), found == FieldScanner.Found.TEXT ? "no number" : "nothing");
          }
          if (uses[i] == Use.TIME) {
            missing = time.add(scanner.mantissa(), scanner.places(), line);
          } else {
            DecimalColumn values = columns.get(i);
            if (missing > 0) {
              values.repeat(missing);
            }
            values.add(scanner.mantissa(), scanner.places());
          }
        }
        boolean last = i + 1 == uses.length;
        if (!last && scanner.after() != FieldScanner.After.FIELD) {
          throw bad(line, where(i + 1), "the line ends before it");
        }
        if (last && scanner.after() == FieldScanner.After.FIELD) {
          throw bad(line, "column " + (i + 2), "more fields than headings");
        }
        scanner.pass();
      }
    }

    private Capture capture(TimeBase time) {
      double rate = layout.rate_Hz().orElseGet(time::sampleRate_Hz);
      List<Capture.Feed> feeds = new ArrayList<>();
      int count =
          (int)
              layout.columns().stream()
                  .flatMap(Optional::stream)
                  .filter(c -> c.role() == Role.FEED)
                  .count();
      for (int i = 0; i < columns.size(); i++) {
        Optional<Layout.Column> column = layout.columns().get(i);
        if (column.filter(c -> c.role() == Role.FEED).isPresent()) {
          String name = count == 1 ? "input" : column.get().name();
          feeds.add(new Capture.Feed(name, waveform(i)));
        }
      }
      return new Capture(
          rate,
          waveform(index(Role.OUTPUT).orElseThrow()),
          index(Role.LOAD).map(this::waveform),
          feeds,
          index(Role.INPUT_CURRENT).map(this::waveform),
          time.gaps());
    }

    private List<String> guesses(TimeBase time) {
      List<String> guesses = new ArrayList<>(layout.guesses());
      if (index(Role.LOAD).isEmpty()) {
        guesses.add("There is no column for the load current.");
      }
      if (time.first_s() != 0) {
        guesses.add("Time is counted from the first line of values.");
      }
      for (Capture.Gap gap : time.gaps()) {
        guesses.add("Before sample " + gap.from() + ", " + gap.count() + " samples are missing.");
      }
      return guesses;
    }

    private Optional<Integer> index(Role role) {
      for (int i = 0; i < columns.size(); i++) {
        if (layout.columns().get(i).filter(c -> c.role() == role).isPresent()) {
          return Optional.of(i);
        }
      }
      return Optional.empty();
    }

    private Waveform waveform(int column) {
      Layout.Column named = layout.columns().get(column).orElseThrow();
      return columns.get(column).waveform(named.role().unit(), named.decimals());
    }

    private String where(int column) {
      return layout
          .columns()
          .get(column)
          .map(c -> "column " + (column + 1) + " (" + c.heading() + ")")
          .orElse("column " + (column + 1));
    }

    private BadFile bad(int line, String where, String found) {
      return new BadFile(
          List.of(
              new Mistake(
                  file,
                  line,
                  where,
                  "a number is expected, found " + found,
                  "Mend or remove the line, or export the record again.")));
    }
  }
}
