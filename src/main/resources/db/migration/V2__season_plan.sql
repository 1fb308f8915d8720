-- Season plans as they were made: a few figures to find and compare them by, and the plan itself as the document that
-- the program also writes for people (docs/plan.schema.json).

create table season_plan (
    id uuid primary key,
    homestead_id uuid not null references homestead (id) on delete cascade,
    -- which state of the homestead was planned
    homestead_version bigint not null,
    status_date date not null,
    style varchar not null,
    made_at timestamp(6) with time zone not null,
    document varchar not null
);

create index season_plan_by_homestead on season_plan (homestead_id, made_at);
