package corewright.station.work;

import corewright.reports.ledger.Deposits.Deposit;
import corewright.reports.ledger.Money;
import corewright.reports.ledger.Standing;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What waits for somebody: open questions by age, and deposits that are owed.
 *
 * @param questions the oldest first
 * @param deposits the most urgent first
 * @param owed what they come to, by currency
 */
public record OpenToday(List<Question> questions, List<Deposit> deposits, Map<String, Money> owed) {

  /**
   * A unit that waits for an answer.
   *
   * @param age_days since it waits
   * @param overdue whether its day is past
   */
  public record Question(
      String tag, String question, String owner, String due, long age_days, boolean overdue) {}

  static OpenToday of(List<Standing> pending, List<Deposit> deposits, LocalDate today) {
    List<Question> questions = new ArrayList<>();
    for (Standing s : pending) {
      questions.add(
          new Question(
              s.tag(),
              s.question(),
              s.owner(),
              s.due(),
              ChronoUnit.DAYS.between(LocalDate.parse(s.since().substring(0, 10)), today),
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
    return new OpenToday(questions, deposits, owed);
  }
}
