-- Whether a part was chosen although it does not fit.
alter table job add column choice_even_if_misfit boolean;
