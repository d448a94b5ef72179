package corewright.reports.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A form in which a table is taken out of the ledger, row by row. */
interface TableForm extends Closeable {
  /**
   * @param cells texts, {@link Long} or {@link Double}, by column; null where nothing was written
   */
  void row(List<@Nullable Object> cells) throws IOException;
}
