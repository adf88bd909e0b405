import { describe, expect, it } from 'vitest';
import { countTests } from './count-tests.mjs';
import { firstStalePackage } from './ensure-installed.mjs';
import { blockNames, replaceBlock } from './marked-blocks.mjs';
import { nodeComplaint } from './node-version.mjs';
import { commandTable } from './readme-blocks.mjs';

describe('counting tests', () => {
  const good = { status: 'passed', assertionResults: [{ status: 'passed' }] };
  it('adds a file that broke before its first test to the failures', () => {
    const report = { numPassedTests: 3, numFailedTests: 1, success: false, testResults: [good] };
    expect(countTests(report)).toMatchObject({ passed: 3, failed: 1 });
    const broken = { status: 'failed', assertionResults: [] };
    expect(countTests({ ...report, testResults: [good, broken] })).toMatchObject({ failed: 2 });
  });
  it('fails a run in which nothing ran or which was cut off', () => {
    expect(countTests({ success: true, testResults: [] }).failed).toBe(1);
    expect(countTests({ numPassedTests: 2, success: false, testResults: [good] }).failed).toBe(1);
  });
});

describe('installed packages', () => {
  const locked = {
    '': { version: '1' },
    'node_modules/a': { version: '1.0.0', integrity: 'x' },
    'node_modules/b-for-another-machine': { version: '2.0.0', integrity: 'y', optional: true },
  };
  it('are current when versions agree, whatever is missing for other machines', () => {
    expect(firstStalePackage(locked, { 'node_modules/a': { version: '1.0.0', integrity: 'x' } })).toBeNull();
  });
  it('are stale when one is missing or another version', () => {
    expect(firstStalePackage(locked, {})).toBe('node_modules/a');
    expect(firstStalePackage(locked, { 'node_modules/a': { version: '1.0.1', integrity: 'z' } })).toBe(
      'node_modules/a',
    );
  });
});

describe('generated blocks', () => {
  const text = 'a\n<!-- generated:plan -->\nold\n<!-- /generated:plan -->\nb\n';
  it('are found and replaced, twice the same', () => {
    expect(blockNames(text)).toEqual(['plan']);
    const once = replaceBlock(text, 'plan', 'new\n');
    expect(once).toBe('a\n<!-- generated:plan -->\nnew\n<!-- /generated:plan -->\nb\n');
    expect(replaceBlock(once, 'plan', 'new')).toBe(once);
  });
  it('say which mark is missing', () => {
    expect(() => replaceBlock('<!-- generated:plan -->', 'plan', '')).toThrow('/generated:plan');
  });
});

describe('the table of commands', () => {
  it('joins what the help text wraps and leaves out help itself', () => {
    const help = `Usage: x\n\nCommands:\n  plan [options] <file>  says what to sow\n                         and when\n  help [command]         shows help\n`;
    expect(commandTable(help)).toContain(
      '| `twelvemonth plan [options] <file>` | says what to sow and when |',
    );
    expect(commandTable(help)).not.toContain('shows help');
  });
  it('refuses a help text without commands', () => {
    expect(() => commandTable('Usage: x')).toThrow('no commands');
  });
});

describe('the version of Node', () => {
  it('is good from 20.19 on', () => {
    expect(nodeComplaint('20.19.0')).toBeNull();
    expect(nodeComplaint('22.1.0')).toBeNull();
    expect(nodeComplaint('20.18.3')).toContain('20.18.3');
    expect(nodeComplaint('18.20.0')).toContain('needs Node 20.19');
  });
});
