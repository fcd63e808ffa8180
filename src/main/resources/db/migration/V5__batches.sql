-- Many jobs judged in the background. A job without a verdict waits; a batch that is queued or
-- running goes on when the program starts.
create table batch (
  id varchar(36) primary key,
  name varchar(200) not null,
  created timestamp(6) with time zone default current_timestamp not null,
  state varchar(10) not null,
  total integer not null
);

create table batch_job (
  batch_id varchar(36) not null references batch (id),
  row_no integer not null,
  document text not null,
  verdict varchar(10),
  result text,
  primary key (batch_id, row_no)
);
