import type { Node } from 'jsonc-parser';
import type * as z from 'zod';
import type { FilePath, Report } from './issue-codes.ts';
import { nearestOf } from './nearest.ts';

/**
 * The tree's plain value without keys that the schema does not know (a misspelt key must not cost people their whole
 * garden: it is a warning with the nearest known key) and without the first of two like keys.
 */
type Schema = z.core.$ZodType;

function kindsOf(schema: Schema): readonly Schema[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case 'optional':
    case 'nullable':
    case 'default':
    case 'prefault':
      return kindsOf(def.innerType);
    case 'union':
      return def.options.flatMap((option) => kindsOf(option));
    default:
      return [schema];
  }
}

function definitionOf(schema: Schema | null, type: 'object' | 'record' | 'array') {
  if (schema === null) return null;
  const found = kindsOf(schema).find((kind) => (kind as z.core.$ZodTypes)._zod.def.type === type);
  return found === undefined ? null : (found as z.core.$ZodTypes)._zod.def;
}

function memberSchema(
  schema: Schema | null,
  key: string,
  known: { keys: readonly string[] | null },
): Schema | null {
  const object = definitionOf(schema, 'object');
  if (object?.type === 'object') {
    known.keys = Object.keys(object.shape);
    return Object.hasOwn(object.shape, key) ? (object.shape[key] ?? null) : null;
  }
  const record = definitionOf(schema, 'record');
  return record?.type === 'record' ? record.valueType : null;
}

export function valueWithKnownKeys(
  node: Node,
  schema: Schema | null,
  path: FilePath,
  report: Report,
): unknown {
  if (node.type === 'array') {
    const list = definitionOf(schema, 'array');
    const element = list?.type === 'array' ? list.element : null;
    return (node.children ?? []).map((child, index) =>
      valueWithKnownKeys(child, element, [...path, index], report),
    );
  }
  if (node.type !== 'object') return node.value as unknown;
  const entries = new Map<string, unknown>();
  for (const property of node.children ?? []) {
    const [keyNode, valueNode] = property.children ?? [];
    if (keyNode === undefined || valueNode === undefined) continue;
    const key = String(keyNode.value);
    const keyPath = [...path, key];
    const known: { keys: readonly string[] | null } = { keys: null };
    const member = memberSchema(schema, key, known);
    if (entries.has(key)) report('key-twice', keyPath, { key: key.slice(0, 60) });
    if ((member === null && known.keys !== null) || key === '__proto__') {
      const unused = (known.keys ?? []).filter((each) => !entries.has(each));
      report('key-unknown', keyPath, { key: key.slice(0, 60), nearest: nearestOf(key, unused) });
      continue;
    }
    entries.set(key, valueWithKnownKeys(valueNode, member, keyPath, report));
  }
  return Object.fromEntries(entries);
}
