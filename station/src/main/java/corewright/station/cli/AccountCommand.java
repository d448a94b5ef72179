package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.bench.life.Role;
import corewright.reports.ledger.Accounts;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Accounts and roles. */
@Command(
    name = "account",
    mixinStandardHelpOptions = true,
    description = {
      "Makes an account, gives one another role or password, or lists them. The first is the"
          + " owner's.",
      "Without accounts people are taken at their word; with them every step needs the password of"
          + " --by and is held to the role."
    },
    footer = {
      "",
      "Example:",
      "  corewright account 'M. Reyes' --role technician --new-password-file reyes.txt --by 'H."
          + " Oduya' --password-file oduya.txt",
      "  corewright account 'M. Reyes' --up-to 120 --by 'H. Oduya' --password-file oduya.txt"
    })
final class AccountCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(arity = "0..1", paramLabel = "NAME", description = "Whose it is.")
  private @Nullable String name;

  @Option(names = "--role", description = "${COMPLETION-CANDIDATES}")
  private @Nullable Role role;

  @Option(
      names = "--up-to",
      paramLabel = "V",
      description =
          "The highest voltage of units that they may energise, V DC; 60 where nothing was said."
              + " Alone it changes nothing else.")
  private @Nullable Double upTo_V;

  @Option(
      names = "--new-password-file",
      paramLabel = "FILE",
      description = "First line: the account's password, at least eight characters.")
  private @Nullable Path password;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      Accounts accounts = workshop.ledger().accounts();
      if (name != null) {
        if (upTo_V != null && role == null && password == null) {
          accounts.grant(name, upTo_V, step.by);
        } else if (role == null || password == null) {
          throw new Refused(
              "An account of " + name + " lacks its role or its password",
              "Give --role and --new-password-file; or --up-to alone.");
        } else {
          accounts.put(name, role, Password.given(Optional.of(password)), step.by);
          if (upTo_V != null) {
            accounts.grant(name, upTo_V, step.by);
          }
        }
      }
      ArrayNode list = JsonNodeFactory.instance.arrayNode();
      accounts
          .all()
          .forEach(
              a ->
                  list.addObject()
                      .put("name", a.name())
                      .put("role", word(a.role()))
                      .put("upTo_V", a.role().keepsTheShop() ? null : a.upTo_V()));
      if (step.json) {
        out.println(RecordJson.text(list));
      } else {
        accounts
            .all()
            .forEach(
                a ->
                    out.println(a.name() + "  " + word(a.role()) + ", energises " + a.energises()));
      }
      return ExitCodes.DONE;
    }
  }

  private static String word(Role of) {
    return of.name().toLowerCase(Locale.ROOT);
  }
}
