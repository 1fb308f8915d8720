/**
 * Moving among blocks and trips with the keyboard. One of each is in the tab order at a time; arrow keys move on.
 * Left and right stay in the lane, up and down go to the nearest block of the next lane.
 */

export class Rover {
  #items;
  #current = null;

  /** @param items [{element, group, x, y}] in reading order; `group` is a lane's index */
  constructor(items) {
    this.#items = items;
    this.#makeCurrent(items[0]);
  }

  holds(element) {
    return this.#items.some((item) => item.element === element);
  }

  /** Takes an element into the tab order, for instance because it was clicked. */
  enter(element) {
    this.#makeCurrent(this.#items.find((item) => item.element === element));
  }

  /** Focuses the element that the key leads to; false when the key means nothing here. */
  press(event) {
    const target = this.#target(event);
    if (!target) return false;
    this.#makeCurrent(target);
    target.element.focus({ preventScroll: true });
    return true;
  }

  #makeCurrent(item) {
    if (!item) return;
    this.#current?.element.setAttribute('tabindex', -1);
    item.element.setAttribute('tabindex', 0);
    this.#current = item;
  }

  #target({ key, ctrlKey }) {
    const lane = ctrlKey ? this.#items : this.#items.filter((item) => item.group === this.#current.group);
    const index = lane.indexOf(this.#current);
    switch (key) {
      case 'ArrowRight':
        return lane[index + 1];
      case 'ArrowLeft':
        return lane[index - 1];
      case 'ArrowDown':
        return this.#inLane(1) ?? (this.#isList() ? lane[index + 1] : undefined);
      case 'ArrowUp':
        return this.#inLane(-1) ?? (this.#isList() ? lane[index - 1] : undefined);
      case 'Home':
        return lane[0];
      case 'End':
        return lane.at(-1);
      default:
        return undefined;
    }
  }

  #isList() {
    return this.#items.every((item) => item.group === this.#items[0].group);
  }

  #inLane(step) {
    const groups = [...new Set(this.#items.map((item) => item.group))].sort((a, b) => a - b);
    const next = groups[groups.indexOf(this.#current.group) + step];
    const candidates = this.#items.filter((item) => item.group === next);
    const far = (item) => Math.abs(item.x - this.#current.x);
    return candidates.sort((a, b) => far(a) - far(b))[0];
  }
}
