/** The same board as text, for readers who hear it: the summary, then every trip, then every wait. */
import { STRIP_KINDS, lastingWaits, worksByTrip } from './model.js';
import { html } from './svg.js';
import { daysText, figure, fill } from './words.js';
import { waitText } from './stack.js';

export function outline(model, words) {
  const early = [...model.stages.values()].filter((stage) => stage.spots.some((spot) => spot.day === null));
  return html(
    'div',
    { class: 'hidden-text' },
    html('p', { id: 'summary' }, `${words.today} ${model.statusText}. ${model.summaryText}`),
    html(
      'ul',
      {},
      ...model.lanes.map((lane) => html('li', {}, `${lane.name}, ${lane.finishText}`)),
      early.length > 0 && html('li', {}, `${words.done}: ${early.map((stage) => stage.name).join('; ')}`),
      ...tripsOf(model, words),
    ),
    html('p', {}, words.waits),
    html('ul', {}, ...lastingWaits(model).map((wait) => html('li', {}, waitSentence(wait, words)))),
  );
}

function tripsOf(model, words) {
  const works = worksByTrip(model);
  return model.trips.map((trip) => {
    const texts = (works.get(trip) ?? []).map((work) => workText(work, words));
    return html('li', {}, tripSentence(trip, texts, words));
  });
}

function workText({ stage, spot }, words) {
  return `${stage.name} ${spot.day.label} ${fill(words.forHours, figure(spot.hours))}`;
}

function tripSentence(trip, works, words) {
  if (!trip.made && works.length === 0) return `${words.openLong}, ${trip.datesText ?? ''}`;
  const told = STRIP_KINDS.filter((kind) => trip[kind]);
  const strips = told.map((kind) => `${words[kind]} ${trip[kind].text}`);
  return `${trip.title ?? ''}, ${trip.datesText ?? ''}: ${works.join('; ') || words.noWork}. ${strips.join(', ')}`;
}

function waitSentence(wait, words) {
  const next = wait.tos
    .filter(Boolean)
    .map((stage) => stage.name)
    .join(', ');
  const long = daysText(wait.ready - wait.starts, words);
  const critical = wait.critical ? `, ${words.critical}` : '';
  return `${waitText(wait)}, ${long}, ${words.after} ${wait.from.name}, ${words.before} ${next}${critical}`;
}
