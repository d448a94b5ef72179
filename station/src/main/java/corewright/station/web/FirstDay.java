package corewright.station.web;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.life.Role;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Door;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Map;
import java.util.Objects;

/**
 * The first day: the owner's account is made, by whoever can read the code on the terminal that
 * started the console. Afterwards this page is gone.
 */
final class FirstDay implements Place {
  private final House house;
  private final Pages pages;
  private final Door door;
  private final String code;
  private final Runnable sample;

  /**
   * @param sample fills a sample shop, in the background
   */
  FirstDay(House house, Pages pages, Door door, String code, Runnable sample) {
    this.house = house;
    this.pages = pages;
    this.door = door;
    this.code = code;
    this.sample = sample;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/first", this::show);
    routes.post("/first", this::open);
  }

  private void show(Context context) {
    if (!isFirst()) {
      context.redirect("/in");
      return;
    }
    String given = Objects.requireNonNullElse(context.queryParam("code"), "");
    pages.bare(context, "firstday.jte", Map.of("proof", door.gateProof(context), "code", given));
  }

  private void open(Context context) {
    if (!isFirst()) {
      throw new Refused("This shop has an owner already", "Sign in.");
    }
    if (!isCode(field(context, "code"))) {
      throw new Refused(
          "The code does not fit", "Open the address that stands where the console was started.");
    }
    String name = field(context, "name").strip();
    char[] password = field(context, "password").toCharArray();
    if (!field(context, "password").equals(field(context, "again"))) {
      throw new Refused("The two passwords differ", "Type the same one twice.");
    }
    boolean invented = context.formParam("sample") != null;
    house.workshop().ledger().accounts().put(name, Role.OWNER, password, name);
    write(house.workshop().folders().root().resolve("shop.json"), context, invented);
    house.reopen();
    door.enter(context, name, password);
    if (invented) {
      sample.run();
    }
    Answers.go(context, "/");
  }

  private boolean isFirst() {
    return house.workshop().ledger().accounts().all().isEmpty();
  }

  private boolean isCode(String given) {
    return MessageDigest.isEqual(
        code.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
  }

  /** What is there already was written by somebody, and stays. */
  private static void write(Path file, Context context, boolean invented) {
    if (Files.exists(file)) {
      return;
    }
    JsonMapper json = JsonMapper.builder().build();
    ObjectNode shop = json.createObjectNode();
    shop.put("name", field(context, "shop").strip());
    shop.put("address", field(context, "address").strip());
    if (invented) {
      shop.put("invented", true);
    }
    try {
      Files.writeString(file, json.writerWithDefaultPrettyPrinter().writeValueAsString(shop));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }

  private static String field(Context context, String name) {
    return Objects.requireNonNullElse(context.formParam(name), "");
  }
}
