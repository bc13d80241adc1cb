/** Words of the lesson on how deep is enough: its chart, its choices, its table. English. */

export const METALS = {
  title: 'The weaker the tapped metal, the more thread one screw needs',
  subtitle: '{thread}, screw of grade {screw}; full thread, in diameters of the screw',
  description:
    'A level bar for each metal, from the length at which screw and thread are equally strong to the most that is asked for. Medium-carbon steel stays below one diameter, ductile iron and low-carbon steel lie about it, wrought aluminium and grey iron above, and soft copper and cast aluminium reach past two.',
  axis: 'Full thread',
  unit: 'diameters',
  rows: 'Tapped metal',
  bands:
    'each from the length at which screw and thread are equally strong to the most of the usual margin over it; a dot marks the least of that margin',
  source: 'static stripping, worst sizes; strengths from memory',
} as const;

export const PICK_METAL = {
  label: 'The tapped metal',
  said: 'In {material} this screw and its thread give together at {matching:length} of full thread, {diameters:number} diameters. Ask for {least:length} to {most:length}.',
} as const;

export const PICK_SCREW = {
  label: 'Grade of the screw',
  said: 'A screw of grade {grade} has a tensile strength of {strength:strength}. In {material} it gives together with its thread at {matching:length}, {diameters:number} diameters. Ask for {least:length} to {most:length}.',
} as const;

export const NUMBERS = {
  caption: 'Three numbers for the designer: {thread}, screw of grade {screw}, {material}',
  what: 'What',
  matching: 'Screw and thread equally strong at',
  ask: 'To ask for, with the usual margin',
  drawn: 'Drawn',
} as const;
