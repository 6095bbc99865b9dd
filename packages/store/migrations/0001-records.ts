/** The first edition: jobs with their revisions, and all that hangs on them. */
export const records = `
create table job (
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
create index job_by_promise on job (put_away_at, promised, number);
create index job_by_change on job (put_away_at, changed_at, number);
create index job_by_number on job (put_away_at, number);
create index job_by_family on job (put_away_at, family, promised, number);
create index job_by_stage on job (put_away_at, stage, promised, number);

create table job_tag (
  job integer not null references job (number),
  tag text not null,
  primary key (job, tag)
) without rowid;
create index job_tag_by_tag on job_tag (tag, job);

create table revision (
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

create virtual table job_text using fts5 (
  words, content = '', contentless_delete = 1, prefix = '2 3', tokenize = "unicode61 remove_diacritics 2"
);

create table attachment (
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
create index attachment_by_job on attachment (job, added_at);
create index attachment_by_hash on attachment (hash);

create table book (
  name text not null,
  revision integer not null,
  at text not null,
  by text not null,
  body text not null,
  primary key (name, revision)
);

create table work (
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
create index work_by_job on work (job, asked_at);
create index work_by_state on work (state, asked_at);

create table work_checkpoint (
  work text not null references work (id),
  place integer not null,
  piece text not null,
  primary key (work, place)
) without rowid;

create table account (
  name text primary key,
  role text not null,
  password_hash text not null,
  created_at text not null,
  closed_at text
);

create table session (
  token_hash text primary key,
  account text not null references account (name),
  started_at text not null,
  ends_at text not null
);
create index session_by_account on session (account);

create table owner_link (
  id text primary key,
  token_hash text not null unique,
  job integer not null references job (number),
  made_at text not null,
  made_by text not null,
  ends_at text,
  withdrawn_at text,
  withdrawn_by text
);
create index owner_link_by_job on owner_link (job);

create table reading (
  id text primary key,
  job integer not null references job (number),
  kind text not null,
  day text not null,
  value text not null,
  note text not null,
  entered_at text not null,
  entered_by text not null
);
create index reading_by_job on reading (job, day);

create table deed (
  id integer primary key autoincrement,
  at text not null,
  who text not null,
  what text not null,
  job integer,
  about text,
  from_address text
);
create index deed_by_job on deed (job, id);
`;
