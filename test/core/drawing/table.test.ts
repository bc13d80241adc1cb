/**
 * Hole tables as spreadsheets give them. What people call a column, and that 1, 2, 3 counts rows, is common practice;
 * that Excel and LibreOffice paste tabs and quote a cell with a line break in it was tried, from memory.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COLUMN_KINDS, planDrawing, readCallout, tableOf } from '../../../core';
import type { ColumnKind } from '../../../core/drawing/columns';

/** Lines with `|` for the tab, so that they can be read here. */
const pasted = (...lines: string[]): string[] => lines.map((line) => line.replaceAll('|', '\t'));
const kinds = (lines: string[]): string =>
  (tableOf(lines)?.columns ?? []).map(({ kind }) => kind).join(' ');
const texts = (lines: string[]): string[] =>
  (tableOf(lines)?.entries ?? []).map(({ text }) => text);

describe('headings, in the words people use', () => {
  const LANGUAGES: [string, string[], string[]][] = [
    [
      'English',
      ['No.|Qty|Thread size|Thread depth|Thru|Tap drill|Drill depth|Tool no.|Remarks', '1|4|M8x1.25-6H|16||6.8|20|T12|TYP', '2|2|M6|||5||T13|', '3|6|M5||yes|||T14|near side'],
      ['4x M8x1.25-6H ↧16 / TAP DRILL Ø6.8 ↧20 / TYP', '2x M6 / TAP DRILL Ø5', '6x M5 THRU / near side'],
    ],
    [
      'German',
      ['Pos.|Anzahl|Gewinde|Gewindetiefe|Durchgang|Kernloch-Ø|Bohrtiefe|Werkzeug-Nr.|Bemerkung', '1|4|M8x1,25|16||6,8|20|T4|verzinkt', '2|2|M6||ja|||T5|'],
      ['4x M8x1,25 ↧16 / TAP DRILL Ø6,8 ↧20 / verzinkt', '2x M6 THRU'],
    ],
    [
      'French',
      ['Rep.|Qté|Taraudage|Prof. taraudage|Débouchant|Avant-trou|Prof. perçage|N° outil|Remarques', 'A|4|M8|16||6,8|20|T4|', 'B|2|M6||oui|||T5|zingué'],
      ['4x M8 ↧16 / TAP DRILL Ø6,8 ↧20', '2x M6 THRU / zingué'],
    ],
    [
      'Spanish',
      ['Partida|Cantidad|Rosca|Profundidad de rosca|Pasante|Broca|Profundidad taladro|Nº herramienta|Observaciones', '1|4|M8|16||6,8|20|4|', '2|2|M6||sí|||5|LH'],
      ['4x M8 ↧16 / TAP DRILL Ø6,8 ↧20', '2x M6 THRU / LH'],
    ],
    [
      'Italian',
      ['Pos.|Q.tà|Filettatura|Profondità filetto|Passante|Punta|Profondità foro|Utensile|Note', '1|4|M8|16||6,8|20|U4|', '2|2|M6||sì|||U5|'],
      ['4x M8 ↧16 / TAP DRILL Ø6,8 ↧20', '2x M6 THRU'],
    ],
  ]; // prettier-ignore

  test.each(LANGUAGES)('%s', (_, lines, wanted) => {
    expect(kinds(pasted(...lines))).toBe(
      'item quantity thread depth through drill drill-depth tool remark',
    );
    expect(texts(pasted(...lines))).toEqual(wanted);
  });

  test.each([
    ['Size|Pitch|Class', 'M8|1.25|6H', 'M8x1.25-6H'],
    ['Size|TPI|Fit', '1/4|20|2B', '1/4-20-2B'],
    ['Thread|Drill size', 'M8|Ø6.8', 'M8 / TAP DRILL Ø6.8'],
    ['Thread|Drill', '1/4-20 UNC|#7', '1/4-20 UNC / #7 DRILL'],
    ['Thread|Drill', '5/16-18|F', '5/16-18 / F DRILL'],
    ['Thread|Depth (in)', 'M8|.63', 'M8 ↧.63 in'],
    ['Thread|Depth [mm]', '1/4-20|12', '1/4-20 ↧12 mm'],
    ['Thread|Thru|Thickness', 'M8|THRU|40', 'M8 THRU 40'],
    ['Thread|Thru|Depth', 'M8|no|', 'M8 BLIND'],
    ['Thread|Csk', 'M8|8.4', 'M8 / ⌵ Ø8.4'],
    ['Thread|Depth', 'M8|16 +1/-0', 'M8 ↧16 +1/-0'],
    ['Callout|Qty', 'M8 ↧16|4 pcs', '4x M8 ↧16'],
  ])('%s over %s', (heading, row, text) => {
    expect(texts(pasted(heading, row))).toEqual([text]);
  });

  test('a heading nobody knows is read with its cells, so that nothing of it is lost', () => {
    const [first] = planDrawing(pasted('Qty|Thread|Depth|Hardness', '4|M8|16|HRC 45'), {
      material: 'steel-low',
    }).holes;
    expect(texts(pasted('Qty|Thread|Depth|Hardness', '4|M8|16|HRC 45'))).toEqual([
      '4x M8 ↧16 / Hardness HRC 45',
    ]);
    expect(first?.callout.ok && first.callout.notes.map(({ code }) => code)).toContain('not-read');
  });

  test('words in a column of places are read, coordinates are not', () => {
    const lines = pasted('Hole|X|Y|Size', 'A1|12.5|40|M8 ↧16', 'A2|50|40|M8 ↧16');
    expect(texts(lines)).toEqual(['M8 ↧16', 'M8 ↧16']);
    expect(texts(pasted('Location|Thread', 'both sides|M8 THRU'))).toEqual([
      'M8 THRU / both sides',
    ]);
  });
});

