/** Draws the lanes: waits, keylines, blocks, and on top of them what marks the chosen stage. */
import { groundsOf, hidden, ruled, text, todayLine } from './ground.js';
import { LABEL_INSET, LINE, TEXT_INSET } from './layout.js';
import { checkMark, patternOf, pinMark } from './marks.js';
import { neighbours } from './model.js';
import { BAND } from './rows.js';
import { svg } from './svg.js';
import { fill, figure } from './words.js';

export function drawBody(board) {
  const { words, height } = board;
  return svg(
    'g',
    { class: 'body' },
    hidden('ground', groundsOf(board, height), lanesRuled(board)),
    hidden('ribbons', board.ribbons.map(bandOf)),
    hidden('lines', board.joints.map(jointOf), keylinesOf(board), todayLine(board, height)),
    hidden('labels', board.ribbons.flatMap(labelsOf)),
    svg('g', { class: 'blocks' }, ...board.blocks.map((block) => drawBlock(block, words))),
  );
}

function lanesRuled({ lanes, width }) {
  return [
    ruled(
      'row-rule',
      lanes.flatMap((packed) => packed.rows.map((row) => row.base)),
      width,
    ),
    ruled(
      'lane-rule',
      lanes.slice(1).map((packed) => packed.y),
      width,
    ),
  ];
}

// ---- waits ----------------------------------------------------------------------------------------------------

function bandOf(ribbon) {
  const { wait, start, end, y } = ribbon;
  const frame = { x: start, y, width: end - start, height: BAND };
  return svg(
    'g',
    { class: 'ribbon' },
    titleOf(wait),
    svg('rect', { class: `band-ground ${wait.from.lane.tint}`, ...frame }),
    svg('rect', { class: 'band', ...frame, fill: patternOf(wait.kind) }),
    svg('path', { class: 'tick', d: `M${end} ${y - 4}V${y + BAND + 4}` }),
  );
}

function titleOf(wait) {
  const next = wait.tos
    .filter(Boolean)
    .map((stage) => stage.name)
    .join(', ');
  return svg('title', {}, [wait.name, wait.readyText].filter(Boolean).join(', ') + (next ? ` (${next})` : ''));
}

function labelsOf(ribbon) {
  return ribbon.labels.map((label) => {
    const y = ribbon.y - 5 - label.level * LINE;
    const atStart = ribbon.tight || label.side === 'start';
    return text(
      atStart ? ribbon.start + LABEL_INSET : ribbon.end - 4,
      y,
      'ribbon-label',
      label.text,
      atStart ? 'start' : 'end',
    );
  });
}

function jointOf({ start, end, y, critical }) {
  return svg('path', { class: critical ? 'keyline' : 'joint', d: `M${start} ${y}H${end}` });
}

/** Upright parts get a margin of paper, so that what they cross is seen to pass beneath. */
function keylinesOf({ keylines }) {
  const path = (points) => `M${points.map((point) => point.join(' ')).join('L')}`;
  return [
    ...keylines.filter((line) => line.turn).map((line) => svg('path', { class: 'keyline-margin', d: path(line.turn) })),
    ...keylines.map((line) => svg('path', { class: 'keyline', d: path(line.points) })),
  ];
}

// ---- blocks ---------------------------------------------------------------------------------------------------

function drawBlock(block, words) {
  const { stage, x, y, width, height } = block;
  const group = svg('g', {
    class: `block ${stage.lane.tint}${stage.critical ? ' critical' : ''}${stage.done ? ' settled' : ''}`,
    role: 'button',
    tabindex: -1,
    'data-stage': stage.id,
    'aria-label': blockLabel(block, words),
  });
  group.append(svg('title', {}, hoverText(block)), svg('rect', { class: 'frame', x, y, width, height }));
  if (stage.done) group.append(svg('rect', { class: 'hatch', x, y, width, height, fill: 'url(#hatch)' }));
  block.lines.forEach((line, index) => group.append(text(x + TEXT_INSET, y + 16 + index * LINE, 'block-name', line)));
  if (block.hoursText)
    group.append(text(x + width - TEXT_INSET, y + height - 7, 'block-hours', block.hoursText, 'end'));
  if (stage.done) group.append(checkOf(block));
  if (stage.pinned) group.append(pinMark(x + width - 16, y - 8));
  return group;
}

/** To the left of the hours, in the middle of a square. */
function checkOf({ x, y, width, height, square, hoursWidth }) {
  return square ? checkMark(x + 6, y + 6) : checkMark(x + width - TEXT_INSET - hoursWidth - 17, y + height - 16);
}

/** The server's sentence; a stage on several days also says which part this is. */
export function blockLabel({ stage, spot, index }, words) {
  const sentence = stage.label || stage.name;
  if (stage.spots.length < 2) return sentence;
  const part = fill(words.part, index + 1, stage.spots.length);
  const hours = spot.hours > 0 ? `, ${fill(words.forHours, figure(spot.hours))}` : '';
  return `${sentence}, ${part}${spot.day ? `, ${spot.day.label}` : ''}${hours}`;
}

function hoverText({ stage, hoursText }) {
  return [stage.name, hoursText, stage.slackText].filter(Boolean).join(', ');
}

// ---- what lies on top -----------------------------------------------------------------------------------------

/** Frames and words for the chosen stage, its waits and the stages before and after them. */
export function drawChoice(board, chosen) {
  const group = svg('g', { class: 'choice', 'aria-hidden': 'true' });
  if (!board.model.stages.has(chosen)) return group;
  const { before, after } = neighbours(board.model, chosen);
  for (const ribbon of board.ribbons) {
    const { from, tos } = ribbon.wait;
    if (from.id === chosen || tos.some((stage) => stage?.id === chosen)) group.append(aroundRibbon(ribbon));
  }
  for (const block of board.blocks) {
    const { id } = block.stage;
    if (id === chosen) group.append(around(block, 'chosen-frame', 4), tag(block, board.words.chosen));
    else if (before.has(id)) group.append(around(block, 'near-frame', 3), tag(block, board.words.before));
    else if (after.has(id)) group.append(around(block, 'near-frame', 3), tag(block, board.words.after));
  }
  return group;
}

export function around({ x, y, width, height }, name, distance) {
  return svg('rect', {
    class: name,
    x: x - distance,
    y: y - distance,
    width: width + 2 * distance,
    height: height + 2 * distance,
  });
}

function aroundRibbon({ start, end, y }) {
  return around({ x: start, y, width: end - start, height: BAND }, 'near-frame', 3);
}

function tag({ x, y, height, square }, word) {
  return square ? '' : text(x, y + height + 15, 'tag', word);
}
