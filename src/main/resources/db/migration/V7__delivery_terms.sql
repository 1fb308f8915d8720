-- Small orders, the truck's own mass, drops with nobody there and ready-mix; and what the track to the site bears.
--
-- Until now somebody had to be there for every delivery, so it stays so for those that are known.

alter table supplier add column delivery_least_order numeric(14, 2) check (delivery_least_order >= 0);
alter table supplier add column delivery_small_order_fee numeric(14, 2) check (delivery_small_order_fee >= 0);
alter table supplier add column delivery_truck_empty_mass_kg numeric(24, 9) check (delivery_truck_empty_mass_kg >= 0);
alter table supplier add column delivery_attended boolean;
alter table supplier add column delivery_place_within_quarter_hours integer
    check (delivery_place_within_quarter_hours >= 0);

update supplier set delivery_attended = true where delivery_fee is not null;

alter table supplier add constraint delivery_attended_whole check (
    (delivery_fee is null) = (delivery_attended is null)
);

alter table homestead add column track_limit_kg numeric(24, 9) check (track_limit_kg >= 0);

create table soft_month (
    homestead_id uuid not null references homestead,
    position integer not null,
    month_name varchar not null,
    primary key (homestead_id, position)
);
