import { createScanner, findNodeAtLocation, type JSONPath, parseTree } from 'jsonc-parser';
import { token as kinds } from './jsonc-tokens.ts';

/**
 * Adding to and taking from a list in the text itself. jsonc-parser's own list edits carry comments along or swallow
 * them; here every comment stays where it is.
 */
interface Span {
  readonly from: number;
  readonly to: number;
}

/** The comma that follows an element, before the next element or the closing bracket. */
function commaAfter(text: string, offset: number, end: number): Span | null {
  const scanner = createScanner(text, true);
  scanner.setPosition(offset);
  const kind: number = scanner.scan();
  const from = scanner.getTokenOffset();
  return kind === kinds.comma && from < end ? { from, to: from + 1 } : null;
}

const lineStartOf = (text: string, offset: number): number => text.lastIndexOf('\n', offset - 1) + 1;
const indentAt = (text: string, offset: number): string =>
  /^[ \t]*/.exec(text.slice(lineStartOf(text, offset), offset))?.[0] ?? '';
const lineBreakOf = (text: string): string => (text.includes('\r\n') ? '\r\n' : '\n');

/** Where a new last line of the list begins: after everything in it, comments too. */
function endOfContent(text: string, closing: number): number {
  let at = closing;
  while (at > 0 && /\s/.test(text[at - 1]!)) at--;
  return at;
}

/** One record on one line, as people write it: { "kind": "leek", "place": "north" }. */
export function onOneLine(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const entries = Object.entries(value).filter(([, each]) => each !== undefined);
  return entries.length === 0
    ? '{}'
    : `{ ${entries.map(([key, each]) => `${JSON.stringify(key)}: ${onOneLine(each)}`).join(', ')} }`;
}

/** The text with `value` as the list's last element; null when there is no list at the path. */
export function appendToList(text: string, path: JSONPath, value: unknown): string | null {
  const root = parseTree(text, [], { allowTrailingComma: true });
  const list = root === undefined ? undefined : findNodeAtLocation(root, path);
  if (list?.type !== 'array') return null;
  const closing = list.offset + list.length - 1;
  const last = list.children?.at(-1);
  const contentEnd = endOfContent(text, closing);
  const outer = indentAt(text, list.offset);
  const inner = last === undefined ? `${outer}  ` : indentAt(text, last.offset) || `${outer}  `;
  const lineBreak = lineBreakOf(text);
  const added = `${lineBreak}${inner}${onOneLine(value)}${lineBreak}${outer}`;
  if (last === undefined) return `${text.slice(0, contentEnd)}${added}${text.slice(closing)}`;
  const lastEnd = last.offset + last.length;
  const comma = commaAfter(text, lastEnd, closing) === null ? ',' : '';
  return `${text.slice(0, lastEnd)}${comma}${text.slice(lastEnd, contentEnd)}${added}${text.slice(closing)}`;
}

/** The text without the list's element `index`; null when there is none. */
export function removeFromList(text: string, path: JSONPath, index: number): string | null {
  const root = parseTree(text, [], { allowTrailingComma: true });
  const list = root === undefined ? undefined : findNodeAtLocation(root, path);
  const elements = list?.type === 'array' ? (list.children ?? []) : [];
  const gone = elements[index];
  if (list === undefined || gone === undefined) return null;
  const goneEnd = gone.offset + gone.length;
  const ownComma = commaAfter(text, goneEnd, list.offset + list.length - 1);
  const before = elements[index - 1];
  const comma =
    ownComma ?? (before === undefined ? null : commaAfter(text, before.offset + before.length, gone.offset));
  const element = wholeLine(text, { from: gone.offset, to: goneEnd }, ownComma);
  const commaInside = comma !== null && comma.from >= element.from && comma.to <= element.to;
  const spans = comma === null || commaInside ? [element] : [element, comma];
  return spans
    .sort((a, b) => b.from - a.from)
    .reduce((kept, { from, to }) => kept.slice(0, from) + kept.slice(to), text);
}

/** The element's line too, when nothing else stands on it. */
function wholeLine(text: string, element: Span, ownComma: Span | null): Span {
  const lineStart = lineStartOf(text, element.from);
  const blankBefore = text.slice(lineStart, element.from).trim() === '' && lineStart > 0;
  const after = ownComma === null ? element.to : ownComma.to;
  const between = ownComma === null ? '' : text.slice(element.to, ownComma.from);
  const lineEnd = text.indexOf('\n', after);
  if (!blankBefore || between.trim() !== '' || lineEnd < 0 || text.slice(after, lineEnd).trim() !== '')
    return element;
  return { from: lineStart, to: lineEnd + 1 };
}
