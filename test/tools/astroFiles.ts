/** Reads Astro files as TypeScript does: but for a few marks an Astro file is TSX under its own head. */
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { parse, ROOT, type Module } from './modules';

const HEAD = /^---\n([\s\S]*?)\n---\n/;

/** The same lines, nothing on them: what is found later keeps its line number. */
const blank = (text: string): string => text.replace(/[^\n]/g, ' ');

/** The file as TSX, and each of its scripts as TypeScript, line for line. */
export function astroModules(path: string, text: string): Module[] {
  const head = HEAD.exec(text);
  const template = text.slice(head?.[0].length ?? 0);
  const scripts: Module[] = [];
  const markup = template
    .replace(/<!doctype html>|<!--[\s\S]*?-->/gi, blank)
    .replace(
      /(<(script|style)\b[^>]*>)([\s\S]*?)(<\/\2>)/g,
      (_, open: string, tag: string, body: string, close: string, at: number) => {
        const before = text.length - template.length + at + open.length;
        if (tag === 'script') scripts.push(parse(path, blank(text.slice(0, before)) + body));
        return open + blank(body) + close;
      },
    )
    // `<a {href}>` is Astro's short form.
    .replace(/(\s)\{(\w+)\}(?=[\s/>])/g, '$1{...$2}');
  const code = head ? `\n${head[1]}\n;<>\n` : '<>';
  const module = parse(`${path}x`, `${code}${markup}</>`);
  return [{ ...module, path }, ...scripts];
}

/** Complaints of the parser: what it could not read it could not judge either. */
export function unread({ path, source }: Module): string[] {
  const { diagnostics = [] } = ts.transpileModule(source.text, {
    fileName: `${path}.tsx`,
    reportDiagnostics: true,
    compilerOptions: { jsx: ts.JsxEmit.Preserve, target: ts.ScriptTarget.ESNext },
  });
  return diagnostics.map(
    ({ messageText }) => `${path}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`,
  );
}

export function astroUnder(folder: string): Module[] {
  return globSync(`${folder}/**/*.astro`, { cwd: ROOT })
    .map((path) => path.replaceAll('\\', '/'))
    .toSorted()
    .flatMap((path) => astroModules(path, readFileSync(join(ROOT, path), 'utf8')));
}
