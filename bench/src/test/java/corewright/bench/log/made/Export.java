package corewright.bench.log.made;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * How a tool writes a recording down.
 *
 * @param delimiter between cells
 * @param milli whether voltages are in mV
 * @param fuel whether the fuel quantity is exported too
 * @param encoding {@code 8} UTF-8, {@code 8b} with mark, {@code l} and {@code b} UTF-16 with mark,
 *     {@code w} the Windows code page of the language
 * @param lineEnd CR, LF or both
 */
public record Export(
    Language language,
    char delimiter,
    Stamp stamp,
    Layout layout,
    boolean milli,
    boolean fuel,
    String encoding,
    String lineEnd) {

  public static Export plain() {
    return new Export(Language.ENGLISH, ',', Stamp.SECONDS, Layout.PLAIN, false, false, "8", "\n");
  }

  /** The decimal mark; a point where the language's comma would be the delimiter unquoted. */
  char decimal() {
    boolean clash = delimiter == ',' && layout != Layout.QUOTED && layout != Layout.COMMA_PAIRS;
    return layout == Layout.COMMA_PAIRS ? ',' : clash ? '.' : language.decimal;
  }

  public byte[] bytes(List<Poll.Shot> shots) {
    String text = String.join(lineEnd, lines(shots)) + lineEnd;
    return switch (encoding) {
      case "8b" -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
      case "l" -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE);
      case "b" -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE);
      case "w" ->
          text.getBytes(
              Charset.forName(language == Language.POLISH ? "windows-1250" : "windows-1252"));
      default -> text.getBytes(StandardCharsets.UTF_8);
    };
  }

  public List<String> lines(List<Poll.Shot> shots) {
    List<String> lines = new ArrayList<>(before());
    List<String> header = header();
    lines.add(join(header));
    if (layout == Layout.UNITS_ROW) {
      lines.add(join(units()));
    }
    for (int i = 0; i < shots.size(); i++) {
      if (layout == Layout.REPEATED_HEADER && i == shots.size() / 6) {
        lines.add(join(header));
      }
      lines.addAll(rows(shots.get(i), i));
    }
    if (layout == Layout.REPEATED_HEADER) {
      lines.add(join(List.of("Min", "0", "9" + decimal() + "1", "40" + decimal() + "2")));
      lines.add(join(List.of("Max", "801", "14" + decimal() + "1", "48" + decimal() + "1")));
    }
    return lines;
  }

  private List<String> before() {
    List<String> before = new ArrayList<>();
    if (layout == Layout.PREAMBLE) {
      before.add("sep=" + delimiter);
      before.add("Recording of 03.11.2025");
      before.add("VIN: WXXXXXXXXXXXXXXXX");
      for (int i = 0; i < 17; i++) {
        before.add("Remark " + i + ": module answered");
      }
      before.add("");
    }
    return before;
  }

  private List<String> header() {
    boolean bare = layout == Layout.UNITS_ROW || layout == Layout.CELL_UNITS;
    List<String> units = units();
    List<String> names = new ArrayList<>();
    List<String> plain =
        new ArrayList<>(List.of(time(), language.speed, language.supply, language.output));
    if (fuel) {
      plain.add(language.fuel);
    }
    for (int i = 0; i < plain.size(); i++) {
      boolean named = bare || units.get(i).isEmpty() || plain.get(i).endsWith(" V") && !milli;
      if (layout == Layout.TIME_PER_SIGNAL && i > 0) {
        names.add(plain.get(0) + (units.get(0).isEmpty() ? "" : " (" + units.get(0) + ")"));
      }
      if (layout != Layout.TIME_PER_SIGNAL || i > 0) {
        names.add(named ? plain.get(i) : plain.get(i) + " (" + units.get(i) + ")");
      }
    }
    if (layout == Layout.REPEATED_ROWS) {
      names.add("Oil (°C)");
    }
    return names;
  }

  private String time() {
    return stamp == Stamp.FRAMES ? "Frame" : language.time;
  }

  private List<String> units() {
    String volt = milli ? "mV" : "V";
    List<String> units = new ArrayList<>(List.of(stamp.unit(), language.perMinute, volt, volt));
    if (fuel) {
      units.add("mg/str");
    }
    return units;
  }

  private List<String> rows(Poll.Shot shot, int frame) {
    List<String> values = values(shot);
    List<String> rows = new ArrayList<>();
    switch (layout) {
      case TIME_PER_SIGNAL -> {
        List<String> cells = new ArrayList<>();
        for (int c = 0; c < values.size(); c++) {
          cells.add(stamp.text(shot.at_s()[c], frame, decimal()));
          cells.add(values.get(c));
        }
        rows.add(join(cells));
      }
      case ONE_CHANNEL_A_ROW -> {
        for (int c = 0; c < values.size(); c++) {
          List<String> cells =
              new ArrayList<>(List.of(stamp.text(shot.at_s()[c], frame, decimal())));
          for (int k = 0; k < values.size(); k++) {
            cells.add(k == c ? values.get(k) : "");
          }
          rows.add(join(cells));
        }
      }
      default -> {
        List<String> cells = new ArrayList<>(List.of(stamp.text(shot.t_s(), frame, decimal())));
        cells.addAll(values);
        if (layout == Layout.REPEATED_ROWS) {
          cells.add(frame % 3 == 0 ? "---" : "-6");
          rows.add(join(cells));
        }
        rows.add(join(cells));
      }
    }
    return rows;
  }

  private List<String> values(Poll.Shot shot) {
    boolean tail = layout == Layout.CELL_UNITS;
    List<String> units = units();
    List<String> values = new ArrayList<>();
    values.add(Stamp.number(shot.speed(), 0, decimal()) + (tail ? " " + units.get(1) : ""));
    values.add(volts(shot.supply_V()) + (tail ? " " + units.get(2) : ""));
    values.add(volts(shot.output_V()) + (tail ? " " + units.get(3) : ""));
    if (fuel) {
      values.add(Stamp.number(shot.fuel(), 1, decimal()) + (tail ? " mg/str" : ""));
    }
    return values;
  }

  private String volts(double value_V) {
    return milli ? Stamp.number(1000 * value_V, 0, decimal()) : Stamp.number(value_V, 2, decimal());
  }

  private String join(List<String> cells) {
    boolean quoted = layout == Layout.QUOTED;
    return String.join(
        String.valueOf(delimiter), cells.stream().map(c -> quoted ? "\"" + c + "\"" : c).toList());
  }
}
