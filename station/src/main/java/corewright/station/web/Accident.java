package corewright.station.web;

import corewright.files.BadFile;
import corewright.reports.document.Refusal;
import corewright.reports.ledger.LedgerFault;
import corewright.station.web.door.Answers;
import corewright.station.web.door.DoorBook;
import corewright.station.web.door.Visitor;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jakarta.servlet.ServletException;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import java.util.logging.Logger;

/** What went wrong, told to whoever asked: what, where and what to do. Nothing typed is lost. */
final class Accident {
  private static final Logger LOG = Logger.getLogger(Accident.class.getName());

  private final Pages pages;
  private final DoorBook book;

  Accident(Pages pages, DoorBook book) {
    this.pages = pages;
    this.book = book;
  }

  void answer(RoutesConfig routes) {
    routes.exception(Refused.class, (e, c) -> tell(c, HttpStatus.UNPROCESSABLE_CONTENT, e));
    routes.exception(
        LedgerFault.class,
        (e, c) -> tell(c, HttpStatus.UNPROCESSABLE_CONTENT, new Refused(message(e), "")));
    routes.exception(
        Refusal.class,
        (e, c) ->
            tell(
                c,
                HttpStatus.UNPROCESSABLE_CONTENT,
                new Refused(message(e), "Mend that first; nothing was written.")));
    routes.exception(
        BadFile.class,
        (e, c) ->
            tell(
                c,
                HttpStatus.UNPROCESSABLE_CONTENT,
                new Refused(message(e), "Mend the file; nothing was changed.")));
    routes.exception(
        Visitor.NotTheirs.class,
        (e, c) -> {
          book.note("step above the role", Visitor.of(c).name(), c);
          tell(c, HttpStatus.FORBIDDEN, e.told());
        });
    routes.exception(
        ServletException.class,
        (e, c) -> {
          book.note("form that cannot be taken apart", who(c), c);
          tell(
              c,
              HttpStatus.CONTENT_TOO_LARGE,
              new Refused(
                  "The form with its files is too large, or did not arrive whole",
                  "A file may have 10 MB. Nothing was kept; what was typed is still there."));
        });
    routes.exception(
        Exception.class,
        (e, c) -> {
          LOG.log(Level.SEVERE, c.method() + " " + c.path(), e);
          tell(
              c,
              HttpStatus.INTERNAL_SERVER_ERROR,
              new Refused(
                  "The program made a mistake: " + e.getClass().getSimpleName(),
                  "What was typed is still there; the log has the rest. Tell whoever keeps the"
                      + " station."));
        });
    routes.error(
        HttpStatus.NOT_FOUND.getCode(),
        c -> {
          if (c.resultInputStream() == null || String.valueOf(c.result()).contains("Endpoint")) {
            tell(c, HttpStatus.NOT_FOUND, new Refused("There is no such page", "Go by the rule."));
          }
        });
  }

  private void tell(Context context, HttpStatus status, Refused refused) {
    if (Answers.isForm(context) || context.attribute("visitor") == null) {
      Answers.refused(context, status, refused);
      return;
    }
    context.status(status);
    pages.show(
        context,
        PlaceName.TODAY,
        "refused.jte",
        Map.of("what", message(refused), "remedy", refused.remedy()));
  }

  private static String who(Context context) {
    return context.attribute("visitor") == null ? "" : Visitor.of(context).name();
  }

  private static String message(Exception of) {
    return Objects.requireNonNullElse(of.getMessage(), of.getClass().getSimpleName());
  }
}
