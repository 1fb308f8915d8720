/** The board's own small drawings: a texture for each kind of wait, the hatch of settled work, check and pin. */
import { html, svg } from './svg.js';

/**
 * Textures borrow from section drawings: aggregate for a cure, ripples for drying, earth strokes for settling, the
 * graduations of a rule for an inspection, brick courses for a delivery, written lines for a notice.
 */
const TEXTURES = {
  cure: {
    width: 17,
    height: 11,
    line: 'M3 3.5l2 -1.6 1 2.4z M10 8.6l2.4 -.4 -.8 -2.2z M14 3.4l1.6 .3 -.6 -1.7z',
    dots: [
      [7.5, 8],
      [9.5, 2.4],
      [1.6, 8.2],
      [14.4, 8.6],
    ],
  },
  dry: { width: 14, height: 11, line: 'M0 4q3.5 -3.4 7 0t7 0 M0 8.4q3.5 -3.4 7 0t7 0' },
  settle: { width: 16, height: 11, line: 'M0 11l5 -11 M4 11l5 -11 M8 11l5 -11' },
  inspection: { width: 12, height: 11, line: 'M2 11v-9 M5 11v-4 M8 11v-4 M11 11v-4' },
  delivery: { width: 16, height: 11, line: 'M0 5.5h16 M4 0v5.5 M12 5.5v5.5' },
  notice: { width: 20, height: 11, line: 'M2 3.6h13 M2 7.4h8' },
  follows: { width: 10, height: 11, line: 'M4 5.5h2' },
};

/** Ids are only unique inside one shadow root, which is where they are used. */
export function patternOf(kind) {
  return `url(#texture-${kind in TEXTURES ? kind : 'follows'})`;
}

/** An SVG of no size that holds the patterns for every other drawing in the same shadow root. */
export function patternStore() {
  const store = svg('svg', { class: 'store', width: 0, height: 0, 'aria-hidden': 'true', focusable: 'false' });
  for (const [kind, texture] of Object.entries(TEXTURES)) {
    const pattern = patternElement(`texture-${kind}`, texture.width, texture.height);
    pattern.append(svg('path', { class: 'texture', d: texture.line }));
    for (const [cx, cy] of texture.dots ?? []) pattern.append(svg('circle', { class: 'grain', cx, cy, r: 0.9 }));
    store.append(pattern);
  }
  const hatch = patternElement('hatch', 7, 7);
  hatch.append(svg('path', { class: 'hatching', d: 'M-1 8l9 -9 M-1 1l2 -2 M6 8l2 -2' }));
  store.append(hatch);
  return store;
}

function patternElement(id, width, height) {
  return svg('pattern', { id, width, height, patternUnits: 'userSpaceOnUse' });
}

export function checkMark(x, y) {
  return svg('path', { class: 'check', d: `M${x} ${y + 5.5}l3.5 4l7 -9` });
}

/** A round-headed nail, seen from the side. */
export function pinMark(x, y) {
  return svg(
    'g',
    { class: 'pin' },
    svg('path', { d: `M${x + 4} ${y + 5}v8` }),
    svg('circle', { cx: x + 4, cy: y + 3.5, r: 3.5 }),
  );
}

/** A short piece of ribbon for keys and lists. */
export function ribbonSwatch(kind, width = 44) {
  return swatch(width, 16, [
    svg('rect', { class: 'band-ground', x: 0.5, y: 3, width: width - 3, height: 11 }),
    svg('rect', { class: 'band', x: 0.5, y: 3, width: width - 3, height: 11, fill: patternOf(kind) }),
    svg('path', { class: 'tick', d: `M${width - 2.5} 0v16` }),
  ]);
}

export function swatch(width, height, children) {
  const drawing = svg('svg', {
    width,
    height,
    viewBox: `0 0 ${width} ${height}`,
    'aria-hidden': 'true',
    focusable: 'false',
  });
  drawing.append(...children);
  return html('span', { class: 'swatch' }, drawing);
}
