/**
 * Gives every stage of a lane a row of its own for as long as its blocks and ribbons run. Pure.
 *
 * The critical path is placed first and so takes the upper rows; the others try the row of the stage they wait for,
 * which lets block, ribbon and next block stand in one line.
 */
export const LEAST_BLOCK = 48;
export const BAND = 11;

const ROW_GAP = 20;
const LANE_PAD = 12;
const LEAST_LANE = 92;
const SQUARE = 26;

export function packLane(lane, items) {
  const packed = { lane, rows: [] };
  const rowOf = new Map();
  const [settled, live] = partition(items, isSettledEarly);
  const order = (a, b) =>
    Boolean(b.stage.critical) - Boolean(a.stage.critical) || a.start - b.start || b.height - a.height;
  for (const item of live.sort(order)) {
    const wished = item.befores.map((id) => rowOf.get(id)).filter(Boolean);
    item.row = freeRow(packed.rows, item, wished);
    rowOf.set(item.stage.id, item.row);
  }
  packSettled(packed.rows, settled);
  if (packed.rows.length === 0) packed.rows.push(newRow());
  return packed;
}

/** Long done, with nothing of it still running: these only need a place in the column at the left edge. */
function isSettledEarly(item) {
  return item.ribbons.length === 0 && item.blocks.every((block) => block.spot.day === null) && !item.stage.critical;
}

/** One to a row while rows last; what is left over becomes small squares in the lowest row. */
function packSettled(rows, settled) {
  const whole = Math.max(2, rows.length);
  const named = settled.length <= whole ? settled : settled.slice(0, whole - 1);
  for (const item of named) item.row = freeRow(rows, item);
  const rest = settled.slice(named.length);
  if (rest.length === 0) return;
  const perLine = Math.floor(rest[0].blocks[0].width / SQUARE);
  const height = Math.ceil(rest.length / perLine) * SQUARE;
  const row = freeRow(rows, { start: rest[0].start, reach: rest[0].end, height });
  rest.forEach((item, index) => {
    item.row = row;
    makeSquare(item.blocks[0], index % perLine, Math.floor(index / perLine));
  });
}

function makeSquare(block, column, line) {
  Object.assign(block, { x: block.x + column * SQUARE, width: SQUARE - 2, height: SQUARE - 2, lift: line * SQUARE });
  Object.assign(block, { lines: [], hoursText: '', square: true });
}

function freeRow(rows, item, wished = []) {
  const row = [...wished, ...rows].find((candidate) => isFree(candidate, item)) ?? rows[rows.push(newRow()) - 1];
  row.taken.push([item.start, item.reach]);
  row.height = Math.max(row.height, item.height);
  return row;
}

function newRow() {
  return { taken: [], height: LEAST_BLOCK };
}

function isFree(row, item) {
  return row.taken.every(([start, end]) => item.reach <= start || end <= item.start);
}

/** Sets y and height of lanes and rows; returns where the lowest lane ends. */
export function stackLanes(lanes) {
  let y = 0;
  for (const packed of lanes) {
    packed.y = y;
    y += LANE_PAD;
    for (const row of packed.rows) {
      row.base = y + row.height;
      y = row.base + ROW_GAP;
    }
    packed.height = Math.max(y - packed.y, LEAST_LANE);
    y = packed.y + packed.height;
  }
  return y;
}

/** Puts blocks and ribbons on the base line of their row. */
export function settle(items) {
  for (const { row, blocks, ribbons } of items) {
    for (const block of blocks) block.y = row.base - block.height - (block.lift ?? 0);
    for (const ribbon of ribbons) ribbon.y = row.base - ribbon.above - BAND;
  }
}

function partition(list, test) {
  return [list.filter(test), list.filter((each) => !test(each))];
}
