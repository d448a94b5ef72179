package corewright.reports.ledger;

import corewright.bench.life.Never;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.sql.SQLException;
import java.util.Objects;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What a database says, as a sentence that a person can act on. */
final class Faults {
  /** How a ledger refuses that was moved; the place follows. */
  static final String MOVED = "this ledger has moved to ";

  /** How the tables themselves refuse to change or drop what was written. */
  private static final String NEVER = " are never ";

  private Faults() {}

  private static LedgerFault never(String doing, String message, Exception e) {
    return new LedgerFault(
        Never.REMOVE_A_RESULT.said("Cannot " + doing + ": " + message),
        Never.REMOVE_A_RESULT.remedy(),
        e);
  }

  /**
   * @param doing what was being done, as {@code write to the ledger}
   */
  static LedgerFault of(String doing, Exception e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLiteException sqlite) {
        String message = String.valueOf(sqlite.getMessage());
        return message.contains(NEVER)
            ? never(doing, message, e)
            : new LedgerFault(
                "Cannot " + doing + ": " + message,
                message.contains(MOVED) ? "Open the ledger there" : remedy(sqlite.getResultCode()),
                e);
      }
      if (cause instanceof FileSystemException file) {
        return new LedgerFault("Cannot " + doing + ": " + file.getMessage(), remedy(file), e);
      }
      if (cause instanceof LedgerFault fault) {
        return fault; // it says better what was wrong
      }
      if (cause instanceof SQLException sql) {
        String message = String.valueOf(sql.getMessage());
        if (message.contains(NEVER)) {
          return never(doing, message, e);
        }
        return new LedgerFault("Cannot " + doing + ": " + sql.getMessage(), remedy(sql), e);
      }
    }
    return new LedgerFault("Cannot " + doing + ": " + e.getMessage(), UNKNOWN, e);
  }

  /** By the class of the SQLSTATE (ISO/IEC 9075-2, and PostgreSQL's own list of codes). */
  private static String remedy(SQLException sql) {
    String state = Objects.requireNonNullElse(sql.getSQLState(), "");
    if (state.equals("53100")) {
      return FULL;
    }
    if (state.equals("25006") || state.equals("42501")) {
      return "Nothing of it was kept. Ask the keeper of the database for the right to write";
    }
    if (state.equals("3D000")) {
      return "Ask the keeper of the database to make it, with encoding UTF8";
    }
    return switch (state.isEmpty() ? "" : state.substring(0, 2)) {
      case "08", "57" -> "Nothing of it was kept. See that the database runs and can be reached";
      case "28" -> "Give the user in the URL, and the password in the file .pgpass";
      case "40", "53", "55" -> "Nothing of it was kept. Try again";
      default -> UNKNOWN;
    };
  }

  private static String remedy(FileSystemException file) {
    String reason = Objects.requireNonNullElse(file.getReason(), "");
    if (file instanceof AccessDeniedException || reason.contains("Read-only")) {
      return READ_ONLY;
    }
    return reason.contains("No space") ? FULL : UNKNOWN;
  }

  private static final String READ_ONLY =
      "Nothing of it was kept. Allow writing to the file and its folder";
  private static final String FULL = "Nothing of it was kept. Make room on the disk and try again";
  private static final String UNKNOWN =
      "Nothing of it was kept. Check that the path is right and that the disk works";

  private static String remedy(SQLiteErrorCode code) {
    int primary = code.code & 0xFF; // extended codes carry the primary one in their low byte
    if (primary == SQLiteErrorCode.SQLITE_FULL.code
        || code == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE) { // no room for what its readers share
      return FULL;
    }
    if (primary == SQLiteErrorCode.SQLITE_READONLY.code) {
      return READ_ONLY;
    }
    if (primary == SQLiteErrorCode.SQLITE_CANTOPEN.code) {
      return "Check that the folder exists and may be written to";
    }
    if (primary == SQLiteErrorCode.SQLITE_BUSY.code) {
      return "Another program holds the ledger; close it and try again";
    }
    if (primary == SQLiteErrorCode.SQLITE_CORRUPT.code
        || primary == SQLiteErrorCode.SQLITE_NOTADB.code) {
      return "Stop using this file and restore the last backup beside it";
    }
    return UNKNOWN;
  }
}
