-- What is paid before it comes is a state of its own: it is not paid for again, nor bought again while it is on its way.
alter table receipt add column standing varchar check (standing in ('PAID', 'PAID_AHEAD', 'ORDERED', 'RETURNED'));
update receipt set standing = state;
alter table receipt drop column state;
alter table receipt alter column standing set not null;
alter table receipt rename column standing to state;