describe('without headings', () => {
  test.each([
    ['a column of whole numbers is the quantity', ['4|M8 ↧16', '2|M6 THRU'], ['4x M8 ↧16', '2x M6 THRU']],
    ['one row alone: the count', ['1|3/8-16'], ['1x 3/8-16']],
    ['1, 2, 3 counts the rows', ['1|M8 ↧16', '2|M6 THRU', '3|M5 THRU'], ['M8 ↧16', 'M6 THRU', 'M5 THRU']],
    ['10, 20, 30 too', ['10|M8 THRU', '20|M6 THRU'], ['M8 THRU', 'M6 THRU']],
    ['a number of the row and a quantity', ['1|4|M8|16', '2|6|M6|12'], ['4x M8 ↧16', '6x M6 ↧12']],
    ['depth and hole', ['4|M8x1,25|16,5|20', '2|M6|12|16'], ['4x M8x1,25 ↧16,5 / DRILL 20 DEEP', '2x M6 ↧12 / DRILL 16 DEEP']],
    ['drill, depth and hole', ['4|M8|6.8|16|20', '2|M6|5.0|12|16'], ['4x M8 ↧16 / TAP DRILL Ø6.8 ↧20', '2x M6 ↧12 / TAP DRILL Ø5.0 ↧16']],
    ['a pitch', ['4|M8|1|16', '4|M10|1.25|20'], ['4x M8x1 ↧16', '4x M10x1.25 ↧20']],
    ['the quantity last', ['M8 ↧16|4', 'M6 THRU|12'], ['4x M8 ↧16', '12x M6 THRU']],
    ['4 cannot be a depth of M10', ['M8|4', 'M10|4'], ['4x M8', '4x M10']],
    ['THRU in the column of depths', ['4|M8|16', '2|M6|THRU'], ['4x M8 ↧16', '2x M6 THRU']],
  ])('%s', (_, lines, wanted) => {
    expect(texts(pasted(...lines))).toEqual(wanted);
  }); // prettier-ignore

  test('16 beside M8 may be a depth or a number of holes: it is asked about', () => {
    const { holes } = planDrawing(pasted('M8|16', 'M6|12'), { material: 'steel-low' });
    expect(kinds(pasted('M8|16', 'M6|12'))).toBe('thread unclear');
    expect(holes.map(({ verdict }) => verdict)).toEqual(['caution', 'caution']);
  });
});

describe('CSV', () => {
  test('semicolons with decimal commas, quotes, a unit in the heading', () => {
    const lines = [
      'Pos.;Anzahl;Gewinde;Gewindetiefe (mm);Bemerkung',
      '1;4;"M8x1,25";16,5;"zuerst bohren; dann ""blasen"""',
    ];
    expect(texts(lines)).toEqual(['4x M8x1,25 ↧16,5 mm / zuerst bohren; dann "blasen"']);
  });

  test('commas', () => {
    expect(texts(['Qty,Size,Depth', '4,M8,16', '2,"M6x0,75",12'])).toEqual([
      '4x M8 ↧16',
      '2x M6x0,75 ↧12',
    ]);
  });

  test.each([
    [['2X 1/2-13 UNC-2B THRU, 7/16 DRILL THRU', '4X M8, 16 DEEP']],
    [['M8-6H ↧16; Ø6.8 ↧22', 'M6-6H ↧12; Ø5 ↧16']],
    [['M8x1,25-6H, 16 tief']],
    [['', '  ']],
  ])('callouts with commas or semicolons are no table: %s', (lines) => {
    expect(tableOf(lines)).toBeNull();
  });

  test('an inch mark opens no quoted cell, and a cell of two lines is one row', () => {
    const lines = pasted('Qty|Callout', '2|1/2" NPT', '4|"M8x1.25', 'THRU"', '1|M5 THRU');
    expect(tableOf(lines)?.entries.map(({ text, lines: at }) => [text, at])).toEqual([
      ['2x 1/2" NPT', [2]],
      ['4x M8x1.25 THRU', [3, 4]],
      ['1x M5 THRU', [5]],
    ]);
  });
});

