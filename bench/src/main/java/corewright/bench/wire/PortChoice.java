package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.PortInfo;
import corewright.bench.wire.PortFinder.Heard;
import corewright.fixtures.describe.PortName;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The one port that a name means, or why there is not exactly one. */
public final class PortChoice {
  private PortChoice() {}

  /**
   * A name that stays right when the port gets another number: the USB adapter's where it has a
   * serial number of its own, else the instrument's answer; the path where there is neither.
   *
   * @param all every port, to see whether the name means one alone
   */
  public static String lasting(Heard heard, List<PortInfo> all) {
    PortInfo port = heard.port();
    if (!port.serial().isEmpty() && isAlone(port, all)) {
      return "usb:" + port.usb() + ":" + port.serial();
    }
    Optional<String> answer = heard.identity().filter(i -> !serial(i).isEmpty());
    if (answer.isPresent()) {
      String[] fields = answer.get().split(",", -1);
      return "idn:" + fields[0].strip() + "," + fields[1].strip() + "," + serial(answer.get());
    }
    return !port.usb().isEmpty() && isAlone(port, all) ? "usb:" + port.usb() : port.path();
  }

  private static boolean isAlone(PortInfo port, List<PortInfo> all) {
    return !port.usb().isEmpty()
        && PortFinder.once(all).stream()
                .filter(p -> p.usb().equals(port.usb()) && p.serial().equals(port.serial()))
                .count()
            == 1;
  }

  static PortInfo adapter(String role, PortName.Usb usb, List<PortInfo> all) {
    List<PortInfo> fits = all.stream().filter(p -> usb.means(p.usb(), p.serial())).toList();
    if (fits.size() == 1) {
      return fits.get(0);
    }
    String wanted =
        usb.vendor() + ":" + usb.product() + (usb.serial().isEmpty() ? "" : ":" + usb.serial());
    String doing = "finding the USB adapter " + wanted;
    if (fits.isEmpty()) {
      throw new InstrumentFault(
          role,
          doing,
          "none is plugged in; there " + listed(all, PortChoice::adapter),
          "Plug it in and switch the instrument on, or correct its port in the bench description.");
    }
    throw new InstrumentFault(
        role,
        doing,
        fits.size() + " are plugged in: " + each(fits, PortChoice::adapter),
        differ(fits, PortInfo::serial)
            ? "Add the serial number to its port in the bench description: usb:"
                + fits.get(0).usb()
                + ":SERIAL."
            : "Their serial numbers do not tell them apart: name the instrument by its answer,"
                + " idn:MAKER,MODEL,SERIAL.");
  }

  static PortInfo answering(String role, PortName.Answer answer, List<Heard> said) {
    List<Heard> fits =
        said.stream().filter(h -> h.identity().filter(answer::means).isPresent()).toList();
    if (fits.size() == 1) {
      return fits.get(0).port();
    }
    String doing = "finding the instrument that answers " + String.join(",", answer.fields());
    if (fits.isEmpty()) {
      throw new InstrumentFault(
          role,
          doing,
          "none does; there " + listed(said, PortChoice::words),
          "Switch it on and check its line rate, or correct its port in the bench description.");
    }
    throw new InstrumentFault(
        role,
        doing,
        fits.size() + " do: " + each(fits, PortChoice::words),
        differ(fits, h -> h.identity().map(PortChoice::serial).orElse(""))
            ? "Add the serial number to its port in the bench description: idn:MAKER,MODEL,SERIAL."
            : "They give the same serial number: name the instrument by its USB adapter,"
                + " usb:VENDOR:PRODUCT:SERIAL.");
  }

  /** The third field; empty where the instrument has none, which is written 0 (IEEE 488.2). */
  private static String serial(String identity) {
    String[] fields = identity.split(",", -1);
    String serial = fields.length < 3 ? "" : fields[2].strip();
    return serial.equals("0") ? "" : serial;
  }

  private static String adapter(PortInfo port) {
    String usb = port.usb().isEmpty() ? "no USB" : port.usb();
    return port.path() + " (" + usb + (port.serial().isEmpty() ? "" : ":" + port.serial()) + ")";
  }

  private static String words(Heard heard) {
    return heard.port().path()
        + " ("
        + heard.identity().map(Texts::printable).orElse(heard.why())
        + ")";
  }

  private static <T> String listed(List<T> all, Function<T, String> words) {
    return all.isEmpty() ? "is no other port" : "are " + each(all, words);
  }

  private static <T> String each(List<T> all, Function<T, String> words) {
    return all.stream().map(words).collect(Collectors.joining(", "));
  }

  private static <T> boolean differ(List<T> all, Function<T, String> serial) {
    return new HashSet<>(all.stream().map(serial).toList()).size() == all.size();
  }
}
