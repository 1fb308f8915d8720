-- Which published laws a cure goes by; until now there was one of each.

alter table stage_wait add column cure_method varchar;
alter table stage_wait add column cure_ageing varchar;

update stage_wait set cure_method = 'EN_1992', cure_ageing = 'EN_1992' where cure_cement is not null;

alter table stage_wait add constraint cure_laws_whole check (
    (cure_cement is null) = (cure_method is null) and (cure_cement is null) = (cure_ageing is null)
);
