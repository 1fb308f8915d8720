/** For paper: the one long drawing cut at trips into pieces as wide as a page, each with the lane headers again. */
import { HEAD, LANE_HEADER } from './layout.js';
import { html, svg } from './svg.js';
import { wrap } from './text.js';

const PAGE_WIDTH = 1100;
const ONE_SHEET = 1000;

export function pages(board) {
  const list = html('div', { class: 'pages', 'aria-hidden': 'true' });
  for (const piece of pieces(board.columns)) list.append(page(piece, board));
  return list;
}

/** As many trips as fit, each with the gaps that follow it: a wait's date is written in the gap where it ends. */
function pieces(columns) {
  const found = [];
  for (const part of partsAtTrips(columns)) {
    const current = found.at(-1);
    if (current && part.end - current.x <= PAGE_WIDTH - LANE_HEADER) current.end = part.end;
    else found.push(part);
  }
  return found;
}

function partsAtTrips(columns) {
  const parts = [];
  for (const { kind, x, width } of columns) {
    if (kind === 'trip' || parts.length === 0) parts.push({ x, end: x + width });
    else parts.at(-1).end = x + width;
  }
  return parts;
}

function page({ x, end }, board) {
  const width = LANE_HEADER + end - x;
  const foot = HEAD + board.height;
  const height = foot + board.footHeight;
  const name = height <= ONE_SHEET ? 'page one-sheet' : 'page';
  const drawing = svg('svg', {
    class: name,
    preserveAspectRatio: 'xMinYMin meet',
    width,
    height,
    viewBox: `0 0 ${width} ${height}`,
  });
  drawing.append(
    cut('#board-head', { x, y: 0, width: end - x, height: HEAD }, LANE_HEADER, 0),
    cut('#board-body', { x, y: 0, width: end - x, height: board.height }, LANE_HEADER, HEAD),
    cut('#board-foot', { x, y: 0, width: end - x, height: board.footHeight }, LANE_HEADER, foot),
    ...board.lanes.map((packed) => header(HEAD + packed.y, packed.lane.name, packed.lane.finishText, board)),
    ...board.strips.map((strip) =>
      header(foot + strip.y, board.words[strip.kind], board.words[`${strip.kind}Note`], board),
    ),
    svg('path', { class: 'edge', d: `M${LANE_HEADER} 0V${height}` }),
  );
  return drawing;
}

function cut(target, { x, y, width, height }, left, top) {
  return svg(
    'svg',
    { x: left, y: top, width, height, viewBox: `${x} ${y} ${width} ${height}`, overflow: 'hidden' },
    svg('use', { href: target }),
  );
}

function header(y, name, note, { measure }) {
  const lines = wrap(name, LANE_HEADER - 16, 3, (line) => measure(line, 13, 700));
  const group = svg('g', {}, svg('path', { class: 'row-rule', d: `M0 ${y}H${LANE_HEADER}` }));
  lines.forEach((line, index) => group.append(svg('text', { x: 2, y: y + 17 + index * 15, class: 'page-name' }, line)));
  group.append(svg('text', { x: 2, y: y + 17 + lines.length * 15 }, note));
  return group;
}
