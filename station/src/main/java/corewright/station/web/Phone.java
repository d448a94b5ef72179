package corewright.station.web;

import corewright.reports.document.QrDrawing;
import io.javalin.http.Context;
import java.util.Optional;

/**
 * How a telephone gets to the page that photographs one unit.
 *
 * @param address of that page; empty where no telephone reaches the console
 * @param code the same to be scanned
 * @param how what to do where none does, a sentence
 */
public record Phone(String address, Optional<QrDrawing> code, String how) {
  private static final String CLOSED =
      "The owner lets telephones in by starting the console with serve --address ADDRESS"
          + " --key-store FILE --name HOST: over TLS, and with an account.";
  private static final String NAMELESS =
      "The console is open to others, but not under a name: start it with --name HOST as well.";

  /** Where a unit is photographed. */
  public static String path(String tag) {
    return "photograph/" + tag;
  }

  public static Phone of(Reach reach, Context context, String tag) {
    return reach
        .elsewhere(context.req().getLocalPort())
        .map(at -> at + path(tag))
        .map(at -> new Phone(at, Optional.of(QrDrawing.of(at)), ""))
        .orElseGet(() -> new Phone("", Optional.empty(), reach.isOpen() ? NAMELESS : CLOSED));
  }
}
