-- Sun, weather and power: what hides the sun, a forecast, how the battery behaves, how long tools run, and water on site.
--
-- Until now the battery was full when a trip began, a generator could run at any hour and nothing was asked of the ground.

alter table month_normal add column rain_m numeric(24, 9) check (rain_m >= 0);
alter table month_normal add column wind_m_s numeric(24, 9) check (wind_m_s >= 0);

create table horizon_sector (
    homestead_id uuid not null references homestead,
    position integer not null,
    from_deg numeric(24, 9) not null check (from_deg between 0 and 360),
    to_deg numeric(24, 9) not null check (to_deg between 0 and 360),
    elevation_deg numeric(24, 9) not null check (elevation_deg between 0 and 90),
    primary key (homestead_id, position)
);

create table forecast_day (
    homestead_id uuid not null references homestead,
    position integer not null,
    forecast_on date not null,
    high_degc numeric(24, 9) not null,
    low_degc numeric(24, 9) not null,
    wet_percent integer not null check (wet_percent between 0 and 100),
    sun_hours numeric(24, 9) check (sun_hours between 0 and 24),
    wind_m_s numeric(24, 9) check (wind_m_s >= 0),
    primary key (homestead_id, position)
);

alter table homestead add column battery_kind varchar;
alter table homestead add column battery_charge_percent integer check (battery_charge_percent between 1 and 100);
alter table homestead add column battery_discharge_percent integer check (battery_discharge_percent between 1 and 100);
alter table homestead add column battery_least_charge_degc numeric(24, 9);
alter table homestead add column inverter_continuous_w numeric(24, 9) check (inverter_continuous_w >= 0);
alter table homestead add column inverter_surge_w numeric(24, 9) check (inverter_surge_w >= 0);
alter table homestead add column inverter_efficiency_percent integer
    check (inverter_efficiency_percent between 1 and 100);
alter table homestead add column base_load_w numeric(24, 9) check (base_load_w >= 0);
alter table homestead add column panels_tilt_deg numeric(24, 9) check (panels_tilt_deg between 0 and 90);
alter table homestead add column panels_direction_deg numeric(24, 9) check (panels_direction_deg between 0 and 360);
alter table homestead add column between_trips varchar;
alter table homestead add column poor_day_percent integer check (poor_day_percent between 1 and 99);
alter table homestead add column generator_litres_per_kwh numeric(24, 9) check (generator_litres_per_kwh >= 0);
alter table homestead add column generator_from_hour integer check (generator_from_hour between 0 and 23);

update homestead set between_trips = 'CHARGED_AT_HOME' where battery_capacity_wh is not null;
update homestead set generator_from_hour = 8 where generator_w is not null;

alter table homestead add constraint between_trips_whole check (
    (battery_capacity_wh is null) = (between_trips is null)
);
alter table homestead add constraint generator_hour_whole check (
    (generator_w is null) = (generator_from_hour is null)
);
alter table homestead add constraint inverter_whole check (
    (inverter_continuous_w is null) = (inverter_surge_w is null)
    and (inverter_continuous_w is null) = (inverter_efficiency_percent is null)
);
alter table homestead add constraint battery_there check (
    battery_capacity_wh is not null
    or (battery_kind is null and battery_charge_percent is null and battery_discharge_percent is null
        and battery_least_charge_degc is null and inverter_continuous_w is null and base_load_w is null
        and panels_tilt_deg is null and panels_direction_deg is null and poor_day_percent is null)
);

alter table homestead add column routine_earliest_hour integer check (routine_earliest_hour between 0 and 23);
alter table homestead add column routine_meals_quarter_hours integer
    check (routine_meals_quarter_hours between 0 and 96);
alter table homestead add constraint routine_whole check (
    (routine_earliest_hour is null) = (routine_meals_quarter_hours is null)
);

alter table homestead add column water_tank_m3 numeric(24, 9) check (water_tank_m3 >= 0);
alter table homestead add column water_now_m3 numeric(24, 9) check (water_now_m3 >= 0);
alter table homestead add column water_roof_m2 numeric(24, 9) check (water_roof_m2 >= 0);
alter table homestead add column water_catch_percent integer check (water_catch_percent between 0 and 100);
alter table homestead add column water_can_m3 numeric(24, 9) check (water_can_m3 > 0);
alter table homestead add column water_can_kg numeric(24, 9) check (water_can_kg >= 0);
alter table homestead add constraint water_whole check (
    (water_tank_m3 is null) = (water_now_m3 is null)
    and (water_tank_m3 is null) = (water_catch_percent is null)
    and (water_tank_m3 is null) = (water_can_m3 is null)
    and (water_tank_m3 is null) = (water_can_kg is null)
    and (water_tank_m3 is not null or water_roof_m2 is null)
);

alter table tool add column duty_percent integer default 100 not null check (duty_percent between 1 and 100);
alter table tool alter column duty_percent drop default;
alter table tool add column surge_factor numeric(24, 9) check (surge_factor >= 1);

alter table stage add column head_lamp boolean default false not null;
alter table stage alter column head_lamp drop default;
alter table stage add column water_m3 numeric(24, 9) check (water_m3 >= 0);
alter table stage add column coldest_day_degc numeric(24, 9);
alter table stage add column most_wind_m_s numeric(24, 9) check (most_wind_m_s >= 0);
alter table stage add column unfrozen_ground boolean;
alter table stage add column least_odds_percent integer check (least_odds_percent between 1 and 99);

update stage set unfrozen_ground = false where dry_day is not null;

alter table stage add constraint more_conditions_whole check (
    (dry_day is null) = (unfrozen_ground is null)
    and (dry_day is not null
        or (coldest_day_degc is null and most_wind_m_s is null and least_odds_percent is null))
);

create table stage_tool_time (
    stage_id uuid not null references stage,
    position integer not null,
    tool_id uuid not null references tool,
    minutes numeric(24, 9) not null check (minutes >= 0),
    material_id uuid references material,
    primary key (stage_id, position)
);
