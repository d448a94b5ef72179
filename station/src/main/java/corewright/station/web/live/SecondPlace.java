package corewright.station.web.live;

import corewright.bench.run.Clock;
import corewright.station.web.Place;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Door;
import corewright.station.web.door.Visitor;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Objects;

/**
 * The second person of a run above 60 V DC, who stands beside the driver: name and password of
 * their own account, given at the driver's screen, for this unit and this start.
 */
final class SecondPlace implements Place {
  private final Benches benches;
  private final Door door;
  private final Clock clock;

  SecondPlace(Benches benches, Door door, Clock clock) {
    this.benches = benches;
    this.door = door;
    this.clock = clock;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.post("/bench/{id}/second", this::prove);
  }

  private void prove(Context context) {
    LiveBench bench = benches.at(context);
    String driver = Visitor.of(context).name();
    Preparations.Prepared prepared = bench.preparations().of(driver);
    if (prepared.tag().isEmpty()) {
      throw new Refused(
          "No unit is chosen for " + bench.id(), "Scan its tag on the bench's page first.");
    }
    String name =
        door.prove(
            context,
            Objects.requireNonNullElse(context.formParam("second"), "").strip(),
            Objects.requireNonNullElse(context.formParam("password"), "").toCharArray(),
            "stands by " + driver + " as second person, " + prepared.tag());
    bench.preparations().put(driver, prepared.by(name, clock.wall()));
    Answers.go(context, "/bench/" + bench.id());
  }
}
