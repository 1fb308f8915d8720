/**
 * How the board looks. Colours come from the page's --fs-* properties; what the page leaves out follows the page's
 * color-scheme, and with `color-scheme: light dark` the reader's own preference.
 */
const LOOK = `
:host {
  --_ink: var(--fs-ink, light-dark(#1d211e, #ecebe3));
  --_paper: var(--fs-paper, light-dark(#fdfcf8, #1b1e1c));
  --_muted: var(--fs-muted, light-dark(#565c56, #a9afa6));
  --_line: var(--fs-line, light-dark(#c4c4b8, #4b514b));
  --_accent: var(--fs-accent, light-dark(#0b5a6b, #79d0e2));
  --_focus: var(--fs-focus, light-dark(#1a4fc4, #9cc0ff));
  --_gap: color-mix(in srgb, var(--_line) 30%, var(--_paper));
  --_lane-1: var(--fs-lane-1, light-dark(#ecd5c4, #5b4435));
  --_lane-2: var(--fs-lane-2, light-dark(#d0dde4, #334a59));
  --_lane-3: var(--fs-lane-3, light-dark(#d9e2c6, #43512f));
  --_lane-4: var(--fs-lane-4, light-dark(#efe0ac, #5a4d20));
  --_lane-5: var(--fs-lane-5, light-dark(#e0d4e4, #51415a));
  --_lane-6: var(--fs-lane-6, light-dark(#dcd8cb, #4b4940));
  --_text: var(--fs-font, system-ui, "Helvetica Neue", "Liberation Sans", sans-serif);
  --_title: var(--fs-font-title, "Charter", "Iowan Old Style", Georgia, "Liberation Serif", serif);
  --_tint: var(--_paper);
  display: block;
  color: var(--_ink);
  background: var(--_paper);
  font: 12px/1.35 var(--_text);
  font-variant-numeric: tabular-nums;
}
:host([hidden]) { display: none; }
* { box-sizing: border-box; }
svg { display: block; }
.store { position: absolute; }
.hidden-text {
  position: absolute;
  width: 1px;
  height: 1px;
  overflow: hidden;
  clip-path: inset(50%);
  white-space: nowrap;
}
section { position: relative; }
.empty { margin: 0; padding: 24px 16px; font-size: 15px; }

.scroller {
  position: relative;
  overflow: auto;
  max-height: var(--fs-board-height, 88vh);
  border-block: 4px double var(--_ink);
}
.sheet { display: grid; grid-template-columns: 150px max-content; width: max-content; }
.corner, .top { position: sticky; top: 0; z-index: 2; background: var(--_paper); }
.strips, .bottom { position: sticky; bottom: 0; z-index: 2; background: var(--_paper); }
.corner, .side { position: sticky; left: 0; border-inline-end: 1.5px solid var(--_ink); background: var(--_paper); }
.corner { z-index: 3; border-block-end: 2px solid var(--_ink); }
.side { z-index: 1; }
.side.strips { z-index: 3; border-block: 2px solid var(--_ink); }
.side > div { position: absolute; inset-inline: 0; padding: 10px 10px 0 16px; overflow: hidden; }
.side > .lane + .lane { border-block-start: 1px solid var(--_muted); }
.side .lane::before {
  content: "";
  position: absolute;
  inset: 0 auto 0 0;
  width: 7px;
  background: var(--_tint);
  border-inline-end: 1px solid var(--_ink);
}
.lane-name { font: 600 17px/1.2 var(--_title); overflow-wrap: anywhere; }
.lane-finish { margin-top: 3px; color: var(--_muted); }
.side > .strip { padding-block: 3px 0; line-height: 1.2; }
.side > .strip + .strip { border-block-start: 1px solid var(--_line); }
.strip b { display: block; font-weight: 600; }
.strip span { color: var(--_muted); font-size: 11px; }
@media (max-height: 760px) { .bottom { position: static; } .side.strips { bottom: auto; } }
@media (max-height: 520px) { .top { position: static; } .corner { top: auto; } }

.lane-1 { --_tint: var(--_lane-1); } .lane-2 { --_tint: var(--_lane-2); } .lane-3 { --_tint: var(--_lane-3); }
.lane-4 { --_tint: var(--_lane-4); } .lane-5 { --_tint: var(--_lane-5); } .lane-6 { --_tint: var(--_lane-6); }

text { fill: var(--_ink); font: 12px var(--_text); }
.trip-title { font: 600 16px var(--_title); }
.trip-dates, .day-label { font: 12px var(--_text); }
.day-label, .open-dates { fill: var(--_muted); }
.gap-days, .open-word, .open-dates, .ribbon-label, .tag, .today-text { font-size: 11px; }
.gap-days { font-weight: 600; }
.open-word { font-style: italic; }
.gap { fill: var(--_gap); }
.trip-ground { fill: var(--_paper); }
.open { fill: var(--_gap); stroke: var(--_muted); stroke-dasharray: 1 4; }
.edge { stroke: var(--_ink); stroke-width: 1; }
.day-edge { stroke: var(--_muted); stroke-dasharray: 1 3; }
.day-stroke { stroke: var(--_ink); stroke-width: 1; }
.thick { stroke: var(--_ink); stroke-width: 2; }
.row-rule { stroke: var(--_line); stroke-width: 1; }
.lane-rule { stroke: var(--_muted); stroke-width: 1; }
.trip { cursor: pointer; }
.hit { fill: transparent; }
.head text:not(.today-text) { paint-order: stroke; stroke: var(--_paper); stroke-width: 3px; stroke-linejoin: round; }
.head text.gap-days { stroke-width: 6px; }
.head text.gap-days, .head text.open-word, .head text.open-dates { stroke: var(--_gap); }
.trip:hover .trip-title, .trip:hover .open-word { text-decoration: underline; }

.band-ground { fill: var(--_tint, var(--_paper)); }
.band { stroke: var(--_ink); stroke-width: 1; }
.texture, .hatching { fill: none; stroke: var(--_ink); stroke-width: 1; }
.hatching { stroke-opacity: 0.32; }
.grain { fill: var(--_ink); }
.tick { stroke: var(--_ink); stroke-width: 3; }
.ribbon-label { paint-order: stroke; stroke: var(--_paper); stroke-width: 3px; stroke-linejoin: round; }
.joint { stroke: var(--_ink); stroke-width: 2; stroke-dasharray: 2 3; }
.keyline { fill: none; stroke: var(--_ink); stroke-width: 4; stroke-linejoin: round; }
.keyline-margin { fill: none; stroke: var(--_paper); stroke-width: 9; }
.today-line { stroke: var(--_accent); stroke-width: 2; stroke-dasharray: 8 3 2 3; }
.today-flag { fill: var(--_accent); }
.today-text { fill: var(--_paper); font-weight: 600; white-space: pre; }

.block { cursor: pointer; outline: none; }
.frame { fill: var(--_tint); stroke: var(--_ink); stroke-width: 1; }
.block.critical .frame { stroke-width: 4; }
.block:hover .block-name { text-decoration: underline; }
.block-name { font-weight: 600; }
.block-hours { font-size: 11px; font-weight: 600; }
.settled .frame { fill: color-mix(in srgb, var(--_tint) 45%, var(--_paper)); }
.settled .block-name, .settled .block-hours {
  paint-order: stroke;
  stroke: color-mix(in srgb, var(--_tint) 45%, var(--_paper));
  stroke-width: 4px;
  stroke-linejoin: round;
}
.check { fill: none; stroke: var(--_ink); stroke-width: 2.5; }
.pin path { stroke: var(--_ink); stroke-width: 2; }
.pin circle { fill: var(--_paper); stroke: var(--_ink); stroke-width: 2; }
.trip, .today { outline: none; }

.bar-bar { fill: var(--_muted); }
.bar-track { stroke: var(--_muted); stroke-width: 1; }
.bar-over { fill: url(#hatch); stroke: var(--_ink); stroke-width: 1.5; }
.bar-limit { stroke: var(--_ink); stroke-width: 2; }
.over { font-weight: 700; }

.choice, .ring { pointer-events: none; }
.chosen-frame { fill: none; stroke: var(--_accent); stroke-width: 4; }
.near-frame { fill: none; stroke: var(--_accent); stroke-width: 2; stroke-dasharray: 5 3; }
.tag { fill: var(--_accent); font-weight: 700; paint-order: stroke; stroke: var(--_paper); stroke-width: 3px; }
.ring { fill: none; stroke: var(--_focus); stroke-width: 3; }

.key {
  display: flex;
  flex-wrap: wrap;
  gap: 4px 18px;
  margin: 0;
  padding: 10px 12px;
  list-style: none;
  color: var(--_ink);
}
.key li { display: flex; align-items: center; gap: 7px; }
.swatch { flex: none; display: inline-block; }

.stack { padding: 0 2px; border-block: 4px double var(--_ink); }
.stack h3, .stack h4, .stack p, .stack ul { margin: 0; padding: 0; }
.stack ul { list-style: none; }
.stack .trip-part {
  padding: 12px 10px;
  border-block: 1.5px solid var(--_ink);
  margin-block: -1.5px;
  background: var(--_paper);
}
.stack .trip-part, .stack .between { content-visibility: auto; contain-intrinsic-size: auto 380px; }
.stack .between { contain-intrinsic-size: auto 90px; }
.stack h3 { display: flex; }
.stack .trip-head {
  display: flex;
  flex-wrap: wrap;
  align-items: baseline;
  gap: 0 10px;
  width: 100%;
  min-height: 32px;
  padding: 0;
  border: 0;
  background: none;
  color: inherit;
  font: 14px var(--_text);
  text-align: start;
  cursor: pointer;
}
.stack .trip-head b { font: 600 19px/1.3 var(--_title); }
.stack h4 { margin-top: 10px; font: 600 14px/1.3 var(--_title); }
.stack h4 small { margin-inline-start: 6px; font: 12px var(--_text); color: var(--_muted); }
.stack .work {
  display: flex;
  align-items: center;
  gap: 8px;
  width: 100%;
  min-height: 44px;
  margin-top: 6px;
  padding: 6px 10px;
  border: 1px solid var(--_ink);
  border-radius: 0;
  background: var(--_tint);
  color: inherit;
  font: 14px/1.3 var(--_text);
  text-align: start;
  cursor: pointer;
}
.stack .work b { flex: 1; overflow-wrap: anywhere; }
.stack .work span { flex: none; }
.stack .work.critical { border-width: 4px; padding: 3px 7px; }
.stack .work.settled {
  background: color-mix(in srgb, var(--_tint) 45%, var(--_paper));
  border-style: double;
  border-width: 4px;
  padding: 3px 7px;
}
.stack .work.critical.settled { border-style: solid; }
.stack .work[aria-pressed="true"] { outline: 4px solid var(--_accent); outline-offset: 1px; }
.stack .work.near { outline: 2px dashed var(--_accent); outline-offset: 1px; }
.stack .near-word {
  color: var(--_accent);
  background: var(--_paper);
  padding: 0 4px;
  font-weight: 700;
  font-size: 12px;
}
.stack button:focus-visible { outline: 3px solid var(--_focus); outline-offset: 3px; }
.stack .between {
  display: grid;
  grid-template-columns: 26px 1fr;
  padding: 8px 10px;
  gap: 10px;
  background: var(--_gap);
}
.stack .between p { font-weight: 600; }
.stack .between li, .stack .short-wait {
  display: flex;
  align-items: center;
  gap: 8px;
  margin-top: 4px;
  font-size: 13px;
}
.stack .between li.near { outline: 2px dashed var(--_accent); outline-offset: 2px; }
.stack .strokes {
  height: 100%;
  min-height: 22px;
  border-inline-start: 1.5px solid var(--_ink);
  background: repeating-linear-gradient(var(--_ink) 0 1px, transparent 1px 5px) 0 2px / 9px 100% no-repeat;
}
.stack .open-part {
  display: flex;
  gap: 10px;
  align-items: baseline;
  width: 100%;
  min-height: 32px;
  padding: 6px 10px;
  border: 1px dotted var(--_muted);
  background: var(--_gap);
  color: var(--_muted);
  font: 13px var(--_text);
  text-align: start;
  cursor: pointer;
}
.stack .open-part i { color: var(--_ink); }
.stack .today-part { padding: 4px 10px; background: var(--_accent); color: var(--_paper); font-weight: 600; }
.stack dl { display: grid; grid-template-columns: 1fr 1fr; gap: 8px 16px; margin: 12px 0 0; }
.stack dt { color: var(--_muted); }
.stack dd { margin: 0; }
.stack dd .swatch { display: block; margin-top: 5px; }
.stack .tail { font-size: 13px; }

.pages { display: none; }
@media print {
  :host { --_ink: #000; --_paper: #fff; --_muted: #333; --_line: #999; --_accent: #000; --_focus: #000;
    --_lane-1: #fff; --_lane-2: #fff; --_lane-3: #fff;
    --_lane-4: #fff; --_lane-5: #fff; --_lane-6: #fff; --_gap: #eee; }
  .scroller { max-height: none; overflow: visible; }
  .corner, .top, .bottom { position: static; }
  .side { position: relative; }
  .has-pages .scroller { position: absolute; width: 0; height: 0; overflow: hidden; border: 0; }
  .has-pages .pages { display: block; }
  .page { max-width: 100%; margin: 0 0 14px; break-inside: avoid; }
  .page.one-sheet { max-height: 94vh; }
  .page-name { font-weight: 700; font-size: 13px; }
  .choice { display: none; }
  .stack .trip-part { break-inside: avoid; }
}
@media (forced-colors: active) {
  :host { --_ink: CanvasText; --_paper: Canvas; --_muted: CanvasText; --_line: GrayText;
    --_accent: Highlight; --_focus: Highlight;
    --_lane-1: Canvas; --_lane-2: Canvas; --_lane-3: Canvas; --_lane-4: Canvas; --_lane-5: Canvas; --_lane-6: Canvas; }
}
`;

export function look() {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(LOOK);
  return sheet;
}
