/** Measures a drawn board: texts that overlap, texts wider than their block, small letters, small targets. */

const LEAST_TEXT = 11;
const LEAST_TARGET = 24;

export function findings(board) {
  const root = board.shadowRoot;
  const texts = [...root.querySelectorAll('.sheet svg text')].map((element) => ({
    element,
    box: element.getBoundingClientRect(),
  }));
  return [
    ...overlaps(texts.filter(({ box }) => box.width > 0)),
    ...texts
      .filter(({ element }) => parseFloat(getComputedStyle(element).fontSize) < LEAST_TEXT)
      .map(({ element }) => `small letters: ${element.textContent}`),
    ...[...root.querySelectorAll('svg.main .block')].flatMap(outside),
    ...[...root.querySelectorAll('svg.main .frame, button')]
      .filter(isSmall)
      .map((element) => `small target: ${element.parentNode.textContent}`),
    `${texts.length} texts, ${root.querySelectorAll('*').length} elements`,
  ];
}

function overlaps(texts) {
  const found = [];
  texts.sort((a, b) => a.box.left - b.box.left);
  texts.forEach((one, index) => {
    for (let next = index + 1; next < texts.length && texts[next].box.left < one.box.right - 1; next += 1) {
      const other = texts[next];
      if (one.element.ownerSVGElement !== other.element.ownerSVGElement) continue;
      if (other.box.top < one.box.bottom - 3 && one.box.top < other.box.bottom - 3) {
        found.push(`overlap: "${one.element.textContent}" and "${other.element.textContent}"`);
      }
    }
  });
  return found;
}

function outside(block) {
  const frame = block.querySelector('.frame').getBoundingClientRect();
  return [...block.querySelectorAll('text')]
    .filter(
      (text) =>
        text.getBoundingClientRect().right > frame.right || text.getBoundingClientRect().bottom > frame.bottom + 2,
    )
    .map((text) => `outside its block: ${text.textContent}`);
}

function isSmall(element) {
  const { width, height } = element.getBoundingClientRect();
  return width < LEAST_TARGET || height < LEAST_TARGET;
}
