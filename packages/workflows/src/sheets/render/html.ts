import type { Printable, PrintList, PrintSection, PrintTable } from '../printable.ts';
import { escapeMarkup as e } from './escape.ts';
import { sheetCss } from './html-style.ts';

/** One file, no script, nothing fetched: it prints on A4, reads on a phone, and needs no colour. */

const box = '<span class="box" aria-hidden="true"></span>';

function tableHtml(table: PrintTable): string {
  const all = table.columns.reduce((sum, column) => sum + column.width, 0);
  const cols = table.columns
    .map((column) => `<col style="width:${((100 * column.width) / all).toFixed(2)}%">`)
    .join('');
  const heads = table.columns
    .map((column) => `<th scope="col" class="${column.role}">${e(column.title)}</th>`)
    .join('');
  const bodies = table.groups.map((group) => {
    const heading =
      group.heading === ''
        ? ''
        : `<tr class="group"><th scope="rowgroup" colspan="${table.columns.length}">${e(group.heading)}</th></tr>`;
    const rows = group.rows.map((row) => {
      const cells = table.columns.map((column, i) => {
        const text = e(row.cells[i] ?? '');
        const empty = text === '' ? ' empty' : '';
        if (column.role === 'what')
          return `<th scope="row" class="what">${table.tick ? box : ''}<span class="name">${text}</span></th>`;
        return `<td class="${column.role}${empty}" data-label="${e(column.title)}">${text}</td>`;
      });
      return `<tr class="${row.state}">${cells.join('')}</tr>`;
    });
    return `<tbody>${heading}${rows.join('\n')}</tbody>`;
  });
  return `<table class="${table.layout}"><colgroup>${cols}</colgroup><thead><tr>${heads}</tr></thead>\n${bodies.join('\n')}</table>`;
}

const listHtml = (list: PrintList): string =>
  `<ul class="columns${list.columns}${list.tick ? ' ticks' : ''}">${list.items
    .map((item) => `<li class="${item.state}">${list.tick ? box : ''}<span>${e(item.text)}</span></li>`)
    .join('\n')}</ul>`;

function sectionHtml(section: PrintSection): string {
  const level = section.opens ? 'h2' : 'h3';
  return [
    `<section class="${section.opens ? 'opens' : 'part'}">`,
    section.heading === '' ? '' : `<${level}>${e(section.heading)}</${level}>`,
    section.note === null ? '' : `<p class="note">${e(section.note)}</p>`,
    section.block === null
      ? ''
      : section.block.kind === 'table'
        ? tableHtml(section.block)
        : listHtml(section.block),
    '</section>',
  ]
    .filter((part) => part !== '')
    .join('\n');
}

export function renderHtml(sheet: Printable): string {
  return `<!doctype html>
<html lang="${e(sheet.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${e(`${sheet.title} · ${sheet.aside}`)}</title>
<style>${sheetCss(sheet.orientation)}</style>
</head>
<body>
<main>
<header><h1>${e(sheet.title)}</h1><p class="aside">${e(sheet.aside)}</p></header>
${sheet.intro.map((p) => `<p class="intro">${e(p)}</p>`).join('\n')}
${sheet.sections.map(sectionHtml).join('\n')}
<footer>${sheet.foot
    .filter((note) => note !== '')
    .map((note) => `<p>${e(note)}</p>`)
    .join('\n')}</footer>
</main>
</body>
</html>
`;
}
