/** Series words of inch threads, old and new, and what each says about form and series. */

import type { Note } from '../outcome';
import { threadNote } from './parts';
import { seriesTpi, unifiedSeries, type UnifiedSeries } from './unified-series';
import { plainNumber } from './parts';

export interface SeriesWord {
  base: 'UNC' | 'UNF' | 'UNEF' | 'UNS' | 'UN';
  form: 'UN' | 'UNJ';
  /** Threads per inch named with the series: 12 of `12-UN`. */
  constant?: number;
  /** As typed, without its number. */
  word: string;
  notes: Note[];
}

const OLD: Readonly<Record<string, SeriesWord['base']>> = {
  NC: 'UNC',
  NF: 'UNF',
  NEF: 'UNEF',
  NS: 'UNS',
  N: 'UN',
};

const PLAIN: Readonly<Record<string, SeriesWord['base']>> = {
  ...{ UNC: 'UNC', UNF: 'UNF', UNEF: 'UNEF', UNS: 'UNS', UN: 'UN' },
  ...{ COARSE: 'UNC', FINE: 'UNF' },
};

/** Reads a series word such as `UNC`, `NF`, `12-UN`, `UNJEF`, `UNRC`. */
export function readSeriesWord(typed: string): SeriesWord {
  const [, count, word = ''] = /^(\d+)?-?(.*)$/.exec(typed) ?? [];
  const constant = count === undefined ? {} : { constant: Number(count) };
  const old = OLD[word];
  if (old) {
    const notes = [threadNote('old-series-name', { typed: word, series: old })];
    return { base: old, form: 'UN', word, notes, ...constant };
  }
  const form = word.startsWith('UNJ') ? 'UNJ' : 'UN';
  const base = PLAIN[word.replace(/^UN[JR]/, 'UN')] ?? 'UN';
  const rooted = word.startsWith('UNR');
  const notes = rooted ? [threadNote('external-root-name', { typed: word, series: base })] : [];
  return { base, form, word, notes, ...constant };
}

/** The series name of a form: UNC is UNJC of UNJ, 12-UN is 12-UNJ. */
export function seriesName(series: UnifiedSeries, form: 'UN' | 'UNJ'): string {
  return form === 'UNJ' ? series.replace('UN', 'UNJ') : series;
}

/** The pairs to offer for a size, as `1/4-20 UNC`: coarse and fine, else extra fine or a constant pitch. */
export function pairOffers(size: string, diameter: number, form: 'UN' | 'UNJ' = 'UN'): string[] {
  const offer = (series: 'UNC' | 'UNF' | 'UNEF') => {
    const tpi = seriesTpi(diameter, series);
    return tpi === null ? [] : [`${size}-${plainNumber(tpi)} ${seriesName(series, form)}`];
  };
  const usual = [...offer('UNC'), ...offer('UNF')];
  if (usual.length > 0) return usual;
  const rest = offer('UNEF');
  for (const tpi of [8, 12, 16]) {
    if (unifiedSeries(diameter, tpi) === `${tpi}-UN`) {
      rest.push(`${size}-${tpi} ${form}`);
    }
  }
  return rest;
}
