-- The day the rest of an order is due on or, when it is paid, was paid on.
alter table receipt add column rest_on date;
alter table receipt add constraint rest_on_not_before_its_order check (rest_on >= bought_on);
