-- Families beside open gas springs: columns of their own, empty where they do not apply.

alter table part alter column bore_diameter_mm drop not null;
alter table part alter column gas_volume_ml drop not null;
alter table part alter column oil_volume_ml drop not null;
alter table part alter column end_damping_mm drop not null;
alter table part alter column cold_friction_factor drop not null;
alter table part alter column orifice_diameter_mm drop not null;
alter table part alter column orifice_length_mm drop not null;
alter table part alter column compression_flow_factor drop not null;
alter table part alter column wall_time_constant_s drop not null;
alter table part alter column max_pressure_bar drop not null;
alter table part alter column loss_percent_per_year drop not null;
alter table part alter column loss_percent_per_10k_cycles drop not null;

alter table part add column locking varchar(20);
alter table part add column full_side_dead_volume_ml double precision;
alter table part add column rod_side_dead_volume_ml double precision;
alter table part add column lock_force_n double precision;
alter table part add column compressing_damping_n double precision;
alter table part add column extending_damping_n double precision;
alter table part add column damping_speed_mm_per_s double precision;
alter table part add column compressing_exponent double precision;
alter table part add column extending_exponent double precision;
alter table part add column wire_diameter_mm double precision;
alter table part add column active_coils double precision;
alter table part add column free_length_mm double precision;
alter table part add column shear_modulus_mpa double precision;
alter table part add column tensile_strength_mpa double precision;
