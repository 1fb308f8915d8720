-- What was bought, line by line, and who bears it, so that every total can be added up again in plain SQL.
--
-- Subprojects, stages and materials are named by their keys and not referred to: a receipt outlives what it was for.
-- Amounts are in the receipt's currency. In a return all quantities and amounts are negative.

create table receipt (
    id uuid primary key,
    homestead_id uuid not null references homestead (id) on delete cascade,
    version bigint not null,
    key_text varchar not null,
    bought_on date not null,
    supplier varchar not null,
    state varchar not null check (state in ('PAID', 'ORDERED', 'RETURNED')),
    currency varchar(3) not null,
    tax numeric(14, 2) not null,
    discount numeric(14, 2) not null,
    deposit numeric(14, 2) not null check (deposit >= 0),
    total numeric(14, 2),
    document_hash varchar(64),
    unique (homestead_id, key_text)
);

create table receipt_line (
    receipt_id uuid not null references receipt (id) on delete cascade,
    position integer not null,
    kind varchar not null,
    line_text varchar not null,
    material varchar,
    quantity numeric(24, 9) not null,
    unit_price numeric(14, 2) check (unit_price >= 0),
    amount numeric(14, 2) not null,
    primary key (receipt_id, position)
);

create table receipt_share (
    receipt_id uuid not null,
    line_position integer not null,
    position integer not null,
    subproject varchar not null,
    stage varchar,
    weight numeric(24, 9) not null check (weight > 0),
    primary key (receipt_id, line_position, position),
    foreign key (receipt_id, line_position) references receipt_line (receipt_id, position) on delete cascade
);

-- Photos and papers lie as files in the data folder; the same bytes are one file.
create table document (
    hash varchar(64) primary key,
    kind varchar not null,
    size_bytes bigint not null check (size_bytes > 0)
);

create table receipt_document (
    receipt_id uuid not null references receipt (id) on delete cascade,
    position integer not null,
    document_hash varchar(64) not null references document (hash),
    name varchar not null,
    primary key (receipt_id, position)
);

-- Tables that were taken in, and which column of tables with these headings holds what.
create table receipt_table (
    homestead_id uuid not null references homestead (id) on delete cascade,
    file_hash varchar(64) not null,
    taken_at timestamp(6) with time zone not null,
    primary key (homestead_id, file_hash)
);

create table column_match (
    homestead_id uuid not null references homestead (id) on delete cascade,
    fingerprint varchar(64) not null,
    match_text varchar not null,
    primary key (homestead_id, fingerprint)
);
