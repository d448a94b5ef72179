-- Who shares a lot, a technician or a bench with a unit is counted without looking at a row of theirs: a
-- page about one unit read four megabytes, most of them rows of others, to say how many they are.
CREATE INDEX fitted_lot_units ON fitted (lot, tag, visit);
CREATE INDEX fitted_who_units ON fitted (who, at, tag, visit);
CREATE INDEX run_bench_units ON run (bench, started, purpose, tag, visit);
DROP INDEX fitted_of_lot;
DROP INDEX fitted_by;
DROP INDEX run_on_bench;
