package corewright.station.cli;

import corewright.bench.port.InstrumentFault;
import corewright.files.BadFile;
import corewright.reports.document.Refusal;
import corewright.reports.ledger.LedgerFault;
import corewright.station.work.Refused;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Says on stderr what went wrong and what to do, and picks the exit code. */
final class FaultWords implements IExecutionExceptionHandler {

  @Override
  public int handleExecutionException(Exception fault, CommandLine command, ParseResult parsed) {
    PrintWriter err = command.getErr();
    if (fault instanceof Refused refused) {
      err.println(refused.getMessage() + ".");
      err.println(refused.remedy());
      return ExitCodes.REFUSED;
    }
    if (fault instanceof BadFile bad) {
      bad.mistakes().forEach(err::println);
      return ExitCodes.REFUSED;
    }
    if (fault instanceof LedgerFault || fault instanceof Refusal) {
      err.println(fault.getMessage());
      return ExitCodes.REFUSED;
    }
    if (fault.getCause() instanceof FileSystemException disk
        && fault instanceof UncheckedIOException) {
      err.println(fault.getMessage() + ": " + reason(disk) + ".");
      err.println("See that the folder is there and may be used, and that the disk has room.");
      return ExitCodes.REFUSED;
    }
    if (fault instanceof InstrumentFault broken) {
      err.println(broken.getMessage());
      err.println("Nothing is said about the unit.");
      return ExitCodes.BENCH_FAULT;
    }
    err.println("This is a fault of the program. Please keep the lines below; no record was lost.");
    fault.printStackTrace(err);
    return ExitCodes.PROGRAM_FAULT;
  }

  private static String reason(FileSystemException disk) {
    if (disk instanceof NoSuchFileException) {
      return "there is no " + disk.getFile();
    }
    if (disk instanceof AccessDeniedException) {
      return disk.getFile() + " may not be used by whoever runs this";
    }
    return disk.getFile()
        + ": "
        + Objects.requireNonNullElse(disk.getReason(), disk.getClass().getSimpleName());
  }
}
