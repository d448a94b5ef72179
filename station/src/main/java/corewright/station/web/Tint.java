package corewright.station.web;

import corewright.station.work.Refused;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Gives a picture that was drawn for paper the colours of the screen: its white becomes the ground
 * that curves lie on, light or dark. Nothing else of it changes.
 */
public final class Tint {
  /** Paper, light screen, dark screen; see {@code look.css} for the tokens. */
  private static final List<List<String>> COLOURS =
      List.of(
          List.of("white", "#E9E8E2", "#171A19"),
          List.of("black", "#191D1B", "#EDEBE4"),
          List.of("rgb(240,239,234)", "#F4F3EF", "#1E2220"),
          List.of("rgb(25,29,27)", "#191D1B", "#EDEBE4"),
          List.of("rgb(71,77,73)", "#474D49", "#B7B9B1"),
          List.of("rgb(118,123,117)", "#767B75", "#868B84"),
          List.of("rgb(201,200,192)", "#C9C8C0", "#343A37"),
          List.of("rgb(140,61,18)", "#8C3D12", "#EAA06A"),
          List.of("rgb(173,119,89)", "#AD7759", "#A97852"),
          List.of("rgb(186,187,186)", "#B2B2AD", "#555A56"));

  private Tint() {}

  /** Sends a drawn picture in the colours that the page asks for by {@code ?mode=dark}. */
  public static void send(Context context, Path svg) {
    try {
      context
          .header("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'")
          .contentType("image/svg+xml")
          .result(of(Files.readString(svg), "dark".equals(context.queryParam("mode"))));
    } catch (IOException broken) {
      throw new Refused("The picture " + svg.getFileName() + " cannot be read", "Reload the page.");
    }
  }

  static String of(String svg, boolean dark) {
    String tinted = svg;
    for (List<String> colour : COLOURS) {
      String screen = colour.get(dark ? 2 : 1);
      for (String property : List.of("fill", "stroke")) {
        tinted =
            tinted.replace(
                property + "=\"" + colour.get(0) + "\"", property + "=\"" + screen + "\"");
      }
    }
    return tinted;
  }
}
