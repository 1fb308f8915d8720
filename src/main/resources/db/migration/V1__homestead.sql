-- The homestead as its owners describe it. One script for H2 (MODE=PostgreSQL) and PostgreSQL.
--
-- Ids of what lies inside a homestead are made from (homestead, kind, key), so a thing keeps its id for as long as it
-- keeps its key, however often the homestead is saved: other tables may refer to it for good.
-- position keeps the order of a list, 0 first. It is not unique, because rows change places one after the other.
-- Texts have no length here: the reader of the homestead file limits them and can say so in words.
-- Quantities are in the unit their column names; amounts of money are in homestead.currency.
-- Checks hold what is so by nature; what is merely usual is for the reader to refuse.

create table homestead (
    id uuid primary key,
    version bigint not null,
    changed_at timestamp(6) with time zone not null,
    -- the homestead opened last is the one that is shown
    opened_at timestamp(6) with time zone not null,
    name varchar not null,
    units varchar not null,
    currency varchar(3) not null,
    latitude_deg numeric(24, 9) not null check (latitude_deg between -90 and 90),
    longitude_deg numeric(24, 9) not null check (longitude_deg between -180 and 180),
    time_zone varchar not null,
    dry_volume_m3 numeric(24, 9) not null check (dry_volume_m3 >= 0),
    battery_capacity_wh numeric(24, 9) check (battery_capacity_wh >= 0),
    battery_floor_percent integer check (battery_floor_percent between 0 and 100),
    panels_w numeric(24, 9) check (panels_w >= 0),
    panels_yield_percent integer check (panels_yield_percent between 0 and 100),
    generator_w numeric(24, 9) check (generator_w >= 0),
    generator_quarter_hours_per_day integer check (generator_quarter_hours_per_day between 0 and 96),
    generator_cost_per_kwh numeric(14, 2),
    constraint power_kit_whole check (
        (battery_capacity_wh is null) = (battery_floor_percent is null)
        and (battery_capacity_wh is null) = (panels_w is null)
        and (battery_capacity_wh is null) = (panels_yield_percent is null)
    ),
    constraint generator_whole check (
        (generator_w is null) = (generator_quarter_hours_per_day is null)
        and (generator_w is null) = (generator_cost_per_kwh is null)
        and (generator_w is null or battery_capacity_wh is not null)
    )
);

create table month_normal (
    homestead_id uuid not null references homestead,
    month_number integer not null check (month_number between 1 and 12),
    mean_high_degc numeric(24, 9) not null,
    mean_low_degc numeric(24, 9) not null,
    wet_days numeric(24, 9) not null check (wet_days between 0 and 31),
    sun_hours_per_day numeric(24, 9) not null check (sun_hours_per_day between 0 and 24),
    primary key (homestead_id, month_number)
);

create table person (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    mass_kg numeric(24, 9) not null check (mass_kg >= 0),
    work_share_percent integer not null check (work_share_percent > 0),
    unique (homestead_id, key_text)
);

create table tool (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    tool_count integer not null check (tool_count > 0),
    draw_w numeric(24, 9) check (draw_w >= 0),
    unique (homestead_id, key_text)
);

create table material (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    pack varchar not null,
    pack_mass_kg numeric(24, 9) not null check (pack_mass_kg >= 0),
    pack_volume_m3 numeric(24, 9) not null check (pack_volume_m3 >= 0),
    pack_longest_m numeric(24, 9) check (pack_longest_m >= 0),
    keep_dry boolean not null,
    shelf_life_days integer check (shelf_life_days >= 0),
    unique (homestead_id, key_text)
);

create table vehicle (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    gross_rating_kg numeric(24, 9) not null check (gross_rating_kg >= 0),
    empty_mass_kg numeric(24, 9) not null check (empty_mass_kg >= 0),
    standing_kit_kg numeric(24, 9) not null check (standing_kit_kg >= 0),
    bay_volume_m3 numeric(24, 9) not null check (bay_volume_m3 >= 0),
    longest_piece_m numeric(24, 9) not null check (longest_piece_m >= 0),
    tow_rating_kg numeric(24, 9) check (tow_rating_kg >= 0),
    unique (homestead_id, key_text)
);

create table trailer (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    gross_rating_kg numeric(24, 9) not null check (gross_rating_kg >= 0),
    empty_mass_kg numeric(24, 9) not null check (empty_mass_kg >= 0),
    tongue_percent integer not null check (tongue_percent between 0 and 100),
    deck_volume_m3 numeric(24, 9) not null check (deck_volume_m3 >= 0),
    longest_piece_m numeric(24, 9) not null check (longest_piece_m >= 0),
    unique (homestead_id, key_text)
);

