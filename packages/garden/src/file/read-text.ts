import type { Issue } from '@twelvemonth/basis';
import {
  createScanner,
  findNodeAtLocation,
  getNodeValue,
  type Node,
  type ParseError,
  parseTree,
  printParseErrorCode,
} from 'jsonc-parser';
import { type FilePath, gardenIssue } from './issue-codes.ts';
import { token as kinds } from './jsonc-tokens.ts';

/** Text to a JSON tree with positions: size, emptiness, depth and syntax, each refused with its own code. */
export const mostCharacters = 5_000_000;
/** jsonc-parser walks recursively: deeper than this is noise and would break the stack. */
export const deepestNesting = 50;

/**
 * Twenty times a large garden. zod passes what it finds as one call's arguments: with a hundred thousand findings
 * that call breaks the stack.
 */
export const mostTokens = 60_000;

export interface ReadText {
  readonly root: Node;
  /** The plain values of a top-level list; empty when there is none. */
  readonly plainList: (key: string) => readonly unknown[];
  /** "line 12: places[3].lengthM", for the nearest thing that is in the file. */
  readonly where: (path: FilePath) => string;
}

export interface RefusedText {
  readonly refused: Issue;
}

function lineStartsOf(text: string): number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

function lineIndexOf(starts: readonly number[], offset: number): number {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (starts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

export const pathText = (path: FilePath): string =>
  path.reduce<string>(
    (text, part) => (typeof part === 'number' ? `${text}[${part}]` : text === '' ? part : `${text}.${part}`),
    '',
  );

function nestingOf(text: string): { readonly depth: number; readonly tokensCount: number } {
  const scanner = createScanner(text, true);
  let [open, depth, tokensCount] = [0, 0, 0];
  for (let token: number = scanner.scan(); token !== kinds.end; token = scanner.scan()) {
    tokensCount++;
    if (token === kinds.openBrace || token === kinds.openBracket) depth = Math.max(depth, ++open);
    else if (token === kinds.closeBrace || token === kinds.closeBracket) open--;
    if (depth > deepestNesting || tokensCount > mostTokens) break;
  }
  return { depth, tokensCount };
}

const cutOffProblems = ['UnexpectedEndOfComment', 'UnexpectedEndOfString'];

function syntaxIssue(text: string, starts: readonly number[], error: ParseError): Issue {
  const end = text.trimEnd().length;
  const atEnd =
    error.offset >= end ||
    (cutOffProblems.includes(printParseErrorCode(error.error)) && error.offset + error.length >= end);
  const lineIndex = lineIndexOf(starts, error.offset);
  const column = error.offset - starts[lineIndex]! + 1;
  const where = `line ${lineIndex + 1}`;
  return atEnd && /^\s*(?:\/[/*][\s\S]*)?\{/.test(text)
    ? gardenIssue('file-cut-off', where, { column })
    : gardenIssue('file-not-jsonc', where, { column, problem: printParseErrorCode(error.error) });
}

export function readText(written: string): ReadText | RefusedText {
  const refused = (issue: Issue): RefusedText => ({ refused: issue });
  if (written.length > mostCharacters) {
    return refused(gardenIssue('file-too-large', 'file', { size: written.length, mostSize: mostCharacters }));
  }
  const text = written.replace(/^\uFEFF/, ' ');
  const { depth, tokensCount } = nestingOf(text);
  if (depth > deepestNesting) {
    return refused(gardenIssue('file-nested-too-deep', 'file', { deepest: deepestNesting }));
  }
  if (tokensCount > mostTokens) return refused(gardenIssue('file-too-full', 'file', { most: mostTokens }));
  const starts = lineStartsOf(text);
  const errors: ParseError[] = [];
  const root = parseTree(text, errors, { allowTrailingComma: true, allowEmptyContent: true });
  if (errors[0] !== undefined) return refused(syntaxIssue(text, starts, errors[0]));
  if (root === undefined) return refused(gardenIssue('file-empty', 'file', {}));
  const where = (path: FilePath): string => {
    for (let length = path.length; length >= 0; length--) {
      const node = findNodeAtLocation(root, path.slice(0, length));
      if (node !== undefined) {
        const said = path.length === 0 ? '' : `: ${pathText(path)}`;
        return `line ${lineIndexOf(starts, node.offset) + 1}${said}`;
      }
    }
    return pathText(path);
  };
  const plainList = (key: string): readonly unknown[] => {
    const list = findNodeAtLocation(root, [key]);
    return list?.type === 'array' ? (list.children ?? []).map((each) => getNodeValue(each) as unknown) : [];
  };
  return { root, plainList, where };
}
