package corewright.reports.document.genuine;

/** A file inside a document. A final class and no record: a record cannot protect an array. */
public final class Attachment {
  /** What the document was made from. */
  public static final String RECORD = "record.json";

  /** Its curves, decimated. */
  public static final String CURVES = "curves.csv";

  /** The words of its pages, as they were when it was made. */
  public static final String WORDS = "words.txt";

  /** The hashes of the others, and the signature over them. */
  public static final String SEAL = "seal.txt";

  private final String name;
  private final String type;
  private final String describes;
  private final byte[] bytes;

  /**
   * @param name as it is saved
   * @param type its media type, as {@code text/csv}
   * @param describes what it is, one clause
   */
  public Attachment(String name, String type, String describes, byte[] bytes) {
    this.name = name;
    this.type = type;
    this.describes = describes;
    this.bytes = bytes.clone();
  }

  public String name() {
    return name;
  }

  public String type() {
    return type;
  }

  public String describes() {
    return describes;
  }

  public byte[] bytes() {
    return bytes.clone();
  }
}
