package corewright.reports.document.genuine;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.GeneralSecurityException;
import java.security.PublicKey;
import java.security.Signature;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * The hashes of a document's attachments with the shop's signature over them: they prove themselves
 * even where somebody has changed the pages.
 *
 * <p>One line for each file, its SHA-256 in hex, two blanks, its name; then {@code ed25519} and the
 * signature over all lines before, in hex.
 */
final class Seal {
  private static final String LAST = "ed25519 ";

  private Seal() {}

  static Attachment over(List<Attachment> files, Signer signer) {
    String lines = lines(files);
    String signature = HexFormat.of().formatHex(signer.sign(lines.getBytes(UTF_8)));
    return new Attachment(
        Attachment.SEAL,
        "text/plain",
        "hashes of the other attachments, signed",
        (lines + LAST + signature + "\n").getBytes(UTF_8));
  }

  /** What is wrong with the attachments, each a sentence; empty if all are as they were signed. */
  static List<String> faults(List<Attachment> files, PublicKey key) {
    Attachment seal =
        files.stream().filter(f -> f.name().equals(Attachment.SEAL)).findFirst().orElse(null);
    if (seal == null) {
      return List.of("The list of signed attachments, " + Attachment.SEAL + ", is missing.");
    }
    String text = new String(seal.bytes(), UTF_8);
    int last = text.lastIndexOf(LAST);
    if (last < 0 || !signed(text.substring(0, last), text.substring(last).strip(), key)) {
      return List.of("The list of signed attachments is not signed with this key.");
    }
    List<String> faults = new ArrayList<>();
    List<String> expected = text.substring(0, last).lines().toList();
    List<String> found =
        lines(files.stream().filter(f -> !f.name().equals(Attachment.SEAL)).toList())
            .lines()
            .toList();
    expected.stream()
        .filter(line -> !found.contains(line))
        .forEach(line -> faults.add("Attachment " + name(line) + " was changed or is missing."));
    found.stream()
        .filter(line -> expected.stream().noneMatch(e -> name(e).equals(name(line))))
        .forEach(line -> faults.add("Attachment " + name(line) + " was added."));
    return faults;
  }

  private static String lines(List<Attachment> files) {
    StringBuilder lines = new StringBuilder();
    for (Attachment file : files) {
      lines
          .append(HexFormat.of().formatHex(ShortCode.sha256(file.bytes())))
          .append("  ")
          .append(file.name())
          .append('\n');
    }
    return lines.toString();
  }

  private static String name(String line) {
    return line.length() > 66 ? line.substring(66) : line;
  }

  private static boolean signed(String lines, String last, PublicKey key) {
    try {
      Signature check = Signature.getInstance("Ed25519");
      check.initVerify(key);
      check.update(lines.getBytes(UTF_8));
      return check.verify(HexFormat.of().parseHex(last.substring(LAST.length())));
    } catch (GeneralSecurityException | IllegalArgumentException | IndexOutOfBoundsException e) {
      return false;
    }
  }
}
