/**
 * <season-board>: a season plan drawn with trips as wide columns and the days between as thin ones.
 *
 * In:  `data`   object or JSON text, see below; setting it draws the board anew
 *      `chosen` id of the stage to point out, property or attribute; null for none
 *      `words`  optional, replaces the few English words the board says itself (season-board/words.js)
 * Out: `stage-chosen` {stage: id} and `trip-chosen` {trip: id}; both bubble and are composed. The board does not
 *      choose by itself: the page answers by setting `chosen`.
 *
 * Look: --fs-ink, --fs-paper, --fs-muted, --fs-line, --fs-accent, --fs-focus, --fs-lane-1 ... --fs-lane-6,
 *       --fs-font, --fs-font-title, --fs-board-height (how tall before it scrolls, 88vh unless told).
 *
 * data = {
 *   statusDate: '2027-03-01', statusText: 'Mon 1 Mar 2027', summaryText,
 *   trips: [{id, number, made, title, datesText, firstDate, lastDate,
 *            days: [{date, label, hoursUsed, hoursUsable}],
 *            mass: {used, limit, text} | null, battery: {lowShare, text} | null,
 *            hours: {used, limit, text}, money: {share, text}}],
 *   lanes: [{id, name, finishText,
 *            stages: [{id, name, blocks: [{date, hours}], critical, state: 'done' | 'planned' | 'pinned',
 *                      slackText, label}]}],
 *   waits: [{id, kind: 'cure' | 'dry' | 'settle' | 'inspection' | 'delivery' | 'notice' | 'follows', name,
 *            from, to, fromDate, readyDate, readyText, critical}]
 * }
 * Dates are ISO, durations are hours, every ...Text is shown as it comes. `from` and `to` are stage ids.
 */
import { around } from './season-board/lanes.js';
import { Rover } from './season-board/keys.js';
import { layOut } from './season-board/layout.js';
import { look } from './season-board/look.js';
import { patternStore } from './season-board/marks.js';
import { readModel } from './season-board/model.js';
import { outline } from './season-board/outline.js';
import { pages } from './season-board/pages.js';
import { keyOf, sheet, showChoice } from './season-board/sheet.js';
import { showStackChoice, stack } from './season-board/stack.js';
import { html } from './season-board/svg.js';
import { measurer } from './season-board/text.js';
import { WORDS } from './season-board/words.js';

const NARROW = 640;
const SIDE = 150;
const MARGIN = 24;
const BEFORE_TODAY = 320;

class SeasonBoard extends HTMLElement {
  static observedAttributes = ['chosen'];

  #data = null;
  #words = WORDS;
  #chosen = null;
  #narrow = false;
  #board = null;
  #rovers = [];
  #queued = false;
  #resizes = new ResizeObserver(([entry]) => this.#fit(entry.contentRect.width));
  #beforePrint = () => this.#addPages();
  #afterPrint = () => this.#removePages();

