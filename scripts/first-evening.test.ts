import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { expect, it } from 'vitest';

it('the garden file on the first evening page reads without a single issue', () => {
  const page = readFileSync(new URL('../docs/user/first-evening.md', import.meta.url), 'utf8');
  const example = page.match(/<!-- example:first-evening -->\n```jsonc\n([\s\S]*?)```/)?.[1];
  expect(example).toBeDefined();
  const { garden, issues } = parseGarden(example ?? '', { today: dayFromIso('2026-03-01') ?? 0 });
  expect(issues).toEqual([]);
  expect(garden?.standing).toHaveLength(1);
});
