/** Invented plans for looking at the board: a season of three subprojects, and a very large one. */

const MILLIS_PER_DAY = 86_400_000;
const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

const at = (iso) => Date.parse(`${iso}T00:00:00Z`);
const iso = (time) => new Date(time).toISOString().slice(0, 10);
const plus = (date, days) => iso(at(date) + days * MILLIS_PER_DAY);

function dayText(date) {
  const when = new Date(at(date));
  return `${WEEKDAYS[when.getUTCDay()]} ${when.getUTCDate()} ${MONTHS[when.getUTCMonth()]}`;
}

function datesText(first, last) {
  const [, dayOne, monthOne] = dayText(first).split(' ');
  const [, dayTwo, monthTwo] = dayText(last).split(' ');
  if (first === last) return `${dayOne} ${monthOne}`;
  return monthOne === monthTwo
    ? `${dayOne}\u2013${dayTwo} ${monthOne}`
    : `${dayOne} ${monthOne} \u2013 ${dayTwo} ${monthTwo}`;
}

/** [first date, number of days, 'open' when the plan does not use it] */
const TRIPS = [
  ['2027-05-01', 2],
  ['2027-05-08', 2],
  ['2027-05-15', 2, 'open'],
  ['2027-05-22', 2],
  ['2027-05-29', 3],
  ['2027-06-12', 2],
  ['2027-06-19', 2, 'open'],
  ['2027-06-26', 2],
  ['2027-07-03', 3],
  ['2027-07-17', 2],
  ['2027-07-24', 2, 'open'],
  ['2027-07-31', 2],
  ['2027-08-14', 2],
  ['2027-08-28', 2],
];

/** [id, name, [[trip, day, hours] ...], marks: c critical, d done, p pinned] */
const LANES = [
  [
    'water',
    'Water',
    'finished Sun 27 Jun',
    [
      ['w0', 'Site walk and levels', [], 'd'],
      ['w1', 'Strip topsoil for the pad', [['2027-04-10', 7]], 'd'],
      [
        'w2',
        'Compacted base',
        [
          ['2027-04-11', 6],
          ['2027-04-24', 4],
        ],
        'd',
      ],
      ['w3', 'Slab forms and mesh', [[0, 0, 6.5]], 'c'],
      ['w4', 'Slab pour', [[0, 1, 8]], 'c'],
      ['w5', 'Strip forms, backfill', [[1, 0, 3]], ''],
      [
        'w6',
        'Cut pipe trench to the shop',
        [
          [1, 0, 5],
          [1, 1, 9],
        ],
        '',
      ],
      [
        'w7',
        'Block ring, three courses',
        [
          [3, 0, 9],
          [3, 1, 4],
        ],
        'c',
      ],
      ['w8', 'Core fill and cap pour', [[4, 0, 7.5]], 'c'],
      ['w9', 'Inlet screen and gutter to tank', [[4, 2, 4]], ''],
      ['w10', 'Set the tank', [[5, 0, 5]], 'cp'],
      ['w11', 'Lay pipe, pressure test', [[5, 1, 6]], ''],
      ['w12', 'Cover the trench', [[7, 1, 5]], ''],
      ['w13', 'Fill and chlorinate', [[7, 0, 2]], 'c'],
      ['w14', 'Draw off and taste', [[7, 1, 1]], ''],
    ],
  ],
  [
    'shop',
    'Shop',
    'finished Sun 1 Aug',
    [
      ['s0', 'Set out corners and batter boards', [['2027-04-25', 5]], 'd'],
      [
        's1',
        'Dig footings',
        [
          [0, 0, 4],
          [0, 1, 2],
          [1, 1, 3],
        ],
        '',
      ],
      ['s2', 'Footing steel', [[3, 1, 5]], ''],
      ['s3', 'Footing pour', [[4, 1, 9.5]], ''],
      [
        's4',
        'Stem wall block',
        [
          [5, 0, 5],
          [5, 1, 4],
        ],
        '',
      ],
      [
        's5',
        'Wall frames, raised in sections',
        [
          [7, 0, 8],
          [7, 1, 4],
          [8, 0, 9],
        ],
        '',
      ],
      ['s6', 'Roof trusses', [[8, 1, 10]], ''],
      ['s7', 'Sheathing and felt', [[8, 2, 6]], ''],
      [
        's8',
        'Metal roof',
        [
          [9, 0, 8],
          [9, 1, 7],
        ],
        '',
      ],
      ['s9', 'Shelves and lock', [[11, 1, 4]], ''],
    ],
  ],
  [
    'cabin',
    'Cabin and power',
    'finished Sun 29 Aug',
    [
      [
        'c1',
        'Post holes',
        [
          [7, 0, 2],
          [8, 2, 5],
        ],
        'c',
      ],
      ['c2', 'Post pads pour', [[9, 0, 4]], 'c'],
      [
        'c3',
        'Beams and joists',
        [
          [11, 0, 9],
          [11, 1, 6],
        ],
        'c',
      ],
      [
        'c4',
        'Panel rack and conduit',
        [
          [9, 1, 4],
          [11, 0, 2],
        ],
        'p',
      ],
      ['c5', 'Floor deck', [[12, 0, 8]], 'c'],
      ['c6', 'Battery box, breakers, grounding rod', [[12, 1, 7.5]], ''],
      ['c7', 'Seal and first coat on the deck', [[12, 1, 3]], 'c'],
      ['c8', 'Second coat', [[13, 1, 4]], 'c'],
      ['c9', 'Power switched on', [[13, 0, 3]], ''],
    ],
  ],
];

