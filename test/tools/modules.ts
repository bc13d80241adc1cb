/** Reads source files as the compiler does: what they import, name and promise. */
import { globSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

export interface Module {
  /** Path from the repository's root, with forward slashes. */
  path: string;
  source: ts.SourceFile;
}

export function parse(path: string, text: string): Module {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  return { path, source: ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind) };
}

/** Every TypeScript file under a folder of the repository. */
export function modulesUnder(folder: string): Module[] {
  return globSync(`${folder}/**/*.{ts,tsx}`, { cwd: ROOT })
    .map((path) => path.replaceAll('\\', '/'))
    .toSorted()
    .map((path) => parse(path, readFileSync(join(ROOT, path), 'utf8')));
}

/** What the file imports or re-exports, as written. Type-only imports count: they bind files as well. */
export function specifiers(module: Module): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier) {
      if (ts.isStringLiteral(node.moduleSpecifier)) found.push(node.moduleSpecifier.text);
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [target] = node.arguments;
      found.push(target && ts.isStringLiteralLike(target) ? target.text : '(computed)');
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      if (ts.isStringLiteral(node.argument.literal)) found.push(node.argument.literal.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(module.source);
  return found;
}

/** The files of the repository that a file imports, resolved among `all`. */
export function imports(module: Module, all: ReadonlyMap<string, Module>): string[] {
  return specifiers(module)
    .filter((specifier) => specifier.startsWith('.'))
    .map((specifier) => {
      const base = posix.join(posix.dirname(module.path), specifier);
      const candidates = [base, `${base}.ts`, `${base}.tsx`, `${base}/index.ts`];
      return candidates.find((path) => all.has(path)) ?? base;
    });
}

/** Names used as values or types, not as the name of a property. `Math.random` is given whole. */
export function namesUsed(module: Module): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node)) {
      if (ts.isIdentifier(node.expression)) names.add(`${node.expression.text}.${node.name.text}`);
      names.add(`.${node.name.text}`);
      visit(node.expression);
      return;
    }
    if (ts.isIdentifier(node) && !isOwnName(node)) names.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(module.source);
  return names;
}

/** True where the identifier only names a member, as in `{ name: … }` or `interface { name: … }`. */
function isOwnName(node: ts.Identifier): boolean {
  const { parent } = node;
  const named =
    ts.isPropertyAssignment(parent) ||
    ts.isPropertySignature(parent) ||
    ts.isMethodSignature(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isParameter(parent) ||
    ts.isBindingElement(parent) ||
    ts.isVariableDeclaration(parent);
  return named && (parent as ts.NamedDeclaration).name === node;
}

/** Names of parameters and variables that the file declares itself, so that they hide a global of that name. */
export function namesDeclared(module: Module): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    const declares =
      ts.isParameter(node) || ts.isVariableDeclaration(node) || ts.isBindingElement(node);
    if (declares && ts.isIdentifier(node.name)) names.add(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(module.source);
  return names;
}

/** Exported functions with their doc comment as plain text; arrow functions bound to a name included. */
export function exportedFunctions(module: Module): { name: string; doc: string }[] {
  const found: { name: string; doc: string }[] = [];
  for (const statement of module.source.statements) {
    const exported =
      ts.canHaveModifiers(statement) &&
      ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    if (!exported) continue;
    if (ts.isFunctionDeclaration(statement) && statement.name) {
      found.push({ name: statement.name.text, doc: docOf(statement) });
    } else if (ts.isVariableStatement(statement)) {
      for (const { name, initializer } of statement.declarationList.declarations) {
        const callable =
          initializer && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer));
        if (callable) found.push({ name: name.getText(), doc: docOf(statement) });
      }
    }
  }
  return found;
}

/** The doc comment nearest to a statement, its stars and slashes removed. */
function docOf(statement: ts.Statement): string {
  const text = statement.getSourceFile().text;
  const docs = (ts.getLeadingCommentRanges(text, statement.getFullStart()) ?? [])
    .map(({ pos, end }) => text.slice(pos, end))
    .filter((comment) => comment.startsWith('/**'));
  return (docs.at(-1) ?? '')
    .replace(/^\/\*\*|\*\/$/g, '')
    .replace(/^\s*\* ?/gm, '')
    .trim();
}

/** Circles in the import graph, each as the files it runs through. */
export function cycles(graph: ReadonlyMap<string, readonly string[]>): string[][] {
  const found: string[][] = [];
  const done = new Set<string>();
  const walk = (path: string, trail: string[]): void => {
    const at = trail.indexOf(path);
    if (at >= 0) found.push([...trail.slice(at), path]);
    if (at >= 0 || done.has(path)) return;
    for (const next of graph.get(path) ?? []) walk(next, [...trail, path]);
    done.add(path);
  };
  for (const path of graph.keys()) walk(path, []);
  return found;
}
