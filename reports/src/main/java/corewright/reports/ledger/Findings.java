package corewright.reports.ledger;

import corewright.bench.record.Finding;
import corewright.bench.record.RunRecord;
import corewright.measures.Measurement;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The findings of a run as rows, for questions across units. */
final class Findings {
  private Findings() {}

  static void insert(Handle handle, RunRecord run) {
    if (run.judgement().findings().isEmpty()) {
      return;
    }
    PreparedBatch batch =
        handle.prepareBatch(
            "INSERT INTO finding (run, ordinal, limit_id, quantity, hold, value, u, unit, pass,"
                + " fail, outcome, margin, conformity) VALUES (:run, :ordinal, :limit_id,"
                + " :quantity, :hold, :value, :u, :unit, :pass, :fail, :outcome, :margin,"
                + " :conformity)");
    int ordinal = 0;
    for (Finding finding : run.judgement().findings()) {
      batch
          .bind("run", run.id())
          .bind("ordinal", ordinal++)
          .bind("limit_id", finding.limit().id())
          .bind("quantity", finding.quantity().id())
          .bind("hold", finding.hold())
          .bind("value", finding.measurement().map(Measurement::value).orElse(null))
          .bind("u", finding.measurement().map(Measurement::u).orElse(null))
          .bind("unit", finding.quantity().unit().symbol())
          .bind("pass", finding.limit().pass())
          .bind("fail", finding.limit().fail())
          .bind("outcome", finding.outcome().name())
          .bind("margin", finding.margin().orElse(null))
          .bind("conformity", finding.conformity().orElse(null))
          .add();
    }
    batch.execute();
  }
}
