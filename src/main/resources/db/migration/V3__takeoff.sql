-- Takeoffs: what was entered, as it was written, and which of the quantities are which material. Results are not kept:
-- they follow from the inputs.

create table takeoff (
    id uuid primary key,
    homestead_id uuid not null references homestead,
    key_text varchar not null,
    position integer not null,
    name varchar not null,
    kind varchar not null,
    stage_id uuid references stage,
    unique (homestead_id, key_text)
);

create table takeoff_given (
    takeoff_id uuid not null references takeoff,
    position integer not null,
    input varchar not null,
    written varchar not null,
    primary key (takeoff_id, position)
);

create table takeoff_supply (
    takeoff_id uuid not null references takeoff,
    position integer not null,
    line varchar not null,
    material_id uuid not null references material,
    primary key (takeoff_id, position)
);
