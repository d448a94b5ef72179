package corewright.reports.ledger;

import corewright.bench.life.Act;
import java.time.LocalDate;
import java.util.List;

/** One step in the life of a unit, with what has to be written down about it. */
public sealed interface Step {
  Act act();

  /** A step that needs no more than a note. */
  record Plain(Act act, String note) implements Step {}

  /**
   * The unit was discharged, and the discharge verified.
   *
   * @param residual_V what was left, read again after the wait
   */
  record Safe(double residual_V, String note) implements Step {
    @Override
    public Act act() {
      return Act.MAKE_SAFE;
    }
  }

  /** A question is open. */
  record Hold(String question, String owner, LocalDate due) implements Step {
    @Override
    public Act act() {
      return Act.HOLD;
    }
  }

  /**
   * What was done to an open unit.
   *
   * @param did lines that a customer can read
   */
  record Work(List<String> did, List<Fitted> fitted) implements Step {
    public Work {
      did = List.copyOf(did);
      fitted = List.copyOf(fitted);
    }

    @Override
    public Act act() {
      return Act.WORK;
    }
  }

  /**
   * The unit was sealed.
   *
   * @param number of the seal, used once in the life of the shop
   * @param mark the hidden mark, as its photograph is named; may be empty
   */
  record Sealing(String number, String mark) implements Step {
    @Override
    public Act act() {
      return Act.SEAL;
    }
  }

  /**
   * The unit left.
   *
   * @param warrantyFrom first day of the warranty, ISO 8601; empty: it left without one
   * @param warrantyUntil last day
   */
  record Shipping(
      String carrier, String tracking, String warrantyFrom, String warrantyUntil, String terms)
      implements Step {
    @Override
    public Act act() {
      return Act.SHIP;
    }
  }

  /** The unit is no more: two people, or a photograph and a reason. */
  record Scrapping(String reason, String second, String photo) implements Step {
    @Override
    public Act act() {
      return Act.SCRAP;
    }
  }

  /** The last step was a mistake. */
  record Back(String reason) implements Step {
    @Override
    public Act act() {
      return Act.STEP_BACK;
    }
  }
}
