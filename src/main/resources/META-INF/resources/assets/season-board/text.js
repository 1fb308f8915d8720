/** Breaking text to a width. `width` is any function text -> pixels, so that this file needs no page. */

/**
 * At most `maxLines` lines no wider than `room`; the last allowed line is no wider than `lastRoom` and ends in an
 * ellipsis when words are left over.
 */
export function wrap(text, room, maxLines, width, lastRoom = room) {
  const lines = [];
  let words = text.split(/\s+/).filter(Boolean);
  while (words.length > 0) {
    if (lines.length === maxLines - 1) {
      lines.push(clip(words.join(' '), lastRoom, width));
      break;
    }
    const [line, rest] = takeLine(words, room, width);
    lines.push(line);
    words = rest;
  }
  return lines;
}

/** Two lines, the lower one as long as it may be: what belongs together, a date, stays together. */
export function wrapFromEnd(text, room, width) {
  const words = text.split(/\s+/).filter(Boolean);
  let first = words.length - 1;
  while (first > 0 && width(words.slice(first - 1).join(' ')) <= room) first -= 1;
  const lines = [words.slice(0, first).join(' '), words.slice(Math.max(first, 0)).join(' ')];
  return lines.filter(Boolean).map((line) => clip(line, room, width));
}

/** The text, or its beginning with an ellipsis where it is wider than the room. */
export function clip(text, room, width) {
  if (width(text) <= room) return text;
  return `${text.slice(0, fitting(text, room, width, '…')).trimEnd()}…`;
}

function takeLine(words, room, width) {
  let count = 0;
  let line = '';
  while (count < words.length) {
    const longer = count === 0 ? words[0] : `${line} ${words[count]}`;
    if (width(longer) > room) break;
    line = longer;
    count += 1;
  }
  if (count > 0) return [line, words.slice(count)];
  const cut = Math.max(1, fitting(words[0], room, width, '-'));
  return [`${words[0].slice(0, cut)}-`, [words[0].slice(cut), ...words.slice(1)]];
}

function fitting(text, room, width, ending) {
  let low = 0;
  let high = text.length;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (width(text.slice(0, middle) + ending) <= room) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Measures with the page's own letters and remembers: (text, size in px, weight) -> px. */
export function measurer(fontFamily) {
  const context = document.createElement('canvas').getContext('2d');
  const known = new Map();
  let current = '';
  return (text, size, weight = 400) => {
    const font = `${weight} ${size}px ${fontFamily}`;
    if (!known.has(font)) known.set(font, new Map());
    const widths = known.get(font);
    let width = widths.get(text);
    if (width === undefined) {
      if (font !== current) context.font = current = font;
      width = context.measureText(text).width;
      widths.set(text, width);
    }
    return width;
  };
}
