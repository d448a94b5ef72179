package corewright.station.web.door;

import io.javalin.http.Context;

/** What every answer carries, so that nothing foreign runs in a page or frames it. */
final class Headers {
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src"
          + " 'self'; connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri"
          + " 'none'";

  private Headers() {}

  static void on(Context context) {
    context.header("Content-Security-Policy", POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "same-origin");
    context.header("Cross-Origin-Opener-Policy", "same-origin");
    context.header("Cross-Origin-Resource-Policy", "same-origin");
    context.header("X-Frame-Options", "DENY");
    if (context.scheme().equals("https")) {
      context.header("Strict-Transport-Security", "max-age=31536000");
    }
    if (!context.path().startsWith("/static/")) {
      context.header("Cache-Control", "no-store");
    }
  }
}
