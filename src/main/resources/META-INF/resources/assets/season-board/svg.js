/** Making SVG and HTML elements. Text always goes in as text, never as markup. */

const SVG = 'http://www.w3.org/2000/svg';

/** svg('rect', {x: 1}, child, 'text') */
export function svg(name, attributes = {}, ...children) {
  return dress(document.createElementNS(SVG, name), attributes, children);
}

/** html('div', {class: 'a'}, child, 'text') */
export function html(name, attributes = {}, ...children) {
  return dress(document.createElement(name), attributes, children);
}

function dress(element, attributes, children) {
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== null && value !== false) element.setAttribute(key, value);
  }
  element.append(...children.filter((child) => child !== null && child !== undefined && child !== false));
  return element;
}
