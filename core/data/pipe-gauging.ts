/**
 * Gauge lengths and usual drills of pipe threads, by size.
 * - 60 degree taper (ASME B1.20.1), inches: hand-tight engagement L1, from 1/8 up as a pipe stockist prints it; drill where the hole is taper-reamed and
 *   where it is not. From memory and common practice; drill lists differ by one step (1/8 also 11/32, 1/16 also C).
 *   Dryseal threads take the same drills.
 * - 55 degree (ISO 7-1), mm: gauge length; drills for the taper Rc without a reamer and the parallel Rp. From memory.
 * - 55 degree parallel (ISO 228-1), mm: drills read in FreeCAD; 1/16 as common practice has it (FreeCAD has 6.6).
 */

export interface TaperGauging {
  /** Hand-tight engagement L1, inches. */
  engagement: number;
  /** Names of the drills. */
  reamed: string;
  straight: string;
}

// prettier-ignore
export const AMERICAN_TAPER: Readonly<Record<string, TaperGauging>> = {
  '1/16': { engagement: 0.16, reamed: 'A', straight: 'D' },
  '1/8': { engagement: 0.1615, reamed: '21/64', straight: 'R' },
  '1/4': { engagement: 0.2278, reamed: '27/64', straight: '7/16' },
  '3/8': { engagement: 0.24, reamed: '9/16', straight: '37/64' },
  '1/2': { engagement: 0.32, reamed: '11/16', straight: '23/32' },
  '3/4': { engagement: 0.339, reamed: '57/64', straight: '59/64' },
  '1': { engagement: 0.4, reamed: '1-1/8', straight: '1-5/32' },
  '1-1/4': { engagement: 0.42, reamed: '1-15/32', straight: '1-1/2' },
  '1-1/2': { engagement: 0.42, reamed: '1-23/32', straight: '1-47/64' },
  '2': { engagement: 0.436, reamed: '2-3/16', straight: '2-7/32' },
};

/** Gauge length of Rp and Rc, mm. */
// prettier-ignore
export const GAUGE_LENGTH: Readonly<Record<string, number>> = {
  '1/16': 4, '1/8': 4, '1/4': 6, '3/8': 6.4, '1/2': 8.2, '3/4': 9.5, '1': 10.4, '1-1/4': 12.7,
  '1-1/2': 12.7, '2': 15.9,
};

/** Usual drills, mm. */
// prettier-ignore
export const WHITWORTH_DRILLS: Readonly<Record<'G' | 'Rp' | 'Rc', Readonly<Record<string, number>>>> = {
  G: { '1/16': 6.8, '1/8': 8.8, '1/4': 11.8, '3/8': 15.25, '1/2': 19, '5/8': 21, '3/4': 24.5, '7/8': 28.25,
    '1': 30.75, '1-1/4': 39.5, '1-1/2': 45.25, '2': 57 },
  Rp: { '1/8': 8.6, '1/4': 11.5, '3/8': 15, '1/2': 18.5, '3/4': 24, '1': 30.25 },
  Rc: { '1/8': 8.4, '1/4': 11.2, '3/8': 14.75, '1/2': 18.25, '3/4': 23.75, '1': 30 },
};
