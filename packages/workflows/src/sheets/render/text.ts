import type { Printable, PrintGroup, PrintList, PrintRow, PrintTable } from '../printable.ts';

/** Plain text in at most `width` columns. State is carried by signs, never by colour. */

const lengthOf = (text: string): number => [...text].length;
const padEnd = (text: string, width: number): string =>
  text + ' '.repeat(Math.max(0, width - lengthOf(text)));
const padStart = (text: string, width: number): string =>
  ' '.repeat(Math.max(0, width - lengthOf(text))) + text;

/** Words that are longer than the line are cut into pieces. */
export function wrapText(text: string, width: number, hang = 0): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/ +/).filter((w) => w !== '')) {
    let rest = word;
    const room = (): number => width - (lines.length === 0 ? 0 : hang);
    if (line !== '' && lengthOf(line) + 1 + lengthOf(rest) > room()) {
      lines.push(line);
      line = '';
    }
    while (line === '' && lengthOf(rest) > room()) {
      const cut = room();
      lines.push([...rest].slice(0, cut).join(''));
      rest = [...rest].slice(cut).join('');
    }
    line = line === '' ? rest : `${line} ${rest}`;
  }
  if (line !== '') lines.push(line);
  return lines.map((l, i) => (i === 0 ? l : ' '.repeat(hang) + l));
}

const stateSign: Record<PrintRow['state'], string> = {
  done: '[x]',
  firm: '[ ]',
  draft: '[·]',
  late: '[!]',
  plain: '[ ]',
};

function textOfLine(row: PrintRow, table: PrintTable, width: number): string[] {
  const cell = (role: string): string =>
    row.cells[table.columns.findIndex((column) => column.role === role)] ?? '';
  const head = `${padStart(cell('number'), 3)} ${table.tick ? `${stateSign[row.state]} ` : ''}${cell('what')}`;
  const amount = cell('amount');
  const indent = ' '.repeat(8);
  const first =
    lengthOf(head) + 2 + lengthOf(amount) <= width
      ? [head + padStart(amount, width - lengthOf(head))]
      : [
          ...wrapText(
            `${' '.repeat(3 - Math.min(3, lengthOf(cell('number'))))}${head.trimStart()}`,
            width,
            8,
          ),
          ...wrapText(amount, width).map((l) => padStart(l, width)),
        ];
  const details = table.columns.flatMap((column, i) => {
    const text = row.cells[i] ?? '';
    if (column.role !== 'detail' || text === '') return [];
    return [column.label === '' ? text : `${column.label} ${text}`];
  });
  const body = details.flatMap((text) => wrapText(text, width - 8, 2).map((l) => indent + l));
  return [...first, ...body];
}

function textOfGrid(table: PrintTable, width: number): string[] {
  const rows = table.groups.flatMap((group) => group.rows);
  const titles = table.columns.map((column) => column.title);
  const natural = titles.map((title, i) =>
    Math.max(lengthOf(title), ...rows.map((row) => lengthOf(row.cells[i] ?? ''))),
  );
  const gaps = 2 * (titles.length - 1) + (table.tick ? 4 : 0);
  const over = natural.reduce((sum, n) => sum + n, 0) + gaps - width;
  const widest = natural.indexOf(Math.max(...natural));
  const widths = natural.map((n, i) => (i === widest && over > 0 ? Math.max(8, n - over) : n));
  const lineOf = (cells: readonly string[], sign: string): string[] => {
    const wrapped = cells.map((cell, i) => wrapText(cell, widths[i]!));
    const height = Math.max(1, ...wrapped.map((w) => w.length));
    return Array.from({ length: height }, (_, k) =>
      (
        (table.tick ? (k === 0 ? padEnd(sign, 4) : '    ') : '') +
        cells
          .map((_cell, i) => {
            const text = wrapped[i]![k] ?? '';
            return table.columns[i]!.role === 'figure'
              ? padStart(text, widths[i]!)
              : padEnd(text, widths[i]!);
          })
          .join('  ')
      ).trimEnd(),
    );
  };
  const rule = '-'.repeat(Math.min(width, widths.reduce((sum, n) => sum + n, 0) + gaps));
  return [
    ...lineOf(titles, ''),
    rule,
    ...rows.flatMap((row) => lineOf(row.cells, row.state === 'plain' ? '' : stateSign[row.state])),
  ];
}

function textOfGroup(group: PrintGroup, table: PrintTable, width: number): string[] {
  const lines = group.rows.flatMap((row) => textOfLine(row, table, width));
  return group.heading === '' ? lines : ['', group.heading, '-'.repeat(width), ...lines];
}

function textOfList(list: PrintList, width: number): string[] {
  return list.items.flatMap((item) => {
    const sign = list.tick ? `${stateSign[item.state]} ` : '- ';
    return wrapText(item.text, width - sign.length).map(
      (l, i) => (i === 0 ? sign : ' '.repeat(sign.length)) + l,
    );
  });
}

/** Words that must not be parted carry a no-break space until the lines are broken. */
export const plainSpaces = (text: string): string => text.replaceAll('\u00a0', ' ');

export function renderText(sheet: Printable, width = 80): string {
  const lines = [...wrapText(sheet.title, width), ...wrapText(sheet.aside, width), '='.repeat(width)];
  for (const paragraph of sheet.intro) lines.push(...wrapText(paragraph, width));
  for (const section of sheet.sections) {
    if (section.heading !== '') {
      lines.push('', section.opens ? section.heading.toUpperCase() : section.heading);
      lines.push((section.opens ? '=' : '-').repeat(width));
    }
    if (section.note !== null) lines.push(...wrapText(section.note, width));
    if (section.block?.kind === 'list') lines.push(...textOfList(section.block, width));
    if (section.block?.kind === 'table') {
      const table = section.block;
      if (table.layout === 'grid') lines.push(...textOfGrid(table, width));
      else for (const group of table.groups) lines.push(...textOfGroup(group, table, width));
    }
  }
  if (sheet.foot.length > 0) lines.push('');
  for (const note of sheet.foot) lines.push(...wrapText(note, width));
  return plainSpaces(`${lines.map((l) => l.trimEnd()).join('\n')}\n`);
}
