/** Draws the strips under the lanes: mass against payload, battery's low point, hours used, money of each trip. */
import { groundsOf, hidden, ruled, text, todayLine } from './ground.js';
import { svg } from './svg.js';
import { clip } from './text.js';

const BAR = 7;

export function drawFoot(board) {
  const { footHeight } = board;
  return hidden(
    'foot',
    groundsOf(board, footHeight),
    stripsRuled(board),
    todayLine(board, footHeight),
    drawStrips(board),
  );
}

function stripsRuled({ strips, footHeight, width }) {
  return [
    ruled(
      'row-rule',
      strips.slice(1).map((strip) => strip.y),
      width,
    ),
    ruled('thick', [1, footHeight - 1], width),
  ];
}

function drawStrips(board) {
  const trips = board.columns.filter((column) => column.kind === 'trip');
  return board.strips.flatMap(({ kind, y }) => {
    const told = trips.filter((column) => column.trip[kind]);
    const lengths = told.flatMap(kind === 'hours' ? dayLengths : (column) => tripLength(kind, column));
    return [...told.map((column) => stripText(kind, y + 15, column, board)), ...bars(lengths, y + 22)];
  });
}

function stripText(kind, y, column, { measure, words }) {
  const value = column.trip[kind];
  const over = isOver(shareOf(kind, value));
  const label = over ? `${value.text}, ${words.over}` : (value.text ?? '');
  const room = (line) => measure(line, 12, over ? 700 : 400);
  return text(column.x + 8, y, over ? 'strip-text over' : 'strip-text', clip(label, column.width - 16, room));
}

function tripLength(kind, { x, width, trip }) {
  return { x: x + 8, room: width - 16, share: shareOf(kind, trip[kind]) };
}

function dayLengths({ days }) {
  return days
    .filter((day) => day.hoursUsable > 0)
    .map((day) => ({ x: day.x + 8, room: day.width - 16, share: (day.hoursUsed ?? 0) / day.hoursUsable }));
}

/** 1 is the limit: payload, a full battery, all usable hours, the dearest trip. */
export function shareOf(kind, value) {
  const share = {
    mass: value.used / value.limit,
    battery: value.lowShare,
    hours: value.used / value.limit,
    money: value.share,
  };
  return Number.isFinite(share[kind]) ? Math.max(0, share[kind]) : 0;
}

export function isOver(share) {
  return share > 1.0001;
}

/** Bars in one row. A limit stands a little before the bar's end, so that going over shows as going past its mark. */
export function bars(lengths, y) {
  const parts = { track: '', bar: '', over: '', limit: '' };
  for (const { x, room, share } of lengths) {
    const limit = room * 0.88;
    const filled = Math.min(share * limit, room);
    const within = Math.min(filled, limit);
    parts.track += `M${x} ${y + BAR}h${limit}`;
    parts.bar += `M${x} ${y}h${within}v${BAR}h${-within}z`;
    parts.limit += `M${x + limit} ${y - 3}v${BAR + 6}`;
    if (isOver(share)) parts.over += `M${x + limit} ${y}h${filled - limit}v${BAR}h${limit - filled}z`;
  }
  return Object.entries(parts)
    .filter(([, d]) => d)
    .map(([name, d]) => svg('path', { class: `bar-${name}`, d }));
}
