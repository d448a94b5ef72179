package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.profiles.Grade;
import corewright.reports.ledger.Deposits;
import corewright.reports.ledger.Deposits.Deposit;
import corewright.reports.ledger.Deposits.Ending;
import corewright.reports.ledger.Deposits.Settlement;
import corewright.reports.ledger.Money;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Core deposits: taken, settled, listed. */
@Command(
    name = "deposit",
    mixinStandardHelpOptions = true,
    description = {
      "Takes a core deposit, settles one, or lists what is owed, the most urgent first.",
      "What a grade usually brings back, and how it falls after the window, is a table; another"
          + " credit takes --reason."
    },
    footer = {
      "",
      "Examples:",
      "  corewright deposit --customer 'Orrel Plant Hire' --amount 150 --days 30 --about 'U-00004V"
          + " sold'",
      "  corewright deposit D-00003X --end accepted --tag U-00009K --grade B --credit 90",
      "  corewright deposit"
    })
final class DepositCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;
  @Mixin private OfferOptions offer;

  @Parameters(arity = "0..1", paramLabel = "NUMBER", description = "A deposit that is settled.")
  private @Nullable String number;

  @Option(names = "--amount", paramLabel = "AMOUNT", description = "As 150 or 150.50.")
  private String amount = "0";

  @Option(names = "--about", paramLabel = "TEXT", description = "What was sold.")
  private String about = "";

  @Option(names = "--end", description = "How it ends: ${COMPLETION-CANDIDATES}")
  private @Nullable Ending ending;

  @Option(names = "--tag", paramLabel = "TAG", description = "The core that came.")
  private String tag = "";

  @Option(names = "--grade", description = "Its condition: ${COMPLETION-CANDIDATES}")
  private Grade grade = Grade.X;

  @Option(names = "--credit", paramLabel = "PERCENT", description = "What share is paid back.")
  private int credit_percent;

  @Option(names = "--reason", paramLabel = "TEXT", description = "Why not the usual credit.")
  private String reason = "";

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      Deposits deposits = workshop.ledger().deposits();
      List<Deposit> told;
      if (number != null) {
        if (ending == null) {
          throw new Refused(
              "Nobody said how deposit " + number + " ends",
              "Give --end, as --end accepted --grade B --credit 90.");
        }
        Settlement settlement = new Settlement(ending, tag, grade, credit_percent, reason);
        told = List.of(deposits.settle(number, settlement, workshop.today(), step.by));
      } else if (offer.customer.isEmpty()) {
        offer.requireNobody(amount);
        told = deposits.outstanding();
      } else {
        Money money = offer.money(amount);
        told =
            List.of(
                deposits.take(offer.customer, money, offer.days, about, workshop.today(), step.by));
      }
      if (step.json) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        told.forEach(
            d ->
                list.addObject()
                    .put("number", d.number())
                    .put("customer", d.customer())
                    .put("amount", d.amount().toString())
                    .put("taken", d.taken())
                    .put("due", d.due())
                    .put("about", d.about())
                    .put("outcome", d.outcome())
                    .put("credit", d.credit().toString())
                    .put("tag", d.tag()));
        out.println(RecordJson.text(list));
      } else {
        told.forEach(
            d ->
                out.println(
                    d.number()
                        + "  "
                        + d.amount()
                        + "  until "
                        + d.due()
                        + "  "
                        + d.customer()
                        + (d.outcome().isEmpty() ? "" : "  " + d.outcome() + " " + d.credit())));
      }
      return ExitCodes.DONE;
    }
  }
}
