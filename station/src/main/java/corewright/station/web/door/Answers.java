package corewright.station.web.door;

import com.fasterxml.jackson.databind.json.JsonMapper;
import corewright.station.work.Refused;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Objects;

/** How a form is answered: by where to go next, or by a refusal that leaves the form as it is. */
public final class Answers {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private Answers() {}

  /** Done; the browser goes on to {@code path}, and reloading that repeats nothing. */
  public static void go(Context context, String path) {
    if (isForm(context)) {
      context.status(HttpStatus.NO_CONTENT).header("X-Go", path);
    } else {
      context.redirect(path, HttpStatus.SEE_OTHER);
    }
  }

  /** Not done. A page's own script shows it above the form; without it a plain text comes. */
  public static void refused(Context context, HttpStatus status, Refused refused) {
    String what = Objects.requireNonNullElse(refused.getMessage(), "");
    context.status(status);
    if (isForm(context)) {
      context
          .header("X-Refused", "yes")
          .contentType("application/json")
          .result(
              JSON.createObjectNode()
                  .put("what", what + ".")
                  .put("remedy", refused.remedy())
                  .toString());
    } else {
      context.contentType("text/plain; charset=utf-8").result(what + ". " + refused.remedy());
    }
  }

  /** Whether a page's script asked, which shows a refusal without leaving the form. */
  public static boolean isForm(Context context) {
    return context.header("X-Form") != null;
  }
}
