/** For paper: the one long drawing cut at trips into pieces as wide as a page, each with the lane headers again. */
import { drawHead } from './head.js';
import { drawBody } from './lanes.js';
import { HEAD, LANE_HEADER } from './layout.js';
import { drawFoot } from './strips.js';
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

function page(piece, board) {
  const width = LANE_HEADER + piece.end - piece.x;
  const foot = HEAD + board.height;
  const height = foot + board.footHeight;
  const visible = partOf(board, piece);
  const drawing = svg('svg', {
    class: height <= ONE_SHEET ? 'page one-sheet' : 'page',
    preserveAspectRatio: 'xMinYMin meet',
    width,
    height,
    viewBox: `0 0 ${width} ${height}`,
  });
  drawing.append(
    cut(piece, 0, HEAD, drawHead(visible)),
    cut(piece, HEAD, board.height, drawBody(visible)),
    cut(piece, foot, board.footHeight, drawFoot(visible)),
    ...board.lanes.map(({ lane, y }) => header(HEAD + y, lane.name, lane.finishText, board)),
    ...board.strips.map(({ kind, y }) => header(foot + y, board.words[kind], board.words[`${kind}Note`], board)),
    svg('path', { class: 'edge', d: `M${LANE_HEADER} 0V${height}` }),
  );
  return drawing;
}

/** Only what shows on the page: drawing the whole season on each would take minutes for a long one. */
function partOf(board, { x, end }) {
  const shows = (from, to) => from < end && to > x;
  return {
    ...board,
    columns: board.columns.filter((column) => shows(column.x, column.x + column.width)),
    blocks: board.blocks.filter((block) => shows(block.x, block.x + block.width)),
    ribbons: board.ribbons.filter((ribbon) => shows(ribbon.start, ribbon.reach)),
    joints: board.joints.filter((joint) => shows(joint.start, joint.end)),
    keylines: board.keylines.filter(({ points }) => shows(points[0][0] - 1, points.at(-1)[0] + 1)),
    today: board.today && shows(board.today.x - 1, board.today.x + 1) ? board.today : null,
  };
}

function cut({ x, end }, top, height, drawing) {
  const width = end - x;
  const frame = { x: LANE_HEADER, y: top, width, height, viewBox: `${x} 0 ${width} ${height}`, overflow: 'hidden' };
  return svg('svg', frame, drawing);
}

function header(y, name, note, { measure }) {
  const lines = wrap(name, LANE_HEADER - 16, 3, (line) => measure(line, 13, 700));
  const group = svg('g', {}, svg('path', { class: 'row-rule', d: `M0 ${y}H${LANE_HEADER}` }));
  lines.forEach((line, index) => group.append(svg('text', { x: 2, y: y + 17 + index * 15, class: 'page-name' }, line)));
  group.append(svg('text', { x: 2, y: y + 17 + lines.length * 15 }, note));
  return group;
}
