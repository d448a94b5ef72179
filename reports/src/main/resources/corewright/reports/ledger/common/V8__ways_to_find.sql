-- What units are looked for by, so that neither a search nor a recall reads every row.
CREATE INDEX run_on_bench ON run (bench, started);
CREATE INDEX run_on_fixture ON run (fixture);
CREATE INDEX run_by ON run (operator);
CREATE INDEX visit_received ON visit (received);
CREATE INDEX visit_by ON visit (received_by);
CREATE INDEX visit_for ON visit (customer);
