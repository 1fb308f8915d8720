/** The board for narrow places: trips one below the other, the days between them as rows that tell what is waiting. */
import { columnsOf } from './columns.js';
import { blockLabel } from './lanes.js';
import { checkMark, pinMark, ribbonSwatch, swatch } from './marks.js';
import { STRIP_KINDS, lastingWaits, neighbours, worksByTrip } from './model.js';
import { bars, isOver, shareOf } from './strips.js';
import { html } from './svg.js';
import { fill, figure } from './words.js';

const BAR_WIDTH = 130;

export function stack(model, words) {
  const waits = lastingWaits(model);
  const board = { model, words, waits, works: worksByTrip(model) };
  const parts = columnsOf(model, words).flatMap((column) => partOf(column, board));
  if (model.status > model.trips.at(-1).last && !parts.some(isTodayPart)) parts.push(todayPart(board));
  return html('div', { class: 'stack' }, ...parts);
}

function partOf(column, board) {
  const today = isToday(column, board.model) ? [todayPart(board)] : [];
  if (column.kind === 'gap') return column.count > 0 ? [...today, gapPart(column, board)] : today;
  if (column.kind === 'done') return [donePart(board)];
  return [...today, column.kind === 'open' ? openPart(column, board) : tripPart(column, board)];
}

function isToday({ from, to }, { status }) {
  return from <= status && status <= to;
}

function isTodayPart(part) {
  return part.className === 'today-part';
}

function todayPart({ model, words }) {
  return html('p', { class: 'today-part' }, `${words.today} ${model.statusText}`);
}

// ---- trips ----------------------------------------------------------------------------------------------------

function donePart(board) {
  return html(
    'section',
    { class: 'trip-part' },
    html('h3', {}, html('span', { class: 'trip-head' }, html('b', {}, board.words.done))),
    ...lanesOf(board, undefined),
  );
}

function openPart({ trip }, { words }) {
  return html(
    'button',
    {
      class: 'open-part',
      type: 'button',
      tabindex: -1,
      'data-trip': trip.id,
      'aria-label': `${words.openLong}, ${trip.datesText ?? ''}`,
    },
    html('i', {}, words.open),
    trip.datesText ?? '',
  );
}

function tripPart({ trip }, board) {
  const head = html(
    'button',
    { class: 'trip-head', type: 'button', tabindex: -1, 'data-trip': trip.id },
    html('b', {}, trip.title ?? ''),
    html('span', {}, trip.datesText ?? ''),
  );
  return html(
    'section',
    { class: 'trip-part' },
    html('h3', {}, head),
    ...lanesOf(board, trip),
    stripsOf(trip, board.words),
  );
}

/** The work of one trip, or of the time before the first when there is no trip. */
function lanesOf({ works: all, ...board }, trip) {
  return board.model.lanes.flatMap((lane) => {
    const works = (all.get(trip) ?? []).filter(({ stage }) => stage.lane === lane);
    works.sort((a, b) => (a.spot.day?.number ?? 0) - (b.spot.day?.number ?? 0));
    if (works.length === 0) return [];
    return [
      html('h4', {}, lane.name, html('small', {}, lane.finishText)),
      html('ul', { class: lane.tint }, ...works.map((work) => workItem(work, board))),
    ];
  });
}

function workItem(work, { words, waits }) {
  const { stage, spot, index } = work;
  const when = [spot.day?.label, spot.hours > 0 && `${figure(spot.hours)} ${words.hour}`].filter(Boolean).join(', ');
  const button = html(
    'button',
    {
      class: `work${stage.critical ? ' critical' : ''}${stage.done ? ' settled' : ''}`,
      type: 'button',
      tabindex: -1,
      'data-stage': stage.id,
      'aria-label': blockLabel(work, words),
    },
    html('b', {}, stage.name),
  );
  if (stage.pinned) button.append(swatch(12, 18, [pinMark(2, 2)]));
  button.append(html('span', {}, when));
  if (stage.done) button.append(swatch(16, 16, [checkMark(1, 2)]));
  const isLast = index === stage.spots.length - 1;
  const short = isLast ? waits.filter((wait) => wait.from === stage && endsInTrip(wait, spot.day?.trip)) : [];
  return html('li', {}, button, ...short.map(shortWait));
}

function shortWait(wait) {
  return html('p', { class: 'short-wait' }, ribbonSwatch(wait.kind, 34), waitText(wait));
}

/** Such a wait crosses no gap, so it is told at its stage. */
function endsInTrip(wait, trip) {
  return trip && wait.ready <= trip.last;
}

function stripsOf(trip, words) {
  const list = html('dl', { 'aria-hidden': 'true' });
  for (const kind of STRIP_KINDS) {
    if (!trip[kind]) continue;
    const share = shareOf(kind, trip[kind]);
    list.append(
      html(
        'div',
        {},
        html('dt', {}, words[kind]),
        html(
          'dd',
          {},
          trip[kind].text ?? '',
          isOver(share) && html('b', {}, `, ${words.over}`),
          swatch(BAR_WIDTH, 17, bars([{ x: 0, room: BAR_WIDTH - 2, share }], 5)),
        ),
      ),
    );
  }
  return list;
}

// ---- the days between -----------------------------------------------------------------------------------------

function gapPart(column, { model, waits, words }) {
  const running = waits.filter((wait) => wait.starts <= column.to && wait.ready >= column.from);
  return html(
    'div',
    { class: 'between' },
    html('div', { class: 'strokes', 'aria-hidden': 'true' }),
    html(
      'div',
      {},
      html('p', {}, gapTitle(column, model, words)),
      html('ul', {}, ...running.map((wait) => waitItem(wait))),
    ),
  );
}

function gapTitle({ label, from }, { trips }, words) {
  if (from < trips[0].first) return fill(words.toFirst, label);
  return fill(from > trips.at(-1).last ? words.afterLast : words.between, label);
}

function waitItem(wait) {
  const ends = [wait.from, ...wait.tos].filter(Boolean).map((stage) => stage.id);
  return html(
    'li',
    { 'data-ends': JSON.stringify(ends) },
    ribbonSwatch(wait.kind, 34),
    html('span', {}, `${waitText(wait)} (${wait.from.name})`),
  );
}

export function waitText(wait) {
  return [wait.name, wait.readyText].filter(Boolean).join(', ');
}

/** Marks the chosen stage, what stands before and after it, and its waits. */
export function showStackChoice(root, { model, words }, chosen) {
  for (const word of root.querySelectorAll('.near-word')) word.remove();
  for (const near of root.querySelectorAll('.near')) near.classList.remove('near');
  if (!model.stages.has(chosen)) return;
  const { before, after } = neighbours(model, chosen);
  for (const work of root.querySelectorAll('.work')) {
    const id = work.dataset.stage;
    const word = id === chosen ? words.chosen : before.has(id) ? words.before : after.has(id) ? words.after : null;
    if (!word) continue;
    work.classList.toggle('near', id !== chosen);
    work.append(html('span', { class: 'near-word' }, word));
  }
  for (const item of root.querySelectorAll('[data-ends]')) {
    item.classList.toggle('near', JSON.parse(item.dataset.ends).includes(chosen));
  }
}
