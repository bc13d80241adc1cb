/**
 * Finds what a person would read in a file that should hold no words: they stand in one place for each
 * language. Rules, not a list of files; a file that is added later is judged by the same.
 */
import ts from 'typescript';
import type { Module } from './modules';

/** Said or shown by a browser, whatever the element. */
const SPOKEN =
  /^(aria-(label|description|roledescription|valuetext|placeholder)|title|alt|placeholder|label)$/;
/** Names under which components and lists carry what they show. */
const SHOWN =
  /^(title|label|text|name|heading|description|caption|summary|lede|lead|hint|question|note|aria-label)$/;
/** Contents that a `<meta>` gives to people. */
const META = /description|title|site_name/;
/** Attributes that set an element's inside. */
const INSIDE = /^set:(html|text)$/;
/** Symbols of units and names of file formats: the same in every language. */
const SYMBOLS = ['mm', 'in', 'kW', 'lbf', 'MB', 'CSV', 'JSON'];

/** Whoever builds the site reads these, not whoever uses it. */
const FOR_BUILDERS = /^(console|logger)\.|^process\.std(out|err)\.write$/;
/** What is sought in a text or a page, not said. */
const SOUGHT =
  /\.(querySelector|querySelectorAll|closest|matches|includes|indexOf|startsWith|endsWith)$/;
/** Messages of the shapes that content must have: an author's, at the build. */
const SHAPES = /\.(regex|refine|min|max)$/;
/** A program in a string, for a bundler. */
const PROGRAM = /^(import|export|void|const|let|function)\b.*;$/s;

const WORD = /^[“"(‘]*\p{L}{2,}(?:[’']\p{L}+)?[.,;:!?)”’…]*$/u;

/** Markup in a string: names of elements and attributes. */
const TAG = /<\/?[a-z][^>]*>/g;
/** Where a value stands in a template; a word that touches it is a part of an id or a path. */
const VALUE = '\u0000';

const wordsIn = (text: string): string[] =>
  text
    .replace(TAG, ' ')
    .split(/\s+/)
    .filter((part) => WORD.test(part) && !SYMBOLS.includes(part.replace(/[^\p{L}]/gu, '')));

/** Two words side by side are a phrase; a value, an id or a class has one. */
const isPhrase = (text: string): boolean => wordsIn(text).length >= 2 && !PROGRAM.test(text.trim());

/** Beside a value one word is enough to be said. */
const isFilled = (text: string): boolean => wordsIn(text).length > 0 && !PROGRAM.test(text.trim());

const isCapitalised = (text: string): boolean => /^\p{Lu}\p{Ll}+[.:!?]?$/u.test(text);

export interface Inline {
  path: string;
  line: number;
  text: string;
}

function isElement(node: ts.JsxAttribute): boolean {
  const { tagName } = node.parent.parent;
  return /^[a-z]/.test(tagName.getText());
}

/** True where an attribute of this name can be read by a person. */
function canSpeak(node: ts.JsxAttribute): boolean {
  const name = node.name.getText();
  if (!isElement(node)) return !/^(class|slot|id|server:|client:)/.test(name);
  if (name !== 'content') return SPOKEN.test(name) || INSIDE.test(name);
  return node.parent.properties.some(
    (each) =>
      ts.isJsxAttribute(each) &&
      /^(name|property)$/.test(each.name.getText()) &&
      META.test(each.initializer?.getText() ?? ''),
  );
}

/** Named as something that is shown: then one word is enough. */
function isShown(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isJsxAttribute(parent))
    return (isElement(parent) ? SPOKEN : SHOWN).test(parent.name.getText());
  return (
    ts.isPropertyAssignment(parent) &&
    parent.initializer === node &&
    SHOWN.test(parent.name.getText())
  );
}

/** `name` of a component is as often a field's as a title's: then it is no sentence. */
const namesField = ({ name, initializer }: ts.JsxAttribute): boolean =>
  name.getText() === 'name' && /^"[a-z][a-zA-Z]*"$/.test(initializer?.getText() ?? '');

/** Code whose texts are for a program, or for whoever builds. */
function isAside(node: ts.Node): boolean {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node))
    return true;
  if (ts.isJsxAttribute(node)) return !canSpeak(node);
  if (ts.isPropertyAssignment(node)) return node.name.getText() === 'error';
  return isArgument(node) && takesNoWords(node.parent);
}

function isArgument(
  node: ts.Node,
): node is ts.Node & { parent: ts.CallExpression | ts.NewExpression } {
  const { parent } = node;
  return (ts.isCallExpression(parent) || ts.isNewExpression(parent)) && parent.expression !== node;
}

function takesNoWords({ kind, expression }: ts.CallExpression | ts.NewExpression): boolean {
  const called = expression.getText();
  if (kind === ts.SyntaxKind.NewExpression) return called.endsWith('Error');
  return [FOR_BUILDERS, SOUGHT, SHAPES].some((aside) => aside.test(called));
}

function says(node: ts.Node): string | null {
  if (ts.isJsxText(node)) {
    const text = node.text.trim();
    return wordsIn(text).length > 0 ? text : null;
  }
  if (ts.isTemplateExpression(node)) {
    const parts = [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)];
    return isFilled(parts.join(VALUE)) ? parts.join('…') : null;
  }
  if (!ts.isStringLiteralLike(node)) return null;
  const named =
    isShown(node) &&
    ((ts.isJsxAttribute(node.parent) && !namesField(node.parent)) || isCapitalised(node.text));
  return isPhrase(node.text) || (named && wordsIn(node.text).length > 0) ? node.text : null;
}

/** Every text of a file that reads as said to a person. */
export function inlineWords({ path, source }: Module): Inline[] {
  const found: Inline[] = [];
  const visit = (node: ts.Node): void => {
    if (isAside(node)) return;
    const text = says(node);
    if (text !== null) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
      found.push({ path, line: line + 1, text: text.replace(/\s+/g, ' ') });
    }
    ts.forEachChild(node, visit);
  };
  ts.forEachChild(source, visit);
  return found;
}
