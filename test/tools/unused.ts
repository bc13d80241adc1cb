/** Exported names that no other place mentions, not even their own file. */
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { ROOT, type Module } from './modules';

/** Every file that can use a name, as text: pages and lessons are no modules to the compiler. */
export function textsOfUsers(): string[] {
  return globSync(['*.mjs', '{core,components,site,test}/**/*.{ts,tsx,astro,mdx,mjs}'], {
    cwd: ROOT,
  }).map((path) => readFileSync(join(ROOT, path), 'utf8'));
}

function exportedNames({ source }: Module): string[] {
  return source.statements
    .filter(
      (statement) =>
        ts.canHaveModifiers(statement) &&
        ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword),
    )
    .flatMap((statement) => {
      if (ts.isVariableStatement(statement))
        return statement.declarationList.declarations.map(({ name }) => name.getText(source));
      const { name } = statement as ts.DeclarationStatement;
      return name ? [name.text] : [];
    });
}

/** Names that stand once in all texts, where they are made. The public face mentions what it hands out. */
export function unused(modules: readonly Module[], texts: readonly string[]): string[] {
  const mentions = new Map<string, number>();
  for (const text of texts)
    for (const [word] of text.matchAll(/[A-Za-z_$][\w$]*/g))
      mentions.set(word, (mentions.get(word) ?? 0) + 1);
  return modules.flatMap((module) =>
    exportedNames(module)
      .filter((name) => (mentions.get(name) ?? 0) < 2)
      .map((name) => `${module.path}: ${name}`),
  );
}
