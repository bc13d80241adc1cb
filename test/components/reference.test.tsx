/** Threads' pages without a browser: addresses, the finder, the bars, the tables and files. */
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { holeBar, pitchBar } from '../../components/reference/bars';
import { DrillTable, TrapDrills } from '../../components/reference/DrillTable';
import { EngagementTable } from '../../components/reference/EngagementTable';
import { findThread, type PageLink } from '../../components/reference/find';
import { GaugeTable } from '../../components/reference/GaugeTable';
import { leadRows } from '../../components/reference/lead';
import { ownUnit } from '../../components/reference/limits';
import { LimitsTable } from '../../components/reference/LimitsTable';
import { nearest } from '../../components/reference/near';
import { allSeries, hasPage, SERIES_SLUGS } from '../../components/reference/series';
import { SeriesTable } from '../../components/reference/SeriesTable';
import { COLUMNS, rowsOf, seriesCsv, seriesJson } from '../../components/reference/table';
import { TapLimitTable } from '../../components/reference/TapLimitTable';
import { threadHref, threadName, threadSlug } from '../../components/words/thread-address';
import { readThread, referenceOf, threadReference, type ThreadReference } from '../../core';

const series = allSeries();
const threads = series.flatMap((each) => each.threads);

function reference(text: string): ThreadReference {
  const found = threadReference(text);
  if (!found.ok) throw new Error(text);
  return found.value;
}

const text = (html: string) => html.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');

describe('addresses', () => {
  it.each([
    ['M8', 'm8x1.25'],
    ['1/4-20', '1-4-20-unc'],
    ['1-1/4-7', '1-1-4-7-unc'],
    ['#10-32', '10-32-unf'],
    ['15/16-12 UN', '15-16-12-un'],
    ['M10x1-LH', 'm10x1'],
    ['G1/4', 'g1-4'],
    ['1/4 NPT', '1-4-18-npt'],
  ])('%s is at /threads/%s/', (typed, slug) => {
    const read = readThread(typed);
    expect(read.ok && threadSlug(read.value)).toBe(slug);
  });

  it('no two threads share one, and all are letters, digits, dots and dashes', () => {
    const slugs = threads.map(threadSlug);
    expect(new Set(slugs).size).toBe(slugs.length);
    for (const slug of slugs) expect(slug).toMatch(/^[a-z0-9.-]+$/);
  });

  it('every thread belongs to one table, about 390 in all', () => {
    expect(series.map(({ slug }) => slug)).toEqual([...SERIES_SLUGS]);
    expect(threads.length).toBeGreaterThan(330);
    expect(series.every((each) => each.threads.length > 5)).toBe(true);
  });

  it('knows which threads have a page', () => {
    const has = (typed: string) => {
      const read = readThread(typed);
      return read.ok && hasPage(read.value);
    };
    expect(['M8', 'M8-6G', '1/4-20-3B', 'M8-LH', 'G1/4'].map(has)).toEqual(Array(5).fill(true));
    expect(['EG M8', 'MJ8', 'M8x1.3', '1/4-19 UNS-2B'].map(has)).toEqual(Array(4).fill(false));
  });
});

describe('finding a thread by typing', () => {
  const pages: PageLink[] = threads.map((thread) => ({
    name: threadName(thread),
    href: threadHref(thread),
  }));
  const find = (typed: string) => findThread(typed, pages);

  it.each([
    ['M8', '/threads/m8x1.25/'],
    ['m8x1,25', '/threads/m8x1.25/'],
    ['1/4-20 UNC-3B', '/threads/1-4-20-unc/'],
    ['10-32', '/threads/10-32-unf/'],
    ['M10x1-6H-LH', '/threads/m10x1/'],
  ])('%s opens %s', (typed, href) => {
    expect(find(typed).page?.href).toBe(href);
  });

  it('offers what begins so before it can be read', () => {
    expect(find('5/16-').near.map(({ name }) => name)).toEqual([
      '5/16-18 UNC',
      '5/16-24 UNF',
      '5/16-32 UNEF',
    ]);
  });

  it('shows the size’s page for a wire insert and a J thread', () => {
    expect(find('EG M6').relative?.href).toBe('/threads/m6x1/');
    expect(find('1/4-20 UNJC-3B').relative?.href).toBe('/threads/1-4-20-unc/');
  });

  it('hands a special thread on, and tells what is no thread', () => {
    expect(find('M8x1.3').special?.designation).toContain('M8x1.3');
    expect(find('Tr20x4').problems[0]?.code).toBe('not-covered');
    expect(find('banana').problems[0]?.code).toBe('unreadable');
    expect(find('  ')).toMatchObject({ page: null, near: [], problems: [] });
  });
});

describe('the bars show the core’s own numbers', () => {
  it('1/2-13-2B: window, 3B’s end, drills with their likely holes', () => {
    const found = reference('1/2-13-2B');
    const bar = holeBar(found, 'in')!;
    expect([bar.min, bar.max]).toEqual([found.window!.hole.min, found.window!.hole.max]);
    expect(bar.others[0]?.label).toBe('3B to 0.4284');
    for (const row of bar.rows) {
      const drill = found.drills.find((each) => each.diameter === row.at)!;
      expect([row.to, row.verdict]).toEqual([drill.likely, drill.verdict]);
    }
    expect(bar.rows.map(({ name }) => name)).toContain('7/16 in');
  });

  it('tap limits lie on the bar of the pitch diameter in the same unit', () => {
    const bar = pitchBar(reference('EG M6'))!;
    const h3 = bar.rows.find(({ name }) => name === 'H3')!;
    expect(h3.at).toBeGreaterThan(bar.min);
    expect(h3.to).toBeLessThan(bar.max);
  });

  it('every thread’s bar can be drawn, and holds at most ten rows', () => {
    for (const thread of threads) {
      const found = referenceOf(thread);
      if (!found.ok) throw new Error(thread.designation);
      const bar = holeBar(found.value, ownUnit(thread));
      expect(bar?.rows.length ?? 1).toBeLessThanOrEqual(10);
      expect(bar === null || bar.min < bar.max).toBe(true);
    }
  });
});

