package corewright.station.web.dropped;

import corewright.bench.record.RunRecord;
import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.profiles.Family;
import corewright.reports.chart.Numerals;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.Tint;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.CrankLog;
import corewright.station.work.DroppedFile;
import corewright.station.work.MeasureFile;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** A customer's log or a record, dropped on any page: read at once, with every guess shown. */
public final class Dropped implements Place {
  private static final String PICTURE = "picture";

  private final House house;
  private final Pages pages;
  private final Tray tray;

  public Dropped(House house, Pages pages) {
    this.house = house;
    this.pages = pages;
    this.tray =
        new Tray(() -> house.workshop().folders().root().resolve("incoming"), house.clock());
    tray.clear();
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.before(context -> tray.sweep());
    routes.post("/dropped", this::take);
    routes.get("/dropped/{id}", this::read);
    routes.get("/dropped/{id}/picture", this::picture);
    routes.post("/dropped/{id}/keep", this::keep);
  }

  /** As the page's script sends it, as it is; or as a form does. */
  private void take(Context context) {
    if (context.req().getContentLengthLong() > Tray.MOST_BYTES) {
      throw Tray.tooLarge();
    }
    String session = Visitor.of(context).proof();
    String named = context.header("X-Name");
    Tray.Item item;
    if (named != null) {
      item = tray.take(session, decoded(named), context.bodyInputStream());
    } else {
      UploadedFile file =
          Optional.ofNullable(context.uploadedFile("file"))
              .filter(f -> f.size() > 0)
              .orElseThrow(() -> new Refused("No file was chosen", "Choose one, or drop it."));
      try (InputStream in = file.content()) {
        item = tray.take(session, file.filename(), in);
      } catch (IOException broken) {
        throw new UncheckedIOException("the upload broke off", broken);
      }
    }
    Answers.go(context, "/dropped/" + item.id());
  }

  private static String decoded(String name) {
    try {
      return URLDecoder.decode(name, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException wrong) {
      return name; // made harmless like any other
    }
  }

  private void read(Context context) {
    Tray.Item item = item(context);
    boolean log = isLog(context, item);
    try {
      if (log) {
        log(context, item);
      } else {
        record(context, item);
      }
    } catch (BadFile bad) {
      unread(context, item, log, bad.mistakes().stream().map(m -> told(m, item)).toList());
    } catch (Refused refused) {
      unread(context, item, log, List.of(refused.getMessage() + ". " + refused.remedy()));
    }
  }

  private void log(Context context, Tray.Item item) {
    LogForm form = new LogForm(name -> field(context, name));
    CrankLog.Result result =
        new CrankLog(house.workshop().catalogue())
            .read(
                new CrankLog.Request(
                    item.file(),
                    Optional.empty(),
                    Optional.of(field(context, "family")).filter(f -> !f.isBlank()),
                    form.choices(),
                    form.window()));
    CrankLog.draw(result, item.folder().resolve(PICTURE + ".svg"));
    LogPage page = LogPage.of(item.id(), item.name(), result.log());
    pages.show(
        context,
        PlaceName.WHAT_IT_DID,
        "droppedlog.jte",
        Map.of("page", page, "given", given(context), "families", families()));
  }

  private void record(Context context, Tray.Item item) {
    Workshop workshop = house.workshop();
    MeasureFile.Result result =
        new MeasureFile(workshop.catalogue())
            .measure(new RecordForm(name -> field(context, name)).request(item.file()));
    RunRecord run = DroppedFile.asRun(result, house.clock().wall());
    DroppedFile.draw(result, run, workshop.shop().region(), item.folder().resolve("drawn"));
    RecordPage page =
        RecordPage.of(item.id(), item.name(), result, run, Numerals.of(workshop.shop().region()));
    pages.show(
        context,
        PlaceName.WHAT_IT_DID,
        "droppedrecord.jte",
        Map.of("page", page, "given", given(context), "families", families()));
  }

  private void unread(Context context, Tray.Item item, boolean log, List<String> why) {
    pages.show(
        context,
        PlaceName.WHAT_IT_DID,
        "droppednot.jte",
        Map.of(
            "id",
            item.id(),
            "name",
            item.name(),
            "log",
            log,
            "why",
            why,
            "given",
            given(context),
            "families",
            families()));
  }

  /** Where the file lies here is nobody's business. */
  private static String told(Mistake m, Tray.Item item) {
    String line = m.line() > 0 ? "Line " + m.line() + ": " : "";
    return (line + m.message() + ". " + m.suggestion() + ".")
        .replace(item.folder() + "/", "")
        .replace("..", ".");
  }

  private void picture(Context context) {
    Tray.Item item = item(context);
    List<Path> drawn =
        List.of(
            item.folder().resolve(PICTURE + ".svg"), item.folder().resolve("drawn/dropped.svg"));
    Tint.send(
        context,
        drawn.stream()
            .filter(Files::isRegularFile)
            .findFirst()
            .orElseThrow(() -> new Refused("Nothing of this file was drawn", "Read it first.")));
  }

  private void keep(Context context) {
    Tray.Item item = item(context);
    String tag = field(context, "tag").strip();
    house
        .workshop()
        .files()
        .attach(
            tag,
            item.file(),
            isLog(context, item) ? "log" : "record",
            field(context, "note").strip(),
            Visitor.of(context).name());
    pages.notice(context, item.name() + " is kept with " + tag + ".");
    Answers.go(context, "/unit/" + tag);
  }

  private static boolean isLog(Context context, Tray.Item item) {
    return switch (field(context, "as")) {
      case "log" -> true;
      case "record" -> false;
      default -> DroppedFile.tell(item.file()) == DroppedFile.Kind.LOG;
    };
  }

  private Tray.Item item(Context context) {
    return tray.of(context.pathParam("id"), Visitor.of(context).proof());
  }

  private List<String> families() {
    List<String> ids = new ArrayList<>();
    house.workshop().catalogue().families().stream().map(Family::id).forEach(ids::add);
    return ids;
  }

  private static Given given(Context context) {
    return new Given(name -> field(context, name));
  }

  private static String field(Context context, String name) {
    String query = context.queryParam(name);
    return query != null ? query : Objects.requireNonNullElse(context.formParam(name), "");
  }
}
