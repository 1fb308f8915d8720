/**
 * Where everything on the wide board stands. Pure: takes the model and a way to measure text, returns plain numbers.
 *
 * A lane is a stack of ruled rows. A stage keeps one row for all its blocks and for the ribbons of its waits, so a
 * ribbon can run straight from block to tick and nothing else is ever put in its way. Blocks stand on the row's base
 * line, their height is their hours.
 */
import { columnsOf, placeOfDate } from './columns.js';
import { STRIP_KINDS, lastingWaits } from './model.js';
import { BAND, LEAST_BLOCK, packLane, settle, stackLanes } from './rows.js';
import { clip, wrap, wrapFromEnd } from './text.js';
import { figure } from './words.js';

export const HEAD = 78;
export const LANE_HEADER = 150;
export const LINE = 13;
export const LABEL_INSET = 9;
export const TEXT_INSET = 7;

const PER_HOUR = 8;
const INSET = 8;
const CHECK = 24;
const FOOT_PAD = 6;
const LEAST_LABEL = 66;
const NAME_SIZE = 12;
const LABEL_SIZE = 11;
const STRIP = 36;

/** @param measure (text, size, weight) -> px */
export function layOut(model, measure, words) {
  const columns = columnsOf(model, words);
  const scene = { model, columns, measure, words, width: columns.at(-1).x + columns.at(-1).width };
  const items = itemsOf(scene);
  const lanes = model.lanes.map((lane) =>
    packLane(
      lane,
      items.filter((item) => item.stage.lane === lane),
    ),
  );
  const bottom = stackLanes(lanes);
  settle(items);
  return {
    ...scene,
    lanes,
    height: bottom,
    footHeight: STRIP_KINDS.length * STRIP + FOOT_PAD,
    strips: STRIP_KINDS.map((kind, index) => ({ kind, y: index * STRIP, height: STRIP })),
    blocks: readingOrder(items.flatMap((item) => item.blocks)),
    ribbons: items.flatMap((item) => item.ribbons),
    joints: items.flatMap(jointsOf),
    keylines: keylinesOf(model, items),
    today: todayOf(model, columns),
  };
}

// ---- what must find a row -------------------------------------------------------------------------------------

function itemsOf(scene) {
  const waits = Map.groupBy(lastingWaits(scene.model), (wait) => wait.from.id);
  const items = [...scene.model.stages.values()]
    .filter((stage) => stage.spots.length > 0)
    .map((stage) => itemOf(stage, waits.get(stage.id) ?? [], scene));
  linkItems(items, scene.model);
  return items;
}

function itemOf(stage, waits, scene) {
  const blocks = stage.spots.map((spot, index) => blockOf(stage, spot, index, scene));
  const start = blocks[0].x;
  const end = blocks.at(-1).x + blocks.at(-1).width;
  const ribbons = waits
    .filter((wait) => stage.spots.at(-1).day !== null || wait.ready > scene.model.status)
    .sort((a, b) => Boolean(b.critical) - Boolean(a.critical) || b.ready - a.ready)
    .map((wait) => ribbonOf(wait, end, scene));
  stackRibbons(ribbons);
  const item = { stage, blocks, ribbons, start, end, befores: [] };
  item.reach = Math.max(end, ...ribbons.map((ribbon) => ribbon.reach));
  item.height = Math.max(...blocks.map((block) => block.height), ...ribbons.map((ribbon) => ribbon.top));
  return item;
}

function blockOf(stage, spot, index, { columns, measure, words }) {
  const frame = spot.day ?? columns[0];
  const width = frame.width - 2 * INSET;
  const height = Math.max(LEAST_BLOCK, Math.round(spot.hours * PER_HOUR));
  const hoursText = spot.hours > 0 ? `${figure(spot.hours)} ${words.hour}` : '';
  const hoursWidth = measure(hoursText, LABEL_SIZE, 600);
  const room = width - 2 * TEXT_INSET;
  const lastRoom = room - hoursWidth - (stage.done ? CHECK : 6);
  const lines = wrap(
    stage.name,
    room,
    Math.floor((height - 9) / LINE),
    (text) => measure(text, NAME_SIZE, 600),
    lastRoom,
  );
  return { stage, spot, index, x: frame.x + INSET, width, height, hoursText, hoursWidth, lines };
}

