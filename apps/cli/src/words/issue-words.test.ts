import * as garden from '@twelvemonth/garden';
import * as growing from '@twelvemonth/growing';
import * as workflows from '@twelvemonth/workflows';
import { expect, test } from 'vitest';
import { hasSentence, issueText } from './issue-words.ts';

/** Every list of codes that a package exports: by name, so that a new list is found by itself. */
function exportedCodes(): string[] {
  return [garden, growing, workflows].flatMap((all: object) =>
    Object.entries(all)
      .filter(([name]) => /IssueCodes$/.test(name))
      .flatMap(([, codes]: [string, unknown]) =>
        Array.isArray(codes) ? (codes as string[]) : Object.keys(codes as object),
      ),
  );
}

test('every code that a package exports has its sentence', () => {
  const codes = exportedCodes();
  expect(codes.length).toBeGreaterThan(60);
  expect(codes.filter((code) => !hasSentence(code))).toEqual([]);
});

test('a sentence never shows a hole where a value should be', () => {
  const codes = { ...workflows.workflowIssueCodes, ...garden.gardenIssueCodes };
  for (const [code, { severity, detail }] of Object.entries(codes)) {
    const values = Object.fromEntries(detail.map((name) => [name, `<${name}>`]));
    const text = issueText({ code, severity, where: 'line 3: places[0]', detail: values }, 'g.jsonc');
    expect(text).not.toMatch(/undefined|null|NaN|\[object/);
    expect(text).toMatch(new RegExp(`^${severity}: g.jsonc, line 3: places\\[0\\]: .+\\. .+[.?]$`));
  }
});

test('a code without a sentence still says where and what it knows', () => {
  const issue = { code: 'moon-wrong', severity: 'warning' as const, where: 'line 4', detail: { phase: 3 } };
  expect(issueText(issue, 'g.jsonc')).toBe(
    'warning: g.jsonc, line 4: Something is not right here: moon wrong (phase 3). Look at this line again.',
  );
});
