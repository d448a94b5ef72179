package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.FileSystemException;
import java.sql.SQLException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What SQLite says, in words that a person can act on; extended codes count as their primary. */
class FaultsTest {
  @ParameterizedTest
  @CsvSource({
    "SQLITE_FULL, Make room on the disk",
    "SQLITE_IOERR_SHMSIZE, Make room on the disk",
    "SQLITE_READONLY, Allow writing",
    "SQLITE_READONLY_DIRECTORY, Allow writing",
    "SQLITE_CANTOPEN, may be written to",
    "SQLITE_BUSY_SNAPSHOT, Another program holds the ledger",
    "SQLITE_CORRUPT_VTAB, restore the last backup",
    "SQLITE_NOTADB, restore the last backup",
    "SQLITE_IOERR_WRITE, Check that the path is right and that the disk works"
  })
  void eachRefusalSaysWhatToDo(SQLiteErrorCode code, String remedy) {
    LedgerFault fault =
        Faults.of("write to the ledger", new RuntimeException(new SQLiteException("[x]", code)));
    assertTrue(fault.getMessage().startsWith("Cannot write to the ledger: "), fault.getMessage());
    assertTrue(fault.getMessage().contains(remedy), fault.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "Read-only file system, Allow writing",
    "No space left on device, Make room on the disk",
    "Input/output error, that the disk works"
  })
  void aDiskThatRefusesSaysWhatToDo(String reason, String remedy) {
    FileSystemException refused = new FileSystemException("/shop/ledger.db.lock", null, reason);
    String message = Faults.of("open the ledger x", refused).getMessage();
    assertTrue(message.contains(reason) && message.contains(remedy), message);
  }

  @ParameterizedTest
  @CsvSource({"lost the line"})
  void anyOtherDatabasesWordsAreKept(String words) {
    assertEquals(
        "Cannot read the ledger: lost the line",
        Faults.of("read the ledger", new SQLException(words)).getMessage().substring(0, 37));
  }
}
