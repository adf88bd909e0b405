/** Paper and ink; state by weight, line and pattern, so that a black-and-white printer loses nothing. */
export const sheetCss = (orientation: 'landscape' | 'portrait'): string => `
@page { size: A4 ${orientation}; margin: 9mm 10mm 10mm; }
:root { --ink: #22303c; --second: #5c6670; --rule: #d8cdb6; --paper: #faf6ec; --sheet: #fffdf7; --alert: #b3412b; }
* { box-sizing: border-box; }
html { background: var(--paper); color: var(--ink); -webkit-text-size-adjust: 100%; }
body { margin: 0; font: 15px/1.45 "Source Sans 3", "Source Sans Pro", "Segoe UI", "DejaVu Sans", system-ui, sans-serif;
  font-variant-numeric: tabular-nums lining-nums; }
main { max-width: ${orientation === 'landscape' ? '1180px' : '820px'}; margin: 0 auto; padding: 24px; background: var(--sheet); }
h1, h2, h3, tr.group th { font-family: Literata, "Iowan Old Style", Georgia, "DejaVu Serif", serif; font-weight: 600; line-height: 1.2; }
header { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: baseline; gap: 0 24px; }
h1 { font-size: 26px; margin: 0 0 4px; }
h2 { font-size: 20px; margin: 22px 0 4px; }
h3 { font-size: 16px; margin: 18px 0 6px; border-bottom: 1.5px solid var(--ink); padding-bottom: 2px; }
.aside, .intro, .note, footer { color: var(--second); }
.aside { margin: 0; }
.intro, .note { margin: 0 0 4px; max-width: 90ch; }
table { width: 100%; border-collapse: collapse; table-layout: fixed; }
table.grid { table-layout: auto; }
thead th { text-align: left; font-size: 12.5px; font-weight: 600; padding: 2px 8px 3px 0; border-bottom: 1.5px solid var(--ink); vertical-align: bottom; }
thead { display: table-header-group; }
tr.group th { text-align: left; font-size: 15.5px; padding: 12px 0 3px; border-bottom: 1px solid var(--ink); }
tbody tr { break-inside: avoid; }
tr.group { break-after: avoid; }
td, tbody th[scope=row] { padding: 5px 8px 6px 0; vertical-align: top; text-align: left; font-weight: 400; border-bottom: 1px solid var(--rule);
  overflow-wrap: break-word; hyphens: auto; }
td.number { font-family: Literata, Georgia, "DejaVu Serif", serif; font-weight: 600; text-align: right; padding-right: 10px; white-space: nowrap; }
th.number, th.amount, td.amount, th.figure, td.figure { text-align: right !important; }
td.amount, th.amount { padding-right: 14px; white-space: nowrap; }
th.amount { white-space: normal; }
td.figure, th.figure { padding-right: 18px; }
th.blank, td.blank { border-left: 1px solid var(--ink); padding-left: 8px; }
tr.firm .name, tr.late .name { font-weight: 700; }
tr.draft .name { text-decoration: underline dotted 1.5px; text-underline-offset: 3px; }
tr.done .box, li.done .box { background: var(--ink); }
tr.late .box { border-width: 3px; }
.box { display: inline-block; width: 14px; height: 14px; border: 1.5px solid currentColor; margin-right: 7px; vertical-align: -2px; flex: none;
  print-color-adjust: exact; -webkit-print-color-adjust: exact; }
ul { list-style: none; margin: 4px 0 0; padding: 0; column-gap: 28px; }
ul.columns2 { columns: 2 300px; }
ul.columns3 { columns: 3 260px; }
li { padding: 2px 0 3px; break-inside: avoid; }
ul.ticks li { display: flex; align-items: baseline; }
footer { margin-top: 18px; border-top: 1px solid var(--rule); padding-top: 6px; font-size: 12.5px; display: flex; flex-wrap: wrap;
  justify-content: space-between; gap: 2px 28px; }
footer p { margin: 0; }
@media screen and (max-width: 700px) {
  main { padding: 14px; }
  table.lines, table.lines tbody { display: block; }
  table.lines colgroup, table.lines thead { display: none; }
  table.lines tr { display: grid; grid-template-columns: 2.4em 1fr auto; column-gap: 8px; border-bottom: 1px solid var(--rule); padding: 8px 0; }
  table.lines tr.group { display: block; padding: 14px 0 2px; border-bottom: 1px solid var(--ink); }
  table.lines td, table.lines tbody th { border: 0; padding: 0; }
  table.lines tr.group th { display: block; padding: 0; }
  table.lines td.detail { grid-column: 2 / 4; }
  table.lines td.detail::before { content: attr(data-label) ": "; color: var(--second); font-size: 13px; }
  table.lines td.empty, table.lines td.blank { display: none; }
  table.grid { font-size: 13.5px; }
}
@media print {
  html, main { background: none; }
  :root { --second: #333; --rule: #999; --ink: #000; }
  body { font-size: 10.5px; line-height: 1.32; }
  main { max-width: none; padding: 0; }
  h1 { font-size: 19px; } h2 { font-size: 15px; margin-top: 12px; } h3 { font-size: 12.5px; margin: 10px 0 3px; }
  h2, h3 { break-after: avoid; }
  thead th, footer { font-size: 9px; }
  tr.group th { font-size: 12px; padding-top: 7px; }
  td, tbody th[scope=row] { padding: 3px 6px 3px 0; }
  .box { width: 10px; height: 10px; margin-right: 5px; vertical-align: -1px; }
  footer { margin-top: 8px; }
  .intro { max-width: none; }
}
`;