function ribbonOf(wait, start, { columns, measure }) {
  const end = Math.max(placeOfDate(columns, wait.ready), start + 6);
  const width = (text) => measure(text, LABEL_SIZE, 400);
  const run = end - start - LABEL_INSET - 4;
  const room = Math.max(run, LEAST_LABEL);
  const labels = ribbonLabels(wait, room, width);
  const widest = Math.max(...labels.map((label) => label.width), 0);
  const tight = run < LEAST_LABEL;
  return { wait, start, end, labels, tight, reach: Math.max(end, tight ? start + LABEL_INSET + widest : 0) + 4 };
}

/** Name at the block and date at the tick on one line where there is room, else one above the other. */
function ribbonLabels(wait, room, width) {
  const label = (text, side, level) => ({ text, side, level, width: width(text) });
  const { name, readyText } = wait;
  if (width(name) + width(readyText) + 14 <= room) return [label(name, 'start', 0), label(readyText, 'end', 0)];
  const ready = wrapFromEnd(readyText, room, width).map((text, index, all) =>
    label(text, 'end', all.length - 1 - index),
  );
  return ready.length > 1 ? ready : [label(clip(name, room, width), 'end', 1), ...ready];
}

function stackRibbons(ribbons) {
  let above = 0;
  for (const ribbon of ribbons) {
    const levels = Math.max(...ribbon.labels.map((label) => label.level + 1), 0);
    ribbon.above = above;
    ribbon.top = above + BAND + 4 + levels * LINE;
    above = ribbon.top + 4;
  }
}

/**
 * Tells each item which stages of its lane it waits for. A critical stage keeps its row free up to the next stage of
 * the path, for the keyline runs there.
 */
function linkItems(items, model) {
  const byStage = new Map(items.map((item) => [item.stage.id, item]));
  for (const wait of model.waits) {
    const from = byStage.get(wait.from.id);
    const to = byStage.get(wait.to?.id);
    if (!from || !to) continue;
    if (wait.critical) from.reach = Math.max(from.reach, to.start);
    if (from.stage.lane === to.stage.lane) to.befores.push(from.stage.id);
  }
}

function readingOrder(blocks) {
  const day = (block) => block.spot.day?.number ?? -Infinity;
  return blocks.sort((a, b) => (day(a) === day(b) ? a.y - b.y || a.x - b.x : day(a) - day(b)));
}

// ---- lines ----------------------------------------------------------------------------------------------------

/** Between two blocks of one stage. */
function jointsOf(item) {
  return item.blocks.slice(1).map((block, index) => {
    const before = item.blocks[index];
    return { start: before.x + before.width, end: block.x, y: item.row.base, critical: item.stage.critical };
  });
}

function keylinesOf(model, items) {
  const byStage = new Map(items.map((item) => [item.stage.id, item]));
  return model.waits
    .filter((wait) => wait.critical && byStage.has(wait.from.id))
    .map((wait) => keyline(byStage.get(wait.from.id), byStage.get(wait.to?.id)))
    .filter(Boolean);
}

/** Points of the heavy line from the end of one critical stage to the start of the next; `turn` is its upright part. */
function keyline(from, to) {
  const base = from.row.base;
  if (!to)
    return {
      points: [
        [from.end, base],
        [from.ribbons[0]?.end ?? from.end, base],
      ],
    };
  const first = to.blocks[0];
  if (from.row === to.row)
    return {
      points: [
        [from.end, base],
        [first.x, base],
      ],
    };
  const upright = first.x - 5;
  const entry = to.row.base > base ? first.y + 9 : to.row.base - 9;
  const start = upright > from.end ? [from.end, base] : [from.blocks.at(-1).x, base - 9];
  const turn = [
    [upright, start[1]],
    [upright, entry],
  ];
  return { points: [start, ...turn, [first.x, entry]], turn };
}

function todayOf(model, columns) {
  if (!Number.isFinite(model.status)) return null;
  const column = columns.find((candidate) => candidate.kind !== 'done') ?? columns[0];
  return { x: model.status <= column.from ? column.x : placeOfDate(columns, model.status) };
}
