-- The instance that works on a batch, and until when it is believed to live.
alter table batch add column holder varchar(36);
alter table batch add column held_until timestamp(6) with time zone;
