/** Puts the wide board together: fixed lane headers at the left, the drawing beside them, the key below. */
import { drawHead } from './head.js';
import { drawBody, drawChoice } from './lanes.js';
import { HEAD } from './layout.js';
import { checkMark, pinMark, ribbonSwatch, swatch } from './marks.js';
import { drawFoot } from './strips.js';
import { html, svg } from './svg.js';

export function sheet(board) {
  const top = drawing('top', board.width, HEAD, drawHead(board), board.words.trips);
  const main = drawing('main', board.width, board.height, drawBody(board), board.words.stages);
  const foot = drawing('foot', board.width, board.footHeight, drawFoot(board));
  return html(
    'div',
    { class: 'scroller' },
    html(
      'div',
      { class: 'sheet' },
      html('div', { class: 'corner' }),
      html('div', { class: 'top' }, top),
      laneHeaders(board),
      main,
      stripHeaders(board),
      html('div', { class: 'bottom' }, foot),
    ),
  );
}

function drawing(name, width, height, content, label) {
  return svg(
    'svg',
    {
      class: name,
      role: label && 'group',
      'aria-label': label,
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      focusable: 'false',
    },
    content,
  );
}

/** Draws anew what marks the chosen stage. */
export function showChoice(root, board, chosen) {
  root.querySelector('.choice')?.remove();
  root.querySelector('svg.main').append(drawChoice(board, chosen));
}

function laneHeaders({ lanes, height }) {
  return side(
    'side',
    height,
    lanes.map(({ lane, y, height: tall }) =>
      sideCell(
        y,
        tall,
        `lane ${lane.tint}`,
        html('div', { class: 'lane-name' }, lane.name),
        html('div', { class: 'lane-finish' }, lane.finishText),
      ),
    ),
  );
}

function stripHeaders({ strips, words, footHeight }) {
  return side(
    'side strips',
    footHeight,
    strips.map(({ kind, y, height }) =>
      sideCell(y, height, 'strip', html('b', {}, words[kind]), html('span', {}, words[`${kind}Note`])),
    ),
  );
}

function side(name, height, cells) {
  const column = html('div', { class: name }, ...cells);
  column.style.height = `${height}px`;
  return column;
}

function sideCell(y, height, name, ...children) {
  const cell = html('div', { class: name }, ...children);
  cell.style.top = `${y}px`;
  cell.style.height = `${height}px`;
  return cell;
}

/** Explains only what is on this board. */
export function keyOf(model, words) {
  const stages = [...model.stages.values()];
  const kinds = new Set(model.waits.filter((wait) => wait.lasts).map((wait) => wait.kind));
  const entries = [...kinds].map((kind) => [ribbonSwatch(kind), words[kind] ?? kind]);
  if (stages.some((stage) => stage.critical)) entries.push([blockSwatch('critical'), words.critical]);
  if (stages.some((stage) => stage.done)) entries.push([blockSwatch('settled'), words.done]);
  if (stages.some((stage) => stage.pinned)) entries.push([swatch(14, 18, [pinMark(3, 2)]), words.pinned]);
  return html(
    'ul',
    { class: 'key', 'aria-label': words.key },
    ...entries.map(([drawn, word]) => html('li', {}, drawn, word)),
  );
}

function blockSwatch(kind) {
  const group = svg('g', { class: kind === 'critical' ? 'block critical' : 'block settled' });
  group.append(svg('rect', { class: 'frame', x: 3, y: 3, width: 24, height: 14 }));
  if (kind === 'settled')
    group.append(svg('rect', { x: 3, y: 3, width: 24, height: 14, fill: 'url(#hatch)' }), checkMark(9, 4));
  return swatch(30, 20, [group]);
}
