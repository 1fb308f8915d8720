/**
 * The board's horizontal scale. Trips are wide, the days between are thin, so a date has a place but there is no
 * common number of pixels per day. Pure.
 */
import { daysText } from './words.js';

const DAY = 112;
const IDLE_DAY = 60;
const LEAST_TRIP = 124;
const OPEN_TRIP = 54;
const DONE = 124;
const GAP = 76;
const LONG_GAP = 96;
const LONG_GAP_FROM_DAYS = 21;
const SEAM = 8;

/**
 * Columns from left to right: {kind: 'done' | 'gap' | 'trip' | 'open', x, width, from, to, ...}. The days of a trip
 * get their own x and width.
 */
export function columnsOf(model, words) {
  const row = { columns: [], x: 0 };
  if (hasEarlySpots(model)) add(row, { kind: 'done', width: DONE, from: -Infinity, to: -Infinity });
  addGap(row, model.status, model.trips[0].first - 1, words);
  model.trips.forEach((trip, index) => {
    if (index > 0) addGap(row, model.trips[index - 1].last + 1, trip.first - 1, words) || addSeam(row);
    addTrip(row, trip, workedDays(model));
  });
  addGap(row, model.trips.at(-1).last + 1, lastReady(model), words);
  return row.columns;
}

/** Where a calendar day begins; inside a gap the middle of the day's share, so that its first and last day show. */
export function placeOfDate(columns, number) {
  const column = columns.find((candidate) => number <= candidate.to) ?? columns.at(-1);
  if (number < column.from) return column.x;
  if (number > column.to) return column.x + column.width;
  if (column.kind === 'trip') {
    return (column.days.findLast((day) => day.number <= number) ?? column.days[0]).x;
  }
  return column.x + (column.width * (number - column.from + 0.5)) / (column.to - column.from + 1);
}

function hasEarlySpots(model) {
  return [...model.stages.values()].some((stage) => stage.spots.some((spot) => spot.day === null));
}

function workedDays(model) {
  model.worked ??= new Set([...model.stages.values()].flatMap((stage) => stage.spots.map((spot) => spot.day)));
  return model.worked;
}

function lastReady(model) {
  return Math.max(...model.waits.filter((wait) => wait.lasts).map((wait) => wait.ready), -Infinity);
}

function add(row, column) {
  row.columns.push({ ...column, x: row.x });
  row.x += column.width;
}

function addGap(row, from, to, words) {
  const count = to - from + 1;
  if (!(count > 0)) return false;
  const width = count >= LONG_GAP_FROM_DAYS ? LONG_GAP : GAP;
  add(row, { kind: 'gap', width, from, to, count, label: daysText(count, words) });
  return true;
}

function addSeam(row) {
  const before = row.columns.at(-1).to;
  add(row, { kind: 'gap', width: SEAM, from: before + 1, to: before, count: 0, label: '' });
}

function addTrip(row, trip, worked) {
  const column = { kind: trip.made ? 'trip' : 'open', trip, from: trip.first, to: trip.last };
  if (!trip.made && !trip.days.some((day) => worked.has(day))) {
    add(row, { ...column, width: OPEN_TRIP });
    return;
  }
  const widths = trip.days.map((day) => (worked.has(day) ? DAY : IDLE_DAY));
  const width = Math.max(
    LEAST_TRIP,
    widths.reduce((sum, each) => sum + each),
  );
  const share = width / widths.reduce((sum, each) => sum + each);
  let x = row.x;
  trip.days.forEach((day, index) => {
    day.x = x;
    day.width = widths[index] * share;
    x += day.width;
  });
  add(row, { ...column, kind: 'trip', width, days: trip.days });
}