describe('the tables say what the core says', () => {
  it('drills: every serving drill is shown, the trap is named with its classes', () => {
    const found = reference('9/16-18-2B');
    const shown = nearest(found.drills);
    expect(shown).toEqual(
      expect.arrayContaining(found.drills.filter((each) => each.verdict !== 'outside')),
    );
    const traps = text(render(<TrapDrills drills={found.drills} unit="in" />));
    expect(traps).toContain('Printed lists give 33/64 in');
    expect(traps).toContain('0.5156 in');
    expect(traps).toContain('class 2B and 3B');
  });

  it('percent of thread always says its base, in the table and in the limits', () => {
    const found = reference('M8');
    const drills = text(
      render(<DrillTable drills={found.drills} chosen={found.drill} unit="mm" />),
    );
    expect(drills).toContain('% of thread, shop / ISO base');
    expect(drills).toContain('74 / 89');
    const limits = text(render(<LimitsTable {...found} unit="mm" />));
    expect(limits).toContain('67–83 % of thread on the US shop base');
    expect(limits).toContain('80–100 % on the ISO base');
    expect(limits).toContain('6.647–6.912');
  });

  it('gauges show both rules of turns with their depths', () => {
    const found = reference('M8');
    const shown = text(render(<GaugeTable set={found.gauges!} pitch={1.25} unit="mm" />));
    expect(shown).toContain('up to 3 turns (3.75 mm) under ASME B1.2');
    expect(shown).toContain('up to 2 turns (2.5 mm) under ISO 1502');
  });

  it('tap limits: recommended, and the range that suits', () => {
    const found = reference('1/4-20-2B');
    const shown = text(render(<TapLimitTable classes={[{ class: '2B', taps: found.taps }]} />));
    expect(shown).toContain('H5 recommended');
    expect(shown).toContain('H1 to H8 suit class 2B');
  });

  it('engagement is no rating, and says so', () => {
    const shown = text(render(<EngagementTable rows={reference('M10').engagement} unit="mm" />));
    expect(shown).toContain('13.0–15.7');
    expect(shown).toContain('Not a rating.');
  });

  it('nothing broken in any head of a page', () => {
    for (const thread of threads) {
      const found = referenceOf(thread);
      if (!found.ok) throw new Error(thread.designation);
      for (const { value, beside = [] } of leadRows(found.value, ownUnit(thread))) {
        expect([value, ...beside].join(' ')).not.toMatch(/NaN|undefined|Infinity/);
      }
    }
  });
});

describe('tables to print and download', () => {
  it.each(series)('$title: one row a thread, in order of the series', (each) => {
    const rows = rowsOf(each.threads);
    expect(rows.map(({ thread }) => thread)).toEqual(each.threads.map(threadName));
    const html = render(<SeriesTable series={each} />);
    expect(html.match(/<tr/g)).toHaveLength(rows.length + 1);
    expect(html).not.toMatch(/NaN|undefined/);
  });

  it('CSV begins with source, edition and units; its cells are the core’s limits', () => {
    const csv = seriesCsv(series[0]!, '1.2.3').split('\n');
    const head = csv.filter((line) => line.startsWith('#')).join('\n');
    expect(head).toContain('Tapped Hole Handbook 1.2.3');
    expect(head).toContain('ISO 965-1');
    expect(head).toContain('(2013)');
    expect(head).toContain('mm, or inches');
    const columns = csv.find((line) => line.startsWith('thread,'))!.split(',');
    expect(columns).toEqual(COLUMNS.map(({ head: name }) => name));
    const m8 = csv.find((line) => line.startsWith('M8x1.25'))!.split(',');
    expect(m8.slice(1, 7)).toEqual(['6H', 'mm', '6.647', '6.912', '7.188', '7.348']);
    for (const line of csv.filter((row) => row.startsWith('M'))) {
      expect(line.split(',')).toHaveLength(COLUMNS.length);
    }
  });

  it('JSON holds the same rows', () => {
    const found = JSON.parse(seriesJson(series[2]!, '1.2.3')) as {
      about: { notes: string[] };
      rows: { thread: string; minorMin: number; listedVerdict: string }[];
    };
    expect(found.about.notes.join(' ')).toContain('ASME B1.1');
    const quarter = found.rows.find(({ thread }) => thread === '1/4-20 UNC')!;
    expect(quarter.minorMin).toBe(0.196);
    expect(found.rows).toHaveLength(33);
  });

  it('marks the listed drills that its class refuses', () => {
    const rows = rowsOf(series[3]!.threads);
    const outside = rows.filter(({ listedVerdict }) => listedVerdict === 'outside');
    expect(outside.map(({ thread }) => thread)).toEqual(['9/16-18 UNF', '5/8-18 UNF']);
  });
});
