/** The rules of the architecture, each a function that lists what breaks it. */
import {
  cycles,
  exportedFunctions,
  imports,
  namesDeclared,
  namesUsed,
  specifiers,
  type Module,
} from './modules';

/**
 * Layers of the core: a module imports from lower layers, and from itself. The registry of sources and
 * the tables hold no logic and import nothing, so they lie below everything: a note can name its source,
 * and whoever reads a thread its table. A whole drawing is planned hole by hole, so it lies above the plan.
 */
export const LAYERS: readonly (readonly string[])[] = [
  ['sources', 'data'],
  ['outcome', 'units', 'seeded'],
  ['thread', 'material', 'chamfer', 'spread'],
  ['limits', 'drill', 'cycle'],
  ['hole', 'load', 'gauge', 'engagement'],
  ['chips', 'tap', 'mill'],
  ['plan'],
  ['drawing'],
  ['review', 'job', 'diagnose'],
  // Exercises ask about everything that lies below.
  ['practice'],
  ['index'],
];

/** `core/thread/read.ts` → `thread`; `core/units.ts` → `units`. */
export function moduleName(path: string): string {
  return path.split('/')[1]?.replace(/\.ts$/, '') ?? '';
}

function layerOf(name: string): number {
  return LAYERS.findIndex((layer) => layer.includes(name));
}

function byPath(modules: readonly Module[]): Map<string, Module> {
  return new Map(modules.map((module) => [module.path, module]));
}

/** Imports between core modules that do not go down. */
export function layerBreaks(core: readonly Module[]): string[] {
  const all = byPath(core);
  return core.flatMap((module) => {
    const own = moduleName(module.path);
    if (layerOf(own) < 0) return [`${module.path}: "${own}" has no layer`];
    return imports(module, all)
      .filter((path) => moduleName(path) !== own && layerOf(moduleName(path)) >= layerOf(own))
      .map((path) => `${module.path} → ${path}`);
  });
}

/** Circles of files that import one another. */
export function circles(modules: readonly Module[]): string[] {
  const all = byPath(modules);
  const graph = new Map(modules.map((module) => [module.path, imports(module, all)]));
  return cycles(graph).map((circle) => circle.join(' → '));
}

/** Things of the browser, the clock, chance, the network and the screen, which the core never touches. */
const IMPURE = [
  ...['document', 'window', 'navigator', 'location', 'history', 'globalThis', 'self'],
  ...['localStorage', 'sessionStorage', 'indexedDB', 'fetch', 'XMLHttpRequest', 'WebSocket'],
  ...[
    'Date',
    'performance',
    'setTimeout',
    'setInterval',
    'requestAnimationFrame',
    'queueMicrotask',
  ],
  ...['Math.random', 'crypto', 'process', 'console', 'Intl', '.toLocaleString', '.localeCompare'],
];

/** What a core file uses or imports that a pure core has no business with. */
export function impurities(core: readonly Module[]): string[] {
  return core.flatMap((module) => {
    const used = namesUsed(module);
    const own = namesDeclared(module);
    const names = IMPURE.filter((name) => used.has(name) && !own.has(name));
    const outside = specifiers(module).filter((specifier) => !staysInCore(module.path, specifier));
    return [...names, ...outside].map((found) => `${module.path}: ${found}`);
  });
}

function staysInCore(path: string, specifier: string): boolean {
  if (!specifier.startsWith('.')) return false;
  const depth = path.split('/').length - 2;
  return (specifier.match(/\.\.\//g) ?? []).length <= depth;
}

/** Imports that reach from one folder of the top level into another. */
export function reachesInto(modules: readonly Module[], folder: string): string[] {
  return modules.flatMap((module) =>
    imports(module, new Map())
      .filter((path) => path.startsWith(`${folder}/`))
      .map((path) => `${module.path} → ${path}`),
  );
}

/** Built-ins younger than the floor's browsers (Chromium 109, Firefox 115), which no build step supplies. */
const TOO_NEW = [
  ...['.toSorted', '.toReversed', '.toSpliced', '.groupBy', '.fromAsync', '.withResolvers', '.try'],
  ...['.isSubsetOf', '.isSupersetOf', '.isDisjointFrom', '.union', '.intersection', '.difference'],
  ...['.isWellFormed', '.showPopover', '.startViewTransition', '.canParse', '.checkVisibility'],
  ...['Iterator', '.hasUAVisualTransition'],
];

export function tooNew(modules: readonly Module[]): string[] {
  return modules.flatMap((module) => {
    const used = namesUsed(module);
    return TOO_NEW.filter((name) => used.has(name)).map((name) => `${module.path}: ${name}`);
  });
}

/** Exported functions of the core without a doc comment. */
export function undocumented(core: readonly Module[]): string[] {
  return core.flatMap((module) =>
    exportedFunctions(module)
      .filter(({ doc }) => doc.length === 0)
      .map(({ name }) => `${module.path}: ${name}`),
  );
}

const UNIT =
  /\b(mm|mm²|mm³|in|inch|inches|N·m|N\/mm²|MPa|N|kN|rpm|rev\/min|m\/min|mm\/min|degrees?|seconds?|pitch(es)?|diameters?|per ?cent|share|ratio|unitless|no unit|text|as typed)\b|%|°/i;
const GROUND =
  /\bsources?\b|\bderived\b|common practice|from memory|\bISO \d|\bASME B|`[a-z0-9]+(-[a-z0-9]+)+`|no source/i;

/** What the doc comment of a public function leaves unsaid: its units, and the ground it stands on. */
export function unsaid(doc: string): string[] {
  return [...(UNIT.test(doc) ? [] : ['units']), ...(GROUND.test(doc) ? [] : ['source'])];
}
