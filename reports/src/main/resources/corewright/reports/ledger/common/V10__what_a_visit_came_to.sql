-- What figures are counted from, so that a million visits are counted without asking a million times.
-- Computed from the events like every view.
ALTER TABLE visit ADD COLUMN disposition ${text} NOT NULL DEFAULT '';
ALTER TABLE visit ADD COLUMN arrival     ${text} NOT NULL DEFAULT ''; -- verdict of the last test that was not final
ALTER TABLE visit ADD COLUMN first_ship  ${text} NOT NULL DEFAULT ''; -- verdict of the first final test
ALTER TABLE visit ADD COLUMN ship_bench  ${text} NOT NULL DEFAULT '';
ALTER TABLE visit ADD COLUMN technician  ${text} NOT NULL DEFAULT '';
ALTER TABLE visit ADD COLUMN sealed      BIGINT  NOT NULL DEFAULT 0;  -- 1: a seal holds, or held when it left
ALTER TABLE visit ADD COLUMN shipped     ${text} NOT NULL DEFAULT '';
CREATE INDEX visit_shipped ON visit (shipped);
CREATE INDEX fitted_at ON fitted (at);