  constructor() {
    super();
    this.attachShadow({ mode: 'open' }).adoptedStyleSheets = [look()];
    this.shadowRoot.addEventListener('click', (event) => this.#choose(event.target));
    this.shadowRoot.addEventListener('keydown', (event) => this.#onKey(event));
    this.shadowRoot.addEventListener('focusin', (event) => this.#onFocus(event.target));
    this.shadowRoot.addEventListener('focusout', () => this.shadowRoot.querySelector('.ring')?.remove());
  }

  get data() {
    return this.#data;
  }
  set data(value) {
    this.#data = value;
    this.#queue();
  }

  get words() {
    return this.#words;
  }
  set words(value) {
    this.#words = { ...WORDS, ...value };
    this.#queue();
  }

  get chosen() {
    return this.#chosen;
  }
  set chosen(value) {
    this.#chosen = value ?? null;
    if (this.#board && !this.#queued) this.#showChosen();
  }

  attributeChangedCallback(name, before, value) {
    this.chosen = value;
  }

  connectedCallback() {
    for (const name of ['data', 'words', 'chosen']) this.#adopt(name);
    this.#resizes.observe(this);
    window.addEventListener('beforeprint', this.#beforePrint);
    window.addEventListener('afterprint', this.#afterPrint);
    if (document.fonts?.status === 'loading') document.fonts.ready.then(() => this.#queue());
    this.#narrow = this.clientWidth > 0 && this.clientWidth < NARROW;
    this.#queue();
  }

  disconnectedCallback() {
    this.#resizes.disconnect();
    window.removeEventListener('beforeprint', this.#beforePrint);
    window.removeEventListener('afterprint', this.#afterPrint);
  }

  /** A property that was set before this class was known hides the accessor until it is set again. */
  #adopt(name) {
    if (!Object.hasOwn(this, name)) return;
    const value = this[name];
    delete this[name];
    this[name] = value;
  }

  #queue() {
    if (this.#queued || !this.isConnected) return;
    this.#queued = true;
    queueMicrotask(() => {
      this.#queued = false;
      if (this.isConnected) this.#draw();
    });
  }

  #fit(width) {
    const narrow = width > 0 && width < NARROW;
    if (narrow === this.#narrow) return;
    this.#narrow = narrow;
    this.#queue();
  }

  // ---- drawing ------------------------------------------------------------------------------------------------

  #draw() {
    const model = readModel(this.#data);
    const before = this.#board ? this.#whereabouts() : null;
    if (!model) {
      this.#board = null;
      this.#rovers = [];
      this.shadowRoot.replaceChildren(html('p', { class: 'empty' }, this.#words.empty));
      return;
    }
    this.#board = this.#narrow ? { model, words: this.#words } : layOut(model, this.#measure(), this.#words);
    const section = html('section', { 'aria-label': this.#words.board, 'aria-describedby': 'summary' });
    section.append(
      patternStore(),
      outline(model, this.#words),
      this.#narrow ? stack(model, this.#words) : sheet(this.#board),
      keyOf(model, this.#words),
    );
    this.shadowRoot.replaceChildren(section);
    this.#rovers = [new Rover(this.#tripItems()), new Rover(this.#blockItems())];
    this.#showChosen();
    if (before) this.#return(before);
    else this.#showToday();
  }

  #measure() {
    const family = getComputedStyle(this).fontFamily || 'sans-serif';
    return measurer(family);
  }

  #showChosen() {
    const root = this.shadowRoot;
    if (this.#narrow) showStackChoice(root, this.#board, this.#chosen);
    else showChoice(root, this.#board, this.#chosen);
    for (const element of root.querySelectorAll('[data-stage]')) {
      element.setAttribute('aria-pressed', String(element.dataset.stage === this.#chosen));
    }
  }

  /** Where the reader was, so that new data does not throw them back to the start. */
  #whereabouts() {
    const scroller = this.shadowRoot.querySelector('.scroller');
    const focused = this.shadowRoot.activeElement;
    const nth = focused ? this.#likes(focused.dataset).indexOf(focused) : -1;
    return { left: scroller?.scrollLeft ?? 0, top: scroller?.scrollTop ?? 0, nth, dataset: focused?.dataset };
  }

  /** All blocks of a stage, or the head of a trip. */
  #likes({ stage, trip }) {
    const all = [...this.shadowRoot.querySelectorAll('[data-stage], [data-trip]')];
    return all.filter(({ dataset }) => dataset.stage === stage && dataset.trip === trip);
  }

  #return({ left, top, nth, dataset }) {
    if (left > 0 || top > 0) this.shadowRoot.querySelector('.scroller')?.scrollTo({ left, top, behavior: 'instant' });
    if (nth < 0) return;
    const matches = this.#likes(dataset);
    (matches[nth] ?? matches[0])?.focus({ preventScroll: true });
  }

  /** A season under way opens at today, with a little of what was before. */
  #showToday() {
    const scroller = this.shadowRoot.querySelector('.scroller');
    if (scroller && this.#board.today?.x > BEFORE_TODAY) scroller.scrollLeft = this.#board.today.x - BEFORE_TODAY;
  }

  // ---- keyboard and pointer -----------------------------------------------------------------------------------

  #tripItems() {
    return [...this.shadowRoot.querySelectorAll('[data-trip]')].map((element, index) => ({
      element,
      group: 0,
      x: index,
    }));
  }

  #blockItems() {
    const elements = [...this.shadowRoot.querySelectorAll('[data-stage]')];
    if (this.#narrow) return elements.map((element, index) => ({ element, group: 0, x: index }));
    return this.#board.blocks.map((block, index) => ({
      element: elements[index],
      group: block.stage.lane.index,
      x: block.x,
    }));
  }

  #onKey(event) {
    const element = event.target;
    if (!this.#rovers.some((rover) => rover.holds(element))) return;
    const chosen = event.key === 'Enter' || event.key === ' ';
    if (chosen) this.#choose(element);
    const moved = !chosen && this.#rovers.find((rover) => rover.holds(element)).press(event);
    if (chosen || moved) event.preventDefault();
  }

  #choose(target) {
    const element = target.closest?.('[data-stage], [data-trip]');
    if (!element) return;
    this.#rovers.find((rover) => rover.holds(element))?.enter(element);
    const { stage, trip } = element.dataset;
    const [name, detail] = stage === undefined ? ['trip-chosen', { trip }] : ['stage-chosen', { stage }];
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }

  #onFocus(element) {
    if (!element.matches('[data-stage], [data-trip]') || !element.matches(':focus-visible')) return;
    if (this.#narrow) element.scrollIntoView({ block: 'nearest' });
    else this.#showFocus(element);
  }

  /** The ring is one rectangle on top of everything, so no neighbour can cover it. */
  #showFocus(element) {
    const frame = element.querySelector('.frame, .hit');
    const box = Object.fromEntries(
      ['x', 'y', 'width', 'height'].map((name) => [name, Number(frame.getAttribute(name))]),
    );
    this.shadowRoot.querySelector('.ring')?.remove();
    element.ownerSVGElement.append(around(box, 'ring', element.dataset.stage === undefined ? -3 : 8));
    this.#bringIntoView(element, box);
  }

  #bringIntoView(element, { x, y, width, height }) {
    const scroller = this.shadowRoot.querySelector('.scroller');
    const room = scroller.clientWidth - SIDE;
    if (x - MARGIN < scroller.scrollLeft) scroller.scrollLeft = x - MARGIN;
    else if (x + width + MARGIN > scroller.scrollLeft + room) scroller.scrollLeft = x + width + MARGIN - room;
    if (element.dataset.stage === undefined) return;
    const head = this.shadowRoot.querySelector('.top').clientHeight;
    const foot = this.shadowRoot.querySelector('.bottom').clientHeight;
    const tall = scroller.clientHeight - head - foot;
    if (y - MARGIN < scroller.scrollTop) scroller.scrollTop = y - MARGIN;
    else if (y + height + MARGIN > scroller.scrollTop + tall) scroller.scrollTop = y + height + MARGIN - tall;
    element.querySelector('.frame').scrollIntoView?.({ block: 'nearest', inline: 'nearest', behavior: 'instant' });
  }

  // ---- paper --------------------------------------------------------------------------------------------------

  #addPages() {
    this.#removePages();
    if (!this.#board || this.#narrow) return;
    const section = this.shadowRoot.querySelector('section');
    section.classList.add('has-pages');
    section.querySelector('.key').before(pages(this.#board));
  }

  #removePages() {
    this.shadowRoot.querySelector('.pages')?.remove();
    this.shadowRoot.querySelector('.has-pages')?.classList.remove('has-pages');
  }
}

customElements.define('season-board', SeasonBoard);
