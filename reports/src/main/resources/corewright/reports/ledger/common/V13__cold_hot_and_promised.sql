-- What a core did in the cold and in the heat before anything was done to it, and the day it was
-- promised for. Filled here from the findings, so that no ledger is made anew for it; nothing could be
-- promised before.
ALTER TABLE visit ADD COLUMN cold     ${text} NOT NULL DEFAULT ''; -- outcome; ALONE: nothing else failed
ALTER TABLE visit ADD COLUMN hot      ${text} NOT NULL DEFAULT '';
ALTER TABLE visit ADD COLUMN promised ${text} NOT NULL DEFAULT '';
UPDATE visit SET
  cold = coalesce((SELECT CASE WHEN f.outcome = 'FAIL' AND NOT EXISTS (SELECT 1 FROM finding o WHERE o.run =
    f.run AND o.outcome = 'FAIL' AND o.quantity <> f.quantity) THEN 'ALONE' ELSE f.outcome END FROM run x JOIN
    finding f ON f.run = x.id WHERE x.tag = visit.tag AND x.visit = visit.number AND x.purpose <> 'ship' AND
    f.quantity = 'coldOutput' AND f.outcome <> 'NOT_MEASURED' ORDER BY x.started DESC, x.id DESC LIMIT 1), ''),
  hot = coalesce((SELECT CASE WHEN f.outcome = 'FAIL' AND NOT EXISTS (SELECT 1 FROM finding o WHERE o.run =
    f.run AND o.outcome = 'FAIL' AND o.quantity <> f.quantity) THEN 'ALONE' ELSE f.outcome END FROM run x JOIN
    finding f ON f.run = x.id WHERE x.tag = visit.tag AND x.visit = visit.number AND x.purpose <> 'ship' AND
    f.quantity = 'hotOutput' AND f.outcome <> 'NOT_MEASURED' ORDER BY x.started DESC, x.id DESC LIMIT 1), '')
WHERE tag IN (SELECT x.tag FROM finding f JOIN run x ON x.id = f.run WHERE f.outcome <> 'NOT_MEASURED' AND
  f.quantity IN ('coldOutput', 'hotOutput'));
