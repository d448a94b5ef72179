package corewright.station.web;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/**
 * What people have typed into a form and not sent: kept on disk by person and form, so that neither
 * a closed browser nor a dead program loses it. Never a password.
 */
public final class Drafts {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final TypeReference<Map<String, List<String>>> FIELDS = new TypeReference<>() {};

  /** A form is typed by hand; more than this is something else. */
  private static final int MOST_CHARACTERS = 100_000;

  private final Path folder;

  public Drafts(Path folder) {
    this.folder = folder;
  }

  /** Keeps the fields of one form; too long a text is left as it was kept before. */
  public void keep(String who, String form, Map<String, List<String>> fields) {
    try {
      String text = JSON.writeValueAsString(fields);
      if (text.length() > MOST_CHARACTERS) {
        return;
      }
      Files.createDirectories(folder);
      Path file = file(who, form);
      Path half = Files.createTempFile(folder, "half", ".json");
      Files.writeString(half, text);
      Files.move(half, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw new UncheckedIOException("a draft cannot be kept in " + folder, e);
    }
  }

  /** The fields of one form as they were last typed; empty where nothing was. */
  public Map<String, List<String>> of(String who, String form) {
    Path file = file(who, form);
    try {
      return Files.exists(file) ? JSON.readValue(Files.readString(file), FIELDS) : Map.of();
    } catch (IOException unreadable) {
      return Map.of(); // half a draft is none
    }
  }

  /** The form was sent, or thrown away. */
  public void done(String who, String form) {
    try {
      Files.deleteIfExists(file(who, form));
    } catch (IOException e) {
      throw new UncheckedIOException("a draft cannot be removed from " + folder, e);
    }
  }

  /** Names come from outside, so the file is named by their hash. */
  private Path file(String who, String form) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest((who + '\0' + form).getBytes(StandardCharsets.UTF_8));
      return folder.resolve(HexFormat.of().formatHex(hash, 0, 16) + ".json");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
