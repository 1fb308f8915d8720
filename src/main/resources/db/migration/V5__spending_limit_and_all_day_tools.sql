-- What may be spent in a calendar month, and tools that stay with one stage for the whole day.
--
-- No tool was known to stay so long until now, so none that is there already does.

alter table homestead add column spending_limit_a_month numeric(14, 2) check (spending_limit_a_month >= 0);
alter table homestead add column spending_limit_firm boolean;

alter table homestead add constraint spending_limit_whole check (
    (spending_limit_a_month is null) = (spending_limit_firm is null)
);

alter table tool add column all_day boolean default false not null;
alter table tool alter column all_day drop default;
