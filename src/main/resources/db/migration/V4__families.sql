-- Families beside open gas springs leave empty what does not apply to them.
alter table part alter column bore_diameter_mm drop not null;
alter table part alter column gas_volume_ml drop not null;
alter table part alter column oil_volume_ml drop not null;
alter table part alter column end_damping_mm drop not null;
alter table part alter column orifice_diameter_mm drop not null;
alter table part alter column orifice_length_mm drop not null;
alter table part alter column compression_flow_factor drop not null;
alter table part alter column wall_time_constant_s drop not null;
alter table part alter column max_pressure_bar drop not null;
alter table part alter column loss_percent_per_year drop not null;
alter table part alter column loss_percent_per_10k_cycles drop not null;
