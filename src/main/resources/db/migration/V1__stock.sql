-- The stock range in revisions. A row holds from one revision to another, both included; a row that
-- still holds ends at the greatest integer. Numbers stand in the unit of their column's name.
-- Price breaks are text, as in a file: 1:14.20;10:12.90.
-- ${ordered_text} is text that sorts by its code points, whatever the language of the database.

create table stock_revision (
  revision integer primary key,
  created timestamp with time zone default current_timestamp not null,
  origin varchar(200) not null
);

create table part (
  part_number ${ordered_text} not null,
  from_revision integer not null references stock_revision (revision),
  to_revision integer default 2147483647 not null,
  description varchar(200),
  family varchar(20) not null,
  finish varchar(20) not null,
  rod_thread varchar(200) not null,
  tube_thread varchar(200) not null,
  mounting varchar(20) not null,
  derived varchar(1000) not null,
  force_class_n double precision not null,
  force_tolerance_n double precision not null,
  rod_diameter_mm double precision not null,
  tube_diameter_mm double precision not null,
  bore_diameter_mm double precision not null,
  stroke_mm double precision not null,
  extended_length_mm double precision not null,
  compressed_length_mm double precision not null,
  gas_volume_ml double precision not null,
  oil_volume_ml double precision not null,
  end_damping_mm double precision not null,
  friction_n double precision not null,
  cold_friction_factor double precision not null,
  orifice_diameter_mm double precision not null,
  orifice_length_mm double precision not null,
  compression_flow_factor double precision not null,
  wall_time_constant_s double precision not null,
  min_temperature_c double precision not null,
  max_temperature_c double precision not null,
  max_pressure_bar double precision not null,
  mass_kg double precision not null,
  loss_percent_per_year double precision not null,
  loss_percent_per_10k_cycles double precision not null,
  price_currency varchar(3),
  price_valid_until date,
  price_pack integer,
  price_order_multiple integer,
  price_breaks varchar(200),
  stock integer not null,
  stock_date date,
  lead_time_days integer not null,
  primary key (part_number, from_revision)
);

create table fitting (
  part_number ${ordered_text} not null,
  from_revision integer not null references stock_revision (revision),
  to_revision integer default 2147483647 not null,
  description varchar(200),
  type varchar(20) not null,
  finish varchar(20) not null,
  thread varchar(200),
  length_to_centre_mm double precision not null,
  rating_n double precision not null,
  swing_deg double precision not null,
  ball_diameter_mm double precision not null,
  pin_diameter_mm double precision not null,
  mass_kg double precision not null,
  price_currency varchar(3),
  price_valid_until date,
  price_pack integer,
  price_order_multiple integer,
  price_breaks varchar(200),
  stock integer not null,
  stock_date date,
  lead_time_days integer not null,
  primary key (part_number, from_revision)
);
