import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { allKinds, modelPageOf, sourceById, tableRowsOf } from './catalogue.ts';

const page = (name: string): URL => new URL(`../../../../docs/models/${name}.md`, import.meta.url);

test('every number of every kind can be followed to its row, its source and its model page', () => {
  for (const kind of allKinds())
    for (const row of tableRowsOf(kind.id)) {
      const at = `${row.subject} ${row.parameter}`;
      if (row.source !== '') expect(sourceById(row.source)?.title, at).toBeTruthy();
      else expect(['judged', 'practice', 'memory'], at).toContain(row.basis);
      if (row.unit === 'text') continue;
      const model = modelPageOf(row.parameter);
      expect(model, at).not.toBeNull();
      expect(existsSync(page(model!)), `${at}: ${model}`).toBe(true);
    }
});

test('a model page says its equation or rule, its units and where it is weak', () => {
  const pages = new Set(
    allKinds().flatMap((kind) => tableRowsOf(kind.id).flatMap((row) => modelPageOf(row.parameter) ?? [])),
  );
  for (const name of pages) {
    const text = readFileSync(page(name), 'utf8');
    expect(text, name).toMatch(/\*\*Weak\.?\*\*|Weak|Known weakness/);
    expect(text.length, name).toBeGreaterThan(500);
  }
});