/** [kind, name, from, to, days, 'c' when critical] */
const WAITS = [
  ['settle', 'Base settles', 'w2', 'w4', 7],
  ['follows', '', 'w3', 'w4', 0, 'c'],
  ['cure', 'Cure to 70 %', 'w4', 'w7', 12, 'c'],
  ['cure', 'Set enough to strip', 'w4', 'w5', 2],
  ['settle', 'Trench rests', 'w6', 'w11', 14],
  ['follows', '', 'w7', 'w8', 0, 'c'],
  ['cure', 'Cure of cap', 'w8', 'w10', 14, 'c'],
  ['follows', '', 'w10', 'w13', 0, 'c'],
  ['inspection', 'Pressure test seen', 'w11', 'w12', 3],
  ['dry', 'Chlorine stands', 'w13', 'w14', 1],
  ['follows', '', 'w13', 'c1', 0, 'c'],
  ['notice', 'Footing notice', 's1', 's2', 2],
  ['inspection', 'Footing inspection', 's2', 's3', 4],
  ['cure', 'Cure to 70 %', 's3', 's4', 10],
  ['cure', 'Mortar sets', 's4', 's5', 6],
  ['follows', '', 's6', 's7', 0],
  ['delivery', 'Roof metal delivered', 's7', 's8', 11],
  ['follows', '', 's8', 's9', 0],
  ['inspection', 'Hole depth seen', 'c1', 'c2', 9, 'c'],
  ['cure', 'Cure of pads', 'c2', 'c3', 11, 'c'],
  ['follows', '', 'c3', 'c5', 0, 'c'],
  ['dry', 'Wood dries', 'c5', 'c7', 1, 'c'],
  ['dry', 'First coat dries', 'c7', 'c8', 6, 'c'],
  ['delivery', 'Breakers by post', 'c4', 'c6', 9],
  ['inspection', 'Electrical inspection', 'c6', 'c9', 10],
  ['dry', 'Deck may be walked on', 'c8', '', 4],
];

export function season() {
  const trips = TRIPS.map(([first, days, open], index) => tripOf(index, first, days, !open));
  let number = 0;
  for (const trip of trips.filter((each) => each.made)) {
    number += 1;
    Object.assign(trip, { number, title: `Trip ${number}` });
  }
  const lanes = LANES.map(([id, name, finishText, stages]) => ({
    id,
    name,
    finishText,
    stages: stages.map((stage) => stageOf(stage, trips)),
  }));
  const stages = new Map(lanes.flatMap((lane) => lane.stages).map((stage) => [stage.id, stage]));
  trips.forEach((trip, index) => fillTrip(trip, lanes, index));
  return {
    statusDate: '2027-04-28',
    statusText: 'Wed 28 Apr 2027',
    summaryText: 'Finished 29 Aug 2027 with 11 trips.',
    trips,
    lanes,
    waits: WAITS.map((wait, index) => waitOf(wait, index, stages)),
  };
}

function tripOf(index, first, count, made) {
  const dates = Array.from({ length: count }, (none, day) => plus(first, day));
  return {
    id: `t${index}`,
    number: null,
    made,
    title: made ? 'Trip' : '',
    datesText: datesText(first, dates.at(-1)),
    firstDate: first,
    lastDate: dates.at(-1),
    days: dates.map((date, day) => ({
      date,
      label: dayText(date).split(' ').slice(0, 2).join(' '),
      hoursUsed: 0,
      hoursUsable: day === 0 ? 10 : 11,
    })),
    mass: null,
    battery: null,
    hours: null,
    money: null,
  };
}

