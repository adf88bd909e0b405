import type { FridgePage } from './fridge-page.ts';
import type { Printable, PrintSection } from './printable.ts';
import type { SheetWords } from './words.ts';

const list = (heading: string, items: readonly string[], nothing: string, opens = false): PrintSection => ({
  heading,
  note: items.length === 0 ? nothing : null,
  opens,
  block:
    items.length === 0
      ? null
      : { kind: 'list', tick: true, columns: 1, items: items.map((text) => ({ text, state: 'plain' })) },
});

export function printFridge(page: FridgePage, words: SheetWords): Printable {
  const w = words.fridge;
  const left = page.left.map((lot) => ({
    state: 'plain' as const,
    cells: [
      lot.what,
      w.leftWhere(lot.where),
      w.leftAmount(lot.servings, lot.kg),
      w.leftUntil(lot.untilFrom, lot.untilTo),
    ],
  }));
  const sections: PrintSection[] = [
    list(
      w.eatFirstHeading,
      page.eatFirst.map((i) => w.eatFirst(i)),
      w.nothing,
    ),
    list(
      w.readyHeading,
      page.ready.map((i) => w.ready(i)),
      w.nothing,
    ),
    ...(page.putBy.length === 0
      ? []
      : [
          list(
            w.putByHeading,
            page.putBy.map((p) => w.putBy(p)),
            w.nothing,
          ),
        ]),
    {
      heading: w.leftHeading,
      note: left.length === 0 ? w.nothing : null,
      opens: false,
      block:
        left.length === 0
          ? null
          : {
              kind: 'table',
              layout: 'grid',
              tick: false,
              columns: [
                { title: w.leftColumns.what, role: 'what', width: 32, label: '' },
                { title: w.leftColumns.where, role: 'detail', width: 22, label: '' },
                { title: w.leftColumns.amount, role: 'figure', width: 22, label: '' },
                { title: w.leftColumns.until, role: 'detail', width: 24, label: '' },
              ],
              groups: [{ heading: '', rows: left }],
            },
    },
  ];
  return {
    language: words.language,
    orientation: 'portrait',
    title: w.title(page),
    aside: words.aside(page.head),
    intro: w.intro(page),
    sections,
    foot: [words.foot(page.head)],
  };
}

/** For whoever waters while the household is away: no numbers of the plan, only what to do. */
export function printNeighbour(page: FridgePage, words: SheetWords): Printable {
  const w = words.fridge;
  const pickable = [...page.eatFirst, ...page.ready].filter((item) => item.habit !== 'stands');
  return {
    language: words.language,
    orientation: 'portrait',
    title: w.neighbourTitle(page),
    aside: words.aside(page.head),
    intro: w.neighbourIntro(page),
    sections: [
      list(
        w.waterHeading,
        page.water.map((line) => w.water(line)),
        w.nothing,
      ),
      list(
        w.helpYourselfHeading,
        pickable.map((item) => w.helpYourself(item)),
        w.nothing,
      ),
      ...(page.nights.length === 0
        ? []
        : [
            list(
              w.nightsHeading,
              page.nights.map((n) => w.night(n)),
              w.nothing,
            ),
          ]),
    ],
    foot: [],
  };
}
