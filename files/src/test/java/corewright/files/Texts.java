package corewright.files;

import java.nio.charset.StandardCharsets;

/** Texts of tests as if they had been read from a file. */
final class Texts {
  private Texts() {}

  static Origin file(String text) {
    return new Origin("menu.json", TextFile.sha256(text.getBytes(StandardCharsets.UTF_8)), text);
  }
}
