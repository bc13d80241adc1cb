/**
 * What the planner says of many holes, kept as a file in lines that can be read: of every corner of the rules
 * at least one hole. A change of a rule shows as the lines it changed, and is looked at. What an answer
 * should be is for the other tests to say.
 */
import { expect, test } from 'vitest';
import { planHole, type HoleRequest } from '../../../core';
import { plain } from './plain';

const blind = (depth?: number, at: 'shoulder' | 'point' = 'shoulder'): HoleRequest['hole'] =>
  depth === undefined ? { kind: 'blind' } : { kind: 'blind', limit: { at, depth } };
const through = (thickness: number, more: object = {}): HoleRequest['hole'] => ({
  kind: 'through',
  thickness,
  ...more,
});
const drive = (name: NonNullable<HoleRequest['spindle']>['drive'], more: object = {}) => ({
  spindle: { drive: name, ...more },
});

type Hole = Omit<HoleRequest, 'thread' | 'material'>;
const holes = (thread: string, material: HoleRequest['material'], ...each: Hole[]): HoleRequest[] =>
  each.map((hole) => ({ thread, material, ...hole }));

const REQUESTS: HoleRequest[] = [
  ...holes(
    'M8',
    'steel-low',
    { hole: blind() },
    { hole: blind(), fullThread: 4 },
    { hole: blind(), fullThread: 30 },
    { hole: blind(18), fullThread: 16 },
    { hole: blind(17.25), fullThread: 16 },
    { hole: blind(17), fullThread: 16 },
    { hole: blind(22, 'point'), fullThread: 16 },
    { hole: blind(24), fullThread: 16, drillPoint: 180 },
    { hole: blind(24), fullThread: 16, externalCentre: 2 },
    { hole: blind(), ...drive('hand') },
    { hole: blind(20), fullThread: 16, ...drive('hand') },
    { hole: blind(), ...drive('floating', { torque: 12, maxRpm: 300 }) },
    { hole: blind(), ...drive('synchronous', { torque: 2 }) },
    { hole: blind(), ...drive('synchronous', { torque: 5, maxRpm: 4000, acceleration: 300 }) },
    { hole: through(8) },
    { hole: through(3) },
    { hole: through(1) },
    { hole: through(40) },
    { hole: through(8, { clearBelow: 2 }) },
    { hole: through(8, { clearBelow: 0 }) },
    { hole: through(8, { chipsMayFall: false }) },
    { hole: through(12), fullThread: 8, ...drive('hand') },
    { hole: through(8), interrupted: true },
    { hole: blind(), interrupted: true },
    { hole: blind(22), fullThread: 16, entry: { angle: 10 } },
    { hole: blind(22), fullThread: 16, entry: { angle: 10, flat: true } },
    {
      hole: through(12),
      entry: { angle: 25, flat: true },
      counterbore: { diameter: 14, depth: 3 },
    },
    { hole: through(12), crossing: { kind: 'bore', width: 6, from: 3, cut: 'before' } },
    { hole: blind(), crossing: { kind: 'bore', width: 9, cut: 'before' } },
    { hole: blind(), crossing: { kind: 'bore', width: 6, from: 3, cut: 'after' } },
    { hole: blind(), crossing: { kind: 'slot', width: 4, cut: 'before' } },
    { hole: through(8), crossing: { kind: 'bore', width: 9, cut: 'before' } },
    {
      hole: through(8),
      crossing: { kind: 'bore', width: 4, from: 2, cut: 'before' },
      ...drive('floating'),
    },
    { hole: blind(), counterbore: { diameter: 8.5, depth: 20 } },
    { hole: blind(), counterbore: { diameter: 15, depth: 60 } },
    { hole: blind(), fullThread: 70 },
    { hole: blind(), cored: true, duty: 'pressure' },
    { hole: blind(), later: ['harden', 'plate', 'weld'], coating: { thickness: [0.005, 0.01] } },
    { hole: blind(), later: ['anodise'], duty: 'lifting' },
    { hole: blind(), stockedDrills: ['number', 'letter', 'fraction'] },
    { hole: blind(), stockedDrills: ['metric'] },
    { hole: blind(), tapWeb: 3 },
    { hole: blind(), coating: { thickness: [0.005, 0.008] } },
    { hole: blind(), coating: { thickness: [0.02, 0.03] } },
    { hole: blind(), measured: { torque: 6, style: 'spiral-flute', chamfer: 'plug' } },
    { hole: blind(), measured: { torque: 9, style: 'spiral-point', chamfer: 'plug', worn: true } },
    { hole: blind(), measured: { torque: 5, style: 'straight-flute', chamfer: 'bottoming' } },
    { hole: blind(), measured: { torque: 12, style: 'form', chamfer: 'semi-bottoming' } },
    { hole: through(8), measured: { torque: 5, style: 'spiral-point', chamfer: 'taper' } },
    { hole: blind(), coating: { thickness: [0.05, 0.06] } },
    { hole: blind(), learned: { factor: 1.3, band: 1.15 } },
    { hole: through(12, { clearBelow: 3 }), fullThread: 8 },
    { hole: through(12, { clearBelow: 5 }), fullThread: 8 },
    { hole: through(12, { clearBelow: 8 }), fullThread: 8 },
    { hole: through(12, { clearBelow: 12, chipsMayFall: false }), fullThread: 8 },
    { hole: through(12, { clearBelow: 40, chipsMayFall: false }) },
    { hole: through(12, { clearBelow: 8.125 }) },
    { hole: through(12, { clearBelow: 9.375 }) },
    { hole: through(12, { clearBelow: 9.375 }), externalCentre: 1.5 },
    { hole: blind(60), fullThread: 16 },
    { hole: blind(50), fullThread: 12, externalCentre: 3 },
    { hole: blind(18.5), fullThread: 16, ...drive('hand') },
    { hole: blind(19.75), fullThread: 16, ...drive('synchronous', { torque: 3 }) },
    {
      hole: blind(),
      ownMaterial: { name: 'Rotor steel', group: 'P', hardness: { value: 260, scale: 'HB' } },
    },
  ),
  ...(
    [
      'steel-medium',
      'steel-alloy',
      'steel-alloy-30hrc',
      'steel-40hrc',
      'steel-hard',
      'stainless-ferritic',
      'stainless-austenitic',
      'stainless-duplex',
      'iron-grey',
      'iron-ductile',
      'al-wrought',
      'al-cast',
      'al-cast-high-si',
      'brass-free',
      'copper',
      'plastic',
      'titanium',
      'nickel',
    ] as const
  ).flatMap((material) =>
    holes('M6', material, { hole: blind(15), fullThread: 10 }, { hole: through(6) }),
  ),
  ...holes('1/4-20', 'steel-low', { hole: through(12, { clearBelow: 6.35 }) }),
  ...holes('1/4-20', 'steel-low', { hole: through(12, { clearBelow: 7.62 }) }),
  ...holes('M8-6G', 'steel-low', { hole: blind() }, { hole: blind(), stockedDrills: ['letter'] }),
  ...holes('EG M8', 'steel-low', { hole: blind(18), fullThread: 16 }),
  ...holes('M3', 'steel-40hrc', { hole: blind() }, { hole: through(6) }),
  ...holes('M3', 'nickel', { hole: blind(7), fullThread: 6 }, { hole: through(6) }),
  ...holes('M12', 'titanium', { hole: blind(30), ...drive('synchronous', { torque: 20 }) }),
  ...holes('G1/8', 'iron-ductile', { hole: blind(), coating: { thickness: [0.005, 0.008] } }),
  ...holes('Rp3/4', 'steel-low', { hole: through(20) }),
  ...holes(
    '1/2 NPT',
    'iron-grey',
    { hole: blind() },
    { hole: blind(25) },
    { hole: blind(), stockedDrills: ['metric'] },
  ),
  ...holes('M2', 'stainless-austenitic', { hole: blind() }, { hole: through(2) }),
  ...holes('M1x0.2-4H', 'brass-free', { hole: blind() }),
  ...holes('M10x1.5-6H-LH', 'steel-medium', { hole: blind() }, { hole: through(10) }),
  ...holes('M24x3', 'iron-ductile', { hole: blind(), ...drive('synchronous', { torque: 40 }) }),
  ...holes('M30', 'steel-medium', { hole: through(30), ...drive('floating', { torque: 80 }) }),
  ...holes('M12x1-4H', 'al-wrought', { hole: blind() }),
  ...holes('M12x1.3', 'al-wrought', { hole: blind() }),
  ...holes('MJ6', 'titanium', { hole: blind() }),
  ...holes('EG M8', 'al-cast', { hole: blind() }, { hole: through(12) }),
  ...holes('#4-40', 'al-wrought', { hole: blind() }),
  ...holes('1/4-20 UNC-3B', 'steel-alloy-30hrc', { hole: blind(20) }, { hole: through(12.7) }),
  ...holes('1-8', 'steel-low', { hole: blind(), ...drive('synchronous', { torque: 150 }) }),
  ...holes('1/4-28 UNJF', 'nickel', { hole: blind() }),
  ...holes('STI 1/4-20', 'al-cast', { hole: blind() }),
  ...holes('G1/4', 'brass-free', { hole: blind() }, { hole: through(12) }),
  ...holes('G1/2-LH', 'steel-low', { hole: blind(25) }),
  ...holes('Rp1/2', 'iron-grey', { hole: blind() }),
  ...holes('Rc1/4', 'steel-low', { hole: blind() }, { hole: through(12) }),
  ...holes('1/4 NPT', 'stainless-austenitic', { hole: through(15) }, { hole: blind(20) }),
  ...holes('1/8-27 NPTF', 'brass-free', { hole: blind() }),
];

