// Makes a small plan's pages and opens them in a real browser: they must be self-contained, print on A4, and read on a
// phone without sideways scrolling.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const root = join(import.meta.dirname, '..');
const mostPages = { month: 2, dark: 3, fridge: 2, neighbour: 2 };
const phone = { width: 390, height: 844 };
const executablePath = process.env.TWELVEMONTH_CHROMIUM ?? '/usr/bin/chromium';

const out = mkdtempSync(join(tmpdir(), 'twelvemonth-'));
const planned = spawnSync(
  process.execPath,
  ['apps/cli/bin/twelvemonth.mjs', 'plan', 'examples/sill-and-balcony.jsonc', '--effort', '1', '--out', out],
  { cwd: root, encoding: 'utf8' },
);
if (planned.status !== 0) {
  console.error(`browser smoke: the plan ended with ${planned.status}\n${planned.stderr}`);
  process.exit(1);
}

const faults = [];
const browser = await chromium.launch({
  executablePath,
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
});
const pages = readdirSync(out).filter((name) => name.endsWith('.html'));
for (const name of pages) {
  const context = await browser.newContext({ viewport: phone, offline: true });
  const page = await context.newPage();
  page.on('console', (message) => message.type() === 'error' && faults.push(`${name}: ${message.text()}`));
  page.on(
    'request',
    (request) => request.url().startsWith('http') && faults.push(`${name}: asks for ${request.url()}`),
  );
  await page.goto(pathToFileURL(join(out, name)).href);
  const sideways = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  if (sideways > 1) faults.push(`${name}: ${sideways} px wider than a phone`);
  const title = await page.title();
  const headings = await page.locator('h1').count();
  if (title === '' || headings !== 1) faults.push(`${name}: title "${title}", ${headings} main headings`);
  const pdf = (await page.pdf({ format: 'A4', printBackground: false })).toString('latin1');
  const sheets = (pdf.match(/\/Type\s*\/Page[^s]/g) ?? []).length;
  const most = mostPages[Object.keys(mostPages).find((start) => name.startsWith(start)) ?? 'month'];
  if (sheets === 0 || sheets > most) faults.push(`${name}: ${sheets} sheets of A4, at most ${most} expected`);
  await context.close();
}
await browser.close();
rmSync(out, { recursive: true });
for (const fault of faults) console.error(`browser smoke: ${fault}`);
console.log(
  `browser smoke: ${pages.length} pages opened offline on a phone's width and printed, ${faults.length} faults`,
);
process.exit(faults.length === 0 && pages.length > 0 ? 0 : 1);
