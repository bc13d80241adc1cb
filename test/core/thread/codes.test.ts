/** Every code can be had, so that its words are worth writing; the record types keep the list complete. */

import { expect, test } from 'vitest';
import type { ThreadNoteCode, ThreadProblemCode } from '../../../core/thread/codes';
import { THREAD_NOTE_CODES, THREAD_PROBLEM_CODES } from '../../../core/thread/codes';
import { noteCodes, problem } from './read-or-throw';

const problems: Record<ThreadProblemCode, string> = {
  empty: '',
  unreadable: 'hello',
  'extra-words': 'M8 THRU',
  'metric-letter-missing': '8x1.25',
  'external-class': 'M8-6g',
  'internal-grade': 'M8-9H',
  'class-of-other-system': 'M8-2B',
  'class-letter-missing': 'M8x1.25-6',
  'class-as-pitch': 'M8x6H',
  'length-not-needed': 'M8x1.25x30',
  'series-pitch-mismatch': '1/4-20 UNF',
  'pitch-missing': '1/4',
  'which-pitch': '10-28',
  'which-pipe': '1/4 BSP',
  'pitch-too-large': 'M8x20',
  'pitch-too-fine': 'M8x0',
  'no-such-number-size': '7-40',
  'no-such-inch-size': '1/3-20',
  'improper-fraction': '11/4-7',
  'no-such-pipe-size': '5/16 NPT',
  'external-pipe': 'R1/2',
  'not-covered': 'Tr20x4',
  'size-out-of-range': 'M0',
};

const notes: Record<ThreadNoteCode, string> = {
  'number-size-read': '10-32',
  'not-standard-pair': 'M8x1.3',
  'class-assumed': 'M8',
  'coarse-assumed': 'M8',
  'pitch-from-series': '1/4 UNC',
  'dash-pitch': 'M8-1.25',
  'decimal-read-as': '.313-18',
  'old-series-name': '3/8-16 NC',
  'series-named': '1/4-20 UN',
  'external-root-name': '1/4-20 UNRC',
  'did-you-mean-fraction': '3-8',
  'six-h-not-tabulated': 'M1-6H',
  'fit-internal-part': 'M8-6H/6g',
  'lower-case-class': 'm8-6g',
  'pipe-name': '1/4 BSPP',
  'gauging-dropped': '1/4-20 UNC-2B (21)',
};

test.each(THREAD_PROBLEM_CODES)('problem %s', (code) => {
  expect(problem(problems[code]).code).toBe(code);
});

test.each(THREAD_NOTE_CODES)('note %s', (code) => {
  expect(noteCodes(notes[code])).toContain(code);
});