-- A table of its own: as columns of homestead the vehicle would have to be there before the homestead it belongs to.
create table travel (
    homestead_id uuid primary key references homestead,
    distance_m numeric(24, 9) not null check (distance_m >= 0),
    lost_arriving_quarter_hours integer not null check (lost_arriving_quarter_hours >= 0),
    lost_leaving_quarter_hours integer not null check (lost_leaving_quarter_hours >= 0),
    cost_per_trip numeric(14, 2) not null,
    cost_per_day numeric(14, 2) not null,
    vehicle_id uuid not null references vehicle,
    trailer_id uuid references trailer,
    most_extra_runs integer not null check (most_extra_runs >= 0),
    extra_run_quarter_hours integer not null check (extra_run_quarter_hours >= 0),
    extra_run_cost numeric(14, 2) not null
);

create table subproject (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    budget numeric(14, 2) not null,
    priority integer not null check (priority > 0),
    target_on date,
    unique (homestead_id, key_text)
);

-- season_first and season_last are a month and day as '--03-15'; a season may run over the new year.
create table stage (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    subproject_id uuid not null references subproject,
    labour_quarter_hours integer not null check (labour_quarter_hours > 0),
    crew integer not null check (crew > 0),
    layout varchar not null,
    least_block_quarter_hours integer check (least_block_quarter_hours >= 0),
    most_per_day_quarter_hours integer check (most_per_day_quarter_hours > 0),
    energy_per_hour_wh numeric(24, 9) check (energy_per_hour_wh >= 0),
    season_first varchar(7),
    season_last varchar(7),
    not_before date,
    not_after date,
    coldest_night_degc numeric(24, 9),
    hottest_day_degc numeric(24, 9),
    dry_day boolean,
    started_on date,
    labour_left_quarter_hours integer check (labour_left_quarter_hours >= 0),
    finished_on date,
    note varchar,
    unique (homestead_id, key_text),
    constraint season_whole check ((season_first is null) = (season_last is null)),
    constraint conditions_whole check (
        dry_day is not null or (coldest_night_degc is null and hottest_day_degc is null)
    ),
    constraint progress_whole check (
        (started_on is null) = (labour_left_quarter_hours is null)
        and (finished_on is null or started_on is not null)
    )
);

create table stage_tool (
    stage_id uuid not null references stage,
    position integer not null,
    tool_id uuid not null references tool,
    primary key (stage_id, position)
);

create table stage_hazard (
    stage_id uuid not null references stage,
    position integer not null,
    hazard varchar not null,
    primary key (stage_id, position)
);

create table need (
    stage_id uuid not null references stage,
    position integer not null,
    material_id uuid not null references material,
    packs integer not null check (packs > 0),
    primary key (stage_id, position)
);

create table stage_wait (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    kind varchar not null,
    from_stage_id uuid not null references stage,
    to_stage_id uuid not null references stage,
    least_days integer not null check (least_days >= 0),
    cure_strength_percent integer check (cure_strength_percent between 1 and 100),
    cure_cement varchar,
    most_days integer check (most_days >= 0),
    unique (homestead_id, key_text),
    constraint cure_whole check ((cure_strength_percent is null) = (cure_cement is null))
);

create table supplier (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    lead_days integer not null check (lead_days >= 0),
    delivery_fee numeric(14, 2),
    delivery_largest_mass_kg numeric(24, 9) check (delivery_largest_mass_kg >= 0),
    delivery_lead_days integer check (delivery_lead_days >= 0),
    unique (homestead_id, key_text),
    constraint delivery_whole check (
        (delivery_fee is null) = (delivery_largest_mass_kg is null)
        and (delivery_fee is null) = (delivery_lead_days is null)
    )
);

create table supplier_delivery_weekday (
    supplier_id uuid not null references supplier,
    position integer not null,
    weekday varchar not null,
    primary key (supplier_id, position)
);

create table price (
    supplier_id uuid not null references supplier,
    position integer not null,
    material_id uuid not null references material,
    amount numeric(14, 2) not null,
    asked_on date not null,
    primary key (supplier_id, position)
);

create table open_rule (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    first_on date not null,
    last_on date not null,
    site_quarter_hours integer not null check (site_quarter_hours >= 0),
    unique (homestead_id, key_text)
);

create table open_rule_weekday (
    open_rule_id uuid not null references open_rule,
    position integer not null,
    weekday varchar not null,
    primary key (open_rule_id, position)
);

create table open_rule_person (
    open_rule_id uuid not null references open_rule,
    position integer not null,
    person_id uuid not null references person,
    primary key (open_rule_id, position)
);

create table added_date (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    position integer not null,
    added_on date not null,
    site_quarter_hours integer not null check (site_quarter_hours >= 0)
);

create table added_date_person (
    added_date_id uuid not null references added_date,
    position integer not null,
    person_id uuid not null references person,
    primary key (added_date_id, position)
);

create table removed_date (
    homestead_id uuid not null references homestead,
    position integer not null,
    removed_on date not null,
    primary key (homestead_id, position)
);

create table stock_lot (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    position integer not null,
    material_id uuid not null references material,
    packs integer not null check (packs > 0),
    bought_on date not null
);

create table pin (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    position integer not null,
    stage_id uuid not null references stage,
    why varchar not null
);

create table pin_date (
    pin_id uuid not null references pin,
    position integer not null,
    works_on date not null,
    primary key (pin_id, position)
);
