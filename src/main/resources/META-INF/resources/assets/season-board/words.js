/**
 * The few words the board says by itself; everything else on it arrives ready-made in the data.
 * A page that speaks another language sets the element's `words` to an object with the same keys.
 */
export const WORDS = {
  board: 'Season board',
  empty: 'There is no season plan yet. Once trips are planned they stand here.',
  today: 'today',
  done: 'done',
  open: 'open',
  openLong: 'open, not used by this plan',
  day: 'day',
  days: 'days',
  between: '{0} between',
  toFirst: '{0} to the first trip',
  afterLast: '{0} after the last trip',
  hour: 'h',
  forHours: '{0} hours',
  part: 'part {0} of {1}',
  noWork: 'no work placed',
  chosen: 'chosen',
  before: 'before',
  after: 'after',
  over: 'over',
  mass: 'Mass',
  massNote: 'against payload',
  battery: 'Battery',
  batteryNote: 'low point',
  hours: 'Hours',
  hoursNote: 'used of usable',
  money: 'Money',
  moneyNote: 'of the dearest trip',
  key: 'Key',
  critical: 'critical path',
  pinned: 'pinned',
  trips: 'Trips',
  stages: 'Stages',
  waits: 'Waits',
  follows: 'follows',
  cure: 'cure',
  dry: 'dry',
  settle: 'settle',
  inspection: 'inspection',
  delivery: 'delivery',
  notice: 'notice',
};

/** Puts the values into the places {0}, {1} of a pattern. */
export function fill(pattern, ...values) {
  return pattern.replace(/\{(\d)\}/g, (place, index) => String(values[Number(index)] ?? ''));
}

const formats = new Map();

/** A number with at most one decimal, in the page's language. */
export function figure(value) {
  const language = document.documentElement.lang || undefined;
  if (!formats.has(language)) formats.set(language, new Intl.NumberFormat(language, { maximumFractionDigits: 1 }));
  return formats.get(language).format(value);
}

/** '5 days', '1 day'. */
export function daysText(count, words) {
  return `${count} ${count === 1 ? words.day : words.days}`;
}
