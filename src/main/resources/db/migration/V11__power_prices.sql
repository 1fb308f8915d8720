-- What more battery and more panels would cost.

alter table homestead add column battery_price_per_kwh numeric(14, 2) check (battery_price_per_kwh >= 0);
alter table homestead add column panels_price_per_kw numeric(14, 2) check (panels_price_per_kw >= 0);
