/** Which files the pages that are translated are made of: what stands in none of them needs no translation. */
import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import ts from 'typescript';
import { astroModules } from './astroFiles';
import { parse, ROOT, type Module } from './modules';

const ENDINGS = ['', '.ts', '.tsx', '/index.ts'];

function modulesOf(path: string): Module[] {
  const text = readFileSync(join(ROOT, path), 'utf8');
  return path.endsWith('.astro') ? astroModules(path, text) : [parse(path, text)];
}

/** Imports that are still there when the types are gone. */
function loads({ path, source }: Module): string[] {
  const found: string[] = [];
  const add = (specifier: ts.Node | undefined): void => {
    if (specifier && ts.isStringLiteralLike(specifier)) found.push(specifier.text);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) {
      const names = node.importClause?.namedBindings;
      const onlyTypes =
        node.importClause?.isTypeOnly ||
        (names &&
          ts.isNamedImports(names) &&
          !node.importClause?.name &&
          names.elements.length > 0 &&
          names.elements.every(({ isTypeOnly }) => isTypeOnly));
      if (!onlyTypes) add(node.moduleSpecifier);
    } else if (ts.isExportDeclaration(node) && !node.isTypeOnly) add(node.moduleSpecifier);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add(node.arguments[0]);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found
    .filter((specifier) => specifier.startsWith('.'))
    .map((specifier) => posix.join(posix.dirname(path), specifier))
    .flatMap((base) => ENDINGS.map((ending) => base + ending).filter((file) => isCode(file)));
}

const isCode = (file: string): boolean =>
  /\.(tsx?|astro)$/.test(file) && existsSync(join(ROOT, file));

/** Every file that `entries` load, themselves included. */
export function reached(entries: readonly string[]): Set<string> {
  const found = new Set<string>();
  const queue = [...entries];
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    queue.push(...modulesOf(next).flatMap(loads));
  }
  return found;
}
