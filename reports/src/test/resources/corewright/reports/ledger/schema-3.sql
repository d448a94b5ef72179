-- A ledger as schema 3 kept it, before events were signed and the life of units was told:
-- nine events, written by the program of that day and dumped by SQLite's own shell.
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE IF NOT EXISTS "flyway_schema_history" (
    "installed_rank" INT NOT NULL PRIMARY KEY,
    "version" VARCHAR(50),
    "description" VARCHAR(200) NOT NULL,
    "type" VARCHAR(20) NOT NULL,
    "script" VARCHAR(1000) NOT NULL,
    "checksum" INT,
    "installed_by" VARCHAR(100) NOT NULL,
    "installed_on" TEXT NOT NULL DEFAULT (strftime('%Y-%m-%d %H:%M:%f','now')),
    "execution_time" INT NOT NULL,
    "success" BOOLEAN NOT NULL
);
INSERT INTO flyway_schema_history VALUES(1,'1','events','SQL','V1__events.sql',770354561,'','2026-11-25 03:58:20.937',11,1);
INSERT INTO flyway_schema_history VALUES(2,'2','views of the events','SQL','V2__views_of_the_events.sql',-1379255287,'','2026-11-25 03:58:21.180',28,1);
INSERT INTO flyway_schema_history VALUES(3,'3','nothing is changed','SQL','V3__nothing_is_changed.sql',1851813493,'','2026-11-25 03:58:21.280',0,1);
CREATE TABLE event (
  position INTEGER PRIMARY KEY AUTOINCREMENT,
  chain    TEXT NOT NULL,
  sequence BIGINT  NOT NULL,
  at       TEXT NOT NULL, -- UTC, always with six decimals, so that text sorts as time does
  who      TEXT NOT NULL,
  kind     TEXT NOT NULL,
  tag      TEXT NOT NULL,
  body     TEXT NOT NULL, -- canonical JSON: keys sorted, no blanks
  previous TEXT NOT NULL,
  hash     TEXT NOT NULL,
  UNIQUE (chain, sequence)
);
INSERT INTO event VALUES(1,'bench-1',1,'2026-11-26T08:15:30.250000Z','H. Oduya','received','U-000012','{"complaint":"will not start when cold","customer":"K-00001","family":"sd48","label":"SD 12/48 0698-B","mode":"repair","received":"2026-11-26T08:15:30.250Z","receivedBy":"H. Oduya","serial":"SN 0698-114","tag":"U-000012"}','0000000000000000000000000000000000000000000000000000000000000000','4e3144249f463eddaf402fdfe642318f1c9e1499f29c7efe631fb3925aa7d6bb');
INSERT INTO event VALUES(2,'bench-1',2,'2026-11-26T08:15:30.250000Z','H. Oduya','answered','U-000012','{"answers":[{"answer":"6","cue":"bosses","when":"2026-11-26T08:16:30.250Z","who":"H. Oduya"},{"answer":"two rows, grey","cue":"connector","when":"2026-11-26T08:16:45.250Z","who":"H. Oduya"}]}','4e3144249f463eddaf402fdfe642318f1c9e1499f29c7efe631fb3925aa7d6bb','4e0878202c57ca03c153b97d479d736b03dfdf6f6ff40be1a0339d22c419a5cd');
INSERT INTO event VALUES(3,'bench-1',3,'2026-11-26T08:15:30.250000Z','H. Oduya','identified','U-000012','{"band":"IDENTIFIED","conflicts":["The label says A1, the mass says A2."],"family":"sd48","keyRevision":3,"nextQuestion":"","posterior":0.972,"posteriors":{"A1":0.021,"A2":0.972,"A3":0.007},"runnerUp":"A1","runnerUpPosterior":0.021,"variant":"A2"}','4e0878202c57ca03c153b97d479d736b03dfdf6f6ff40be1a0339d22c419a5cd','c0a7dc03fcb2889d1fb5cd175b72125a7a9193db75bd1ef6a4438f6734f0f595');
INSERT INTO event VALUES(4,'bench-1',4,'2026-11-26T08:15:30.250000Z','H. Oduya','run begun','U-000012','{"bench":"bench-1","capture":"captures/a.h5","fixture":"fixture-sd48-1","id":"a","number":1,"operator":"H. Oduya","profileId":"sd48-arrival","purpose":"arrival","source":"EMULATED","started":"2026-11-26T08:25:30.250Z","tag":"U-000012"}','c0a7dc03fcb2889d1fb5cd175b72125a7a9193db75bd1ef6a4438f6734f0f595','7680f5aaacb6398b24150ec02e679d801569e6882d09201f0f88bc0b08f1df82');
INSERT INTO event VALUES(5,'bench-1',5,'2026-11-26T08:15:30.250000Z','H. Oduya','run ended','U-000012','{"bench":"bench-1","benchDescription":{"path":"fixtures/benches/emulated.json","sha256":"cdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcd","text":"5d59a3e5a4316494a860d6d312f0b6e940fbad0fc47db5b88abc9804af0d048d"},"capture":"captures/a.h5","captureSha256":"abababababababababababababababababababababababababababababababab","end":{"at_s":8.0,"kind":"COMPLETED","remedy":"","saw":"The profile ran to its end.","step":"","trip":"NONE"},"ended":"2026-11-26T08:26:10.250Z","equipment":[{"calibration":"not calibrated","identity":"Corewright,Emulated load,0,1","role":"load"}],"family":{"path":"profiles/families/sd48/family.json","sha256":"cdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcd","text":"ee62ebb3dc9a5a7f0d0e1c565607c3d570eaef10d94faf0a1d5a2be1466679ff"},"fixture":"fixture-sd48-1","id":"a","judgement":{"decisionRule":"simple acceptance","findings":[{"conformity":1.0E-12,"hold":1,"limit":{"edge":null,"fail":45.0,"fromHold_s":0.0,"from_A":1.9,"headline":true,"id":"output-full","pass":46.5,"quantity":"output","side":"AT_LEAST","to_A":"Infinity","why":"the lower tolerance limit after set-point spread"},"margin":-3.38,"measurement":{"u":0.05,"unit":"V","value":43.12},"note":"","outcome":"FAIL"}],"qualifier":"VALID","reasons":["The output fell to 43.12 V under 2.00 A."],"verdict":"FAIL"},"measured":{"holds":[{"end_s":4.0,"feeds":[{"lowestMedian":{"flags":[],"value":{"u":0.02,"unit":"V","value":12.43}},"mean":{"flags":[],"value":{"u":0.01,"unit":"V","value":12.5}},"minimum":{"flags":[],"value":{"u":0.03,"unit":"V","value":12.41}},"name":"input"}],"index":0,"readings":{"droop":{"reason":"This is the hold without load."},"load":{"flags":[],"value":{"u":0.001,"unit":"A","value":3.3333333333333335E-5}},"output":{"flags":[],"value":{"u":0.031,"unit":"V","value":47.85}}},"recoveryState":"no_edge","start_s":0.0,"windowEnd_s":3.98,"windowStart_s":0.5},{"end_s":8.0,"feeds":[{"lowestMedian":{"flags":[],"value":{"u":0.02,"unit":"V","value":10.16}},"mean":{"flags":[],"value":{"u":0.01,"unit":"V","value":10.3}},"minimum":{"flags":[],"value":{"u":0.03,"unit":"V","value":10.14}},"name":"input"}],"index":1,"readings":{"load":{"flags":[],"value":{"u":0.004,"unit":"A","value":2.0}},"output":{"flags":["The level was drifting."],"value":{"u":0.05,"unit":"V","value":43.12}}},"recoveryState":"not_recovered","start_s":4.0,"windowEnd_s":7.98,"windowStart_s":4.5}],"notes":["Nothing was loaded for the first 4 s."],"readings":{"outputResistance":{"flags":[],"value":{"u":0.02,"unit":"Ω","value":2.365}}},"sampleRate_Hz":10000.0,"samples":80000,"uBasis":"scatter, resolution and calibration"},"number":1,"operator":"H. Oduya","profile":{"path":"profiles/families/sd48/sd48-arrival.json","sha256":"cdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcd","text":"f639a9dac60325038538a29f0efe99ee7e53522bf2399914afbd87247d5c8de0"},"profileId":"sd48-arrival","profileRevision":7,"purpose":"arrival","software":"corewright 1.0.0","source":"EMULATED","started":"2026-11-26T08:25:30.250Z","tag":"U-000012","troubles":[]}','7680f5aaacb6398b24150ec02e679d801569e6882d09201f0f88bc0b08f1df82','76cc4725751d0bebc82837e7a5aca77a594b736f842c81ced4d2c3b6140f37b5');
INSERT INTO event VALUES(6,'bench-1',6,'2026-11-26T08:15:30.250000Z','H. Oduya','decided','U-000012','{"destination":"","disposition":"PENDING","due":"2026-11-30","owner":"H. Oduya","question":"How many rows of pins has the connector?","reasons":["The label says A1 and the housing says A3."],"row":"D04","saw":{"grade":"B","identification":"UNCERTAIN"},"sentence":"We do not know yet which build this is.","tableRevision":2}','76cc4725751d0bebc82837e7a5aca77a594b736f842c81ced4d2c3b6140f37b5','3a1e255719e3d5b4d289905a323d9696cc5f851496daa9aecd1b54cc7b070216');
INSERT INTO event VALUES(7,'bench-1',7,'2026-11-26T08:15:30.250000Z','M. Reyes','rebuilt','U-000012','{"lines":["Output capacitors, all eight"]}','3a1e255719e3d5b4d289905a323d9696cc5f851496daa9aecd1b54cc7b070216','f945019b2b9ab44522574f908fcfe1a79ab2e22c29633bbb90f31814a05cce47');
INSERT INTO event VALUES(8,'bench-1',8,'2026-11-26T08:15:30.250000Z','H. Oduya','documented','U-000012','{"kind":"test report","path":"documents/x.pdf","sha256":"efefefefefefefefefefefefefefefefefefefefefefefefefefefefefefefef"}','f945019b2b9ab44522574f908fcfe1a79ab2e22c29633bbb90f31814a05cce47','47030f261953bcea978feecbe39ba3810817e5e2f73a46963c7b4227790a4aef');
INSERT INTO event VALUES(9,'bench-1',9,'2026-11-26T08:15:30.250000Z','H. Oduya','received','U-00002Z','{"complaint":"will not start when cold","customer":"K-00001","family":"sd48","label":"SD 12/48 0698-B","mode":"repair","received":"2026-11-26T08:15:30.250Z","receivedBy":"H. Oduya","serial":"SN 0698-115","tag":"U-00002Z"}','47030f261953bcea978feecbe39ba3810817e5e2f73a46963c7b4227790a4aef','8e9085560d9c046b438a1958b671018ef3f460bf5abc84f2959e32c7534f5c43');
CREATE TABLE content (
  sha256 TEXT PRIMARY KEY,
  body   TEXT NOT NULL
);
INSERT INTO content VALUES('f639a9dac60325038538a29f0efe99ee7e53522bf2399914afbd87247d5c8de0',replace('{"id":"sd48-arrival"}\n','\n',char(10)));
INSERT INTO content VALUES('ee62ebb3dc9a5a7f0d0e1c565607c3d570eaef10d94faf0a1d5a2be1466679ff',replace('{"id":"sd48"}\n','\n',char(10)));
INSERT INTO content VALUES('5d59a3e5a4316494a860d6d312f0b6e940fbad0fc47db5b88abc9804af0d048d',replace('{"id":"bench-1"}\n','\n',char(10)));
CREATE TABLE chain (
  name     TEXT PRIMARY KEY,
  sequence BIGINT  NOT NULL,
  hash     TEXT NOT NULL
);
INSERT INTO chain VALUES('bench-1',9,'8e9085560d9c046b438a1958b671018ef3f460bf5abc84f2959e32c7534f5c43');
CREATE TABLE counter (
  name  TEXT PRIMARY KEY,
  value BIGINT  NOT NULL
);
INSERT INTO counter VALUES('unit',2);
INSERT INTO counter VALUES('customer',1);
CREATE TABLE customer (
  code TEXT PRIMARY KEY,
  name TEXT NOT NULL
);
INSERT INTO customer VALUES('K-00001','Orrel Plant Hire');
CREATE TABLE unit (
  tag        TEXT PRIMARY KEY,
  serial     TEXT NOT NULL,
  serial_key TEXT NOT NULL, -- capitals and digits only
  family     TEXT NOT NULL,
  label      TEXT NOT NULL,
  variant    TEXT NOT NULL,
  visits     BIGINT  NOT NULL
);
INSERT INTO unit VALUES('U-000012','SN 0698-114','SN0698114','sd48','SD 12/48 0698-B','A2',1);
INSERT INTO unit VALUES('U-00002Z','SN 0698-115','SN0698115','sd48','SD 12/48 0698-B','',1);
CREATE TABLE serial_tail (
  tail TEXT NOT NULL,
  tag  TEXT NOT NULL REFERENCES unit (tag),
  PRIMARY KEY (tail, tag)
);
INSERT INTO serial_tail VALUES('SN0698114','U-000012');
INSERT INTO serial_tail VALUES('N0698114','U-000012');
INSERT INTO serial_tail VALUES('0698114','U-000012');
INSERT INTO serial_tail VALUES('698114','U-000012');
INSERT INTO serial_tail VALUES('98114','U-000012');
INSERT INTO serial_tail VALUES('8114','U-000012');
INSERT INTO serial_tail VALUES('114','U-000012');
INSERT INTO serial_tail VALUES('SN0698115','U-00002Z');
INSERT INTO serial_tail VALUES('N0698115','U-00002Z');
INSERT INTO serial_tail VALUES('0698115','U-00002Z');
INSERT INTO serial_tail VALUES('698115','U-00002Z');
INSERT INTO serial_tail VALUES('98115','U-00002Z');
INSERT INTO serial_tail VALUES('8115','U-00002Z');
INSERT INTO serial_tail VALUES('115','U-00002Z');
CREATE TABLE visit (
  tag         TEXT NOT NULL REFERENCES unit (tag),
  number      BIGINT  NOT NULL,
  mode        TEXT NOT NULL,
  customer    TEXT NOT NULL,
  received    TEXT NOT NULL,
  received_by TEXT NOT NULL,
  PRIMARY KEY (tag, number)
);
INSERT INTO visit VALUES('U-000012',1,'repair','K-00001','2026-11-26T08:15:30.250Z','H. Oduya');
INSERT INTO visit VALUES('U-00002Z',1,'repair','K-00001','2026-11-26T08:15:30.250Z','H. Oduya');
CREATE TABLE run (
  id        TEXT PRIMARY KEY,
  tag       TEXT NOT NULL REFERENCES unit (tag),
  visit     BIGINT  NOT NULL,
  purpose   TEXT NOT NULL,
  number    BIGINT  NOT NULL,
  source    TEXT NOT NULL,
  started   TEXT NOT NULL,
  operator  TEXT NOT NULL,
  bench     TEXT NOT NULL,
  fixture   TEXT NOT NULL,
  profile   TEXT NOT NULL,
  capture   TEXT NOT NULL,
  ended     TEXT, -- the columns from here on are null until the run has ended
  end_kind  TEXT,
  verdict   TEXT,
  qualifier TEXT
);
INSERT INTO run VALUES('a','U-000012',1,'arrival',1,'EMULATED','2026-11-26T08:25:30.250Z','H. Oduya','bench-1','fixture-sd48-1','sd48-arrival','captures/a.h5','2026-11-26T08:26:10.250Z','COMPLETED','FAIL','VALID');
CREATE TABLE finding (
  run        TEXT NOT NULL REFERENCES run (id),
  ordinal    BIGINT  NOT NULL,
  limit_id   TEXT NOT NULL,
  quantity   TEXT NOT NULL,
  hold       BIGINT  NOT NULL,
  value      DOUBLE PRECISION,
  u          DOUBLE PRECISION,
  unit       TEXT NOT NULL,
  pass       DOUBLE PRECISION NOT NULL,
  fail       DOUBLE PRECISION NOT NULL,
  outcome    TEXT NOT NULL,
  margin     DOUBLE PRECISION,
  conformity DOUBLE PRECISION,
  PRIMARY KEY (run, ordinal)
);
INSERT INTO finding VALUES('a',0,'output-full','output',1,43.119999999999997441,0.050000000000000002775,'V',46.5,45.0,'FAIL',-3.3799999999999998934,9.9999999999999998005e-13);
CREATE TABLE decision (
  tag         TEXT NOT NULL REFERENCES unit (tag),
  visit       BIGINT  NOT NULL,
  ordinal     BIGINT  NOT NULL,
  at          TEXT NOT NULL,
  row_id      TEXT NOT NULL,
  disposition TEXT NOT NULL,
  destination TEXT NOT NULL,
  question    TEXT NOT NULL,
  owner       TEXT NOT NULL,
  due         TEXT, -- null unless PENDING
  PRIMARY KEY (tag, visit, ordinal)
);
INSERT INTO decision VALUES('U-000012',1,1,'2026-11-26T08:15:30.250000Z','D04','PENDING','','How many rows of pins has the connector?','H. Oduya','2026-11-30');
CREATE TABLE document (
  tag    TEXT NOT NULL REFERENCES unit (tag),
  visit  BIGINT  NOT NULL,
  kind   TEXT NOT NULL,
  path   TEXT NOT NULL,
  sha256 TEXT NOT NULL,
  at     TEXT NOT NULL
);
INSERT INTO document VALUES('U-000012',1,'test report','documents/x.pdf','efefefefefefefefefefefefefefefefefefefefefefefefefefefefefefefef','2026-11-26T08:15:30.250000Z');
DELETE FROM sqlite_sequence;
INSERT INTO sqlite_sequence VALUES('event',9);
CREATE INDEX "flyway_schema_history_s_idx" ON "flyway_schema_history" ("success");
CREATE INDEX event_of_tag ON event (tag, position);
CREATE UNIQUE INDEX customer_name ON customer (name);
CREATE INDEX unit_serial ON unit (serial_key);
CREATE INDEX serial_tail_of_tag ON serial_tail (tag);
CREATE INDEX run_of_tag ON run (tag, purpose);
CREATE INDEX run_open ON run (ended);
CREATE INDEX document_of_tag ON document (tag, visit);
CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
BEGIN SELECT RAISE(ABORT, 'events are never changed'); END;
CREATE TRIGGER event_is_never_removed BEFORE DELETE ON event
BEGIN SELECT RAISE(ABORT, 'events are never removed'); END;
CREATE TRIGGER content_is_never_changed BEFORE UPDATE ON content
BEGIN SELECT RAISE(ABORT, 'stored texts are never changed'); END;
CREATE TRIGGER content_is_never_removed BEFORE DELETE ON content
BEGIN SELECT RAISE(ABORT, 'stored texts are never removed'); END;
COMMIT;
