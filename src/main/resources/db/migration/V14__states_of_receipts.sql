-- What is paid before it comes is a state of its own: it is not paid for again, nor bought again while it is on its way.
--
-- H2 keeps the connection that made a check with a list of words, and refuses every row once that connection is closed:
-- receipts could not be stored half an hour after the database was made. So the check is made anew without a list.
alter table receipt add column standing varchar;
update receipt set standing = state;
alter table receipt drop column state;
alter table receipt alter column standing set not null;
alter table receipt rename column standing to state;
alter table receipt add constraint known_state check (
    case state when 'PAID' then true when 'PAID_AHEAD' then true when 'ORDERED' then true when 'RETURNED' then true
    else false end);
