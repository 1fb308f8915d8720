-- Receipts are read some days at a time, so that a page needs no more memory for many years than for one.
create index receipt_by_day on receipt (homestead_id, bought_on);
