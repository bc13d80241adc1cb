/** What was said of the part around the hole, in a few words each, for card and set-up sheet. English. */

export const PART_SAID = {
  slant: 'Face {angle}° off square',
  slantFlat: 'Face {angle}° off square, flat first',
  counterbore: 'Counterbore {diameter} across, {depth} deep',
  bore: {
    before: 'Bore {width} across it, cut before',
    after: 'Bore {width} across it, cut after',
  },
  boreFrom: ', from {from}',
  slot: {
    before: 'Slot {width} along it, cut before',
    after: 'Slot {width} along it, cut after',
  },
  interrupted: 'Crossed, width not known',
  lost: '{length} of thread lost',
  cored: 'Cast-in hole',
  later: 'Later: {processes}',
  processes: { harden: 'hardened', plate: 'plated', anodise: 'anodised', weld: 'welded' },
  duty: {
    lifting: 'Lifting: not judged',
    pressure: 'Pressure: not judged',
    structure: 'Structure: not judged',
    vehicle: 'Vehicle: not judged',
    medical: 'Medical: not judged',
  },
} as const;
