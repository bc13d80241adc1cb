/** The words of a metric designation, taken apart before they are judged. */

import { Tail } from './parts';

/** What was written, in the order it means something. */
export interface MetricWords {
  form: 'M' | 'MJ';
  /** mm */
  diameter: number;
  /** mm */
  pitch?: number;
  /** The pitch stood after a dash or a space instead of an x. */
  dashPitch?: boolean;
  class?: string;
  /** The class stood where the pitch belongs: M8x6H. */
  classByX?: boolean;
  engagement?: 'S' | 'N' | 'L' | number;
  /** A number too many: a screw's length or a depth. */
  length?: string;
  seriesWord?: 'coarse' | 'fine';
  /** What no rule took. */
  extra: string;
}

const NUMBER = '(\\d+(?:\\.\\d+)?|\\.\\d+)';
const END = '(?![A-Z0-9./])';
const SIZE = new RegExp(`^(MJ|MF?)[\\s-]*${NUMBER}(?![\\d])`);
const PITCH = new RegExp(`^(\\s?x|-|\\s)[\\s-]*P?\\s?${NUMBER}${END}`);
const CLASS = /^([\s\-x]*)(\d{1,2}[A-Z]{1,2}(?:\d[A-Z]{1,2})?)(?![A-Z0-9])/;
const GROUP = /^[\s-]+([SNL])(?![A-Z0-9])/;
const ENGAGED = new RegExp(`^\\s?-\\s?${NUMBER}${END}`);
const LENGTH = /^[\sx-]+(\.?\d[\d./]*(?:-\d+\/\d+)?)(?![A-Z0-9])/;
const SERIES = /^[\s-]*(COARSE|FINE)(?![A-Z])/;

function takeClass(tail: Tail, words: MetricWords): boolean {
  const found = words.class === undefined ? tail.take(CLASS) : null;
  if (!found) return false;
  words.class = found[2] ?? '';
  words.classByX = (found[1] ?? '').includes('x') && words.pitch === undefined;
  return true;
}

function takeSeries(tail: Tail, words: MetricWords): void {
  const word = tail.take(SERIES)?.[1];
  if (word) words.seriesWord = word === 'COARSE' ? 'coarse' : 'fine';
}

function takePitch(tail: Tail, words: MetricWords): void {
  const pitch = tail.take(PITCH);
  if (!pitch) return;
  words.pitch = Number(pitch[2]);
  words.dashPitch = !pitch[1]?.includes('x');
}

function takeEngagement(tail: Tail, words: MetricWords): void {
  const group = tail.take(GROUP)?.[1];
  if (group) {
    words.engagement = group as 'S' | 'N' | 'L';
    return;
  }
  const before = tail.rest;
  const length = words.class === undefined ? undefined : tail.take(ENGAGED)?.[1];
  if (length !== undefined && Number(length) > 0) words.engagement = Number(length);
  else tail.rest = before;
}

/** Takes a normalised text apart; null when it does not begin as a metric designation. */
export function metricWords(text: string): MetricWords | null {
  const head = SIZE.exec(text);
  if (!head) return null;
  const [whole, letters, size] = head as unknown as [string, 'M' | 'MF' | 'MJ', string];
  const tail = new Tail(text.slice(whole.length).replace(/[\s()"]+/g, ' '));
  const form = letters === 'MJ' ? 'MJ' : 'M';
  const words: MetricWords = { form, diameter: Number(size), extra: '' };
  // MF on taps and in drawers says fine: worth asking for the pitch, not worth a quarrel over a given one.
  const fineLetters = letters === 'MF';
  takeSeries(tail, words);
  if (!takeClass(tail, words)) {
    takePitch(tail, words);
    takeSeries(tail, words);
    takeClass(tail, words);
  }
  if (fineLetters && words.pitch === undefined) words.seriesWord = 'fine';
  takeEngagement(tail, words);
  const length = tail.take(LENGTH);
  if (length) words.length = length[1] ?? '';
  takeClass(tail, words);
  words.extra = tail.left;
  return words;
}
