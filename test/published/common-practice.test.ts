/** Facts of the trade that no single source prints: common practice. */
import { describe, expect, it } from 'vitest';
import { planHole, type HoleRequest } from '../../core';
import { chamferOf, classesFor } from '../../core/chamfer/classes';
import { chipCourse } from '../../core/chips/direction';
import { chipsShort, findMaterial } from '../../core/material/table';
import type { MaterialId } from '../../core/material/material';
import { typicalWeb } from '../../core/tap/styles';

function plan(request: HoleRequest) {
  const outcome = planHole(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('chamfer words (common practice)', () => {
  it.each([
    ['taper', 8],
    ['taper', 9],
    ['plug', 4],
    ['plug', 5],
    ['bottoming', 1],
    ['bottoming', 2],
  ] as const)('a %s tap with %i threads of chamfer lies inside its range', (name, count) => {
    const { min, max } = chamferOf(name, 'inch').threads;
    expect(count).toBeGreaterThanOrEqual(min);
    expect(count).toBeLessThanOrEqual(max);
    expect(classesFor(count, 'inch')).toContain(name);
  });
});

describe('chips (common practice)', () => {
  it('spiral point sends them ahead, spiral flute draws them back, straight flute leaves them', () => {
    expect(chipCourse(-10, 'right')).toBe('ahead');
    expect(chipCourse(35, 'right')).toBe('back');
    expect(chipCourse(0, 'right')).toBe('stays');
  });

  it.each<[MaterialId, boolean]>([
    ['steel-low', false],
    ['steel-medium', false],
    ['al-wrought', false],
    ['iron-grey', true],
  ])('%s chips short: %s', (id, short) => {
    expect(chipsShort(findMaterial(id)!.chips)).toBe(short);
  });
});

describe('load and strength (common practice)', () => {
  it('a bottoming chamfer loads each tooth most, so it wears first', () => {
    const taps = plan({ thread: 'M10x1.5', hole: { kind: 'blind' }, material: 'steel-low' }).taps;
    const cut = taps.filter((tap) => tap.style === 'straight-flute');
    const heaviest = cut.reduce((most, tap) => (tap.toothLoad > most.toothLoad ? tap : most));
    expect(heaviest.chamfer.class).toBe('bottoming');
  });

  it('winding flutes leave the least metal in the middle', () => {
    const web = (style: Parameters<typeof typicalWeb>[0]) => typicalWeb(style, 10, 8.4, 4);
    expect(web('spiral-flute')).toBeLessThan(web('straight-flute'));
    expect(web('spiral-flute')).toBeLessThan(web('spiral-point'));
  });
});

describe('choice (common practice)', () => {
  it.each(['1/4-20', '3/8-16', 'M8', 'M16'])(
    'spiral point with a plug chamfer is the first choice for an ordinary through hole: %s',
    (thread) => {
      const first = plan({
        thread,
        hole: { kind: 'through', thickness: 20 },
        material: 'steel-low',
      }).taps[0]!;
      expect([first.style, first.chamfer.class, first.verdict]).toEqual([
        'spiral-point',
        'plug',
        'best',
      ]);
    },
  );

  it('a blind hole that a plug chamfer cannot finish: spiral-flute bottoming', () => {
    const depth = 1.0 * 25.4;
    const result = plan({
      thread: '1/2-13',
      fullThread: 0.75 * 25.4,
      hole: { kind: 'blind', limit: { at: 'shoulder', depth } },
      material: 'steel-low',
    });
    const first = result.taps[0]!;
    expect([first.style, first.chamfer.class, first.verdict]).toEqual([
      'spiral-flute',
      'bottoming',
      'best',
    ]);
    const plug = result.taps.find(
      (tap) => tap.style === 'spiral-flute' && tap.chamfer.class === 'plug',
    )!;
    expect(plug.verdict).toBe('no');
  });

  it('a spiral point in a blind hole needs chip room below', () => {
    const at = (depth: number) =>
      plan({
        thread: 'M10x1.5',
        fullThread: 10,
        hole: { kind: 'blind', limit: { at: 'shoulder', depth } },
        material: 'iron-ductile',
      }).taps.find((tap) => tap.style === 'spiral-point' && tap.chamfer.class === 'plug')!;
    expect(at(25).reasons.map((each) => each.code)).toContain('chips-ahead-no-room');
    expect(at(60).verdict).toBe('works');
  });
});