/** A reason, warning, assumption or remedy: its code, and its numbers where it has any. */
function coded({ code, numbers }: { code: string; numbers: Record<string, number> }): string {
  return Object.keys(numbers).length === 0 ? code : `${code}${plain(numbers)}`;
}

function linesOf(request: HoleRequest): string {
  const outcome = planHole(request);
  const head = `# ${plain(request)}`;
  if (!outcome.ok) return [head, ...outcome.problems.map((each) => `! ${plain(each)}`)].join('\n');
  const { drill, drills, taps, remedies, cycle, warnings, assumptions } = outcome.value;
  const lines = taps.map(({ reasons, drill: own, depth, chamfer, ...rest }, at) => {
    const { process, style, hand, verdict } = rest;
    const name = `${verdict}: ${process} ${style} ${hand} ${chamfer.class} ${chamfer.form}`;
    const why = reasons.map(coded).join('; ');
    // The first of each kind of tap in full; of the others what was said.
    const first =
      verdict !== 'no' &&
      taps.findIndex((tap) => tap.style === style && tap.verdict === verdict) === at;
    const { torque, toothLoad, tapShare, spindleShare, chips } = rest;
    const full = { drill: own?.name, depth, torque, toothLoad, tapShare, spindleShare, chips };
    return `${name}: ${why}${first ? `\n    ${plain(full)}` : ''}`;
  });
  return [
    head,
    `drill ${plain(drill)} of ${drills.map((each) => `${each.name} ${each.verdict}`).join(', ')}`,
    ...lines,
    `remedies: ${remedies.map(coded).join('; ')}`,
    `cycle: ${plain(cycle)}`,
    `warnings: ${warnings.map(coded).join('; ')}`,
    `assumptions: ${assumptions.map(coded).join('; ')}`,
  ].join('\n');
}

test('many holes', async () => {
  const text = REQUESTS.map(linesOf).join('\n\n');
  await expect(`${text}\n`).toMatchFileSnapshot('golden/many.txt');
});
