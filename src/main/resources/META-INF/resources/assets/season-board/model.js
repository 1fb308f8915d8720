/**
 * Reads what the server sent into a shape that is complete and linked: dates are whole day numbers, every block knows
 * its site day, every wait its two stages. Pure; nothing here knows about drawing.
 */

const MILLIS_PER_DAY = 86_400_000;
const TINTS = 6;

/** What a trip tells in the strips under the lanes, top to bottom. */
export const STRIP_KINDS = ['mass', 'battery', 'hours', 'money'];

/** ISO date -> days since 1970-01-01, NaN when it is not a date. */
export function dayNumber(iso) {
  return Math.round(Date.parse(`${iso}T00:00:00Z`) / MILLIS_PER_DAY);
}

/** Object or JSON text -> model; null when there is nothing to show. */
export function readModel(input) {
  const data = typeof input === 'string' ? parsed(input) : input;
  const trips = listOf(data?.trips)
    .map(readTrip)
    .filter((trip) => trip.days.length > 0);
  trips.sort((a, b) => a.first - b.first);
  const lanes = listOf(data?.lanes);
  if (trips.length === 0 || lanes.length === 0) return null;

  const model = {
    status: dayNumber(data.statusDate),
    statusText: data.statusText ?? '',
    summaryText: data.summaryText ?? '',
    trips,
    days: trips.flatMap((trip) => trip.days),
    stages: new Map(),
  };
  model.lanes = lanes.map((lane, index) => readLane(lane, index, model));
  model.waits = listOf(data.waits)
    .map((wait) => readWait(wait, model.stages))
    .filter((wait) => wait.from);
  return model;
}

function parsed(text) {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function listOf(value) {
  return Array.isArray(value) ? value : [];
}

function readTrip(trip) {
  const read = { ...trip, first: dayNumber(trip.firstDate), last: dayNumber(trip.lastDate) };
  read.days = listOf(trip.days)
    .map((day) => ({ ...day, trip: read, number: dayNumber(day.date) }))
    .filter((day) => Number.isFinite(day.number));
  if (!Number.isFinite(read.first)) read.first = read.days[0]?.number;
  if (!Number.isFinite(read.last)) read.last = read.days.at(-1)?.number;
  return read;
}

function readLane(lane, index, model) {
  const read = { id: lane.id, name: lane.name ?? '', finishText: lane.finishText ?? '', index, tint: tintOf(index) };
  read.stages = listOf(lane.stages).map((stage) => readStage(stage, read, model));
  read.stages.forEach((stage) => model.stages.set(stage.id, stage));
  return read;
}

/** The class that carries a lane's colour; --fs-lane-1 and so on. */
function tintOf(index) {
  return `lane-${(index % TINTS) + 1}`;
}

function readStage(stage, lane, model) {
  const read = {
    ...stage,
    id: String(stage.id),
    name: stage.name ?? '',
    lane,
    done: stage.state === 'done',
    pinned: stage.state === 'pinned',
  };
  read.spots = spotsOf(listOf(stage.blocks), model);
  if (read.done && read.spots.length === 0) read.spots.push({ day: null, hours: 0 });
  return read;
}

/** One spot for each site day; work from before the first trip is gathered in one spot without a day. */
function spotsOf(blocks, model) {
  const hoursByDay = new Map();
  for (const block of blocks) {
    const number = dayNumber(block.date);
    if (!Number.isFinite(number)) continue;
    const day = model.days.findLast((candidate) => candidate.number <= number) ?? null;
    hoursByDay.set(day, (hoursByDay.get(day) ?? 0) + (block.hours ?? 0));
  }
  return [...hoursByDay]
    .map(([day, hours]) => ({ day, hours }))
    .sort((a, b) => (a.day?.number ?? -Infinity) - (b.day?.number ?? -Infinity));
}

function readWait(wait, stages) {
  const starts = dayNumber(wait.fromDate);
  const ready = dayNumber(wait.readyDate);
  return {
    ...wait,
    name: wait.name ?? '',
    readyText: wait.readyText ?? '',
    from: stages.get(String(wait.from)),
    to: stages.get(String(wait.to)),
    starts,
    ready,
    lasts: ready > starts,
  };
}

/** The waits that take time, told once even where several stages wait for the same thing. */
export function lastingWaits(model) {
  const told = new Map();
  for (const wait of model.waits) {
    if (!wait.lasts) continue;
    const key = JSON.stringify([wait.from.id, wait.kind, wait.name, wait.ready]);
    const same = told.get(key);
    if (same) {
      same.tos.push(wait.to);
      same.critical ||= wait.critical;
    } else {
      told.set(key, { ...wait, tos: [wait.to] });
    }
  }
  return [...told.values()];
}

/** Trip -> [{stage, spot, index}]; what was done before the first trip is under undefined. */
export function worksByTrip({ stages }) {
  const works = [...stages.values()].flatMap((stage) => stage.spots.map((spot, index) => ({ stage, spot, index })));
  return Map.groupBy(works, ({ spot }) => spot.day?.trip);
}

/** Stage ids right before and right after a stage: {before: Set, after: Set}. */
export function neighbours(model, stageId) {
  const before = new Set();
  const after = new Set();
  for (const wait of model.waits) {
    if (wait.to?.id === stageId) before.add(wait.from.id);
    if (wait.from.id === stageId && wait.to) after.add(wait.to.id);
  }
  return { before, after };
}
