/** What every part of the drawing stands on: the columns' ground, ruled lines, the mark of today, a line of text. */
import { svg } from './svg.js';

const DAY_LINE = 49;

export function hidden(name, ...children) {
  return svg('g', { class: name, 'aria-hidden': 'true' }, ...children.flat().filter(Boolean));
}

/** One path for all columns of a kind, not one each: a long season has hundreds. */
export function groundsOf({ columns, width }, height, top = 0) {
  const trips = columns.filter((column) => column.kind === 'trip' || column.kind === 'done');
  const days = trips.flatMap((column) => (column.days ?? []).slice(1));
  const box = ({ x, width: wide }) => `M${x} ${top}h${wide}V${height}h${-wide}z`;
  const boxes = (kind) =>
    columns
      .filter((column) => column.kind === kind)
      .map(box)
      .join('');
  return [
    svg('rect', { class: 'trip-ground', x: 0, y: 0, width, height }),
    svg('path', { class: 'gap', d: boxes('gap') }),
    svg('path', { class: 'open', d: boxes('open') }),
    upright(
      'day-edge',
      days.map((day) => day.x),
      top && DAY_LINE,
      height,
    ),
    upright(
      'edge',
      trips.flatMap((column) => [column.x, column.x + column.width]),
      top,
      height,
    ),
  ];
}

function upright(name, places, top, height) {
  return svg('path', { class: name, d: places.map((x) => `M${x} ${top}V${height}`).join('') });
}

export function ruled(name, heights, width) {
  return svg('path', { class: name, d: heights.map((y) => `M0 ${y}H${width}`).join(' ') });
}

export function todayLine({ today }, height) {
  return today && svg('path', { class: 'today-line', d: `M${today.x} 0V${height}` });
}

export function text(x, y, name, content, anchor) {
  return svg('text', { x, y, class: name, 'text-anchor': anchor }, content);
}
