import { readFileSync } from 'node:fs';
import { dayFromIso } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { issuesOfGarden } from '@twelvemonth/workflows';
import { expect, it } from 'vitest';

const today = dayFromIso('2026-03-01')!;

function exampleOf(page: string): string {
  const text = readFileSync(new URL(`../docs/user/${page}.md`, import.meta.url), 'utf8');
  const example = new RegExp(`<!-- example:${page} -->\\n\`\`\`jsonc\\n([\\s\\S]*?)\`\`\``).exec(text)?.[1];
  expect(example).toBeDefined();
  return example!;
}

it('the garden file on the first evening page reads without a single issue', () => {
  const { garden, issues } = parseGarden(exampleOf('first-evening'), { today });
  expect(issues).toEqual([]);
  expect(garden?.standing).toHaveLength(1);
});

it('the own kind on its page, put into that file, is understood', () => {
  const text = exampleOf('first-evening').replace(
    '"places": [',
    `${exampleOf('own-kind').trim()},\n"places": [`,
  );
  const { garden, issues } = parseGarden(text, { today });
  expect(issues).toEqual([]);
  expect(garden?.ownKinds[0]?.packetDays).toBe(63);
  expect(issuesOfGarden(garden!, today)).toEqual([]);
});
