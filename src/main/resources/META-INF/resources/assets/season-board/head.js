/** Draws the band at the top: trips with their days, gaps with their number of days and one stroke for each day. */
import { groundsOf, hidden, ruled, text, todayLine } from './ground.js';
import { HEAD } from './layout.js';
import { svg } from './svg.js';
import { clip, wrap } from './text.js';

const HEAD_TOP = 22;

export function drawHead(board) {
  return svg(
    'g',
    { class: 'head' },
    hidden('ground', groundsOf(board, HEAD, HEAD_TOP), todayLine(board, HEAD), ruled('thick', [HEAD - 1], board.width)),
    ...board.columns.map((column) => headOf(column, board)),
    board.today && todayFlag(board),
  );
}

function headOf(column, board) {
  if (column.kind === 'gap') return gapHead(column);
  if (column.kind === 'done') return svg('g', {}, text(column.x + 8, 40, 'trip-title', board.words.done));
  return column.kind === 'trip' ? tripHead(column, board) : openHead(column, board);
}

function gapHead(column) {
  const middle = column.x + column.width / 2;
  return svg(
    'g',
    { 'aria-hidden': 'true' },
    text(middle, HEAD - 18, 'gap-days', column.label, 'middle'),
    svg('path', { class: 'day-stroke', d: dayStrokes(column) }),
  );
}

/** One stroke for each day; where days are too many to count, one for each week. */
function dayStrokes(column) {
  const step = column.count > 28 ? 7 : 1;
  let path = '';
  for (let day = 0; day < column.count; day += step) {
    path += `M${(column.x + (column.width * (day + 0.5)) / column.count).toFixed(1)} ${HEAD - 3}v-7`;
  }
  return path;
}

function tripHead(column, { measure }) {
  const { trip } = column;
  const group = tripButton(column, `${trip.title ?? ''}, ${trip.datesText ?? ''}`);
  const title = text(column.x + 8, 40, 'trip-title', trip.title ?? '');
  title.append(svg('tspan', { class: 'trip-dates', dx: 7 }, trip.datesText ?? ''));
  group.append(title);
  for (const day of column.days) {
    group.append(
      text(
        day.x + 8,
        62,
        'day-label',
        clip(day.label ?? day.date, day.width - 10, (line) => measure(line, 12)),
      ),
    );
  }
  return group;
}

function openHead(column, { words, measure }) {
  const { trip } = column;
  const middle = column.x + column.width / 2;
  const group = tripButton(column, `${words.openLong}, ${trip.datesText ?? ''}`);
  group.append(text(middle, 40, 'open-word', words.open, 'middle'));
  const lines = wrap(trip.datesText ?? '', column.width - 6, 2, (line) => measure(line, 11));
  lines.forEach((line, index) => group.append(text(middle, 56 + index * 13, 'open-dates', line, 'middle')));
  return group;
}

function tripButton({ x, width, trip }, label) {
  return svg(
    'g',
    { class: 'trip', role: 'button', tabindex: -1, 'data-trip': trip.id, 'aria-label': label },
    svg('rect', { class: 'hit', x, y: HEAD_TOP, width, height: HEAD - HEAD_TOP }),
  );
}

function todayFlag({ today, words, model, measure, width }) {
  const label = `${words.today}  ${model.statusText}`;
  const room = measure(label, 11, 600) + 14;
  const left = today.x + room > width && today.x > room;
  const x = left ? today.x - room : today.x;
  return svg(
    'g',
    { class: 'today' },
    svg('rect', { class: 'today-flag', x, y: 2, width: room, height: 17 }),
    text(x + 7, 14.5, 'today-text', label),
  );
}
