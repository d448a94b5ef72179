package corewright.station.cli;

import corewright.bench.port.InstrumentFault;
import corewright.files.BadFile;
import corewright.reports.document.Refusal;
import corewright.reports.ledger.LedgerFault;
import corewright.station.work.Refused;
import java.io.PrintWriter;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Says on stderr what went wrong and what to do, and picks the exit code. */
final class FaultWords implements IExecutionExceptionHandler {

  @Override
  public int handleExecutionException(Exception fault, CommandLine command, ParseResult parsed) {
    PrintWriter err = command.getErr();
    Optional<Refused> disk = DiskWords.of(fault);
    if (fault instanceof Refused || disk.isPresent()) {
      Refused refused = disk.orElseGet(() -> (Refused) fault);
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
    if (fault instanceof InstrumentFault broken) {
      err.println(broken.getMessage());
      err.println("Nothing is said about the unit.");
      return ExitCodes.BENCH_FAULT;
    }
    err.println("This is a fault of the program. Please keep the lines below; no record was lost.");
    fault.printStackTrace(err);
    return ExitCodes.PROGRAM_FAULT;
  }
}
