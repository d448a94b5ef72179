package corewright.station.work;

import corewright.bench.life.Stage;
import corewright.reports.ledger.Deposits.Deposit;
import corewright.reports.ledger.Money;
import corewright.reports.ledger.Standing;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How the shop stands today: work in progress, open questions by age, deposits that are owed, and
 * how long the stock lasts.
 *
 * @param work stage by stage
 * @param questions the oldest first
 * @param deposits the most urgent first
 * @param owed what they come to, by currency
 * @param cover by build
 */
public record OpenToday(
    List<InWork> work,
    List<Question> questions,
    List<Deposit> deposits,
    Map<String, Money> owed,
    List<Cover> cover) {

  /**
   * A unit that waits for an answer.
   *
   * @param age_days since it waits
   * @param overdue whether its day is past
   */
  public record Question(
      String tag, String question, String owner, String due, long age_days, boolean overdue) {}

  /**
   * Tells it.
   *
   * @param here every unit that is in the shop's hands
   * @param zone where the shop stands
   */
  static OpenToday of(
      List<Standing> here,
      List<Deposit> deposits,
      List<Cover> cover,
      LocalDate today,
      ZoneId zone) {
    List<Question> questions = new ArrayList<>();
    for (Standing s : here) {
      if (s.life().stage() != Stage.PENDING) {
        continue;
      }
      questions.add(
          new Question(
              s.tag(),
              s.question(),
              s.owner(),
              s.due(),
              InWork.age_days(s, today, zone),
              !s.due().isEmpty() && s.due().compareTo(today.toString()) < 0));
    }
    questions.sort(Comparator.comparingLong(Question::age_days).reversed());
    Map<String, Money> owed = new TreeMap<>();
    deposits.forEach(
        d ->
            owed.merge(
                d.amount().currency(),
                d.amount(),
                (a, b) -> new Money(a.hundredths() + b.hundredths(), a.currency())));
    return new OpenToday(InWork.of(here, today, zone), questions, deposits, owed, cover);
  }
}
