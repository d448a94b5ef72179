package corewright.station.web.live;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.profiles.Step;

/** What the picture is drawn from before anything is sampled: scales, floors, windows, zones. */
final class PlanJson {
  private PlanJson() {}

  static String of(Course course) {
    ObjectNode plan = JsonNodeFactory.instance.objectNode();
    plan.put("nominal", course.family().output_V());
    plan.put("safe", course.family().discharge().safe_V());
    plan.put("ceiling", course.family().inputCeiling_V());
    plan.put("rated", course.family().ratedLoad_A());
    plan.put("good", course.zones().good_V());
    plan.put("tolerated", course.zones().tolerated_V());
    plan.put("column", course.column_ms());
    plan.put("settle", course.settle_s());
    plan.put("guard", course.guard_s());
    ArrayNode steps = plan.putArray("steps");
    course.profile().steps().forEach(s -> steps.add(step(course, s)));
    return plan.toString();
  }

  private static ObjectNode step(Course course, Step step) {
    ObjectNode one = JsonNodeFactory.instance.objectNode();
    one.put("title", step.title());
    one.put("hold", step.kind() == Step.Kind.HOLD);
    one.put("long", course.usual_s(step));
    one.put("judged", Course.isJudged(step));
    one.put("input", step.input_V());
    one.put("load", step.load_A());
    course.floor(step).ifPresent(floor -> one.put("floor", floor.pass()));
    return one;
  }
}