function stageOf([id, name, places, marks], trips) {
  const blocks = places.map(([trip, day, hours]) =>
    typeof trip === 'string' ? { date: trip, hours: day } : { date: plus(trips[trip].firstDate, day), hours },
  );
  const critical = marks.includes('c');
  const total = blocks.reduce((sum, block) => sum + block.hours, 0);
  const when = blocks.length ? ` on ${dayText(blocks[0].date)}` : '';
  return {
    id,
    name,
    blocks,
    critical,
    state: marks.includes('d') ? 'done' : marks.includes('p') ? 'pinned' : 'planned',
    slackText: critical ? 'no slack' : 'slack 2 trips',
    label: `${name}, ${total} hours${when}${critical ? ', on the critical path' : ''}`,
  };
}

function waitOf([kind, name, from, to, days, critical], index, stages) {
  const fromDate = stages.get(from).blocks.at(-1)?.date ?? '2027-04-01';
  const readyDate = plus(fromDate, days);
  return {
    id: `v${index}`,
    kind,
    name,
    from,
    to,
    fromDate,
    readyDate,
    readyText: `ready ${dayText(readyDate)}`,
    critical: critical === 'c',
  };
}

function fillTrip(trip, lanes, index) {
  if (!trip.made) return;
  for (const day of trip.days) {
    const blocks = lanes.flatMap((lane) => lane.stages).flatMap((stage) => stage.blocks);
    day.hoursUsed = blocks.filter((block) => block.date === day.date).reduce((sum, block) => sum + block.hours, 0);
    day.hoursUsable = Math.max(day.hoursUsable, day.hoursUsed);
  }
  const used = trip.days.reduce((sum, day) => sum + day.hoursUsed, 0);
  const limit = trip.days.reduce((sum, day) => sum + day.hoursUsable, 0);
  const mass = [612, 640, 0, 590, 702, 410, 0, 333, 600, 521, 0, 480, 288, 64][index % 14];
  const money = 90 + ((index * 137) % 520);
  trip.hours = { used, limit, text: `${used} of ${limit} h` };
  trip.mass = mass ? { used: mass, limit: 640, text: `${mass} of 640 kg` } : null;
  trip.battery = { lowShare: 0.22 + ((index * 29) % 60) / 100, text: `low point ${22 + ((index * 29) % 60)} %` };
  trip.money = { share: money / 610, text: `$${money}` };
}

/** The same season seen in July: half of it done, and a long list of small things done before the first trip. */
export function later() {
  const data = season();
  Object.assign(data, { statusDate: '2027-07-10', statusText: 'Sat 10 Jul 2027' });
  const isOver = (stage) => stage.blocks.every((block) => block.date < data.statusDate);
  for (const stage of data.lanes.flatMap((lane) => lane.stages).filter(isOver)) stage.state = 'done';
  for (let index = 0; index < 11; index += 1) {
    data.lanes[1].stages.push(stageOf([`e${index}`, `Early job ${index + 1} <b>& more</b>`, [], 'd'], data.trips));
  }
  return data;
}

/** Many stages in many trips, for time and for crowding. */
export function large(tripCount = 200, stageCount = 400, laneCount = 8) {
  const trips = Array.from({ length: tripCount }, (none, index) => {
    const made = index % 5 !== 3;
    return {
      ...tripOf(index, plus('2027-04-03', index * 7), 2 + (index % 3 === 0), made),
      number: made ? index + 1 : null,
      title: made ? `Trip ${index + 1}` : '',
    };
  });
  const lanes = Array.from({ length: laneCount }, (none, lane) => ({
    id: `l${lane}`,
    name: `Subproject ${lane + 1}`,
    finishText: 'finished some day',
    stages: [],
  }));
  const waits = [];
  const kinds = ['cure', 'dry', 'settle', 'inspection', 'delivery', 'notice'];
  for (let index = 0; index < stageCount; index += 1) {
    const lane = index % laneCount;
    let trip = Math.floor((index / stageCount) * tripCount);
    if (!trips[trip].made) trip += 1;
    const places =
      index % 4 === 0
        ? [
            [trip, 0, 3 + (index % 5)],
            [trip, 1, 4],
          ]
        : [[trip, index % 2, 1 + (index % 9)]];
    lanes[lane].stages.push(
      stageOf([`s${index}`, `Stage ${index}, ${kinds[index % 6]} after it`, places, lane === 0 ? 'c' : ''], trips),
    );
    if (index >= laneCount) {
      const before = `s${index - laneCount}`;
      waits.push([kinds[index % 6], 'Some wait', before, `s${index}`, 1 + (index % 13), lane === 0 ? 'c' : '']);
    }
  }
  const stages = new Map(lanes.flatMap((lane) => lane.stages).map((stage) => [stage.id, stage]));
  trips.forEach((trip, index) => fillTrip(trip, lanes, index));
  return {
    statusDate: '2027-04-01',
    statusText: 'Thu 1 Apr 2027',
    summaryText: 'A very long plan.',
    trips,
    lanes,
    waits: waits.map((wait, index) => waitOf(wait, index, stages)),
  };
}
