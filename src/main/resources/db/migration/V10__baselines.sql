-- How budgets are reckoned, what tools cost, and budgets as they were kept.
--
-- Until now no tool had a cost and nothing was said of budgets, so nothing is for what is there already.

alter table homestead add column budget_tax_percent numeric(24, 9) check (budget_tax_percent >= 0);
alter table homestead add column budget_reserve_percent numeric(24, 9) check (budget_reserve_percent >= 0);
alter table homestead add column budget_paid_down_percent numeric(24, 9) check (budget_paid_down_percent >= 0);
alter table homestead add column budget_trips_shared varchar;

alter table homestead add constraint budgeting_whole check (
    (budget_tax_percent is null) = (budget_reserve_percent is null)
    and (budget_tax_percent is null) = (budget_paid_down_percent is null)
    and (budget_tax_percent is null) = (budget_trips_shared is null)
);

create table budget_item (
    homestead_id uuid not null references homestead,
    position integer not null,
    name varchar not null,
    kind varchar not null,
    subproject_key varchar not null,
    stage_key varchar,
    amount numeric(14, 2) not null check (amount >= 0),
    due_on date,
    primary key (homestead_id, position)
);

alter table tool add column cost_price numeric(14, 2) check (cost_price >= 0);
alter table tool add column cost_resale numeric(14, 2) check (cost_resale >= 0);
alter table tool add column cost_upkeep numeric(14, 2) check (cost_upkeep >= 0);
alter table tool add column cost_hire_a_day numeric(14, 2) check (cost_hire_a_day >= 0);
alter table tool add column cost_fetching numeric(14, 2) check (cost_fetching >= 0);

-- A kept budget is read whole and never changed: a few figures to find it by, and the budget as a document.
create table baseline (
    id uuid primary key,
    homestead_id uuid not null references homestead on delete cascade,
    kept_on date not null,
    made_at timestamp(6) with time zone not null,
    document varchar not null
);

create index baseline_by_homestead on baseline (homestead_id, made_at);