describe('a person’s own choice of columns', () => {
  test('stands above headings and guesses', () => {
    const lines = pasted('M8|16', 'M6|12');
    const said = (columns: (ColumnKind | undefined)[]) =>
      tableOf(lines, columns)?.entries.map(({ text }) => text);
    expect(said([undefined, 'depth'])).toEqual(['M8 ↧16', 'M6 ↧12']);
    expect(said([undefined, 'quantity'])).toEqual(['16x M8', '12x M6']);
    expect(said([undefined, 'left-out'])).toEqual(['M8', 'M6']);
    const planned = planDrawing(lines, { material: 'steel-low', columns: ['thread', 'quantity'] });
    expect(planned.holes.map(({ callout }) => callout.ok && callout.value.count)).toEqual([16, 12]);
  });
});

describe('in a drawing', () => {
  test('the headings are no hole; lines between the rows are kept; tools stay with their rows', () => {
    const lines = pasted('Lid HL-118', '', 'Qty|Thread|Tool', '4|M8|T1', 'BREAK EDGES', '2|M6|T2');
    const { holes } = planDrawing(lines, { material: 'steel-low' });
    expect(holes.map(({ line }) => line)).toEqual([lines[0], lines[3], lines[4], lines[5]]);
    expect(tableOf(lines)?.entries.map(({ tool }) => tool)).toEqual([
      undefined, 'T1', undefined, 'T2',
    ]); // prettier-ignore
    expect(tableOf(lines)?.header).toBe(3);
  });

  test('headings printed again on the next page are no hole either', () => {
    const lines = pasted('Qty|Thread', '4|M8', 'Qty|Thread', '2|M6');
    expect(texts(lines)).toEqual(['4x M8', '2x M6']);
  });
});

const CELLS = ['', '4', '1', '2', 'M8', 'M6x1', '16', '12,5', 'THRU', 'x', '"', '"a', 'Qty', 'Thread', 'Depth', '6H', 'T1', '#7', 'F', '-', 'zinc', '\u0000', '½', '1/4-20', '1/2"', 'LH', '__proto__']; // prettier-ignore
const table = fc
  .array(
    fc.array(fc.oneof(fc.constantFrom(...CELLS), fc.string({ maxLength: 6 })), {
      minLength: 1,
      maxLength: 6,
    }),
    { maxLength: 6 },
  )
  .chain((rows) =>
    fc.constantFrom('\t', ';', ',').map((mark) => rows.map((cells) => cells.join(mark))),
  );

describe('any lines', () => {
  test('give rows that are each read or refused; no cell of a row that may matter is lost', () => {
    fc.assert(
      fc.property(
        table,
        fc.array(fc.constantFrom(...COLUMN_KINDS), { maxLength: 6 }),
        (lines, own) => {
          const found = tableOf(lines, own);
          if (!found) return;
          const silent = new Set(['item', 'tool', 'left-out']);
          for (const { text, cells, lines: at } of found.entries) {
            readCallout(text);
            expect(at.every((line) => line >= 1 && line <= lines.length)).toBe(true);
            for (const [place, cell] of (cells ?? []).entries()) {
              const { kind } = found.columns[place] ?? { kind: 'remark' };
              if (silent.has(kind) || kind === 'through') continue;
              const bare = (said: string) => said.replace(/[\s"=x×#.,-]/gi, '').toLowerCase();
              if (kind !== 'quantity' && kind !== 'pitch') expect(bare(text)).toContain(bare(cell));
            }
          }
        },
      ),
      { numRuns: 1500, seed: 19 },
    );
  });

  test('every filled line of a table is in an entry or is a heading', () => {
    fc.assert(
      fc.property(table, (lines) => {
        const found = tableOf(lines);
        if (!found) return;
        const kept = new Set(found.entries.flatMap((entry) => entry.lines));
        lines.forEach((line, at) => {
          const blank = line.replaceAll(found.separator, '').trim() === '';
          if (blank || kept.has(at + 1) || found.header === at + 1) return;
          expect(line).toMatch(/Qty|Thread|Depth/);
        });
      }),
      { numRuns: 1000, seed: 20 },
    );
  });
});
