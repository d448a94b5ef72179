package corewright.bench.wire;

import corewright.fixtures.describe.Samples;
import corewright.fixtures.describe.Samples.Lines;
import corewright.fixtures.describe.Samples.SampledChannel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** Reads a line of text that holds one sample of all channels. */
final class ScanLine {
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]{1,3})?");
  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,18}");

  private final Lines form;
  private final List<SampledChannel> channels;
  private final Optional<Pattern> over;

  ScanLine(Samples samples, Lines form) {
    this.form = form;
    this.channels = samples.channels();
    this.over =
        form.over().isEmpty() ? Optional.empty() : Optional.of(Pattern.compile(form.over()));
  }

  /**
   * A line that could be read.
   *
   * @param counter what it says to be its number; empty where no column does
   * @param codes one for each channel
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, to one reader, and never compared
  record Scan(OptionalLong counter, short[] codes) {}

  /** What a line says; empty if any of it cannot be read. */
  Optional<Scan> read(String line) {
    String[] columns = line.strip().split(Pattern.quote(form.separator()), -1);
    short[] codes = new short[channels.size()];
    for (int c = 0; c < codes.length; c++) {
      SampledChannel channel = channels.get(c);
      Optional<Double> number = number(columns, channel.column());
      if (number.isEmpty()) {
        return Optional.empty();
      }
      codes[c] = Quantized.code(number.get() * channel.scale(), channel.lsb());
    }
    if (form.counter().isEmpty()) {
      return Optional.of(new Scan(OptionalLong.empty(), codes));
    }
    int at = form.counter().getAsInt() - 1;
    return at < columns.length && WHOLE.matcher(columns[at].strip()).matches()
        ? Optional.of(new Scan(OptionalLong.of(Long.parseLong(columns[at].strip())), codes))
        : Optional.empty();
  }

  private Optional<Double> number(String[] columns, int column) {
    if (column > columns.length) {
      return Optional.empty();
    }
    String text = columns[column - 1].strip();
    if (over.isPresent() && over.get().matcher(text).matches()) {
      return Optional.of(
          text.startsWith("-") ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY);
    }
    if (text.indexOf(form.comma() ? '.' : ',') >= 0) {
      return Optional.empty(); // another country's number, and a thousand times wrong
    }
    String plain = text.replace(',', '.');
    return NUMBER.matcher(plain).matches()
        ? Optional.of(Double.parseDouble(plain))
        : Optional.empty();
  }
}
