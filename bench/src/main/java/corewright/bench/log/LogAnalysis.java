package corewright.bench.log;

import corewright.bench.log.table.Column;
import corewright.bench.log.table.Dropped;
import corewright.bench.log.table.LogTable;
import corewright.bench.log.table.LogText;
import corewright.bench.log.table.Role;
import corewright.bench.log.table.Row;
import corewright.bench.log.table.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** From the text of a log to what it says about the module. The same text, the same answer. */
public final class LogAnalysis {
  /** Cranks whose samples are kept for the picture. */
  private static final int TRACED = 12;

  private LogAnalysis() {}

  /**
   * Reads and judges a log.
   *
   * @throws corewright.files.BadFile if it cannot be read, with line, column and remedy
   */
  public static LogReading of(LogText text, LogRequest request) {
    List<Sheet> sheets = LogTable.read(text, request.choices(), request.nominals_V());
    List<SheetFindings> all = new ArrayList<>();
    for (Sheet sheet : sheets) {
      all.add(findings(sheet, request));
    }
    return ReadingWords.put(text.name(), request, all);
  }

  /**
   * What one sheet gave.
   *
   * @param cranks judged, in the order of time
   * @param blind whether a column of engine speed never moved
   * @param overview of the whole, for a picture without cranks
   */
  record SheetFindings(
      Sheet sheet,
      Optional<LogFamily> family,
      List<Crank> cranks,
      Pace.Figures pace,
      Dropped dropped,
      boolean blind,
      List<Trace> overview) {}

  private static SheetFindings findings(Sheet sheet, LogRequest request) {
    List<Column> channels = sheet.channels();
    Optional<LogFamily> family = request.family().or(() -> guessed(sheet, request));
    LogFamily judgedAs = family.orElseGet(() -> fedAlike(sheet, request));
    Optional<Integer> speed = first(channels, Role.SPEED);
    Optional<SpeedSign> sign = speed.map(SpeedSign::new);
    if (request.window().isEmpty() && sign.isPresent()) {
      Pass pass = new Pass(sheet, judgedAs);
      pass.run(sign.get());
      if (sign.get().fastest() >= 60) {
        return pass.findings(family, false);
      }
    }
    Pass pass = new Pass(sheet, judgedAs);
    if (request.window().isPresent()) {
      pass.run(new GivenWindow(request.window().get()));
    } else {
      Optional<Integer> supply = nearestSupply(channels);
      pass.run(supply.<CrankSign>map(SupplySign::new).orElse(new NoSign()));
    }
    return pass.findings(family, speed.isPresent() && request.window().isEmpty());
  }

  /**
   * Where the output tells no family: one that is fed from as many batteries as this vehicle has.
   */
  private static LogFamily fedAlike(Sheet sheet, LogRequest request) {
    boolean two = sheet.restOfSupply().orElse(0) > LogFamily.TWO_BATTERIES_V;
    return request.families().stream()
        .filter(f -> f.input_V() > LogFamily.TWO_BATTERIES_V == two)
        .findFirst()
        .orElse(request.families().get(0));
  }

  private static Optional<LogFamily> guessed(Sheet sheet, LogRequest request) {
    return sheet.restOfOutput().isPresent()
        ? LogFamily.near(sheet.restOfOutput().getAsDouble(), request.families())
        : Optional.empty();
  }

  private static Optional<Integer> first(List<Column> channels, Role role) {
    return IntStream.range(0, channels.size())
        .filter(c -> channels.get(c).role() == role)
        .boxed()
        .findFirst();
  }

  private static Optional<Integer> nearestSupply(List<Column> channels) {
    return IntStream.range(0, channels.size())
        .filter(c -> channels.get(c).role() == Role.SUPPLY)
        .boxed()
        .max(Comparator.comparing((Integer c) -> channels.get(c).nearness()));
  }

  /** One walk through the rows of a sheet. */
  private static final class Pass {
    private final Sheet sheet;
    private final LogFamily family;
    private final Dropped dropped = new Dropped();
    private final List<Crank> cranks = new ArrayList<>();
    private final Overview overview;
    private Pace.Figures pace = new Pace.Figures(Double.NaN, 0, 0, 0, List.of());

    Pass(Sheet sheet, LogFamily family) {
      this.sheet = sheet;
      this.family = family;
      this.overview = new Overview(sheet.channels());
    }

    void run(CrankSign sign) {
      int channels = sheet.channels().size();
      pace =
          sheet.rows(
              dropped,
              rows -> {
                Pace watched = new Pace(rows, channels, overview);
                new CrankFinder(sign, this::judge).all(watched);
                return watched.figures();
              });
    }

    private void judge(Attempt attempt) {
      CrankJudge judge = new CrankJudge(sheet, family);
      cranks.add(judge.judge(attempt, cranks.size() < TRACED));
    }

    SheetFindings findings(Optional<LogFamily> known, boolean blind) {
      return new SheetFindings(sheet, known, cranks, pace, dropped, blind, overview.traces());
    }
  }

  /** Nothing in the log could show a crank. */
  private static final class NoSign implements CrankSign {
    @Override
    public Says look(Row row) {
      return Says.NOTHING;
    }

    @Override
    public void reset() {}

    @Override
    public double pause_s() {
      return 0;
    }

    @Override
    public Attempt.FoundBy foundBy() {
      return Attempt.FoundBy.SUPPLY;
    }

    @Override
    public boolean isOne(Attempt attempt) {
      return false;
    }
  }

  /** A person dragged the window. */
  private record GivenWindow(Window window) implements CrankSign {
    @Override
    public Says look(Row row) {
      if (row.t_s() < window.start_s()) {
        return Says.STILL;
      }
      return row.t_s() <= window.end_s() ? Says.CRANKING : Says.STILL;
    }

    @Override
    public void reset() {}

    @Override
    public double pause_s() {
      return 0;
    }

    @Override
    public Attempt.FoundBy foundBy() {
      return Attempt.FoundBy.PERSON;
    }

    @Override
    public boolean isOne(Attempt attempt) {
      return true;
    }
  }
}
