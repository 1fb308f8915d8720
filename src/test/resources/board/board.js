import { findings } from './check.js';
import { large, later, season } from './samples.js';

const asked = new URLSearchParams(location.search);
const board = document.getElementById('board');
if (asked.has('theme')) document.documentElement.dataset.theme = asked.get('theme');
if (asked.has('narrow')) board.style.maxWidth = '360px';

const samples = { season, later, large, empty: () => ({ trips: [], lanes: [], waits: [] }) };
const data = samples[asked.get('sample') ?? 'season']();
await customElements.whenDefined('season-board');

const heard = (event) => {
  document.getElementById('heard').textContent = `${event.type} ${JSON.stringify(event.detail)}`;
  if (event.detail.stage) board.chosen = event.detail.stage;
};
board.addEventListener('stage-chosen', heard);
board.addEventListener('trip-chosen', heard);

const start = performance.now();
board.data = asked.has('text') ? JSON.stringify(data) : data;
board.chosen = asked.get('chosen');
await Promise.resolve();
board.getBoundingClientRect();
const millis = Math.round(performance.now() - start);

await document.fonts.ready;
await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
if (asked.has('at')) board.shadowRoot.querySelector('.scroller').scrollLeft = Number(asked.get('at'));
if (asked.has('down')) document.body.style.marginTop = `-${asked.get('down')}px`;
if (asked.has('focus'))
  board.shadowRoot.querySelector(`[data-stage="${asked.get('focus')}"]`).focus({ focusVisible: true });
if (asked.has('check'))
  document.getElementById('findings').textContent = [`drawn in ${millis} ms`, ...findings(board)].join('\n');
