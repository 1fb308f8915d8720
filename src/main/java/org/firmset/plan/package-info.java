/**
 * The room of the season plan: a planning problem goes in, a plan that breaks no hard rule comes out, or the reason why
 * there is none. Pure: no clock, no framework, no storage, and the same input always gives the same plan.
 *
 * <p>Two clocks run here and must never be mixed: work advances in quarter-hours of labour on site days; waits advance
 * in calendar days. Amounts are whole numbers: quarter-hours, grams, millilitres, millimetres, watt-hours, cents, packs.
 *
 * <h2>The hard rules</h2>
 *
 * <ol>
 *   <li><b>All labour is placed.</b> The blocks of a stage add up to its {@link Stage#labourQuarters()}; a finished
 *       stage has none. A stage has at most one block on a date, every block lies on a site day, is not under
 *       {@link Stage#effectiveLeastBlock()} and not over {@link Stage#mostBlockQuarters()}. In one go: exactly one
 *       block. Unbroken days: the dates follow each other without a gap.
 *   <li><b>Waits.</b> Let F be the date on which the stage before finishes (its last block, or its recorded finish).
 *       Every planned block of the stage after lies on or after F + {@link LeastWait#daysAfter(LocalDate) least wait};
 *       no wait at all allows the same date. The stage after starts on or before F + {@link Wait#mostDays()}, unless it
 *       had started before the status date; what is recorded as finished is never judged.
 *   <li><b>Site days.</b> Blocks on a date and the labour of extra runs on it are together not over
 *       {@link SiteDay#labourQuarters()}; blocks of stages that {@linkplain Stage#needsLight() need light} are together not over
 *       {@link SiteDay#lightQuarters()}. No stage works with fewer {@link SiteDay#people()} present than its
 *       {@link Stage#crew()}, and none on a date on which it is {@link Stage#shut() shut}.
 *   <li><b>Power.</b> A trip's battery begins with {@link Trip#startWattHours()}, at most full, at the hour from which work
 *       may draw on its first day, and is judged to the midnight after the last block that draws; a trip without such a block
 *       is not. The blocks of a day that draw are done one after another from {@link DayPower#workFromHour()} on, the one
 *       that draws most first, four quarter-hours an hour for each of the people; what midnight cuts off counts in the hour
 *       before it. In every hour sun and generator bring and base and work draw, evenly: what is over is stored at
 *       {@link PowerSupply#chargePercent()}, rounded down, up to full, and only where the day {@linkplain
 *       DayPower#charges() charges}; what is short comes out at {@link PowerSupply#dischargePercent()}, rounded up, both to
 *       quarters of a watt-hour. Before and after every hour no less than {@link DayPower#floorWattHours()} is left. The
 *       generator runs at its rating from its hour on, on the first day not before the trip begins, until it has given what the plan says for the day, which is not over
 *       {@link PowerSupply.Generator#wattHoursPerDay()}.
 *   <li><b>Runs.</b> A trip has at most one arrival run and at most {@link Trip#mostExtraRuns()} extra runs, all on its
 *       first date. Every pack is carried whole in a bay that is long enough; no bay is over its volume; every
 *       {@link MassLimit} of the trip's rig holds. A delivery is for a site day of its trip, at most one for each offer
 *       and date, and comes on that date; where nobody need {@linkplain DeliveryOffer#attended() attend}, one for the
 *       first date of a trip may instead be dropped on any date from the status date on that lies after the last date
 *       of the possible trip before and is not later. It comes on a weekday, in a month and from the date its offer
 *       allows, brings only what the offer brings, nothing dry when it is dropped before its date, and is not over the
 *       truck's mass.
 *   <li><b>Supplies.</b> A stage uses its materials in step with its progress, rounded up to whole packs: when a of its
 *       W quarter-hours are done, a need of n packs has used ceil(n a / W). Nothing is used before it is on site (the
 *       same date is allowed), nothing after its shelf life (a pack that arrived on date A, what is dropped on the date
 *       of the drop, is good up to and including A + {@link Material#shelfLifeDays()}), and no run carries a material
 *       before {@link Material#availableFrom()}. At the end of every site day on which something dry arrived, the dry packs on
 *       site fit into {@link Site#dryStorageMillilitres()}.
 *   <li><b>What is pinned or done stays.</b> A pinned stage works only on its pinned dates; nothing is planned before
 *       the status date.
 *   <li><b>Tools.</b> Over all stages with a block on a date, the pieces of a tool in use are together not over
 *       {@link Tool#count()}.
 *   <li><b>Money.</b> With a hard {@link SpendingLimit}, no calendar month takes more than its cents. To a month belong:
 *       {@link Trip#cents()} of each trip that is made (has a block, a run or a delivery) and begins in it; the extra
 *       runs, the fees of deliveries, with that for a small order where their packs are worth less than the least order,
 *       and {@link Material#cents()} of every pack carried for a date in it, however early it is dropped; and the fuel of
 *       what the generator gives in it, the month's sum rounded up to a cent.
 * </ol>
 */
@NullMarked
package org.firmset.plan;

import org.jspecify.annotations.NullMarked;
