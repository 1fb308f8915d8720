-- Axles, hitch, roof rack and deck as they were weighed and measured, and things that have to stand on the way.
--
-- Nothing was measured until now, and nothing was known to have to stand.

alter table vehicle add column combination_rating_kg numeric(24, 9) check (combination_rating_kg >= 0);
alter table vehicle add column tongue_rating_kg numeric(24, 9) check (tongue_rating_kg >= 0);

alter table vehicle add column axles_wheelbase_m numeric(24, 9) check (axles_wheelbase_m > 0);
alter table vehicle add column axles_front_rating_kg numeric(24, 9) check (axles_front_rating_kg >= 0);
alter table vehicle add column axles_rear_rating_kg numeric(24, 9) check (axles_rear_rating_kg >= 0);
alter table vehicle add column axles_front_empty_kg numeric(24, 9) check (axles_front_empty_kg >= 0);
alter table vehicle add column axles_bay_front_m numeric(24, 9) check (axles_bay_front_m >= 0);
alter table vehicle add column axles_bay_length_m numeric(24, 9) check (axles_bay_length_m > 0);
alter table vehicle add column axles_seats_m numeric(24, 9) check (axles_seats_m >= 0);
alter table vehicle add column axles_kit_m numeric(24, 9) check (axles_kit_m >= 0);
alter table vehicle add column axles_hitch_m numeric(24, 9) check (axles_hitch_m >= 0);

alter table vehicle add constraint axles_whole check (
    (axles_wheelbase_m is null) = (axles_front_rating_kg is null)
    and (axles_wheelbase_m is null) = (axles_rear_rating_kg is null)
    and (axles_wheelbase_m is null) = (axles_front_empty_kg is null)
    and (axles_wheelbase_m is null) = (axles_bay_front_m is null)
    and (axles_wheelbase_m is null) = (axles_bay_length_m is null)
    and (axles_wheelbase_m is null) = (axles_seats_m is null)
    and (axles_wheelbase_m is null) = (axles_kit_m is null)
    and (axles_wheelbase_m is not null or axles_hitch_m is null)
);

alter table vehicle add column roof_rating_kg numeric(24, 9) check (roof_rating_kg >= 0);
alter table vehicle add column roof_volume_m3 numeric(24, 9) check (roof_volume_m3 >= 0);
alter table vehicle add column roof_longest_piece_m numeric(24, 9) check (roof_longest_piece_m >= 0);
alter table vehicle add column roof_middle_m numeric(24, 9) check (roof_middle_m >= 0);

alter table vehicle add constraint roof_whole check (
    (roof_rating_kg is null) = (roof_volume_m3 is null)
    and (roof_rating_kg is null) = (roof_longest_piece_m is null)
    and (roof_rating_kg is not null or roof_middle_m is null)
);

alter table trailer add column deck_axle_m numeric(24, 9) check (deck_axle_m > 0);
alter table trailer add column deck_front_m numeric(24, 9) check (deck_front_m >= 0);
alter table trailer add column deck_length_m numeric(24, 9) check (deck_length_m > 0);
alter table trailer add column deck_axle_rating_kg numeric(24, 9) check (deck_axle_rating_kg >= 0);

alter table trailer add constraint deck_whole check (
    (deck_axle_m is null) = (deck_front_m is null)
    and (deck_axle_m is null) = (deck_length_m is null)
    and (deck_axle_m is not null or deck_axle_rating_kg is null)
);

alter table material add column upright boolean default false not null;
alter table material alter column upright drop default;
