package org.firmset.spend.store;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * What each subproject, stage, kind and state came to, added up by the database alone. The sharing by largest remainder
 * is written anew in SQL from docs/spend.md: floors first, then a cent each to the largest remainders.
 */
public record PlainSums(JdbcClient sql) {
    private static final String PARTS = """
            with line as (
                select l.receipt_id, l.position, l.kind, r.state, 100 * l.amount as cents,
                    100 * abs(r.discount) as discount, 100 * abs(r.tax) as tax,
                    case when r.state = 'RETURNED' then -1 else 1 end as sign,
                    case when sum(l.amount) over (partition by l.receipt_id) = 0 then 1
                        else abs(100 * l.amount) end as weight
                from receipt_line l join receipt r on r.id = l.receipt_id
                where r.homestead_id = :homestead
            ), weighed as (
                select line.*, sum(weight) over (partition by receipt_id) as weights from line
            ), rest as (
                select weighed.*, mod(discount * weight, weights) as discount_rest, mod(tax * weight, weights) as tax_rest
                from weighed
            ), floored as (
                select rest.*, (discount * weight - discount_rest) / weights as discount_floor,
                    (tax * weight - tax_rest) / weights as tax_floor,
                    row_number() over (partition by receipt_id order by discount_rest desc, position) as discount_turn,
                    row_number() over (partition by receipt_id order by tax_rest desc, position) as tax_turn
                from rest
            ), cost as (
                select receipt_id, position, kind, state, cents
                    - sign * (discount_floor + case when discount_turn
                        <= discount - sum(discount_floor) over (partition by receipt_id) then 1 else 0 end)
                    + sign * (tax_floor + case when tax_turn
                        <= tax - sum(tax_floor) over (partition by receipt_id) then 1 else 0 end) as cost
                from floored
            ), share as (
                select c.receipt_id, c.position as line, c.kind, c.state, c.cost, s.position, s.subproject, s.stage,
                    1000000000 * coalesce(s.weight, 1) as weight,
                    sum(1000000000 * coalesce(s.weight, 1)) over (partition by c.receipt_id, c.position) as weights
                from cost c left join receipt_share s on s.receipt_id = c.receipt_id and s.line_position = c.position
            ), share_rest as (
                select share.*, mod(abs(cost) * weight, weights) as rest from share
            ), share_floor as (
                select share_rest.*, (abs(cost) * weight - rest) / weights as floored,
                    row_number() over (partition by receipt_id, line order by rest desc, position) as turn
                from share_rest
            ), part as (
                select subproject, stage, kind, state,
                    sign(cost) * (floored + case when turn <= abs(cost)
                        - sum(floored) over (partition by receipt_id, line) then 1 else 0 end) as cents
                from share_floor
            )
            """;

    /** In cents, by what stands in a column of the parts; under "" where nothing does. */
    public Map<String, Long> by(String column, UUID homestead) {
        Map<String, Long> sums = new HashMap<>();
        sql.sql(PARTS + "select coalesce(" + column + ", '') as what, sum(cents) as cents from part group by " + column)
                .param("homestead", homestead)
                .query((row, number) -> sums.put(row.getString("what"), cents(row.getBigDecimal("cents"))))
                .list();
        return sums;
    }

    /** In cents, what left the purse on each day, refundable deposits among it: the rest of an order on its own day. */
    public Map<LocalDate, Long> paidByDay(UUID homestead) {
        Map<LocalDate, Long> sums = new HashMap<>();
        sql.sql("""
                with whole as (
                    select r.*, r.tax - r.discount
                        + (select sum(l.amount) from receipt_line l where l.receipt_id = r.id) as comes_to,
                        r.state = 'ORDERED' or (r.state in ('PAID', 'PAID_AHEAD') and r.rest_on > r.bought_on) as paid_down
                    from receipt r where r.homestead_id = :homestead
                ), payment as (
                    select bought_on as paid_on, case when paid_down then deposit else comes_to end as amount from whole
                    union all
                    select rest_on, comes_to - deposit from whole
                    where state in ('PAID', 'PAID_AHEAD') and rest_on > bought_on
                )
                select paid_on, sum(100 * amount) as cents from payment group by paid_on
                """)
                .param("homestead", homestead)
                .query((row, number) ->
                        sums.put(row.getObject("paid_on", LocalDate.class), cents(row.getBigDecimal("cents"))))
                .list();
        return sums;
    }

    private static long cents(BigDecimal sum) {
        return sum.stripTrailingZeros().longValueExact();
    }
}
