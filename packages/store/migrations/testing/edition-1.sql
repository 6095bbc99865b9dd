CREATE TABLE job (
  number integer primary key,
  revision integer not null,
  title text,
  filter_name text,
  family text not null,
  stage text,
  tags text not null,
  owner text,
  received text,
  promised text,
  created_at text not null,
  changed_at text not null,
  changed_by text not null,
  put_away_at text
);
CREATE TABLE job_tag (
  job integer not null references job (number),
  tag text not null,
  primary key (job, tag)
) without rowid;
CREATE TABLE revision (
  job integer not null references job (number),
  revision integer not null,
  at text not null,
  by text not null,
  kind text not null,
  changes text not null,
  went_back_to integer,
  document text not null,
  hash text not null,
  primary key (job, revision)
);
CREATE VIRTUAL TABLE job_text using fts5 (
  words, content = '', contentless_delete = 1, prefix = '2 3', tokenize = "unicode61 remove_diacritics 2"
);
CREATE TABLE attachment (
  id text primary key,
  job integer not null references job (number),
  hash text not null,
  media_type text not null,
  bytes integer not null,
  width_px integer not null,
  height_px integer not null,
  name text not null,
  caption text not null,
  taken_at text,
  latitude_deg real,
  longitude_deg real,
  added_at text not null,
  added_by text not null,
  removed_at text
);
CREATE TABLE book (
  name text not null,
  revision integer not null,
  at text not null,
  by text not null,
  body text not null,
  primary key (name, revision)
);
CREATE TABLE work (
  id text primary key,
  kind text not null,
  job integer not null references job (number),
  revision integer not null,
  request text not null,
  state text not null,
  by text not null,
  asked_at text not null,
  started_at text,
  ended_at text,
  result text,
  failure text
);
CREATE TABLE work_checkpoint (
  work text not null references work (id),
  place integer not null,
  piece text not null,
  primary key (work, place)
) without rowid;
CREATE TABLE account (
  name text primary key,
  role text not null,
  password_hash text not null,
  created_at text not null,
  closed_at text
);
CREATE TABLE session (
  token_hash text primary key,
  account text not null references account (name),
  started_at text not null,
  ends_at text not null
);
CREATE TABLE owner_link (
  id text primary key,
  token_hash text not null unique,
  job integer not null references job (number),
  made_at text not null,
  made_by text not null,
  ends_at text,
  withdrawn_at text,
  withdrawn_by text
);
CREATE TABLE reading (
  id text primary key,
  job integer not null references job (number),
  kind text not null,
  day text not null,
  value text not null,
  note text not null,
  entered_at text not null,
  entered_by text not null
);
CREATE TABLE deed (
  id integer primary key autoincrement,
  at text not null,
  who text not null,
  what text not null,
  job integer,
  about text,
  from_address text
);
CREATE INDEX job_by_promise on job (put_away_at, promised, number);
CREATE INDEX job_by_change on job (put_away_at, changed_at, number);
CREATE INDEX job_by_number on job (put_away_at, number);
CREATE INDEX job_by_family on job (put_away_at, family, promised, number);
CREATE INDEX job_by_stage on job (put_away_at, stage, promised, number);
CREATE INDEX job_tag_by_tag on job_tag (tag, job);
CREATE INDEX attachment_by_job on attachment (job, added_at);
CREATE INDEX attachment_by_hash on attachment (hash);
CREATE INDEX work_by_job on work (job, asked_at);
CREATE INDEX work_by_state on work (state, asked_at);
CREATE INDEX session_by_account on session (account);
CREATE INDEX owner_link_by_job on owner_link (job);
CREATE INDEX reading_by_job on reading (job, day);
CREATE INDEX deed_by_job on deed (job, id);
insert into job ("number", "revision", "title", "filter_name", "family", "stage", "tags", "owner", "received", "promised", "created_at", "changed_at", "changed_by", "put_away_at") values (7, 3, 'Überlauf of the reading room', 'Reading room canister', 'internal-box', 'taken-in', '["reading room","loud"]', 'Orlinde Quillmere', '2026-11-02', '2026-11-20', '2026-11-02T09:00:00.000Z', '2026-11-02T09:00:00.000Z', 'tamsel', NULL);
insert into job ("number", "revision", "title", "filter_name", "family", "stage", "tags", "owner", "received", "promised", "created_at", "changed_at", "changed_by", "put_away_at") values (8, 2, NULL, 'Reading room canister', 'internal-box', NULL, '[]', NULL, NULL, NULL, '2026-11-02T09:00:00.000Z', '2026-11-02T09:00:00.000Z', 'tamsel', '2026-11-02T09:00:00.000Z');
insert into job ("number", "revision", "title", "filter_name", "family", "stage", "tags", "owner", "received", "promised", "created_at", "changed_at", "changed_by", "put_away_at") values (9, 1, 'Überlauf of the reading room', 'Reading room canister', 'internal-box', 'taken-in', '["reading room","loud"]', 'Orlinde Quillmere', '2026-11-02', '2026-11-20', '2026-11-02T09:00:00.000Z', '2026-11-02T09:00:00.000Z', 'tamsel', NULL);
insert into job_tag ("job", "tag") values (7, 'loud');
insert into job_tag ("job", "tag") values (9, 'loud');
insert into job_tag ("job", "tag") values (7, 'reading room');
insert into job_tag ("job", "tag") values (9, 'reading room');
insert into revision ("job", "revision", "at", "by", "kind", "changes", "went_back_to", "document", "hash") values (7, 1, '2026-11-02T09:00:00.000Z', 'tamsel', 'taken-in', '[]', NULL, '{"fettle":1,"job":{"number":7,"title":"Überlauf of the reading room","received":"2026-11-02","promised":"2026-11-20","stage":"taken-in","tags":["reading room","loud"],"notes":"The owner''s word for it: “gurgles”.\nSecond line."},"owner":{"name":"Orlinde Quillmere","place":"the old harbour"},"tank":{"volume":"180 L ± 5 %","temperature":"25 °C"},"filter":{"name":"Reading room canister","family":"internal-box","measurements":{"innerWidth":"74 mm","innerDepth":"66 mm","innerHeight":"190 mm","chambers":2,"slotArea":"4.2 cm2"},"pump":{"ratedFlow":"900 L/h","shutoffHead":"1.3 m","power":"14 W"}}}', 'df6c25dc7f3bf59601a432b0cdfa09c5bc9c8107c25ed883ae94466968f7f4fd');
insert into revision ("job", "revision", "at", "by", "kind", "changes", "went_back_to", "document", "hash") values (7, 2, '2026-11-02T09:00:00.000Z', 'brannic', 'edited', '[{"path":"job.stage","before":"taken-in","after":"tested"}]', NULL, '{"fettle":1,"job":{"number":7,"title":"Überlauf of the reading room","received":"2026-11-02","promised":"2026-11-20","stage":"tested","tags":["reading room","loud"],"notes":"The owner''s word for it: “gurgles”.\nSecond line."},"owner":{"name":"Orlinde Quillmere","place":"the old harbour"},"tank":{"volume":"180 L ± 5 %","temperature":"25 °C"},"filter":{"name":"Reading room canister","family":"internal-box","measurements":{"innerWidth":"74 mm","innerDepth":"66 mm","innerHeight":"190 mm","chambers":2,"slotArea":"4.2 cm2"},"pump":{"ratedFlow":"900 L/h","shutoffHead":"1.3 m","power":"14 W"}}}', '79791fc66283b8c5429f25befb9208635f3d0a2aa1ec4d560171003a22dc0a82');
insert into revision ("job", "revision", "at", "by", "kind", "changes", "went_back_to", "document", "hash") values (7, 3, '2026-11-02T09:00:00.000Z', 'tamsel', 'went-back', '[{"path":"job.stage","before":"tested","after":"taken-in"}]', 1, '{"fettle":1,"job":{"number":7,"title":"Überlauf of the reading room","received":"2026-11-02","promised":"2026-11-20","stage":"taken-in","tags":["reading room","loud"],"notes":"The owner''s word for it: “gurgles”.\nSecond line."},"owner":{"name":"Orlinde Quillmere","place":"the old harbour"},"tank":{"volume":"180 L ± 5 %","temperature":"25 °C"},"filter":{"name":"Reading room canister","family":"internal-box","measurements":{"innerWidth":"74 mm","innerDepth":"66 mm","innerHeight":"190 mm","chambers":2,"slotArea":"4.2 cm2"},"pump":{"ratedFlow":"900 L/h","shutoffHead":"1.3 m","power":"14 W"}}}', 'df6c25dc7f3bf59601a432b0cdfa09c5bc9c8107c25ed883ae94466968f7f4fd');
insert into revision ("job", "revision", "at", "by", "kind", "changes", "went_back_to", "document", "hash") values (8, 1, '2026-11-02T09:00:00.000Z', 'tamsel', 'imported', '[]', NULL, '{"fettle":1,"job":{"number":8},"tank":{"volume":"180 L ± 5 %","temperature":"25 °C"},"filter":{"name":"Reading room canister","family":"internal-box","measurements":{"innerWidth":"74 mm","innerDepth":"66 mm","innerHeight":"190 mm","chambers":2,"slotArea":"4.2 cm2"},"pump":{"ratedFlow":"900 L/h","shutoffHead":"1.3 m","power":"14 W"}}}', '27368910d23ca858a139374a962162346d50448b5348cef59b0f847e74bbefe4');
insert into revision ("job", "revision", "at", "by", "kind", "changes", "went_back_to", "document", "hash") values (8, 2, '2026-11-02T09:00:00.000Z', 'tamsel', 'put-away', '[]', NULL, '{"fettle":1,"job":{"number":8},"tank":{"volume":"180 L ± 5 %","temperature":"25 °C"},"filter":{"name":"Reading room canister","family":"internal-box","measurements":{"innerWidth":"74 mm","innerDepth":"66 mm","innerHeight":"190 mm","chambers":2,"slotArea":"4.2 cm2"},"pump":{"ratedFlow":"900 L/h","shutoffHead":"1.3 m","power":"14 W"}}}', '27368910d23ca858a139374a962162346d50448b5348cef59b0f847e74bbefe4');
insert into revision ("job", "revision", "at", "by", "kind", "changes", "went_back_to", "document", "hash") values (9, 1, '2026-11-02T09:00:00.000Z', 'tamsel', 'imported', '[]', NULL, '{"fettle":1,"job":{"number":9,"title":"Überlauf of the reading room","received":"2026-11-02","promised":"2026-11-20","stage":"taken-in","tags":["reading room","loud"],"notes":"The owner''s word for it: “gurgles”.\nSecond line."},"owner":{"name":"Orlinde Quillmere","place":"the old harbour"},"tank":{"volume":"180 L ± 5 %","temperature":"25 °C"},"filter":{"name":"Reading room canister","family":"internal-box","measurements":{"innerWidth":"74 mm","innerDepth":"66 mm","innerHeight":"190 mm","chambers":2,"slotArea":"4.2 cm2"},"pump":{"ratedFlow":"900 L/h","shutoffHead":"1.3 m","power":"14 W"}}}', 'de8485ac8b7105f3368514c8e0b60954b3df38f0ca3455caf23d2069e6551e92');
insert into attachment ("id", "job", "hash", "media_type", "bytes", "width_px", "height_px", "name", "caption", "taken_at", "latitude_deg", "longitude_deg", "added_at", "added_by", "removed_at") values ('samplepicture234', 9, 'ab12ab12ab12ab12ab12ab12ab12ab12ab12ab12ab12ab12ab12ab12ab12ab12', 'image/jpeg', 1234, 640, 480, 'basket.jpg', 'Lowest basket', '2026-11-02T09:30:00', 12.5, -3.25, '2026-11-02T10:00:00.000Z', 'tamsel', NULL);
insert into book ("name", "revision", "at", "by", "body") values ('shelf', 1, '2026-11-02T09:00:00.000Z', 'tamsel', '{"shelf":["foam-30ppi"]}');
insert into book ("name", "revision", "at", "by", "body") values ('shelf', 2, '2026-11-02T09:00:00.000Z', 'tamsel', '{"shelf":["foam-20ppi"]}');
insert into work ("id", "kind", "job", "revision", "request", "state", "by", "asked_at", "started_at", "ended_at", "result", "failure") values ('jvcyc9fe35hytck5', 'plans', 7, 3, '{"budget":"10 GBP"}', 'done', 'tamsel', '2026-11-02T09:00:00.000Z', '2026-11-02T09:00:00.000Z', '2026-11-02T09:00:00.000Z', '{"plans":[1,2]}', NULL);
insert into account ("name", "role", "password_hash", "created_at", "closed_at") values ('tamsel', 'technician', 'no hash', '2026-11-02T09:00:00.000Z', NULL);
insert into session ("token_hash", "account", "started_at", "ends_at") values ('token', 'tamsel', '2026-11-02T09:00:00.000Z', '2999-01-01T00:00:00.000Z');
insert into owner_link ("id", "token_hash", "job", "made_at", "made_by", "ends_at", "withdrawn_at", "withdrawn_by") values ('4nrbf9cv6cxtukd7', 'link', 7, '2026-11-02T09:00:00.000Z', 'tamsel', NULL, NULL, NULL);
insert into reading ("id", "job", "kind", "day", "value", "note", "entered_at", "entered_by") values ('sampleread23ings', 9, 'jug-flow', '2026-11-21', '480 L/h', 'after a day', '2026-11-21T10:00:00.000Z', 'owner');
insert into deed ("id", "at", "who", "what", "job", "about", "from_address") values (1, '2026-11-02T09:00:00.000Z', 'tamsel', 'signed-in', NULL, NULL, '127.0.0.1');
insert into job_text (rowid, words) values (7, '7 uberlauf of the reading room 2026 11 02 2026 11 20 taken in reading room loud the owner s word for it gurgles second line orlinde quillmere the old harbour 180 l 5 25 c reading room canister internal box 74 mm 66 mm 190 mm 4 2 cm2 900 l h 1 3 m 14 w');
insert into job_text (rowid, words) values (8, '8 180 l 5 25 c reading room canister internal box 74 mm 66 mm 190 mm 4 2 cm2 900 l h 1 3 m 14 w');
insert into job_text (rowid, words) values (9, '9 uberlauf of the reading room 2026 11 02 2026 11 20 taken in reading room loud the owner s word for it gurgles second line orlinde quillmere the old harbour 180 l 5 25 c reading room canister internal box 74 mm 66 mm 190 mm 4 2 cm2 900 l h 1 3 m 14 w');
pragma user_version = 1;
