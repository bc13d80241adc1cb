/** A series of threads as rows of numbers: for the printed table, the CSV and the JSON. Pure. */

import type { ThreadReference } from '../../core/plan/reference';
import { referenceOf } from '../../core/plan/reference';
import { SOURCES, type Source } from '../../core/sources';
import type { Thread } from '../../core/thread/thread';
import { roundDecimals } from '../../core/units';
import { drillName } from '../words';
import { threadName } from '../words/thread-address';
import type { Series } from './series';
import type { TableRow } from './tableRow';
import { FILE_COLUMNS, FILE_HEAD } from '../words/en/reference';
import { LANGUAGE } from '../words/en/site';
import { say } from '../words/say';

/** Columns of the files, with what each holds. */
export const COLUMNS = (Object.keys(FILE_COLUMNS) as (keyof TableRow)[]).map((key) => ({
  key,
  head: FILE_COLUMNS[key],
}));

const orNull = (value: number | undefined) => value ?? null;

function rowOf(reference: ThreadReference): TableRow {
  const { thread, limits, drill, drills, pipe } = reference;
  const listed = drills.find((each) => each.listed);
  const usual = drill ?? pipe?.drills.at(-1) ?? null;
  return {
    thread: threadName(thread),
    class: thread.class,
    unit: limits?.unit ?? 'mm',
    minorMin: orNull(limits?.minor.min),
    minorMax: orNull(limits?.minor.max),
    pitchMin: orNull(limits?.pitch.min),
    pitchMax: orNull(limits?.pitch.max),
    majorMin: orNull(limits?.majorMin),
    basis: limits?.basis ?? '',
    drill: usual ? drillName(usual) : '',
    drillMm: usual ? roundDecimals(usual.diameter, 3) : null,
    percentShop: drill && thread.system !== 'pipe' ? roundDecimals(drill.percent.shop, 0) : null,
    percentIso: drill && thread.system !== 'pipe' ? roundDecimals(drill.percent.iso, 0) : null,
    verdict: drill?.verdict ?? '',
    listed: listed ? drillName(listed) : '',
    listedVerdict: listed?.verdict ?? '',
    gaugeLengthMm: pipe?.gauge ? roundDecimals(pipe.gauge.length, 2) : null,
  };
}

/** One row a thread, in the order of the series. */
export function rowsOf(threads: readonly Thread[]): TableRow[] {
  return threads.flatMap((thread) => {
    const found = referenceOf(thread);
    return found.ok ? [rowOf(found.value)] : [];
  });
}

/** What stands at the head of a file: title, source and edition, unit, what the words mean. */
export function headOf(series: Series, version: string): string[] {
  return [
    say(FILE_HEAD.title, {
      site: LANGUAGE.site,
      version,
      title: series.title,
      description: series.description,
    }),
    ...series.sources.map((id) => {
      const { title, edition, trust }: Source = SOURCES[id];
      return say(FILE_HEAD.source, { title: edition ? `${title} (${edition})` : title, trust });
    }),
    FILE_HEAD.limits,
    FILE_HEAD.verdicts,
  ];
}

const cell = (value: string | number | null): string => {
  if (value === null) return '';
  const text = String(value);
  return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/** The series as CSV, its head in lines that begin with #. */
export function seriesCsv(series: Series, version: string): string {
  const lines = [
    ...headOf(series, version).map((line) => `# ${line}`),
    COLUMNS.map(({ head }) => cell(head)).join(','),
    ...rowsOf(series.threads).map((row) => COLUMNS.map(({ key }) => cell(row[key])).join(',')),
  ];
  return `${lines.join('\n')}\n`;
}

/** The same as JSON. */
export function seriesJson(series: Series, version: string): string {
  const about = { title: series.title, version, notes: headOf(series, version) };
  const columns = Object.fromEntries(COLUMNS.map(({ key, head }) => [key, head]));
  return `${JSON.stringify({ about, columns, rows: rowsOf(series.threads) }, null, 1)}\n`;
}
