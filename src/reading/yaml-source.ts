import {
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseAllDocuments,
  type YAMLMap,
} from 'yaml';
import { fileProblem, type Problem } from './problem.ts';
import { linesOf, type Place, problemAt, type ReadSource, type Source, type Tree, type TreePath } from './source.ts';
import type { Fault } from './yaml-fault.ts';
import { lineDeeperThan } from './yaml-nesting.ts';
import { repeatedKeys } from './yaml-repeats.ts';
import { explainYaml, tabIndents } from './yaml-slips.ts';

const DEEPEST = 24;
/** Past so many the file is no longer a slip or two. */
const MOST_FAULTS = 100;

/**
 * One YAML document with every scalar kept as its text, so that ids like 08 and labels like 2025 survive
 * and one grammar of fields serves YAML and CSV. Blank scalars are absent. Aliases, tags, further documents
 * and deep nesting are refused.
 */
export function readYaml(file: string, text: string): ReadSource {
  const deep = lineDeeperThan(text, DEEPEST);
  if (deep !== null) return { source: null, problems: [tooDeep(file, deep)] };
  const lines = linesOf(text);
  const tabs = tabIndents(file, lines);
  if (tabs.length > 0) return { source: null, problems: tabs };
  const lineCounter = new LineCounter();
  const documents = parseAllDocuments(text, {
    schema: 'failsafe',
    lineCounter,
    prettyErrors: false,
    stringKeys: true,
    logLevel: 'silent',
    uniqueKeys: false,
  });
  const document = 'empty' in documents ? null : (documents[0] ?? null);
  const root = (document?.contents ?? null) as Node | null;
  const place = placeIn(lineCounter);
  const source = sourceOf(file, text, root, place);
  const faults = [...(document?.errors ?? []), ...(document?.warnings ?? []), ...repeatedKeys(root)]
    .map(({ code, message, pos }): Fault => ({ code, message, ...place(pos[0]) }))
    .sort((a, b) => a.line - b.line);
  const problems = upToFirstLost(faults).map((fault) => explainYaml(file, lines, fault));
  const next = documents[1];
  if (next) problems.push(secondDocument(file, place(next.range[0])));
  const strange = /[&*]/.test(text) ? firstStrange(root, []) : null;
  if (strange)
    problems.push(
      problemAt(source, strange, {
        code: 'alias',
        message: 'anchors and aliases (& and *) are not read',
        hint: 'write the value out, or put it in quotes',
      }),
    );
  return { source: problems.length > 0 ? null : source, problems: firstPerLine(problems) };
}

const placeIn =
  (lineCounter: LineCounter) =>
  (offset: number): Place => {
    const { line, col } = lineCounter.linePos(offset);
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  };

function sourceOf(file: string, text: string, root: Node | null, place: (offset: number) => Place): Source {
  return {
    file,
    text,
    tree: plain(root) ?? {},
    locate: (path, part = 'value') => place(offsetOf(root, path, part)),
  };
}

/** Offset of the node at a path, or of the nearest existing one above it. */
function offsetOf(root: Node | null, path: TreePath, part: 'key' | 'value'): number {
  let node: Node | null = root;
  let offset = start(root) ?? 0;
  for (const [depth, step] of path.entries()) {
    const pair: Pair | undefined = isMap(node) ? pairOf(node, step) : undefined;
    const child: Node | null = pair
      ? (pair.value as Node | null)
      : isSeq(node) && typeof step === 'number'
        ? ((node.items[step] as Node | undefined) ?? null)
        : null;
    if (!pair && !child) break;
    const atKey = part === 'key' && depth === path.length - 1;
    offset = (atKey && pair ? start(pair.key as Node) : (start(child) ?? start(pair?.key as Node))) ?? offset;
    node = child;
  }
  return offset;
}

const start = (node: Node | null | undefined): number | undefined => node?.range?.[0];

const pairOf = (map: YAMLMap, step: string | number): Pair | undefined =>
  map.items.find((item) => isPair(item) && isScalar(item.key) && item.key.value === String(step));

/**
 * The node as text, lists and maps; null for a blank. Keys are own properties, whatever their name.
 * A word between braces without its colon stays as a key with an empty text, so that no schema passes over it.
 */
function plain(node: unknown): Tree | null {
  if (isScalar(node)) return typeof node.value === 'string' && node.value.trim() !== '' ? node.value : null;
  if (isSeq(node)) return node.items.map((item) => plain(item) ?? '');
  if (!isMap(node)) return null;
  const map: Record<string, Tree> = Object.create(null);
  for (const { key, value } of node.items) {
    const child = plain(value);
    if (isScalar(key) && (child !== null || value === null)) map[String(key.value)] = child ?? '';
  }
  return map;
}

/** Path of the first alias or anchor, depth first; null where there is none. */
function firstStrange(node: unknown, path: (string | number)[]): (string | number)[] | null {
  if (isAlias(node) || (node as { anchor?: string } | null)?.anchor) return path;
  const children: [string | number, unknown][] = isSeq(node)
    ? node.items.map((item, index) => [index, item])
    : isMap(node)
      ? node.items.map(({ key, value }) => [isScalar(key) ? String(key.value) : '', value])
      : [];
  for (const [step, child] of children) {
    const found = firstStrange(child, [...path, step]);
    if (found) return found;
  }
  return null;
}

/** Once the parser has lost its way it complains of every line that follows; the first place says it, and the first fault of a line. */
function upToFirstLost(faults: readonly Fault[]): Fault[] {
  const perLine = faults.filter(({ line }, index) => line !== faults[index - 1]?.line);
  const lost = perLine.findIndex(({ message }) => /in YAML stream/.test(message));
  return perLine.slice(0, lost < 0 ? MOST_FAULTS : Math.max(lost, 1));
}

/** One slip often sets off several complaints on its line; the first says it. Of a lost dash all later keys complain. */
function firstPerLine(all: readonly Problem[]): Problem[] {
  const dashes = all.filter(({ code }) => code === 'dash-missing');
  const problems = dashes.length > 0 ? dashes : all;
  return problems.filter((problem, index) => problems.findIndex((other) => other.line === problem.line) === index);
}

const tooDeep = (file: string, line: number): Problem =>
  fileProblem(file, {
    line,
    code: 'too-deep',
    message: 'the lists and maps are nested too deep',
    hint: 'records have three levels at most; look for a bracket too many',
  });

const secondDocument = (file: string, place: Place): Problem =>
  fileProblem(file, {
    ...place,
    code: 'two-documents',
    message: 'the file holds more than one document',
    hint: 'delete the line ---',
  });
