/** Every code that reading a thread can give: so that none goes without words. */

/** Why a text was not read as a thread. `data.typed` always holds the text as typed. */
export const THREAD_PROBLEM_CODES = [
  /** Nothing was typed. */
  'empty',
  /** No rule fits. */
  'unreadable',
  /** A whole thread, then something that is none of it. data: extra, suggestion. */
  'extra-words',
  /** 8x1.25. data: suggestion. */
  'metric-letter-missing',
  /** 6g, 2A, G1/4A: a screw's class. data: class, suggestion. */
  'external-class',
  /** 9H, 4B: no such internal class. data: class, system (metric or unified). */
  'internal-grade',
  /** M8-2B, 1/4-20-6H. data: class, suggestion. */
  'class-of-other-system',
  /** M8x1.25-6, 1/4-20 UNC-2. data: class, suggestion. */
  'class-letter-missing',
  /** M8x6H. data: class, suggestion. */
  'class-as-pitch',
  /** M8x1.25x30. data: length, suggestion. */
  'length-not-needed',
  /** 1/4-20 UNF, M8x1 coarse, 1/4-20 NPT. data: size, series, tpi or pitch, offers; pairSeries and seriesTpi where known. */
  'series-pitch-mismatch',
  /** 1/4, #10, M15. data: size, and offers where the size has any. */
  'pitch-missing',
  /** 10-28, 6-10, 10/32: number size or inches, and no one pair that is sure. data: size, offers. */
  'which-pitch',
  /** 1/4 BSP. data: size, offers. */
  'which-pipe',
  /** M8x20, 1/4-3. data: size, and pitch (mm) or tpi. */
  'pitch-too-large',
  /** M8x0. data: size, and pitch (mm) or tpi. */
  'pitch-too-fine',
  /** #7, 9-24. data: number. */
  'no-such-number-size',
  /** 1/3-20. data: size. */
  'no-such-inch-size',
  /** 11/4-7: 1-1/4 or 2-3/4? data: fraction, offers. */
  'improper-fraction',
  /** 5/16 NPT. data: size, form. */
  'no-such-pipe-size',
  /** R1/2: the male taper. data: size, offers. */
  'external-pipe',
  /** Trapezoidal, ACME, Whitworth, BA, several starts and the like. data: family. */
  'not-covered',
  /** M0, M2000. data: size. */
  'size-out-of-range',
] as const;

export type ThreadProblemCode = (typeof THREAD_PROBLEM_CODES)[number];

/** What to know about a thread that was read. */
export const THREAD_NOTE_CODES = [
  /** 10-32 read as #10-32. data: typed, size. */
  'number-size-read',
  /** The pair stands in no series list. data: designation. */
  'not-standard-pair',
  /** data: class. */
  'class-assumed',
  /** M8 read as coarse. data: pitch. */
  'coarse-assumed',
  /** 1/4 UNC read as 20 threads per inch. data: series, tpi. */
  'pitch-from-series',
  /** M8-1.25: the number after the dash taken for the pitch. data: pitch. */
  'dash-pitch',
  /** .313 read as 5/16. data: typed, size. */
  'decimal-read-as',
  /** NC, NF, NEF, NS, N. data: typed, series. */
  'old-series-name',
  /** UN typed where the pair has a name of its own. data: typed, series. */
  'series-named',
  /** UNR is a screw's root. data: typed, series. */
  'external-root-name',
  /** 3-8 read as 3 inch with 8 threads. data: size, fraction, example. */
  'did-you-mean-fraction',
  /** 6H asked where ISO 965-1 has no cell. data: class (the usual one). */
  'six-h-not-tabulated',
  /** 6H/6g: the hole's part was read. data: typed, class. */
  'fit-internal-part',
  /** m8-6g read as 6G. data: typed, class. */
  'lower-case-class',
  /** BSPP, BSPT and the like. data: typed, form. */
  'pipe-name',
  /** (21), (22), (23) dropped. data: typed. */
  'gauging-dropped',
] as const;

export type ThreadNoteCode = (typeof THREAD_NOTE_CODES)[number];
