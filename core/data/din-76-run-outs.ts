/**
 * Run-out of internal threads, mm by pitch: from the end of the full thread to the floor of the hole.
 * Source: DIN 76-1, dimension e1, regular; read in FreeCAD's table.
 */
// prettier-ignore
export const RUN_OUT: Readonly<Record<string, number>> = {
  0.5: 2.8, 0.7: 3.8, 0.8: 4.2, 1: 5.1, 1.25: 6.2, 1.5: 7.3, 1.75: 8.3, 2: 9.3, 2.5: 11.2, 3: 13.1,
  3.5: 15.2, 4: 16.8, 4.5: 18.4, 5: 20.8, 5.5: 22.4, 6: 24,
};
