package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.reports.ledger.Agreements;
import corewright.reports.ledger.Agreements.Agreement;
import corewright.station.work.Intake;
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

/** Quotes: made, answered, listed. */
@Command(
    name = "quote",
    mixinStandardHelpOptions = true,
    description = {
      "Makes a quote and gives its return number, notes the answer to one, or lists those under"
          + " which no unit has come yet.",
      "'receive --quote NUMBER' brings the unit and the approval together."
    },
    footer = {
      "",
      "Examples:",
      "  corewright quote --customer 'Orrel Plant Hire' --family sd48 --price 180 --fee 45"
          + " --approve-below 200",
      "  corewright quote R-00012X --approved-by 'Mr Orrel' --channel mail",
      "  corewright quote"
    })
final class QuoteCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;
  @Mixin private OfferOptions offer;

  @Parameters(arity = "0..1", paramLabel = "NUMBER", description = "A quote that is answered.")
  private @Nullable String number;

  @Option(names = "--family", paramLabel = "ID", description = "As sd48; as the customer says.")
  private String family = "";

  @Option(
      names = "--mode",
      paramLabel = "MODE",
      defaultValue = "repair",
      description = "repair, 'test only', exchange or stock (${DEFAULT-VALUE})")
  private String mode = "";

  @Option(names = "--price", paramLabel = "AMOUNT", description = "Flat, or not to be exceeded.")
  private String price = "0";

  @Option(names = "--fee", paramLabel = "AMOUNT", description = "Evaluation, kept if declined.")
  private String fee = "0";

  @Option(
      names = "--approve-below",
      paramLabel = "AMOUNT",
      description = "The customer agrees to this much without being asked.")
  private String approveBelow = "0";

  @Option(
      names = "--words",
      paramLabel = "TEXT",
      description = "Symptom, deadline, what was agreed.")
  private String words = "";

  @Option(names = "--approved-by", paramLabel = "NAME", description = "Who of the customer agreed.")
  private @Nullable String approvedBy;

  @Option(
      names = "--declined-by",
      paramLabel = "NAME",
      description = "Who of the customer declined.")
  private @Nullable String declinedBy;

  @Option(
      names = "--channel",
      paramLabel = "WORD",
      defaultValue = "telephone",
      description = "mail, telephone, counter … (${DEFAULT-VALUE})")
  private String channel = "";

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      if (number == null && offer.customer.isEmpty()) {
        offer.requireNobody(price);
      }
      List<Agreement> told =
          number != null
              ? List.of(answered(workshop, number))
              : offer.customer.isEmpty()
                  ? workshop.ledger().agreements().expected()
                  : List.of(made(workshop));
      if (step.json) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        told.forEach(
            a ->
                list.addObject()
                    .put("number", a.number())
                    .put("customer", a.customer())
                    .put("mode", a.mode())
                    .put("family", a.family())
                    .put("price", a.price().toString())
                    .put("fee", a.fee().toString())
                    .put("until", a.until())
                    .put("state", a.state())
                    .put("answered", a.answered())
                    .put("tag", a.tag()));
        out.println(RecordJson.text(list));
      } else {
        told.forEach(
            a ->
                out.println(
                    a.number()
                        + "  "
                        + a.state()
                        + "  "
                        + a.price()
                        + "  until "
                        + a.until()
                        + "  "
                        + a.customer()));
      }
      return ExitCodes.DONE;
    }
  }

  private Agreement made(Workshop workshop) {
    workshop.catalogue().family(family);
    Intake.requireMode(mode);
    return workshop
        .ledger()
        .agreements()
        .quote(
            new Agreements.Quote(
                offer.customer,
                mode,
                family,
                offer.money(price),
                offer.money(fee),
                offer.money(approveBelow),
                offer.until(workshop.today()),
                words),
            step.by);
  }

  private Agreement answered(Workshop workshop, String of) {
    if ((approvedBy == null) == (declinedBy == null)) {
      throw new Refused(
          "Nobody said how quote " + of + " was answered",
          "Give --approved-by NAME or --declined-by NAME, one of them.");
    }
    String person = approvedBy != null ? approvedBy : String.valueOf(declinedBy);
    return workshop.quotes().answer(of, approvedBy != null, person, channel, step.by);
  }
}
