/**
 * Every work the handbook leans on, and how far to trust it.
 * A number without an entry here has no place in the core.
 */

/** What kind of ground a number stands on. */
export type SourceKind =
  | 'standard'
  | 'handbook'
  | 'paper'
  | 'makers-table'
  | 'open-data'
  | 'regulation'
  | 'common-practice'
  | 'memory'
  | 'estimate'
  | 'derived';

export interface Source {
  title: string;
  kind: SourceKind;
  /** Edition or year, where one is meant. */
  edition?: string;
  /** How it reached us and how far to trust it: read, recomputed, recalled. */
  trust: string;
}

export const SOURCES = {
  'iso-68-1': {
    title: 'ISO 68-1, ISO general purpose screw threads: basic profile',
    kind: 'standard',
    edition: '1998',
    trust: 'Geometry recomputed; the standard itself was not read.',
  },
  'iso-261': {
    title: 'ISO 261, ISO general purpose metric screw threads: general plan',
    kind: 'standard',
    edition: '1998',
    trust: 'Pairs checked against threadlib for half of M1 to M64; the rest from memory.',
  },
  'iso-724': {
    title: 'ISO 724, ISO general purpose metric screw threads: basic dimensions',
    kind: 'standard',
    edition: '1993',
    trust: 'Recomputed; agrees with every row checked.',
  },
  'iso-965-1': {
    title: 'ISO 965-1, ISO general purpose metric screw threads: tolerances',
    kind: 'standard',
    edition: '2013',
    trust:
      'Grade 6 checked against threadlib, position G read in FreeCAD; other grades partly from memory. The standard was not read.',
  },
  'asme-b1-1': {
    title: 'ASME B1.1, Unified inch screw threads',
    kind: 'standard',
    edition: '2003',
    trust:
      'Rules read in threadlib and BOSL2, recomputed against rows of a handbook and of tap makers’ pages; the standard itself was not read.',
  },
  'asme-b94-9': {
    title: 'ASME B94.9, Taps: ground and cut threads',
    kind: 'standard',
    edition: '1999',
    trust: 'Chamfer ranges as printed in US Army TM 9-254; semi-bottoming from memory.',
  },
  'iso-129-1': {
    title: 'ISO 129-1 and ISO 15786, Technical drawings: dimensions and simplified holes',
    kind: 'standard',
    trust: 'Symbols and order of a hole callout from memory; the standards were not read.',
  },
  'iso-6410': {
    title: 'ISO 6410-1, Technical drawings: screw threads and threaded parts',
    kind: 'standard',
    trust: 'Depth form M12×16/Ø10,2×20 from memory.',
  },
  'asme-y14-5': {
    title: 'ASME Y14.5, Dimensioning and tolerancing: hole callouts',
    kind: 'standard',
    trust: 'Depth, countersink and counterbore symbols from memory.',
  },
  'tm-9-254': {
    title: 'US Army TM 9-254, General maintenance: taps and chamfer lengths',
    kind: 'handbook',
    trust: 'Public domain; ranges as read there.',
  },
  'iso-8830': {
    title: 'ISO 8830 / DIN 2197, chamfer forms of taps',
    kind: 'standard',
    trust:
      'Form letters and ranges as tap makers’ catalogues print them; they differ by half a thread. The standards were not read.',
  },
  'din-tap-lengths': {
    title: 'DIN 371, 374 and 376, Machine taps: lengths and shanks',
    kind: 'standard',
    trust:
      'As tap makers’ catalogues print them; rows that were recalled are marked from memory. The standards were not read.',
  },
  'handbook-tap-blanks': {
    title: "Machinery's Handbook, standard tap dimensions (ASME B94.9), table 6, page 986",
    kind: 'handbook',
    edition: '31st',
    trust:
      'Overall lengths and shanks from #4 to 1 inch read on the page; lengths of thread from memory.',
  },
  'iso-2306': {
    title: 'ISO 2306, Drills for use prior to tapping screw threads',
    kind: 'standard',
    edition: '1972',
    trust:
      'Read in FreeCAD, whose table is labelled ISO 2306; every size lies inside 6H. The standard was not read.',
  },
  'handbook-drills': {
    title: 'cq_warehouse and printed lists, tap drills of inch threads',
    kind: 'open-data',
    trust:
      'The drill of each UNC and UNF thread to 1 inch as both print it; larger ones are from memory and marked so. Percentages recomputed.',
  },
  'handbook-holes': {
    title: "Machinery's Handbook, hole sizes before tapping by length of engagement, page 2170",
    kind: 'handbook',
    edition: '31st',
    trust: 'Its first rules read on the page; the row beyond 1.5 diameters from memory.',
  },
  'drill-oversize': {
    title: 'How much larger than itself a drill cuts in steel and iron',
    kind: 'memory',
    trust: 'A handbook’s means, recalled and not read again.',
  },
  'stocked-drills': {
    title: 'Diameters in which twist drills are kept in stock',
    kind: 'common-practice',
    trust:
      'The steps of the trade’s lists, recalled; they follow ISO 235 and DIN 338, which were not read.',
  },
  'din-76-1': {
    title: 'DIN 76-1, Thread run-outs and undercuts',
    kind: 'standard',
    trust: 'Column e1, regular, read in FreeCAD; the standard was not read.',
  },
  'handbook-tap-limits': {
    title:
      "Machinery's Handbook, tap limits: pages 972 and 1006 to 1007, tables 20, 21, 25 and 26a",
    kind: 'handbook',
    edition: '31st',
    trust: 'Worked examples and rows read on the page and recomputed.',
  },
  'tap-limit-lists': {
    title: 'Recommended tap limits for class 2B, 3B and 6H, as catalogues print them',
    kind: 'makers-table',
    trust:
      'Inch sizes to 3/4 and metric M5 to M10 read; larger ones from memory. Every one is checked against its class here.',
  },
  'iso-2857': {
    title:
      'ISO 2857, Ground thread taps for ISO metric threads: tolerances of the threaded portion',
    kind: 'standard',
    edition: '1973',
    trust:
      'Shares of the tolerance from a diagram; class 2 agrees with catalogue limits to 0.001 mm.',
  },
  'asme-b1-2': {
    title: 'ASME B1.2, Gages and gaging for unified inch screw threads',
    kind: 'standard',
    edition: '1983',
    trust: 'The rule of three turns read as quoted by gauge makers; gauge tolerances from memory.',
  },
  'iso-1502': {
    title: 'ISO 1502, ISO general purpose metric screw threads: gauges and gauging',
    kind: 'standard',
    edition: '1996',
    trust: 'The rule of two turns and what each gauge proves read as quoted by gauge makers.',
  },
  'iso-228-1': {
    title: 'ISO 228-1, Pipe threads where pressure-tight joints are not made on the threads',
    kind: 'standard',
    edition: '2000',
    trust:
      'Sizes and tolerances read in threadlib, which agrees with a handbook page to size 2. The standard was not read.',
  },
  'iso-7-1': {
    title: 'ISO 7-1, Pipe threads where pressure-tight joints are made on the threads',
    kind: 'standard',
    edition: '1994',
    trust: 'Gauge lengths and the place of the gauge plane from memory.',
  },
  'asme-b1-20-1': {
    title: 'ASME B1.20.1, Pipe threads, general purpose (inch)',
    kind: 'standard',
    edition: '2013',
    trust:
      'Diameters and threads per inch read in FreeCAD; hand-tight lengths from 1/8 to 2 as a pipe stockist prints the table; formulas, and size 1/16, from memory.',
  },
  'handbook-stress-areas': {
    title: "Machinery's Handbook, stress areas and length of engagement of screw threads",
    kind: 'handbook',
    edition: '24th',
    trust: 'Formula read as quoted; printed stripping areas recomputed.',
  },
  kienzle: {
    title: 'Kienzle specific cutting force, after König and Klocke, VDI 3206 and VDI 3323 groups',
    kind: 'memory',
    trust:
      'Group values recalled; cross-checked by back-calculation from a published torque table.',
  },
  'tap-chip-model': {
    title: 'Torque and tooth load of a chamfered tap, from ISO 68-1 geometry',
    kind: 'derived',
    trust: 'Derived here; within about 40 % of a sharp, oiled tap.',
  },
  'tapping-by-cutting': {
    title: 'On the Mechanics of Tapping by Cutting, J. Eng. Ind. 99(1):257',
    kind: 'paper',
    edition: '1977',
    trust: 'Abstract read, not the paper: torque exceeds what removing the metal alone needs.',
  },
  'stabler-1951': {
    title: 'G. V. Stabler, The Fundamental Geometry of Cutting Tools, Proc. I. Mech. E. 165, 14–21',
    kind: 'paper',
    edition: '1951',
    trust:
      'The paper was not read. Its rule, as a later text on the theory of machining quotes it with the year: the chip leaves at about the angle the edge is skewed by, and measured chips agree only roughly. Volume and pages from memory.',
  },
  'makers-style-factors': {
    title: "A tool maker's published torque factors by tap style and chamfer",
    kind: 'makers-table',
    trust:
      'Cutting styles: one test and one table, which disagree by 15 %. Form taps: published ratios to a cutting tap from 1.5 to 3.',
  },
  'measured-m3': {
    title: 'Thesis on M3 tapping torque, 6061-T6 at 200 rev/min: dry, oil and grease',
    kind: 'paper',
    trust: 'Abstract only: 0.18 N·m dry, 0.11 in oil, 0.10 in grease; the hole is not stated.',
  },
  'makers-torque-table': {
    title: "A tool maker's published torque formula, specific forces and tap coefficients",
    kind: 'makers-table',
    edition: '2016 catalogue',
    trust: 'Read on the page. Kept for checks: its constants belong to its own formula only.',
  },
  'speed-charts': {
    title: 'Two published charts of tapping speed for HSS taps',
    kind: 'makers-table',
    trust: 'They differ by 1.5 to 2 times: the whole range is shown.',
  },
  'chip-bulking': {
    title: 'Bulking of turnings and chips, a chip-conveyor guide',
    kind: 'makers-table',
    trust: 'How much loose chips swell. Conveyor data, not tapping tests.',
  },
  'packed-chips': {
    title: 'Room that chips take once a tap has packed them',
    kind: 'estimate',
    trust:
      'Our factors, taken from within what a conveyor guide gives loose chips; no test of packed chips is behind them.',
  },
  'friction-share': {
    title: 'Share of the torque that the full threads rub away',
    kind: 'estimate',
    trust: 'An assumption of the torque model; no document gives it metal by metal.',
  },
  'nist-rs274': {
    title: 'The NIST RS274/NGC Interpreter, version 3, NISTIR 6556',
    kind: 'standard',
    edition: '2000',
    trust: 'Table of modal groups read in a transcription; the rest from memory. A public report.',
  },
  'fed-std-h28': {
    title: 'FED-STD-H28/2B, Screw-thread standards: shear areas and engagement',
    kind: 'memory',
    trust:
      'Formulas recalled; the areas they give agree with two printed tables. The pages of the standard were not reached.',
  },
  'shear-strength': {
    title: 'Shear strength of common metals, about 0.6 of the tensile strength',
    kind: 'memory',
    trust: 'Recalled, with no document behind a single value; the certificate of the metal rules.',
  },
  'screw-grades': {
    title: 'ISO 898-1, ISO 3506-1 and SAE J429 screw grades',
    kind: 'memory',
    trust: 'Tensile strengths from memory.',
  },
  'osha-1910-133': {
    title: '29 CFR 1910.133 (US), Eye and face protection',
    kind: 'regulation',
    trust: 'Named for what it covers; read the current text, or the rule of your own country.',
  },
  'osha-1910-147': {
    title: '29 CFR 1910.147 (US), Control of hazardous energy: lockout and tagout',
    kind: 'regulation',
    trust: 'Named for what it covers; read the current text, or the rule of your own country.',
  },
  'osha-1910-212': {
    title: '29 CFR 1910.212 (US), General requirements for all machines',
    kind: 'regulation',
    trust: 'Named for what it covers; read the current text, or the rule of your own country.',
  },
  'osha-1910-242': {
    title: '29 CFR 1910.242(b) (US), Compressed air used for cleaning',
    kind: 'regulation',
    trust:
      'The 30 psi limit, the chip guarding and the protective equipment checked against quotations of the rule.',
  },
  'osha-1910-252': {
    title: '29 CFR 1910.252 (US), Welding, cutting and brazing: general requirements',
    kind: 'regulation',
    trust: 'Named for what it covers; read the current text, or the rule of your own country.',
  },
  'osha-1910-1200': {
    title: '29 CFR 1910.1200 (US), Hazard communication: safety data sheets and labels',
    kind: 'regulation',
    trust: 'Named for what it covers; read the current text, or the rule of your own country.',
  },
  'osha-3170': {
    title: 'OSHA 3170, Safeguarding Equipment and Protecting Employees from Amputations',
    kind: 'regulation',
    edition: '2007',
    trust: 'Public guide; title and standing checked.',
  },
  'osha-fluids': {
    title: 'OSHA Metalworking Fluids: Safety and Health Best Practices Manual',
    kind: 'regulation',
    trust: 'Public guide; title and standing checked.',
  },
  hsg129: {
    title: 'HSE HSG129 (UK), Health and safety in engineering workshops',
    kind: 'regulation',
    edition: '2nd, 1999',
    trust: 'Public guide; title and contents checked.',
  },
  'nfpa-484': {
    title: 'NFPA 484, Standard for Combustible Metals',
    kind: 'regulation',
    trust: 'Named only; not read here.',
  },
  'tm-9-243': {
    title: 'US Army TM 9-243, Use and care of hand tools and measuring tools',
    kind: 'handbook',
    trust: 'Public domain; from memory of its chapter on taps and dies.',
  },
  threadlib: {
    title: 'threadlib, tables of thread dimensions (Adrian Schlatter and contributors)',
    kind: 'open-data',
    edition: '2019',
    trust:
      'BSD 3-Clause; its notice travels in /licences.txt. Read as data: ISO 965-2 limits, ISO 228-1 sizes and tolerances.',
  },
  freecad: {
    title: 'FreeCAD, tables of its hole tool',
    kind: 'open-data',
    trust: 'LGPL; values of standards were read in it, and none of its code was taken.',
  },
  'cq-warehouse': {
    title: 'cq_warehouse, lists of drills',
    kind: 'open-data',
    trust:
      'Apache 2.0; sizes were read in it, and none of its code was taken. Six number drills are rounded in it and were put right.',
  },
  bosl2: {
    title: 'BOSL2, formulas of screw tolerances',
    kind: 'open-data',
    trust:
      'BSD 2-Clause; rules of standards were read in it, and none of its code was taken. Its two 3B branches stand the wrong way round.',
  },
  'common-practice': {
    title: 'Common practice of the trade',
    kind: 'common-practice',
    trust: 'What setters do; no published source.',
  },
  'from-memory': {
    title: 'Recalled by the authors, not re-read',
    kind: 'memory',
    trust: 'Verify before you rely on it.',
  },
  derived: {
    title: 'Worked out here from geometry',
    kind: 'derived',
    trust: 'Check it with the formula beside it.',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;
